import { axesOf, up } from "../facts/axes.ts";
import { factOf } from "../facts/fact.ts";
import { spans } from "../facts/spans.ts";
import { structure } from "../facts/structure.ts";
import { along, dot } from "../geometry/vector.ts";
import type { Cure, Edit, Proposal } from "./cure.ts";
import { freshId, pointInFile } from "./written.ts";

/** Another post like those that carry the bar already, in the middle of its longest span, with its joint and its foot. */
export const postAtMidSpan: Cure = {
  id: "post-at-mid-span",
  turn: 3,
  mends: ["bar.sags", "bar.overstressed"],
  *propose(ailment, patient): Iterable<Proposal> {
    const { frame, file } = patient;
    const bar = frame.bars.find((b) => b.ref.id === ailment.at.id);
    if (!bar || Math.abs(dot(axesOf(bar).x, up)) > 0.02) return;
    const known = factOf(structure, frame);
    const span = [...(factOf(spans, frame).get(bar.ref.id) ?? [])]
      .filter((s) => s.kind === "between")
      .sort((a, b) => b.length - a.length)[0];
    const link = known.links.find((l) => {
      const post = frame.bars.find((b) => b.ref.id === l.bar);
      return l.onto === bar.ref.id && post !== undefined && Math.abs(dot(axesOf(post).x, up)) > 0.98;
    });
    if (!span || !link) return;
    const index = file.bars.findIndex((b) => b.id === link.bar);
    const post = file.bars[index];
    const joint = file.joints?.find((j) => j.bars.some((b) => b === link.bar || b.startsWith(`${link.bar}/`)));
    const stand = file.stands?.find((s) => s.bars.some((b) => b === link.bar || b.startsWith(`${link.bar}/`)));
    if (!post || !joint || !stand) return;
    const axis = axesOf(bar).x;
    const by =
      span.from + span.length / 2 - (link.stations[1] - (known.nodes[known.nodeAt(bar.ref.id, 0)]?.station ?? 0));
    // A post that was copied is written elsewhere.
    const lead = frame.bars.find((b) => b.ref.id === post.id);
    if (!lead) return;
    const shifted = (end: "from" | "to"): unknown => pointInFile(along(lead[end], axis, by), file);
    const id = freshId(file, `${bar.ref.id}-post`);
    const end = joint.bars.find((b) => b.startsWith(`${link.bar}/`))?.split("/")[1];
    const edits: Edit[] = [
      { pointer: "/bars/-", to: { ...post, id, from: shifted("from"), to: shifted("to") } },
      {
        pointer: "/joints/-",
        to: {
          bars: [end === undefined ? id : `${id}/${end}`],
          by: joint.by,
          ...(end === undefined && joint.ends ? { ends: joint.ends } : {}),
        },
      },
      { pointer: "/stands/-", to: { ...stand, bars: [id], id: undefined } },
    ];
    yield { words: `another post under its middle, like ${link.bar}`, edits };
  },
};
