import { barDiagram } from "../../drawing/bar-diagram.ts";
import { jointPicture } from "../../drawing/joint-picture.ts";
import { placePicture } from "../../drawing/place-picture.ts";
import type { Scene } from "../../drawing/scene.ts";
import { factOf } from "../../facts/fact.ts";
import { holeWords } from "../../facts/hole-words.ts";
import { jointForces } from "../../facts/joint-forces.ts";
import { netSections } from "../../facts/net-sections.ts";
import type { View } from "../../facts/response.ts";
import { spans } from "../../facts/spans.ts";
import { toolRoom } from "../../facts/tool-room.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { sweepPicture } from "../reach/sweep-picture.ts";
import { boresFindingPicture } from "./bore-pictures.ts";
import { doorFindingPicture } from "./door-pictures.ts";
import { edgeFindingPicture } from "./edge-pictures.ts";
import { openEndPictures, rawEndPicture } from "./end-pictures.ts";
import { viewOfFinding } from "./finding-shape.ts";
import { footFindingPicture } from "./foot-pictures.ts";
import { framePicture } from "./frame-pictures.ts";
import { gapFindingPicture } from "./gap-pictures.ts";
import { guardFindingPicture } from "./guard-pictures.ts";
import { drawn, html, type Markup } from "./html.ts";
import { panelFindingPicture } from "./panel-pictures.ts";
import { signedFindingPicture } from "./signed-pictures.ts";
import { tiePicture } from "./tie-pictures.ts";
import { TOOL_RULES } from "./tool-rules.ts";

/** Where along a bar the hole is that a finding on its strength names, stations in m. */
const weakHoles = (frame: Frame, { at, related, shown }: Finding): readonly number[] => {
  const by = new Set([at, ...related.map((other) => other.at)].map(({ id }) => id));
  return factOf(netSections, frame)
    .filter((net) => net.bar === at.id && by.has(net.by.id) && holeWords(net.what) === shown.what)
    .map((net) => net.at);
};

function barPicture(frame: Frame, finding: Finding, view: View): Markup | undefined {
  const bar = finding.at.id;
  const holes = finding.rule === "bar.weak-hole" ? weakHoles(frame, finding) : [];
  const twists = finding.rule === "bar.twists";
  const svg = barDiagram({ bar, view, spans: factOf(spans, frame).get(bar) ?? [], units: frame.units, holes, twists });
  return svg === undefined
    ? undefined
    : html`<figure class="check">${drawn(svg)}<figcaption>${bar} under ${view.combination.name}, stations from its from end: ${twists ? "how far it is turned about its own axis, what turns it, and " : ""}how it bends off the line between what holds it (△), and the forces in it; not to scale across.${holes.length > 0 ? " Dashed: where the hole is." : ""}</figcaption></figure>
`;
}

/** What each screw of a joint bears, as a table beside the joint. */
function forcesTable(frame: Frame, joint: string, view: View): Markup | undefined {
  const forces = factOf(jointForces, frame).find(({ link }) => link.joint.id === joint);
  if (!forces) return undefined;
  const print = (value: number): string => formatQuantity(value, "force", frame.units);
  return html`<table class="forces"><thead><tr><th scope="col">Screw</th><th scope="col" class="num">Across it</th><th scope="col" class="num">Along it</th><th scope="col" class="num">From bending</th></tr></thead><tbody>${forces
    .borne(view)
    .clamps.map(
      ({ clamp, shear, pull, bent }) =>
        html`<tr><th scope="row">${clamp.placed.ref.id}</th><td class="num">${print(shear)}</td><td class="num">${print(pull)}</td><td class="num">${print(bent)}</td></tr>`,
    )}</tbody></table>
`;
}

/** The tool on a screw that the finding names, how far it turns and what stops it. */
function toolPicture(frame: Frame, { at, shown: { tool } }: Finding): Markup | undefined {
  const room = factOf(toolRoom, frame).find(({ screw }) => screw.ref.id === at.id);
  const svg = room && sweepPicture(room, frame.units, tool);
  return svg === undefined
    ? undefined
    : html`<figure class="check tool">${drawn(svg)}<figcaption>Room for the tool at ${at.id} when it is tightened.</figcaption></figure>
`;
}

/** Bars drawn in all by pictures that show one part on the whole frame, and pictures of parts from near by: beyond that balloons have to do. */
const BARS_BEHIND = 600;
const NEAR_BY = 60;

/** Whether there is still room for so many more. */
function budget(most: number): (more: number) => boolean {
  let left = most;
  return (more) => {
    if (more > left) return false;
    left -= more;
    return true;
  };
}

