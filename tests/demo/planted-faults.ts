import type { Level } from "../../src/rules/shape/rule.ts";
import type { Demo } from "./inspect-demo.ts";

/** One finding that a planted fault must give. */
export interface Planted {
  readonly rule: string;
  readonly key: string;
  readonly level: Level;
  /** The part it is pinned on, then the others it names in their order. */
  readonly parts: readonly string[];
  /** Hand-worked, in the unit named; absent where the message measures nothing. */
  readonly measured?: number;
  readonly limit?: number;
  readonly unit?: "mm" | "mm2" | "in" | "deg" | "count";
  /** Share by which the measured value may differ; for areas worked without the polygon's chords. */
  readonly within?: number;
}

/** A slip of the pen and all that follows from it. */
export interface Slip {
  readonly slip: string;
  /** Why one slip gives more than one finding. */
  readonly because?: string;
  readonly findings: readonly Planted[];
}

// Stock used below, from its table: slot 8 is 8.2 mm open, 4 mm of lip, 18 mm of cavity, 12.5 mm deep, webs of 2.8 mm; a bracket 40 has
// legs 40 x 5 mm with one hole 22 mm from the corner; M8 cap heads are 13 mm wide and 8 mm high; a 6 mm key is 6·2/√3 mm over corners.

/** Sawn metal of the 40 mm profiles, mm². */
function sectionArea(columns: number): number {
  const block = (40 - 18) / 2; // side of a corner block
  const shoulder = block - 2.8 / Math.SQRT2; // depth at which the cavity turns in at 45°
  const taper = 12.5 - shoulder;
  const lips = 8.2 * 4;
  const straight = 18 * (shoulder - 4);
  const bevelled = (18 - taper) * taper; // trapezoid, 18 mm narrowing by 2·taper over its depth
  const slots = (2 + 2 * columns) * (lips + straight + bevelled);
  const rounding = (4 - Math.PI) * 4 ** 2;
  const cornerHollow = 7 ** 2 - (1 - Math.PI / 4) * 2 ** 2; // 2 mm of wall, 11 - 2·2 mm wide, rounded by 4 - 2 mm outside
  const bores = (columns * Math.PI * 6.8 ** 2) / 4;
  // Between two cells: as wide as both shoulders, 2.4 mm of wall at both skins, and a bevel towards each core.
  const between = (columns - 1) * (2 * shoulder * (40 - 2 * 2.4) + 2 * bevelled);
  return columns * 1600 - slots - rounding - 4 * cornerHollow - bores - between;
}

// From the post's face: the key of an end fastener stands out of the rail 15 mm from its end; half a key is 3.46 mm.
const KEY_TO_HEAD_BESIDE = 22 - 15 - 6 / Math.sqrt(3) - 13 / 2; // past the head on the rail, 22 mm out: -2.96 mm
const KEY_TO_HEAD_BELOW = 15 - 6 / Math.sqrt(3) - (5 + 8); // past the head on the post, leg and head 13 mm out: -1.46 mm
const KEY_CLEARANCE = 0.5;

