import { sectionOf } from "../../src/facts/sections.ts";
import type { StockBytes } from "../../src/inspection/stock-in-force.ts";
import type { Bar, FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { BUILTIN_FILES, builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { barOf } from "./base-frames.ts";

/*
 * Two beams on four posts, joined by two cross bars straight over the posts. The feet slide under vertical loads, so posts carry
 * no moment and the beams are simply supported whatever the joints are worth, as long as both are loaded alike.
 */

export interface Gantry {
  readonly frame: FrameFile;
  /** Between the posts along x and y, and the height of the beams' axes, m. */
  readonly span: number;
  readonly depth: number;
  readonly height: number;
}

/** Sizes in mm. `past` is how far the beams run beyond the posts at x = span. */
export function gantry(
  span = 1000,
  { depth = 500, height = 600, past = 20, profile = "40x40-8", pitch = 40, foot = "foot-40-M8" } = {},
): FrameFile {
  const leg = (id: string, x: number, y: number): Bar => ({
    id,
    profile: `${pitch}x${pitch}-${pitch === 40 ? 8 : 5}`,
    from: [x, y, 50],
    to: [x, y, height],
  });
  const beam = (id: string, y: number): Bar => ({
    id,
    profile,
    from: [-pitch / 2, y, height],
    to: [span + past, y, height],
    ends: { both: { cut: "as-drawn" } },
  });
  const cross = (id: string, x: number): Bar => ({
    id,
    profile: `${pitch}x${pitch}-${pitch === 40 ? 8 : 5}`,
    from: [x, 0, height],
    to: [x, depth, height],
  });
  const bracket = (on: "+x" | "-x") => ({ connector: `inside-bracket-${pitch}`, on });
  return {
    format: 1,
    title: "gantry",
    units: "mm-N-kg",
    bars: [
      leg("leg-1", 0, 0),
      leg("leg-2", span, 0),
      leg("leg-3", span, depth),
      leg("leg-4", 0, depth),
      beam("front", 0),
      beam("back", depth),
      cross("cross-1", 0),
      cross("cross-2", span),
    ],
    kits: { post: [bracket("+x"), bracket("-x")], cross: [bracket("+x"), bracket("-x")] },
    joints: [
      { bars: ["leg-1", "leg-2", "leg-3", "leg-4"], ends: "to", by: "post" },
      { bars: ["cross-1", "cross-2"], by: "cross" },
    ],
    stands: [{ part: foot, bars: ["leg-1", "leg-2", "leg-3", "leg-4"] }],
  };
}

/** Both beams loaded alike. */
export function load(file: FrameFile, load: Readonly<Record<string, unknown>>): void {
  file.loads = [{ case: "goods", on: ["front", "back"], ...load }] as NonNullable<FrameFile["loads"]>;
}

/** Section and material of a built-in profile in SI, and the weight of a metre of it, N/m. */
export function barData(profile: string) {
  const found = builtinStock().profiles.get(profile);
  const material = found && builtinStock().materials.get(found.material);
  if (!found || !material) throw new Error(`no profile ${profile}`);
  const section = sectionOf(found);
  return {
    profile: found,
    section,
    E: material.elasticModulus as number,
    G: material.shearModulus as number,
    fo: material.proof as number,
    weight: section.A * material.density * 9.80665,
  };
}

/** The built-in brackets of a pitch as if a test had found this stiffness, N·m/rad. */
export function testedBrackets(pitch: number, stiffness: number): StockBytes {
  const connectors = (BUILTIN_FILES.get("connectors-metric")?.connectors ?? []).filter(
    (connector) => connector.name === `inside-bracket-${pitch}`,
  );
  const tested = { rotationalStiffness: stiffness, reference: "made up for a test" };
  const file = {
    format: 1,
    units: "mm-N-kg",
    title: "tested",
    connectors: connectors.map((connector) => ({ ...connector, tested })),
  };
  return { file: "tested.stock.json", bytes: new TextEncoder().encode(JSON.stringify(file)) };
}

export { barOf };
