import type { Frame } from "../../src/model/frame.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { readFrame } from "../../src/model/read-frame.ts";
import { readStockFile } from "../../src/model/read-stock.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { addStock } from "../../src/model/stock/resolve-stock.ts";

/** A table of four legs, mm: feet at x = ±width/2, y = ±depth/2, top rails at the height of their centrelines. */
export function table(width = 1000, depth = 600, height = 800): FrameFile {
  const [x, y] = [width / 2, depth / 2];
  const leg = (id: string, at: readonly [number, number]) => ({
    id,
    profile: "40x40-8",
    from: [at[0], at[1], 50],
    to: [at[0], at[1], height],
  });
  const file = {
    format: 1,
    title: "table",
    units: "mm-N-kg",
    bars: [
      leg("leg-1", [-x, -y]),
      leg("leg-2", [x, -y]),
      leg("leg-3", [x, y]),
      leg("leg-4", [-x, y]),
      { id: "front", profile: "40x40-8", from: [-x - 100, -y, height], to: [x + 100, -y, height] },
      { id: "back", profile: "40x40-8", from: [-x - 100, y, height], to: [x + 100, y, height] },
      { id: "side-1", profile: "40x40-8", from: [-x + 120, -y, height], to: [-x + 120, y, height] },
      { id: "side-2", profile: "40x40-8", from: [x - 120, -y, height], to: [x - 120, y, height] },
      { id: "low-1", profile: "40x40-8", from: [-x, -y, 200], to: [-x, y, 200] },
      { id: "low-2", profile: "40x40-8", from: [x, -y, 200], to: [x, y, 200] },
      { id: "low-3", profile: "40x40-8", from: [-x, 0, 200], to: [x, 0, 200] },
    ],
    joints: [
      { bars: ["leg-1", "leg-2", "leg-3", "leg-4"], ends: "to", by: "sides" },
      { bars: ["side-1", "side-2"], by: "sides" },
      { bars: ["low-1", "low-2"], by: "level" },
      { bars: ["low-3"], by: "across" },
    ],
    kits: {
      sides: [
        { connector: "inside-bracket-40", on: "+x" },
        { connector: "inside-bracket-40", on: "-x" },
      ],
      across: [
        { connector: "inside-bracket-40", on: "+y" },
        { connector: "inside-bracket-40", on: "-y" },
      ],
      level: [
        { connector: "inside-bracket-40", on: "above" },
        { connector: "inside-bracket-40", on: "below" },
      ],
    },
    panels: [
      {
        id: "top",
        sheet: "plywood-18",
        held: "laid",
        bars: ["front", "back", "side-1", "side-2"],
        overhang: [0, 0, 0, 0],
      },
    ],
    stands: [{ part: "foot-40-M8", bars: ["leg-1", "leg-2", "leg-3", "leg-4"] }],
  };
  return file as unknown as FrameFile;
}

/** Reads a frame as the command would, with stock files beside the built-in stock; throws with the problems when it cannot. */
export function frameFrom(file: FrameFile, ...stockFiles: readonly unknown[]): Frame {
  const bytes = (value: unknown): Uint8Array => new TextEncoder().encode(JSON.stringify(value));
  const { stock, complaints } = addStock(
    stockFiles.map((value, i) => {
      const { source, problems } = readStockFile(`${i}.stock.json`, bytes(value));
      if (!source) throw new Error(JSON.stringify(problems));
      return source.value;
    }),
    builtinStock(),
  );
  if (complaints.flat().length > 0) throw new Error(JSON.stringify(complaints));
  const { frame, problems } = readFrame({ file: "table.frame.json", bytes: bytes(file), stock });
  if (!frame) throw new Error(JSON.stringify(problems, undefined, 1));
  return frame;
}
