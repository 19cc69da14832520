import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";

type Bar = FrameFile["bars"][number];

const bar = (id: string, from: readonly [number, number, number], to: readonly [number, number, number]): Bar => ({
  id,
  profile: "40x40-8",
  from: [...from],
  to: [...to],
});

/** Two posts 600 mm apart with rails between them at these heights, each held by an end fastener on the face named. */
export function ladder(
  rails: Readonly<Record<string, { readonly z: number; readonly on: "above" | "below" | "+y" }>>,
): FrameFile {
  const names = Object.keys(rails);
  return {
    format: 1,
    title: "rails between two posts",
    units: "mm-N-kg",
    kits: {
      above: [{ connector: "end-fastener-8", on: "above" }],
      below: [{ connector: "end-fastener-8", on: "below" }],
      "+y": [{ connector: "end-fastener-8", on: "+y" }],
    },
    bars: [
      bar("post-1", [0, 0, 0], [0, 0, 1000]),
      bar("post-2", [600, 0, 0], [600, 0, 1000]),
      ...names.map((name) => bar(name, [0, 0, rails[name]?.z ?? 0], [600, 0, rails[name]?.z ?? 0])),
    ],
    joints: names.map((name) => ({ bars: [name], ends: "both" as const, by: rails[name]?.on ?? "above" })),
  };
}

/** The ladder of two rails, with a sheet in the slots of all four bars. */
export function glazed(): FrameFile {
  return {
    ...ladder({ low: { z: 100, on: "below" }, high: { z: 900, on: "above" } }),
    title: "a panel between two posts and two rails",
    panels: [
      {
        id: "pane",
        sheet: "polycarbonate-5",
        held: "in-slot",
        edges: [{ bar: "post-1" }, { bar: "high" }, { bar: "post-2" }, { bar: "low" }],
      },
    ],
  };
}

/** Four posts so high, 600 x 400 mm apart, with rails between them 100 mm from bottom and top, each held by end fasteners above. */
export function standingBox(height: number): FrameFile {
  const corners = { "post-1": [0, 0], "post-2": [600, 0], "post-3": [600, 400], "post-4": [0, 400] } as const;
  const sides = {
    front: ["post-1", "post-2"],
    back: ["post-4", "post-3"],
    left: ["post-1", "post-4"],
    right: ["post-2", "post-3"],
  } as const;
  const rails = Object.entries(sides).flatMap(([side, [a, b]]) =>
    (
      [
        ["low", 100],
        ["high", height - 100],
      ] as const
    ).map(([level, z]) => bar(`${side}-${level}`, [...corners[a], z], [...corners[b], z])),
  );
  const [first, ...others] = rails.map((rail) => rail.id);
  return {
    format: 1,
    title: "four posts and eight rails",
    units: "mm-N-kg",
    kits: {
      above: [{ connector: "end-fastener-8", on: "above" }],
      side: [{ connector: "end-fastener-8", on: "-x" }],
    },
    bars: [
      bar("post-1", [...corners["post-1"], 0], [...corners["post-1"], height]),
      ...["post-2", "post-3", "post-4"].map((id) => {
        const [x, y] = corners[id as keyof typeof corners];
        return bar(id, [x, y, 0], [x, y, height]);
      }),
      ...rails,
    ],
    joints: [{ bars: [first ?? "", ...others], ends: "both", by: "above" }],
  };
}

/** A beam on two posts, held by a gusset on either side of each, and a rail between the posts with 25 mm of room under the beam. */
export function railUnderBeam(): FrameFile {
  return {
    format: 1,
    title: "a rail close under a beam on two posts",
    units: "mm-N-kg",
    kits: {
      sides: [
        { connector: "gusset-bracket-40", on: "+x" },
        { connector: "gusset-bracket-40", on: "-x" },
      ],
      below: [{ connector: "gusset-bracket-40", on: "below" }],
    },
    bars: [
      bar("beam", [-100, 0, 800], [700, 0, 800]),
      bar("post-1", [0, 0, 0], [0, 0, 800]),
      bar("post-2", [600, 0, 0], [600, 0, 800]),
      bar("rail", [0, 0, 735], [600, 0, 735]),
    ],
    joints: [
      { bars: ["post-1", "post-2"], ends: "to", by: "sides" },
      { bars: ["rail"], ends: "both", by: "below" },
    ],
  };
}

/**
 * A rail between two posts, with beams over and under it and a fence before and behind: out of the cradle of these it
 * comes up or down first, and then out over or under a fence.
 */
export function cradled(): FrameFile {
  const arms = (["front", "back"] as const).flatMap((side) =>
    ([0, 600] as const).map((x, i) =>
      bar(`${side}-arm-${i + 1}`, [x, 0, 400], [x, side === "front" ? -200 : 200, 400]),
    ),
  );
  const cradle = [
    bar("post-1", [0, 0, 0], [0, 0, 800]),
    bar("post-2", [600, 0, 0], [600, 0, 800]),
    bar("over", [0, 0, 700], [600, 0, 700]),
    bar("under", [0, 0, 100], [600, 0, 100]),
    ...arms,
    bar("front-fence", [-100, -200, 400], [700, -200, 400]),
    bar("back-fence", [-100, 200, 400], [700, 200, 400]),
  ];
  const [first, ...others] = cradle.map(({ id }) => id);
  return {
    format: 1,
    title: "a rail in a cradle",
    units: "mm-N-kg",
    kits: { above: [{ connector: "end-fastener-8", on: "above" }] },
    bars: [bar("rail", [0, 0, 400], [600, 0, 400]), ...cradle],
    joints: [{ bars: ["rail", "over", "under", ...arms.map(({ id }) => id)], ends: "both", by: "above" }],
    groups: [{ id: "cradle", parts: [first ?? "", ...others] }],
  };
}
