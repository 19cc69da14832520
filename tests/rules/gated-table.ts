import { GRAVITY } from "../../src/facts/acting.ts";
import { area } from "../../src/geometry/polygon.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { table } from "./table.ts";

/** mm: the hinge line, 22 before the axis of leg-1, which stands at (−500, −300). */
const LINE = [-478, -300] as const;
/** mm from the hinge line: the stiles of the leaf. */
const [HUNG, FREE] = [22, 378];
/** kg, on the free stile. */
const BOX = 4;
/** Holds a prop under the middle of the back rail. */
const PROPPED = { bars: ["prop"], ends: "to", by: "sides" };

/** A point of the leaf so far from the hinge line: shut it lies along +x, open at a right angle along −y. */
const at = (out: number, z: number, open: boolean): number[] =>
  open ? [LINE[0], LINE[1] - out, z] : [LINE[0] + out, LINE[1], z];

/** A table with a gate under its front rail, drawn shut or open, with a box on its free stile and a hand on its upper rail. */
export function gated(open: boolean, swing: readonly [number, number] = [0, 90]): FrameFile {
  const file = table();
  const stile = (id: string, out: number) => ({
    id,
    profile: "40x40-8",
    from: at(out, 260, open),
    to: at(out, 720, open),
  });
  const rail = (id: string, z: number) => ({ id, profile: "40x40-8", from: at(HUNG, z, open), to: at(FREE, z, open) });
  const more = [stile("hung", HUNG), stile("free", FREE), rail("lower", 300), rail("upper", 680)];
  return {
    ...file,
    bars: [...file.bars, ...more],
    joints: [...(file.joints ?? []), { bars: ["lower", "upper"], by: "level" }],
    doors: [
      {
        id: "gate",
        bars: more.map(({ id }) => id),
        axis: "-z",
        swing,
        hinges: [350, 650].map((z) => ({ part: "hinge-40", bars: ["hung", "leg-1"], at: [...LINE, z] })),
      },
    ],
    masses: [{ id: "box", mass: BOX, centre: at(FREE, 500, open), on: ["free"], fixed: true }],
    cases: [{ id: "leant-on" }],
    loads: [{ id: "hand", on: "upper", force: 20, direction: "-z", case: "leant-on" }],
  } as unknown as FrameFile;
}

/** The same shut, nobody leaning on it, on three feet: the two in front and one under a prop in the middle of the back. */
export function gatedOnThree(): FrameFile {
  const file = { ...gated(false), loads: [], cases: [] } as unknown as FrameFile;
  const prop = { id: "prop", profile: "40x40-8", from: [0, 300, 50], to: [0, 300, 780] };
  const stands = [{ part: "foot-40-M8", bars: ["leg-1", "leg-2", "prop"] }];
  return {
    ...file,
    bars: [...file.bars, prop],
    stands,
    joints: [...(file.joints ?? []), PROPPED],
  } as unknown as FrameFile;
}

function known<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("not in stock");
  return value;
}

/** N·m about the hinge line: stiles 460 mm long, rails 316 mm, the box, and two plain brackets at each end of a rail. */
function leverOfLeaf(): number {
  const stock = builtinStock();
  const profile = known(stock.profiles.get("40x40-8"));
  const perMetre = area(profile.region) * known(stock.materials.get(profile.material)).density;
  const bracket = known(stock.connectors.get("inside-bracket-40")).mass;
  const weighed = [
    [perMetre * 0.46 + 4 * bracket, HUNG],
    [perMetre * 0.46 + 4 * bracket + BOX, FREE],
    [2 * perMetre * 0.316, (HUNG + FREE) / 2],
  ] as const;
  return weighed.reduce((sum, [mass, out]) => sum + (mass * GRAVITY * out) / 1000, 0);
}

/** What leg-1 and leg-2 bear more than shut, on three feet, with the gate open by an angle, N: they stand 600 mm before the prop, 1000 mm apart. */
export function moreByHand(angle: number): readonly [number, number] {
  const lever = leverOfLeaf();
  const forward = (lever * Math.sin(angle)) / 0.6 / 2;
  const aside = (lever * (1 - Math.cos(angle))) / 1.0;
  return [forward + aside, forward - aside];
}