/** The parts that a finding names, where they are. */
function placesFor(
  frame: Frame,
  scene: Scene,
  near: (more: number) => boolean,
  whole: () => boolean,
): (finding: Finding) => Markup | undefined {
  return ({ at, related }) => {
    const refs = [at, ...related.map((other) => other.at)];
    const named = refs.flatMap(({ kind, id }) => {
      if (kind === "group") return frame.groups.find(({ ref }) => ref.id === id)?.parts ?? [];
      // Ties have no shape of their own: the bars they hold have.
      if (kind === "joint") return [id, ...(frame.ties.find(({ ref }) => ref.id === id)?.bars ?? [])];
      // What cannot sit where it is put has no shape either.
      const fastening =
        kind === "connector" ? frame.fastenings.find(({ ref }) => id.startsWith(`${ref.id}/`)) : undefined;
      return kind === "frame" ? [] : [id, ...(fastening?.holds ?? [])];
    });
    const boxes = frame.zones
      .filter(({ ref }) => named.includes(ref.id))
      .map(({ ref, low, high }) => ({ id: ref.id, low, high }));
    const words = refs
      .filter(({ kind }) => kind !== "frame")
      .map(({ id }) => id)
      .join(", ");
    const title = `where to find ${words}`;
    const picture = placePicture(scene, named, boxes, { title, near: () => near(1), whole });
    return (
      picture &&
      html`<figure class="check near" data-seen="${picture.seen}">${drawn(picture.svg)}<figcaption>${words} ${picture.seen === "near" ? "from near by" : "in the frame"}.</figcaption></figure>
`
    );
  };
}

/** The picture of a check, where there is one: asked for in reading order; the bent bar with its forces, the tool on its screw, the joint with what its screws bear, or the parts where they are. */
export function picturesFor(frame: Frame, scene: Scene): (finding: Finding) => Markup | undefined {
  const shown = new Set<string>();
  const behind = budget(BARS_BEHIND);
  const onWhole = (): boolean => behind(frame.bars.length);
  const near = budget(NEAR_BY);
  const place = placesFor(frame, scene, near, onWhole);
  return (finding) => {
    const view = viewOfFinding(frame, finding);
    // Of how the frame stands as a whole there are few findings; of parts that turn there may be one a bar.
    const many = finding.rule === "joint.turns" && !finding.measure;
    const whole = !many || onWhole() ? framePicture(frame, scene, finding) : undefined;
    if (whole) return whole;
    const holes = boresFindingPicture(frame, scene, finding) ?? edgeFindingPicture(frame, scene, finding);
    if (holes) return holes;
    if (finding.at.kind === "bar" && view) return barPicture(frame, finding, view);
    const tool = TOOL_RULES.has(finding.rule) ? toolPicture(frame, finding) : undefined;
    if (tool) return tool;
    if (finding.at.kind === "panel") return panelFindingPicture(frame, scene, finding);
    if (finding.at.kind === "zone") return guardFindingPicture(frame, scene, finding) ?? place(finding);
    if (finding.at.kind === "door") return doorFindingPicture(frame, scene, finding);
    const measured = gapFindingPicture(frame, scene, finding) ?? footFindingPicture(frame, scene, finding);
    if (measured) return measured;
    const signed = signedFindingPicture(frame, scene, finding, onWhole);
    if (signed) return signed;
    if (finding.rule === "end.raw") return rawEndPicture(frame, scene, finding) ?? place(finding);
    if (finding.rule === "tie.slips") return tiePicture(frame, scene, finding) ?? place(finding);
    if (finding.rule === "end.bare") return openEndPictures(frame, scene, finding);
    const joint = jointOf(scene, finding);
    if (joint === undefined) return place(finding);
    const named = namedOn(finding);
    // One picture of a joint and what is named on it is enough.
    const key = [joint, ...named].join(" ");
    const known = view !== undefined && shown.has(key);
    const again = shown.has(joint);
    const svg = known || (again && !near(1)) ? undefined : jointPicture(scene, joint, named);
    shown.add(key);
    shown.add(joint);
    const table = view && forcesTable(frame, joint, view);
    // Ties hide between their bars.
    if (svg === undefined) return table ?? (known ? undefined : place(finding));
    const figure = html`<figure class="check near">${drawn(svg)}<figcaption>Joint ${joint}${view ? html`; forces under ${view.combination.name}` : ""}.</figcaption></figure>
`;
    return table ? html`<div class="beside">${figure}${table}</div>` : figure;
  };
}

/** Screws, connectors and bars that a finding on a part of a joint names; a nut by its screw. */
const namedOn = ({ at, related }: Finding): ReadonlySet<string> =>
  new Set(
    [at, ...related.map((other) => other.at)]
      .filter(
        ({ kind }) =>
          kind === "connector" || kind === "screw" || kind === "nut" || (kind === "bar" && at.kind !== "joint"),
      )
      .map(({ kind, id }) => (kind === "nut" ? id.slice(0, id.lastIndexOf("/")) : id)),
  );

/** The joint that a finding on a joint, connector, screw or nut is about. */
function jointOf(scene: Scene, { at }: Finding): string | undefined {
  if (at.kind === "joint") return at.id;
  if (at.kind !== "connector" && at.kind !== "screw" && at.kind !== "nut") return undefined;
  const solid = scene.solids.find(({ of }) => at.id === of.id || at.id.startsWith(`${of.id}/`));
  return solid?.with[0];
}
