import type { Bar, Fastening, Joint, Pivot, Stand, Tie } from "../frame.ts";
import { ref } from "../ref.ts";
import { copyId, type Instance, refuseImage, renamed } from "./copies.ts";
import { copyConnector, moveFace } from "./copy-bars.ts";
import { type Jointed, takeEnd } from "./joints.ts";
import { mirroredPlate } from "./mirror-image.ts";
import type { Named } from "./names.ts";
import { moveAxis, movePoint } from "./placement.ts";
import { name, type Work } from "./work.ts";

export type BarsById = ReadonlyMap<string, Bar>;

/** Gives a copy its id; where it was written is where its original was. */
export function nameCopy(work: Work, original: string, copy: string, { pointer }: Instance): void {
  const named: Named = work.names.get(original) ?? { kind: "joint", pointer };
  name(work, copy, { ...named, copyPointer: pointer }, `${pointer}/suffix`);
}

/** Whether a copied bar has its id from this instance: where the id was taken already, that is told, and not again of its parts. */
function ownsBar(work: Work, bar: string, { pointer }: Instance): boolean {
  return work.names.get(bar)?.copyPointer === pointer;
}

/** A joint is copied with its bar; the bar it is fastened onto may stay behind. */
export function copyJoint(
  work: Work,
  joint: Joint,
  bars: BarsById,
  jointed: Jointed,
  instance: Instance,
): Joint | undefined {
  const bar = renamed(instance, joint.bar);
  if (!ownsBar(work, bar, instance)) return undefined;
  const original = joint.ref.id;
  const id = original === `${joint.bar}.${joint.end}` ? `${bar}.${joint.end}` : copyId(original, instance);
  if (
    !takeEnd(
      work,
      jointed,
      bar,
      joint.end,
      instance.pointer,
      "a copy brings the joints of its bars: leave out one of the two",
    )
  ) {
    return undefined;
  }
  nameCopy(work, original, id, instance);
  const connectors = joint.connectors.map((choice, index) =>
    copyConnector(work, choice, bars.get(joint.bar), `${id}/${index + 1}`, instance),
  );
  return Object.freeze({
    ref: Object.freeze(ref("joint", id)),
    bar,
    end: joint.end,
    ...(joint.onto === undefined ? {} : { onto: renamed(instance, joint.onto) }),
    connectors: Object.freeze(connectors.filter((choice) => choice !== undefined)),
  });
}

function pairRenamed([a, b]: readonly [string, string], instance: Instance): readonly [string, string] {
  return Object.freeze([renamed(instance, a), renamed(instance, b)] as const);
}

function mirrorPlate(
  work: Work,
  { connector, turn }: Fastening,
  instance: Instance,
): { readonly turn: number; readonly omit: readonly string[] } | undefined {
  const { part, omit } = connector;
  if (!instance.placement.mirrors || part.kind !== "plate") return { turn, omit };
  const image = mirroredPlate(part);
  if (image === undefined) return refuseImage(work, part.name, "shape", instance);
  return { turn: image.turn - turn, omit: Object.freeze(omit.map((hole) => image.holes.get(hole) ?? hole)) };
}

export function copyFastening(
  work: Work,
  fastening: Fastening,
  bars: BarsById,
  instance: Instance,
): Fastening | undefined {
  const id = copyId(fastening.ref.id, instance);
  nameCopy(work, fastening.ref.id, id, instance);
  const [first, second] = fastening.holds.map((held) => bars.get(held));
  const connector = copyConnector(work, fastening.connector, first, `${id}/1`, instance);
  const plate = mirrorPlate(work, fastening, instance);
  if (connector === undefined || plate === undefined) return undefined;
  const { against } = fastening;
  return Object.freeze({
    ref: Object.freeze(ref("joint", id)),
    connector: connector.part.kind === "plate" ? Object.freeze({ ...connector, omit: plate.omit }) : connector,
    on: moveFace(fastening.on, first, instance),
    ...(against === undefined ? {} : { against: moveFace(against, second, instance) }),
    at: movePoint(instance.placement, fastening.at),
    turn: plate.turn,
    holds: Object.freeze(fastening.holds.map((held) => renamed(instance, held))),
  });
}

export function copyTie(work: Work, tie: Tie, instance: Instance): Tie {
  const id = copyId(tie.ref.id, instance);
  nameCopy(work, tie.ref.id, id, instance);
  return Object.freeze({ ...tie, ref: Object.freeze(ref("joint", id)), bars: pairRenamed(tie.bars, instance) });
}

export function copyPivot(work: Work, pivot: Pivot, instance: Instance): Pivot {
  const { placement } = instance;
  const id = copyId(pivot.ref.id, instance);
  nameCopy(work, pivot.ref.id, id, instance);
  return Object.freeze({
    ...pivot,
    ref: Object.freeze(ref("joint", id)),
    bars: pairRenamed(pivot.bars, instance),
    at: movePoint(placement, pivot.at),
    axis: moveAxis(placement, pivot.axis),
  });
}

/** The id that a stand's copy has. */
export function standCopyId(stand: Pick<Stand, "ref" | "bar" | "part">, instance: Instance): string {
  const derived = stand.ref.id === `${stand.bar}.${stand.part.kind}`;
  return derived ? `${renamed(instance, stand.bar)}.${stand.part.kind}` : copyId(stand.ref.id, instance);
}

export function copyStand(work: Work, stand: Stand, instance: Instance): Stand | undefined {
  if (!ownsBar(work, renamed(instance, stand.bar), instance)) return undefined;
  const id = standCopyId(stand, instance);
  nameCopy(work, stand.ref.id, id, instance);
  return Object.freeze({ ...stand, ref: Object.freeze(ref("stand", id)), bar: renamed(instance, stand.bar) });
}
