import { describe, expect, it } from "vitest";
import { GRAVITY } from "../../src/facts/acting.ts";
import { bodies } from "../../src/facts/bodies.ts";
import { factOf } from "../../src/facts/fact.ts";
import { gathered, masses } from "../../src/facts/mass.ts";
import { pushRatio, type Stability, type Tipping, tipping } from "../../src/facts/tipping.ts";
import { howItStands } from "../../src/facts/tipping-words.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/frame.tips.ts";
import { referenceCheck } from "../references/load-reference.ts";
import { frameFrom, table } from "./table.ts";

const DEGREE = Math.PI / 180;

/** The table with a block so heavy that its own weight does not count: 1e6 kg at this height over a point of the plan, mm. */
function weighted(x: number, y: number, z: number, depth = 600): FrameFile {
  const file = table(1000, depth, 800);
  file.masses = [{ id: "block", mass: 1e6, centre: [x, y, z], on: ["top"], fixed: true }];
  return file;
}

function ton(file: FrameFile): void {
  for (const block of file.masses ?? []) Object.assign(block, { mass: 1000 });
}

function standing(file: FrameFile): Stability & { kind: "stands" } {
  const found = factOf(tipping, frameFrom(file));
  if (found.kind !== "stands") throw new Error(found.why);
  return found;
}

