import { axesOf, up } from "../facts/axes.ts";
import { factOf } from "../facts/fact.ts";
import { spans } from "../facts/spans.ts";
import { structure } from "../facts/structure.ts";
import { dot } from "../geometry/vector.ts";
import { formatNumber } from "../model/units/format-quantity.ts";
import type { Cure, Edit, Proposal } from "./cure.ts";

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
    const scale = file.units === "mm-N-kg" ? 1000 : 1 / 0.0254;
    const shifted = (point: readonly unknown[]): unknown[] =>
      point.map((c, i) => (typeof c === "number" ? Number(formatNumber(c + axis[i as 0 | 1 | 2] * by * scale, 4)) : c));
    let id = `${bar.ref.id}-post`;
    while (file.bars.some((b) => b.id === id)) id += "-2";
    const end = joint.bars.find((b) => b.startsWith(`${link.bar}/`))?.split("/")[1];
    const edits: Edit[] = [
      { pointer: "/bars/-", to: { ...post, id, from: shifted(post.from), to: shifted(post.to) } },
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
