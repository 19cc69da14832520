import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { bodies } from "../../src/facts/bodies.ts";
import { balanceOf, raisedShare, staysUpright } from "../../src/facts/build/poise.ts";
import { type Assembly, type BuildOrder, buildOrder } from "../../src/facts/build-order.ts";
import { factOf } from "../../src/facts/fact.ts";
import { panelBoxes } from "../../src/facts/panel-boxes.ts";
import { boundsOverlap } from "../../src/geometry/bounds.ts";
import { type Prism, prismBounds, prismFromBox, shifted } from "../../src/geometry/prism.ts";
import { prismPenetration } from "../../src/geometry/prism-penetration.ts";
import { add, scale, type Vec3 } from "../../src/geometry/vector.ts";
import type { Frame } from "../../src/model/frame.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { cradled, ladder, railUnderBeam } from "./build-frames.ts";
import { frameOf, known, one } from "./known.ts";

const whole = (order: BuildOrder): Assembly => one(order.assemblies.find((assembly) => assembly.id === ""));
const demo = (name: string): Frame =>
  frameOf(JSON.parse(readFileSync(`docs/demo/${name}.frame.json`, "utf8")) as FrameFile);

/** Bars and panels as solids. */
function solidsOf(frame: Frame): ReadonlyMap<string, Prism> {
  const bars = [...factOf(bodies, frame)].flatMap(([id, { prism }]) => (prism ? [[id, prism] as const] : []));
  const panels = [...factOf(panelBoxes, frame)].flatMap(([id, { box }]) =>
    box ? [[id, prismFromBox(box)] as const] : [],
  );
  return new Map([...bars, ...panels]);
}

const GRAZE = 0.0011;
const STEP = 0.02;
const FAR = 3;

describe.each(["potting-bench", "first-bench", "mixer-guard", "sack-cart", "tray-rack"])(
  "what goes into %s",
  (name) => {
    const frame = demo(name);
    const order = factOf(buildOrder, frame);
    const solids = solidsOf(frame);

    it("meets nothing that is there on its straight way in, nor the floor: walked through in small steps", () => {
      const there: string[] = [];
      let walked = 0;
      const met: string[] = [];
      for (const { parts, path, lying } of whole(order).items) {
        const [leg, ...others] = path?.legs ?? [];
        if (leg && others.length === 0 && path?.past.length === 0) {
          walked += 1;
          for (const part of parts) {
            const own = one(solids.get(part));
            const rest = there.map((id) => one(solids.get(id)));
            // What a panel sits in by its slot it runs along.
            const around = rest.filter((other) => prismPenetration(own, other).depth < GRAZE);
            for (let back = STEP; back < FAR; back += STEP) {
              const on = shifted(own, scale(leg, -back));
              const bounds = prismBounds(on);
              for (const other of around)
                if (boundsOverlap(bounds, prismBounds(other)) && prismPenetration(on, other).depth >= GRAZE)
                  met.push(`${part} ${back}`);
              if (!lying && bounds.min[2] < frame.floor.z - GRAZE) met.push(`${part} ${back} floor`);
            }
          }
        }
        there.push(...parts);
      }
      expect(met).toEqual([]);
      expect(walked).toBeGreaterThan(1);
    });
  },
);

describe("a way in that the floor or other bars shut", () => {
  it("is opened by laying the frame on a side, where panels go in from underneath, and it is stood up once", () => {
    const order = factOf(buildOrder, demo("mixer-guard"));
    const steps = order.steps.filter((step) => step.assembly === "");
    const [stand, ...more] = steps.filter(({ what }) => what === "stand");
    expect(more).toEqual([]);
    for (const { number, path, lying } of steps) {
      expect(lying, `step ${number}`).toBe(number < one(stand).number);
      if (!lying) expect(path?.legs[0]?.[2] ?? 0, `step ${number}`).toBeLessThan(0.5);
    }
    // The roof comes along -x: it lies on the side it does not come from.
    expect(one(order.lyingOn)[0]).toBe(-1);
  });

  it("leads round: a rail under a beam comes in from a side, below the floor's room no rail is pushed up straight", () => {
    const rail = one(whole(known(buildOrder, railUnderBeam())).items.find(({ part }) => part === "rail")).path;
    expect(one(rail).past).toEqual([]);
    expect(one(one(rail).legs[0])[2]).toBeCloseTo(0, 9);
    const bars = known(buildOrder, ladder({ low: { z: 100, on: "above" }, high: { z: 900, on: "below" } }));
    for (const { path } of whole(bars).items) for (const leg of path?.legs ?? []) expect(leg[2]).toBeLessThan(0.5);
  });
});

