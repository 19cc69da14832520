import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";

/** Height of the axis of the top rails, and distance of the leg axes along x, m. */
export const PORTAL = { height: 0.84, span: 1.46 };

/**
 * Two portals of 40 x 40 legs on the bare floor with 40 x 80 rails between them, 710 mm apart, one bracket a joint; with
 * shelf rails of 40 x 40 at 200 mm where wanted. Each rail carries 0.5 N/mm, so that a push does not lift the legs.
 */
export function portal(connector = "inside-bracket-40", shelf = false): FrameFile {
  const bars: object[] = [];
  const corners = [
    ["leg-1", 20, 20],
    ["leg-2", 1480, 20],
    ["leg-3", 1480, 730],
    ["leg-4", 20, 730],
  ] as const;
  for (const [id, x, y] of corners)
    bars.push({ id, profile: "40x40-8", from: [x, y, 0], to: [x, y, 860], ends: { to: { cut: "as-drawn" } } });
  const ring = (name: string, z: number, profile: string): string[] =>
    corners.map(([, x, y], i) => {
      const [, u, v] = corners[(i + 1) % 4] ?? corners[0];
      const id = `${name}-${i + 1}`;
      const tall = profile === "40x80-8" ? { tall: "+z" } : {};
      bars.push({ id, profile, from: [x, y, z], to: [u, v, z], ...tall });
      return id;
    });
  const top = ring("top", 840, "40x80-8");
  const joints = [{ bars: top, by: [{ connector, on: "below" }] }];
  if (shelf) joints.push({ bars: ring("shelf", 200, "40x40-8"), by: [{ connector, on: "above" }] });
  return {
    format: 1,
    title: "two portals",
    units: "mm-N-kg",
    bars,
    joints,
    loads: [{ case: "goods", on: ["top-1", "top-3"], line: 0.5 }],
  } as unknown as FrameFile;
}

/** A bracket of this tested stiffness, N·m/rad, as a team would describe it. */
export function testedBracket(name: string, stiffness: number): object {
  const leg = (hole: string): object => ({ length: 40, thickness: 5, holes: [{ id: hole, at: [22, 0], diameter: 9 }] });
  return {
    format: 1,
    title: "brackets with a test",
    units: "mm-N-kg",
    connectors: [
      {
        kind: "bracket",
        name,
        slotSize: "8",
        mass: 0.05,
        width: 36,
        legs: { a: leg("a1"), b: leg("b1") },
        screw: "M8x16",
        tested: { rotationalStiffness: stiffness, reference: "as the test wants it" },
      },
    ],
  };
}
