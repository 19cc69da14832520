import type { Cure, Edit, Proposal } from "./cure.ts";

/** Lets caps close the ends that the finding names, or all open ends where the file has switched caps off. */
export const coverEnd: Cure = {
  id: "cover-end",
  turn: 1,
  mends: ["end.bare"],
  *propose(ailment, patient): Iterable<Proposal> {
    if (patient.file.defaults?.caps === "none") {
      yield { words: "caps on all open ends", edits: [{ pointer: "/defaults/caps", to: "all-open-ends" }] };
    }
    const edits: Edit[] = [];
    const ends = new Set([ailment.at, ...ailment.related].filter((part) => part.kind === "end").map((part) => part.id));
    for (const id of ends) {
      const [bar = "", end = ""] = id.split("/");
      const index = patient.file.bars.findIndex((b) => b.id === bar);
      const written = patient.file.bars[index]?.ends;
      for (const which of [end, "both"] as const) {
        if (written?.[which as "from" | "to" | "both"]?.cap === "none")
          edits.push({ pointer: `/bars/${index}/ends/${which}/cap`, to: undefined });
      }
    }
    const once = edits.filter((edit, i) => edits.findIndex((other) => other.pointer === edit.pointer) === i);
    if (once.length > 0) yield { words: `a cap on ${[...ends].join(", ")}`, edits: once };
  },
};