describe("a way in of two legs", () => {
  const frame = frameOf(cradled());
  const solids = solidsOf(frame);
  const { path, parts } = one(whole(factOf(buildOrder, frame)).items.find((item) => item.path));

  it("is found where no straight one is", () => {
    expect(parts).toEqual(["rail"]);
    expect(one(path).past).toEqual([]);
    const [first, last] = one(path).legs;
    // Level over or under a fence, then up or down between the posts.
    expect(Math.abs(one(first)[1])).toBeCloseTo(1, 9);
    expect(Math.abs(one(last)[2])).toBeCloseTo(1, 9);
  });

  it("meets nothing on either leg: walked back in small steps, turning off wherever it may", () => {
    const own = one(solids.get("rail"));
    const others = [...solids].filter(([id]) => id !== "rail").map(([, prism]) => prism);
    const [first, last] = one(path).legs;
    const around = others.filter((other) => prismPenetration(own, other).depth < GRAZE);
    const clear = (at: Vec3): boolean => {
      const on = shifted(own, at);
      const bounds = prismBounds(on);
      return (
        bounds.min[2] >= frame.floor.z - GRAZE &&
        around.every((other) => !boundsOverlap(bounds, prismBounds(other)) || prismPenetration(on, other).depth < GRAZE)
      );
    };
    /** How far it goes along a way from a place before it meets something. */
    const reaches = (from: Vec3, way: Vec3): number => {
      let far = 0;
      while (far < FAR && clear(add(from, scale(way, far + STEP)))) far += STEP;
      return far;
    };
    const upright = reaches([0, 0, 0], scale(one(last), -1));
    // To the beam: 300 mm from middle to middle less two halves of 40 mm.
    expect(upright).toBeCloseTo(0.26, 9);
    const out = Array.from({ length: Math.round(upright / STEP) }, (_, i) =>
      reaches(scale(one(last), -(i + 1) * STEP), scale(one(first), -1)),
    );
    expect(Math.max(...out)).toBeCloseTo(FAR, 9);
    // Straight level it comes to a fence: 200 mm less two halves of 40 mm.
    expect(reaches([0, 0, 0], scale(one(first), -1))).toBeCloseTo(0.16, 9);
  });
});

describe("how a piece stands and balances", () => {
  /** The corners of a box from the origin. */
  const box = (x: number, y: number, z: number): readonly Vec3[] =>
    [0, x].flatMap((a) => [0, y].flatMap((b) => [0, z].map((c): Vec3 => [a, b, c])));
  const down: Vec3 = [0, 0, -1];

  it("a block tips over the edge of its base at a slope of half its depth to the height of its middle", () => {
    // 10 degrees: tan = 0.1763. Depth 0.4, middle 0.5 high: 0.2/0.5 = 0.4. Depth 0.04: 0.04.
    expect(staysUpright(box(1, 0.4, 1), [0.5, 0.2, 0.5], down)).toBe(true);
    expect(staysUpright(box(1, 0.04, 1), [0.5, 0.02, 0.5], down)).toBe(false);
    // The same slab laid down, and one whose middle hangs out over its base.
    expect(staysUpright(box(1, 0.04, 1), [0.5, 0.02, 0.5], [0, -1, 0])).toBe(true);
    expect(staysUpright(box(1, 0.4, 1), [0.5, 0.39, 0.5], down)).toBe(false);
  });

  it("balances along its longest side, and at its top asks for moment over height", () => {
    expect(balanceOf(box(0.4, 1.2, 0.8), [0.2, 0.5, 0.4])).toEqual({ axis: 1, at: 0.5, length: 1.2 });
    // Moments about the feet: m g 0.6 = F 1.5.
    expect(raisedShare(box(1, 1, 1.5), [0.5, 0.5, 0.6])).toBeCloseTo(0.4, 12);
  });
});
