import type { Cure, Proposal } from "./cure.ts";

/** Cuts an end at the face it should meet instead of where it was drawn. */
export const buttCut: Cure = {
  id: "butt-cut",
  turn: 1,
  mends: ["joint.gap", "bar.clash"],
  *propose(ailment, patient): Iterable<Proposal> {
    const parts = [ailment.at, ...ailment.related];
    const bars = new Set(parts.map((part) => part.id.split(/[/.]/)[0] ?? ""));
    for (const id of bars) {
      const index = patient.file.bars.findIndex((bar) => bar.id === id);
      const bar = patient.file.bars[index];
      for (const end of ["from", "to", "both"] as const) {
        if (bar?.ends?.[end]?.cut !== "as-drawn") continue;
        for (const other of bars) {
          if (other === id || other === "") continue;
          const { cut: _, ...rest } = bar.ends[end];
          yield {
            words: `${id} cut at the face of ${other}`,
            edits: [{ pointer: `/bars/${index}/ends/${end}`, to: { ...rest, butt: other } }],
          };
        }
      }
    }
  },
};
