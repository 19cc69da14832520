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