export const PLANTED: Readonly<Partial<Record<Demo, readonly Slip[]>>> = {
  "potting-bench-faulty": [
    {
      slip: "one end of the tool rail without a cap",
      findings: [
        {
          rule: "end.bare",
          key: "bare",
          level: "hold",
          parts: ["tool-rail/to"],
          measured: sectionArea(1), // 662.6 mm²
          limit: 20,
          unit: "mm2",
          within: 0.001,
        },
      ],
    },
    {
      slip: "cross-2 drawn to its cut length, 1.5 mm short",
      findings: [
        {
          rule: "joint.gap",
          key: "gap",
          level: "hold",
          parts: ["cross-2.to", "cross-2/to", "back"],
          measured: 680 - 20 - 658.5, // face of the back rail less the point drawn
          limit: 0.5,
          unit: "mm",
        },
      ],
    },
    {
      slip: "upright-1 moved out to x = 52 mm",
      because: "a bracket leans on it at either end, and both outer ones come too near the ends of the rails",
      // Its outer face stands at 52 - 20 = 32 mm, the hole 22 mm further out; the rails start at 0. A slot 8 wants 1.5 · 8.2 mm.
      findings: (["from", "to"] as const).map((end) => ({
        rule: "hole.near-edge",
        key: "nut",
        level: "hold",
        parts: [`upright-1.${end}/2/b1`, end === "from" ? "back/from" : "tool-rail/from"],
        measured: 52 - 20 - 22,
        limit: 1.5 * 8.2,
        unit: "mm",
      })),
    },
    {
      slip: "cross-4 held on one side only",
      findings: [
        { rule: "joint.turns", key: "loaded", level: "reject", parts: ["cross-4", "cross-4.from", "cross-4.to"] },
      ],
    },
    {
      slip: "M8x20 in one bracket instead of M8x16",
      because: "a bracket has a screw in either leg",
      // Slot depth less what stands under the 5 mm leg.
      findings: (["a1", "b1"] as const).map((hole) => ({
        rule: "screw.misfit",
        key: "bottoms",
        level: "reject",
        parts: [`shelf-3.to/1/${hole}`],
        measured: 12.5 - (20 - 5),
        limit: 0.5,
        unit: "mm",
      })),
    },
    {
      slip: "shelf-4 left out of the joints",
      findings: [{ rule: "bar.adrift", key: "alone", level: "reject", parts: ["shelf-4"] }],
    },
  ],

  "mixer-guard-faulty": [
    {
      slip: "the upper pane of the right side forgotten",
      findings: [{ rule: "guard.within-reach", key: "body", level: "reject", parts: ["paddles"] }],
    },
    {
      slip: "the loads not entered yet",
      findings: [{ rule: "load.none", key: "none", level: "hold", parts: ["frame"] }],
    },
    {
      slip: "top-left's end fasteners put on top instead of at the side",
      because: "one at each end, and the slots they screw into run level",
      // The screw of an end fastener lies 8 mm under its face: 20 - 8 above the middle of a 40 mm bar.
      findings: (["from", "to"] as const).map((end) => ({
        rule: "slot.mismatched",
        key: "off",
        level: "reject",
        parts: [`top-left.${end}/1/a1`, end === "from" ? "top-front" : "top-back"],
        measured: 40 / 2 - 8,
        limit: 0.6,
        unit: "mm",
      })),
    },
    {
      slip: "one end of mid-right 30 mm too high",
      because: "it leans at both posts",
      findings: (["from", "to"] as const).map((end) => ({
        rule: "bar.skewed",
        key: "leans",
        level: "hold",
        parts: ["mid-right", end === "from" ? "post-2" : "post-3", `mid-right.${end}`],
        measured: (Math.atan(30 / 1000) * 180) / Math.PI, // 1.72°
        limit: 1,
        unit: "deg",
      })),
    },
    {
      slip: "mid-front starts at x = 915 mm, 35 mm away from the jamb",
      findings: [{ rule: "joint.gap", key: "nothing", level: "reject", parts: ["mid-front.from", "mid-front/from"] }],
    },
    {
      slip: "a hole for the handle 8 mm from the end of the door's stile",
      findings: [
        {
          rule: "hole.near-edge",
          key: "hole",
          level: "hold",
          parts: ["door-free"],
          measured: 8,
          limit: 1.2 * 9,
          unit: "mm",
        },
      ],
    },
    {
      slip: "the top of the door's stile left as sawn",
      findings: [{ rule: "end.raw", key: "raw", level: "hold", parts: ["door-free/to"] }],
    },
    {
      slip: "the gasket of left-upper forgotten",
      findings: [
        {
          rule: "panel.rattles",
          key: "loose",
          level: "note",
          parts: ["left-upper"],
          measured: 8.2 - 5,
          limit: 0.5,
          unit: "mm",
        },
      ],
    },
    {
      slip: "a sheet of 8 mm typed for back-upper, in a gasket for 4 to 6 mm",
      findings: [
        {
          rule: "panel.misfit",
          key: "tight",
          level: "hold",
          parts: ["back-upper"],
          measured: 8,
          limit: 6,
          unit: "mm",
        },
      ],
    },
    {
      slip: "the notches of door-lower forgotten, and an end fastener stands in either upper corner",
      // In the slot of the waist from its mouth down, which the sheet enters by the 10.5 mm its gasket leaves.
      findings: [
        {
          rule: "panel.uncut",
          key: "corner",
          level: "hold",
          parts: ["door-lower", "door-waist.from/1", "door-waist.to/1"],
          measured: -10.5,
          limit: 0.5,
          unit: "mm",
        },
      ],
    },
  ],

  "sack-cart-faulty": [
    {
      slip: "the stake moved onto a screw of base-cross-1",
      findings: [
        {
          rule: "bore.clash",
          key: "clash",
          level: "reject",
          parts: ["base-front", "base-cross-1.from/1-2", "stake.from/1"],
          measured: 0 - 7 / 2 - 7 / 2, // both access holes, 7 mm wide, pass through x = 370, y = 20, z = 160
          limit: 1,
          unit: "mm",
        },
      ],
    },
    {
      slip: "top-cross-2 typed at x = 410 instead of 650 mm",
      findings: [
        {
          rule: "bar.clash",
          key: "clash",
          level: "reject",
          parts: ["top-cross-1", "top-cross-2"],
          measured: 350 + 40 - (410 - 40), // each 80 mm wide
          limit: 0.1,
          unit: "mm",
        },
      ],
    },
    {
      slip: "an end fastener added to base-right under the bracket that is there already",
      because: "the nut has no room, and the key of the fastener meets both heads of that bracket",
      findings: [
        {
          rule: "nut.clash",
          key: "clash",
          level: "reject",
          parts: ["base-right", "base-right.from/3", "base-right.from/2/a1/nut"],
          measured: 22 - 20 / 2 - 26, // the nut is 20 mm long, the fastener takes 26 mm of slot
          limit: 0,
          unit: "mm",
        },
        {
          rule: "screw.crowded",
          key: "key",
          level: "hold",
          parts: ["base-right.from/3/a1", "base-right.from/2/a1"],
          measured: KEY_TO_HEAD_BESIDE,
          limit: KEY_CLEARANCE,
          unit: "mm",
        },
        {
          rule: "screw.crowded",
          key: "key",
          level: "hold",
          parts: ["base-right.from/3/a1", "base-right.from/2/b1"],
          measured: KEY_TO_HEAD_BELOW,
          limit: KEY_CLEARANCE,
          unit: "mm",
        },
      ],
    },
    {
      slip: "stop-left drawn 60 mm too low",
      because: "at either end its key comes down on the head of the bracket below",
      // Its underside lies at 240 mm; the short arm of the key reaches 38 mm below, to 202, where the head stands out of the post.
      findings: (["from", "to"] as const).map((end) => ({
        rule: "screw.crowded",
        key: "key",
        level: "hold",
        parts: [`stop-left.${end}/1/a1`, `base-left.${end}/1/b1`],
        measured: KEY_TO_HEAD_BELOW,
        limit: KEY_CLEARANCE,
        unit: "mm",
      })),
    },
    {
      slip: "the front side taken over, built, from an older cart",
      because: "a nut of the stake no longer gets in between its posts, nor the stake between its rails",
      findings: [
        {
          rule: "nut.trapped",
          key: "trapped",
          level: "hold",
          parts: ["stake.from/2/b1/nut", "base-front", "old-front"],
        },
        { rule: "build.deadlock", key: "built", level: "hold", parts: ["old-front"] },
      ],
    },
    {
      slip: "no caps on the right-hand ends of the top rails",
      findings: [
        {
          rule: "end.bare",
          key: "bare",
          level: "hold",
          parts: ["top-front/to", "top-back/to"],
          measured: sectionArea(2), // 1142.8 mm²
          limit: 20,
          unit: "mm2",
          within: 0.001,
        },
      ],
    },
  ],

  "tray-rack-faulty": [
    {
      slip: "a 1 inch profile typed for top-slat-2",
      because: "its four brackets do not fit, and the frame now needs two kinds of nut",
      findings: [
        ...["from/1", "from/2", "to/1", "to/2"].map(
          (connector): Planted => ({
            rule: "slot.mismatched",
            key: "size",
            level: "reject",
            parts: [`top-slat-2.${connector}`, "top-slat-2"],
          }),
        ),
        {
          rule: "stock.mixed",
          key: "slots",
          level: "note",
          parts: ["frame"],
          measured: 2,
          limit: 1,
          unit: "count",
        },
      ],
    },
    {
      slip: "post-6 a tenth of an inch short",
      findings: [
        {
          rule: "joint.gap",
          key: "gap",
          level: "hold",
          parts: ["post-6.to", "post-6/to", "top-back"],
          measured: 77.25 - 0.75 - 76.4,
          limit: 0.5 / 25.4,
          unit: "in",
        },
      ],
    },
    {
      slip: "stay-a held from below only",
      findings: [{ rule: "joint.turns", key: "turns", level: "hold", parts: ["stay-a", "stay-a.from", "stay-a.to"] }],
    },
    {
      slip: "half-inch screws in one bracket",
      because: "a bracket has a screw in either leg",
      // Less 0.2 in of leg and 0.17 in of lip; nine tenths of the nut's 0.22 in are wanted.
      findings: (["a1", "b1"] as const).map((hole) => ({
        rule: "screw.misfit",
        key: "short",
        level: "reject",
        parts: [`top-slat-4.to/1/${hole}`],
        measured: 0.5 - 0.2 - 0.17,
        limit: 0.9 * 0.22,
        unit: "in",
      })),
    },
    {
      slip: "cross-2 left out of the joints",
      because: "three copies carry it up the rack",
      findings: ["cross-2", "cross-2-up1", "cross-2-up2", "cross-2-up3"].map((bar) => ({
        rule: "bar.adrift",
        key: "alone",
        level: "reject",
        parts: [bar],
      })),
    },
    {
      slip: "stay-b left as sawn",
      because: "at both ends",
      findings: (["from", "to"] as const).map((end) => ({
        rule: "end.raw",
        key: "raw",
        level: "hold",
        parts: [`stay-b/${end}`],
      })),
    },
  ],
};
