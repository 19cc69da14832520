import { describe, expect, it } from "vitest";
import { combinations } from "../../src/facts/combinations.ts";
import { factOf } from "../../src/facts/fact.ts";
import { planAxes } from "../../src/facts/plan-axes.ts";
import { sideBracing } from "../../src/facts/side-bracing.ts";
import { sways } from "../../src/facts/sway.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { portal } from "../rules/portal.ts";
import { frameFrom } from "../rules/table.ts";

/** The portal drawn askew in the plan, turned about the origin by so many degrees. */
function turned(degrees: number): FrameFile {
  const file = portal("gusset-bracket-40", true);
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  for (const bar of file.bars) {
    if (bar.id.startsWith("leg")) bar.roll = degrees;
    for (const end of ["from", "to"] as const) {
      const [x = 0, y = 0, z = 0] = bar[end] as number[];
      bar[end] = [c * x - s * y, s * x + c * y, z];
    }
  }
  return file;
}

const swaysOf = (file: FrameFile): readonly (readonly [number, number])[] =>
  factOf(sways, frameFrom(file)).map(({ axis, amount }) => [axis, amount] as const);

describe("the axes of a frame in plan", () => {
  it.each([0, 0.5, -0.5])("are those of the drawing where it is drawn along them, within a degree: %d°", (degrees) => {
    const { directions, words } = factOf(planAxes, frameFrom(turned(degrees)));
    expect(directions).toEqual([
      [1, 0, 0],
      [0, 1, 0],
    ]);
    expect([words(0, 1), words(0, -1), words(1, 1), words(1, -1)]).toEqual(["+x", "-x", "+y", "-y"]);
  });

  it.each([30, 44, -37, 12])("are turned with the frame: %d°", (degrees) => {
    const frame = frameFrom(turned(degrees));
    const { directions, words } = factOf(planAxes, frame);
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const close = (...v: number[]) => v.map((part) => expect.closeTo(part, 9));
    expect(directions).toEqual([close(c, s, 0), close(-s, c, 0)]);
    expect(words(1, -1)).toBe(`-y turned by ${degrees}°`);
    const names = factOf(combinations, frame)
      .all.filter(({ kind }) => kind === "sway")
      .map(({ name }) => name);
    expect(names.some((name) => name.endsWith(`along +x turned by ${degrees}°`))).toBe(true);
  });

  it("are x and y where no bar lies", () => {
    const file = { ...portal(), bars: portal().bars.slice(0, 1), joints: [], loads: [] } as unknown as FrameFile;
    expect(factOf(planAxes, frameFrom(file)).words(0, 1)).toBe("+x");
  });

  it.each([30, -37])(
    "make the frame give as much under a push as it does drawn straight, and brace it alike: %d°",
    (degrees) => {
      const [straight, askew] = [swaysOf(turned(0)), swaysOf(turned(degrees))];
      expect(askew).toEqual(straight.map(([axis, amount]) => [axis, expect.closeTo(amount, 9)]));
      const [a, b] = [turned(0), turned(degrees)].map((file) => factOf(sideBracing, frameFrom(file)));
      expect(b).toEqual(a);
    },
  );
});
