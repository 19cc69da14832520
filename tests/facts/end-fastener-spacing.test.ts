import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Obstacle } from "../../src/facts/obstacles.ts";
import type { Socket } from "../../src/facts/sockets.ts";
import { bestTrial, serves } from "../../src/facts/tool-trial.ts";
import { type Way, waysFor } from "../../src/facts/tool-ways.ts";
import { boxBounds, type OrientedBox } from "../../src/geometry/box.ts";
import { prismFromBox } from "../../src/geometry/prism.ts";
import type { Vec3 } from "../../src/geometry/vector.ts";
import { ref } from "../../src/model/ref.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";

/*
 * The table of docs/method/access.md, each cell tried with the tools themselves: just more room than the table says must do, just less
 * must not. Arms after ISO 2936 and ASME B18.3, heads after ISO 4762: the references of stock hold those.
 */
const stock = builtinStock();
const wall = ref("bar", "wall");

function block(centre: Vec3, half: Vec3): Obstacle {
  const box: OrientedBox = {
    centre,
    axes: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
    half,
  };
  return { of: wall, part: wall, prism: prismFromBox(box), bounds: boxBounds(box) };
}

interface Row {
  readonly name: string;
  /** mm */
  readonly cells: readonly number[];
}

const rows: readonly Row[] = readFileSync("docs/method/access.md", "utf8")
  .split("\n")
  .filter((line) => line.startsWith("| end-fastener-"))
  .map((line) => {
    const [name = "", ...cells] = line
      .split("|")
      .slice(1, -1)
      .map((cell) => cell.trim());
    return { name, cells: cells.map(Number) };
  });

function setting(name: string): {
  readonly socket: Socket;
  readonly ways: readonly Way[];
  readonly key: number;
  readonly from: number;
} {
  const part = stock.connectors.get(name);
  if (part?.kind !== "end-fastener") throw new Error(`${name} is no end fastener`);
  const screw = stock.screws.get(part.screw);
  if (!screw) throw new Error(`no screw ${part.screw}`);
  // A key straight down at the origin; of the placed screw only its size is looked at.
  const socket = {
    screw: { screw },
    mouth: [0, 0, 0],
    out: [0, 0, 1],
    zero: [1, 0, 0],
    depth: part.depth,
    bite: screw.socketDepth,
    hole: part.keyHole,
    outside: false,
  } as unknown as Socket;
  return { socket, ways: waysFor(stock.tools, socket, 0), key: screw.key, from: part.keyFrom };
}

const does = (socket: Socket, ways: readonly Way[], near: readonly Obstacle[]): boolean => {
  const trial = bestTrial(socket, ways, near);
  return trial !== undefined && serves(trial);
};
const facing = (height: number): readonly Obstacle[] => [block([0, 0, height + 0.5], [1, 1, 0.5])];
const channel = (width: number): readonly Obstacle[] =>
  [-1, 1].map((side) => block([0, side * (width / 2 + 0.5), 0.5], [9, 0.5, 0.4999]));

describe("room that end fasteners ask for", () => {
  it("has a row for every end fastener in stock", () => {
    const names = [...stock.connectors.values()]
      .filter((part) => part.kind === "end-fastener")
      .map((part) => part.name);
    expect(rows.map((row) => row.name).sort()).toEqual(names.sort());
  });

  it.each(rows)("$name", ({ name, cells }) => {
    const [keySize = 0, fromEnd = 0, free = 0, , walls = 0, anyWalls = 0] = cells;
    const { socket, ways, key, from } = setting(name);
    expect(Math.abs(key * 1000 - keySize)).toBeLessThan(0.1);
    expect(Math.abs(from * 1000 - fromEnd)).toBeLessThan(0.1);
    expect(does(socket, ways, facing((free + 0.05) / 1000))).toBe(true);
    expect(does(socket, ways, facing((free - 0.15) / 1000))).toBe(false);
    const keys = ways.filter((way) => way.tool.kind === "hex-key");
    for (const [tools, width] of [
      [keys, walls],
      [ways, anyWalls],
    ] as const) {
      expect(does(socket, tools, channel((width + 0.05) / 1000))).toBe(true);
      expect(does(socket, tools, channel((width - 0.15) / 1000))).toBe(false);
    }
  });

  it.each(rows)("$name, beside a head", ({ name, cells }) => {
    const { socket, ways } = setting(name);
    const { screw } = socket.screw;
    const beside = (mm: number): Obstacle => {
      const at = mm / 1000;
      const half = screw.headDiameter / 2;
      return {
        ...block([at, 0, screw.headHeight / 2], [half, half, screw.headHeight / 2]),
        round: { from: [at, 0, 0], to: [at, 0, screw.headHeight], radius: half },
      };
    };
    const CLEARANCE = 0.5;
    const touching = (cells[3] ?? 0) - CLEARANCE;
    expect(does(socket, ways, [beside(touching + 0.05)])).toBe(true);
    expect(does(socket, ways, [beside(touching - 0.15)])).toBe(false);
  });
});