describe("tipping", () => {
  it("safety.tip.angle: tips at atan(b/h) (statics)", () => {
    const { expected } = referenceCheck("safety", "safety.tip.angle");
    const { inside, height } = standing(weighted(0, 0, 900)).tilted();
    expect(Math.atan2(inside, height) / DEGREE).toBeCloseTo(Number(expected.value), 2);
  });

  it("safety.tip.push: a push of W b/y tips it (statics)", () => {
    const check = referenceCheck("safety", "safety.tip.push");
    const state = standing(weighted(0, 0, 900)).pushed({ force: Infinity, share: 0.13, height: 1.5 });
    // 60 kg instead of the block's million; 13 % of it, 76.5 N, is 0.65 of the push that tips.
    const push = (60 * GRAVITY * state.inside) / 1.5;
    expect(push).toBeCloseTo(Number(check.expected.value), 1);
    const ratio = pushRatio({ ...state, mass: 60 }, { force: 250, share: 0.13, height: 1.5 });
    expect(1 / ratio).toBeCloseTo(1.54, 2);
  });

  it("safety.tip.swivel: swivel casters count with their wheels turned inward (geometry)", () => {
    const check = referenceCheck("safety", "safety.tip.swivel");
    const file = weighted(0, 0, 900);
    // Trail 0.35 of the wheel: 26.25 mm at 75 mm; the reference takes 30 mm off 300.
    file.stands = [{ part: "caster-75-plate", bars: ["leg-1", "leg-2", "leg-3", "leg-4"] }];
    const trail = 0.35 * 0.075;
    const reference = Number(check.expected.value) / 1000 + 0.03 - trail;
    expect(standing(file).tilted().inside).toBeCloseTo(reference, 4);
  });

  it("is pushed at the top of its panel, or of a box bolted to it, not of one that only stands there", () => {
    const file = weighted(0, 0, 900);
    // Sheet of 18 mm on rails whose tops are the highest bars.
    const bars = Math.max(...[...factOf(bodies, frameFrom(file)).values()].map((body) => body.bounds.max[2]));
    expect(standing(file).top).toBeCloseTo(bars + 0.018, 9);
    const boxed = (fixed: boolean): number => {
      for (const block of file.masses ?? [])
        Object.assign(block, { box: [200, 200, 1200], centre: [0, 0, 1418], fixed });
      return standing(file).top;
    };
    expect(boxed(true)).toBeCloseTo(1.418 + 0.6, 9);
    expect(boxed(false)).toBeCloseTo(bars + 0.018, 9);
  });

  it("weighs a table as its bars, sheet and fittings add up by hand", () => {
    const frame = frameFrom(table());
    const { mass, centre } = gathered(factOf(masses, frame).own);
    // Bars: 4 legs of 730, 2 rails of 1200, 4 across of 560, 1 of 960 mm, each 2700 kg/m³ of section; top 1200 x 640 x 18.
    const section = frame.bars[0]?.profile.region;
    if (!section) throw new Error("no bars");
    const bars = factOf(masses, frame).own.filter((weight) => weight.ref.kind === "bar");
    const perMetre = gathered(bars).mass / (4 * 0.73 + 2 * 1.2 + 4 * 0.56 + 0.96);
    expect(perMetre).toBeGreaterThan(1.3);
    expect(perMetre).toBeLessThan(2.2);
    const top = frame.panels[0]?.sheet.density ?? 0;
    const sheet = top * 1.2 * 0.64 * 0.018;
    const fittings = 28 * 0.0365 + 4 * 0.09;
    expect(mass).toBeCloseTo(gathered(bars).mass + sheet + fittings, 6);
    expect(centre[0]).toBeCloseTo(0, 9);
    expect(centre[1]).toBeCloseTo(0, 9);
  });

  it("is worst with the loads that help tipping and without those that hinder it", () => {
    const file = weighted(0, 0, 900);
    file.masses = [{ id: "ballast", mass: 1000, centre: [0, 0, 100], on: ["low-3"], fixed: false }];
    (file.masses as object[]).push({ id: "tank", mass: 1000, centre: [0, 0, 1200], on: ["top"], fixed: false });
    const state = standing(file).tilted();
    expect(state.laden).toEqual(["tank"]);
  });

  it("is laden with what may act together, of loads that exclude each other with those that tip it more (statics)", () => {
    const file = weighted(0, 0, 400);
    ton(file);
    // On the front rail, over the line that they tip it over and higher than all else.
    const force = { day: 1000, night: 1500, noon: 700 };
    file.loads = Object.entries(force).map(([id, n]) => ({ case: id, on: "front", force: n }));
    const tipped = (cases: FrameFile["cases"]): Tipping => standing({ ...file, cases: cases ?? [] }).tilted();
    const all = tipped([]);
    expect(all.laden).toEqual(["day", "night", "noon"]);
    const one = tipped([
      { id: "day", excludes: ["night"] },
      { id: "noon", excludes: ["day", "night"] },
    ]);
    expect(one.laden).toEqual(["night"]);
    const two = tipped([{ id: "night", excludes: ["day", "noon"] }]);
    expect(two.laden).toEqual(["day", "noon"]);
    // Less of the loads' own weight on the line itself: the moment about it stays.
    for (const [state, newtons] of [
      [one, 1500],
      [two, 1700],
    ] as const) {
      expect(all.mass - state.mass).toBeCloseTo((3200 - newtons) / GRAVITY, 6);
      expect(state.inside * state.mass).toBeCloseTo(all.inside * all.mass, 6);
      expect(all.height * all.mass - state.height * state.mass).toBeCloseTo(((3200 - newtons) / GRAVITY) * 0.8, 6);
    }
  });

  it("pulls drawers out, of those that an interlock holds the worst one (statics)", () => {
    // A body of 1000 t and drawers of 200 t, pulled 500 mm over the front feet at y = −300: 300 mm inside, then 200 mm outside.
    const cabinet = (...drawers: { out: number; interlock?: boolean; fixed?: boolean }[]): FrameFile => {
      const file = weighted(0, 0, 700);
      for (const [i, { out, fixed = true, ...more }] of drawers.entries())
        file.masses?.push({
          id: `drawer-${i + 1}`,
          mass: 2e5,
          centre: [0, 0, 700],
          on: ["low-3"],
          fixed,
          slides: { by: [0, -out, 0], ...more },
        });
      return file;
    };
    const inside = (tons: number, moment: number): number => moment / tons;
    const one = standing(cabinet({ out: 500 })).tilted();
    expect(one.out).toEqual(["drawer-1"]);
    expect(one.inside).toBeCloseTo(inside(1200, 1000 * 0.3 - 200 * 0.2), 4);
    expect(one.height).toBeCloseTo(0.7, 4);

    const held = standing(cabinet({ out: 400 }, { out: 500 })).tilted();
    expect(held.out).toEqual(["drawer-2"]);
    expect(held.inside).toBeCloseTo(inside(1400, 1000 * 0.3 + 200 * 0.3 - 200 * 0.2), 4);

    const free = { out: 500, interlock: false };
    const both = standing(cabinet(free, free)).tilted();
    expect(both.out).toEqual(["drawer-1", "drawer-2"]);
    expect(both.inside).toBeCloseTo(inside(1400, 1000 * 0.3 - 400 * 0.2), 4);

    // Goods that may be away are there only where they are pulled out.
    const goods = standing(cabinet({ out: 500, fixed: false })).tilted();
    expect([goods.laden, goods.out]).toEqual([["drawer-1"], ["drawer-1"]]);
    expect(goods.inside).toBeCloseTo(inside(1200, 1000 * 0.3 - 200 * 0.2), 4);
    const back = standing(cabinet({ out: 100, fixed: false })).tilted();
    expect(back.inside).toBeCloseTo(inside(1200, 1000 * 0.3 + 200 * 0.2), 4);
  });

  it("swings doors to where they weigh most", () => {
    const file = table(1000, 600, 800);
    file.bars = [
      ...file.bars,
      { id: "leaf", profile: "40x40-8", from: [-420, -360, 760], to: [420, -360, 760] },
    ] as unknown as FrameFile["bars"];
    file.doors = [
      {
        id: "door",
        bars: ["leaf"],
        axis: "-z",
        swing: [0, 90],
        hinges: [{ part: "hinge-40", bars: ["leaf", "front"], at: [-440, -340, 800] }],
      },
    ] as unknown as FrameFile["doors"] & object;
    const state = standing(file).tilted();
    expect(state.open).toEqual(["door"]);
    // Open it stands square off the front: its middle 440 mm before the hinge, and 20 mm from the hinge's line.
    const { own } = factOf(masses, frameFrom(file));
    const leaf = own.find((weight) => weight.ref.id === "leaf");
    const rest = gathered(own.filter((weight) => weight.ref.id !== "leaf"));
    if (!leaf) throw new Error("no leaf");
    const y = (rest.mass * rest.centre[1] + leaf.mass * -(0.34 + 0.44)) / (rest.mass + leaf.mass);
    expect(state.inside).toBeCloseTo(0.3 + y, 3);
  });

  it("swings goods on a door with it, of goods on two doors each with its own (statics)", () => {
    const file = weighted(0, 0, 400);
    ton(file);
    // Leaves along the front, their hinge lines at y = −340 and x = ±480; 60 kg in the middle of each, 20 mm before the hinge line.
    for (const [id, side] of [
      ["left", -1],
      ["right", 1],
    ] as const) {
      const bar = `${id}-leaf`;
      file.bars.push({
        id: bar,
        profile: "40x40-8",
        from: [side * 460, -360, 760],
        to: [side * 60, -360, 760],
      } as never);
      const hinges = [{ part: "hinge-40", bars: [bar, "front"], at: [side * 480, -340, 800] }];
      const door = { id, bars: [bar], axis: side < 0 ? "-z" : "+z", swing: [0, 90], hinges };
      file.doors = [...(file.doors ?? []), door] as unknown as NonNullable<FrameFile["doors"]>;
    }
    const empty = standing(file).tilted();
    expect(empty.open).toEqual(["left", "right"]);
    const moment = ({ mass, inside }: Tipping): number => mass * inside;
    // Turned by θ its middle, 220 mm from the hinge line along x, is 220 sin θ + 20 cos θ before it; the hinge line is 40 mm past the feet.
    const turns = Array.from({ length: 13 }, (_, i) => (i * Math.PI) / 24);
    const arm = 0.04 + Math.max(...turns.map((turn) => 0.22 * Math.sin(turn) + 0.02 * Math.cos(turn)));
    const goods = { id: "tools", mass: 60, centre: [-260, -360, 760], on: ["left-leaf"], fixed: false };
    const laden = standing({ ...file, masses: [...(file.masses ?? []), goods] } as FrameFile).tilted();
    expect(laden.laden).toEqual(["tools"]);
    expect(laden.open).toEqual(["left", "right"]);
    expect(moment(laden)).toBeCloseTo(moment(empty) - 60 * arm, 3);
    // A load case on both, and one that excludes it on the left door alone.
    file.loads = [
      { case: "both", on: ["left-leaf", "right-leaf"], force: 60 * GRAVITY },
      { case: "one", on: "left-leaf", force: 90 * GRAVITY },
    ] as NonNullable<FrameFile["loads"]>;
    file.cases = [{ id: "both", excludes: ["one"] }];
    const loaded = standing(file).tilted();
    expect(loaded.laden).toEqual(["both"]);
    expect(moment(loaded)).toBeCloseTo(moment(empty) - 120 * arm, 3);
  });

  it("takes a force on a thing where it is, not where the bar beneath it is (statics)", () => {
    const file = weighted(0, 0, 400);
    ton(file);
    file.masses?.push({ id: "vice", mass: 1, centre: [0, -500, 850], on: ["front"], fixed: true });
    const before = standing(file).tilted();
    file.loads = [{ case: "press", on: "vice", force: 50 * GRAVITY }];
    const after = standing(file).tilted();
    // 200 mm past the line of the feet.
    expect(after.laden).toEqual(["press"]);
    expect(after.mass * after.inside).toBeCloseTo(before.mass * before.inside - 50 * 0.2, 3);
  });

  it("says how it stands: what always acts as a load, what is pulled out once, each door by its name", () => {
    const bare = { permanent: [], equipped: false, laden: [], out: [], open: [] };
    expect(howItStands(bare)).toBe("empty");
    expect(howItStands({ ...bare, equipped: true })).toBe("with nothing on it but what is bolted down");
    expect(howItStands({ ...bare, permanent: ["books"], equipped: true })).toBe("laden with books");
    expect(howItStands({ ...bare, laden: ["dr1", "dr2"], out: ["dr1", "dr2"] })).toBe("dr1 and dr2 pulled out");
    expect(howItStands({ ...bare, laden: ["jars", "dr1"], out: ["dr1"], open: ["left", "right"] })).toBe(
      "laden with jars, dr1 pulled out, left and right open",
    );
    expect(howItStands({ ...bare, out: ["dr1"] })).toBe("empty, dr1 pulled out");
  });

  it("proves the rule", () => {
    // Over the long side b = 300 mm: 10° at h = 300 / tan 10° = 1701 mm.
    const wrong = proveRule(rule, weighted(0, 0, 900), [
      {
        title: "centre of mass just low enough for 10°",
        edit: (file) => {
          Object.assign(file, weighted(0, 0, 1650));
        },
        finds: [],
      },
      {
        title: "centre of mass just too high for 10°",
        edit: (file) => {
          Object.assign(file, weighted(0, 0, 1800));
        },
        finds: [{ at: "frame", key: "tilt", measured: Math.atan2(0.3, 1.8), within: 1e-4 }],
      },
      {
        title: "that height on a floor that leans 1:50",
        edit: (file) => {
          Object.assign(file, weighted(0, 0, 1650));
          file.floor = { slope: "1:50" };
        },
        finds: [{ at: "frame", key: "tilt", measured: Math.atan2(0.3, 1.65) - Math.atan(1 / 50), within: 2e-4 }],
      },
      {
        // A foot on a bump of 60 mm, 600 mm inside the line, leans it by arctan 0.1 = 5.7°: of 13.0° it keeps 7.3°.
        title: "a foot on a bump",
        edit: (file) => {
          Object.assign(file, weighted(0, 0, 1300));
          file.floor = { uneven: 60 };
        },
        finds: [{ at: "frame", key: "tilt", measured: Math.atan2(0.3, 1.3) - Math.atan(0.1), within: 1e-4 }],
      },
      {
        title: "a foot on a lower bump",
        edit: (file) => {
          Object.assign(file, weighted(0, 0, 1300));
          file.floor = { uneven: 30 };
        },
        finds: [],
      },
      {
        title: "that height, and only 5° asked for",
        edit: (file) => {
          Object.assign(file, weighted(0, 0, 1800), { criteria: { "tip-tilt": 5 } });
        },
        finds: [],
      },
      {
        title: "so high, but anchored",
        edit: (file) => {
          Object.assign(file, weighted(0, 0, 1800));
          for (const stand of file.stands ?? []) stand.hold = "anchored";
        },
        finds: [],
      },
      {
        // A ton and the table's own 252 N push back (1e3 g + 252 N) 0.3 / 0.838, at the top of its sheet; a push of 0.35 W is 0.978 of it, 0.38 W 1.06.
        title: "a push a little below what tips it",
        edit: (file) => {
          ton(file);
          file.criteria = { "tip-push": "5 kN", "tip-push-share": 0.35 };
        },
        finds: [],
      },
      {
        title: "a push a little above what tips it",
        edit: (file) => {
          ton(file);
          file.criteria = { "tip-push": "5 kN", "tip-push-share": 0.38 };
        },
        finds: [{ at: "frame", key: "push", measured: ((1e3 * GRAVITY + 252) * 0.3) / 0.838, within: 1e-3 }],
      },
      {
        title: "that push at half the height",
        edit: (file) => {
          ton(file);
          file.criteria = { "tip-push": "5 kN", "tip-push-share": 0.38, "tip-push-height": 400 };
        },
        finds: [],
      },
      {
        // The empty table weighs 252 N: it tips at 252 N × 0.3 m / 0.8 m = 94 N, slides at 0.9 × 252 N = 227 N, or at 75 N on the usual floor.
        title: "a declared pull that tips it on a rough floor",
        edit: (file) => {
          Object.assign(file, table(), { masses: [], floor: { friction: 0.9 } });
          file.loads = [{ case: "pull", on: "front", force: 120, direction: "+y" }];
        },
        finds: [{ at: "frame", key: "declared" }],
      },
      {
        title: "that pull on a floor on which it slides first",
        edit: (file) => {
          Object.assign(file, table(), { masses: [] });
          file.loads = [{ case: "pull", on: "front", force: 120, direction: "+y" }];
        },
        finds: [{ at: "frame", key: "slides" }],
      },
      {
        title: "centre of mass outside the feet",
        edit: (file) => {
          Object.assign(file, weighted(0, 360, 900));
        },
        finds: [{ at: "frame", key: "tilt", measured: Math.atan2(-0.06, 0.9), within: 1e-3 }],
      },
    ]);
    expect(wrong).toEqual([]);
  });
});
