import { expect, it } from "vitest";
import { panelBending } from "../../src/facts/panel-bending.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { overhangPeak } from "../../src/mechanics/plates/overhang.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/panel.flexes.ts";
import { known, one } from "../facts/known.ts";
import { pane, paneled } from "./panel-frames.ts";

/** The opening, m. */
const A = 0.96;
const rigidity = (e: number, nu: number, t: number): number => (e * t ** 3) / (12 * (1 - nu ** 2));

/**
 * Navier's double series for a square plate on four edges under a force on a square patch in its middle (Timoshenko and
 * Woinowsky-Krieger, articles 28 and 29): deflection and moment in the middle, independent of the single series that the rule uses.
 */
function navier(force: number, patch: number, d: number, nu: number): { w: number; m: number } {
  let [w, m] = [0, 0];
  for (let i = 1; i < 400; i += 2)
    for (let j = 1; j < 400; j += 2) {
      const sines = Math.sin((i * Math.PI * patch) / (2 * A)) * Math.sin((j * Math.PI * patch) / (2 * A));
      const q = ((16 * force) / (Math.PI ** 2 * i * j * patch ** 2)) * sines;
      const amplitude = q / (Math.PI ** 4 * d * ((i / A) ** 2 + (j / A) ** 2) ** 2);
      // Sines at the middle are +1 and −1 in turn, and the load's are too: their product is +1.
      w += amplitude;
      m += d * Math.PI ** 2 * ((i / A) ** 2 + nu * (j / A) ** 2) * amplitude;
    }
  return { w, m };
}

/** w of w/t + 0.272 (w/t)³ = w₀/t, by halving. */
function stretched(w0: number, t: number): number {
  let [low, high] = [0, w0];
  for (let k = 0; k < 100; k += 1) {
    const w = (low + high) / 2;
    if (w / t + 0.272 * (w / t) ** 3 < w0 / t) low = w;
    else high = w;
  }
  return low;
}

const pushed = navier(250, 0.1, rigidity(2300e6, 0.37, 0.005), 0.37);
const GIVES = stretched(pushed.w, 0.005); // 19.7 mm
const CRACKS = (6 * pushed.m) / 0.005 ** 2; // 18.3 MPa

// Square plate on four edges, table 8: 0.00406 q a⁴ / D and 0.0479 q a² are for Poisson's ratio 0.3; the middle moment is
// proportional to 1 + ν. Aluminium 3 mm thick under 1 kPa.
const SAGS = stretched((0.00406 * 1000 * A ** 4) / rigidity(70e9, 0.33, 0.003), 0.003); // 7.3 mm
const BREAKS = (6 * 0.0479 * (1.33 / 1.3) * 1000 * A ** 2) / 0.003 ** 2; // 30.1 MPa

function windy(criteria: Record<string, string | number>): (file: FrameFile) => void {
  return (file) => {
    pane((panel) => {
      panel.sheet = "aluminium-3";
    })(file);
    file.loads = [{ case: "wind", on: "pane", pressure: 1, direction: "+y" }];
    file.criteria = { "panel-push": "1 N", ...criteria };
  };
}

const set = (criteria: Record<string, string | number>) => (file: FrameFile) => {
  file.criteria = criteria;
};

/**
 * A sheet of aluminium 3 mm thick (2700 kg/m³) on two bars 300 mm apart that reaches 300 mm past the second, under 1 kPa and its own
 * weight q: a cantilever strip, q a⁴ / 8 D, on a root turned by q a²/2 · L / 3 D; L from the outer edge of one bar to that of the next.
 */
const OUT = 0.3;
const Q = 1000 + 2700 * 9.80665 * 0.003;
const DROOPS = (Q * (OUT ** 4 / 8 + ((OUT ** 2 / 2) * 0.3 * OUT) / 3)) / rigidity(70e9, 0.33, 0.003); // 14.4 mm
const SNAPS = (6 * Q * OUT ** 2) / 2 / 0.003 ** 2; // 32.4 MPa

const overhanging = (criteria: Record<string, string | number>) => (file: FrameFile) => {
  file.bars = [
    { id: "front", profile: "40x40-8", from: [0, 0, 0], to: [1000, 0, 0] },
    { id: "back", profile: "40x40-8", from: [0, 300, 0], to: [1000, 300, 0] },
  ];
  file.panels = [{ id: "pane", sheet: "aluminium-3", held: "laid", bars: ["front", "back"], overhang: [0, 0, 0, 300] }];
  file.loads = [{ case: "goods", on: "pane", pressure: 1 }];
  file.criteria = criteria;
};

it("finds panels that bend or break under a push and under their loads", () => {
  const wrong = proveRule(rule, paneled(), [
    { title: "just stiff enough", edit: set({ "panel-give": "20 mm" }), finds: [] },
    {
      title: "not stiff enough",
      edit: set({ "panel-give": "19 mm" }),
      finds: [{ at: "pane", key: "gives", measured: GIVES, within: 1e-4 }],
    },
    { title: "just strong enough for the push", edit: set({ "panel-strength": 0.32 }), finds: [] },
    {
      title: "not strong enough for the push",
      edit: set({ "panel-strength": 0.29 }),
      finds: [{ at: "pane", key: "cracks", measured: CRACKS, within: 2e-3 }],
    },
    { title: "just stiff enough for the wind", edit: windy({ "panel-sag": "7.5 mm" }), finds: [] },
    {
      title: "not stiff enough for the wind",
      edit: windy({ "panel-sag": "7 mm" }),
      finds: [{ at: "pane", key: "sags", measured: SAGS, within: 0.006 }],
    },
    { title: "just strong enough for the wind", edit: windy({ "panel-strength": 0.24 }), finds: [] },
    {
      title: "not strong enough for the wind",
      edit: windy({ "panel-strength": 0.22 }),
      finds: [{ at: "pane", key: "breaks", measured: BREAKS, within: 0.006 }],
    },
    {
      title: "two winds that never blow together",
      edit: (file) => {
        windy({ "panel-sag": "7.5 mm" })(file);
        file.loads?.push({ case: "draught", on: "pane", pressure: 1, direction: "+y" });
        file.cases = [{ id: "wind", excludes: ["draught"] }, { id: "draught" }];
      },
      finds: [],
    },
    { title: "an overhang just stiff enough", edit: overhanging({ "panel-sag": "14.6 mm" }), finds: [] },
    {
      title: "an overhang not stiff enough",
      edit: overhanging({ "panel-sag": "14.2 mm" }),
      finds: [{ at: "pane", key: "droops", measured: DROOPS, within: 1e-6 }],
    },
    {
      title: "an overhang just strong enough",
      edit: overhanging({ "panel-sag": "50 mm", "panel-strength": 0.26 }),
      finds: [],
    },
    {
      title: "an overhang not strong enough",
      edit: overhanging({ "panel-sag": "50 mm", "panel-strength": 0.24 }),
      finds: [{ at: "pane", key: "snaps", measured: SNAPS, within: 1e-6 }],
    },
    {
      title: "a sheet laid down with nothing on it",
      edit: (file) => {
        file.panels = [{ id: "lid", sheet: "plywood-12", held: "laid", bars: ["top"] }];
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});

/** A sheet of plywood 12 mm thick on four bars round 960 by 560 mm, with these things and loads on it; what it sags, m. */
function sagOf(edit: (file: FrameFile) => void): number {
  const file = paneled();
  file.bars = [
    { id: "front", profile: "40x40-8", from: [0, 0, 0], to: [1000, 0, 0] },
    { id: "back", profile: "40x40-8", from: [0, 600, 0], to: [1000, 600, 0] },
    { id: "left", profile: "40x40-8", from: [0, 0, 0], to: [0, 600, 0] },
    { id: "right", profile: "40x40-8", from: [1000, 0, 0], to: [1000, 600, 0] },
  ];
  file.panels = [{ id: "top", sheet: "plywood-12", held: "laid", bars: ["front", "back", "left", "right"] }];
  edit(file);
  return one(known(panelBending, file)[0]?.loaded, "loads on it").deflection;
}
const vat = (mass: number): NonNullable<FrameFile["masses"]> => [
  { id: "vat", mass, centre: [500, 300, 100], box: [200, 200, 100], on: ["top"] },
];
const G = 9.80665;

it("bends a panel by what is pressed onto a thing that stands on it, as by so much more of the thing", () => {
  const pressed = sagOf((file) => {
    file.masses = vat(10);
    file.loads = [{ case: "fill", on: "vat", force: 1500 }];
  });
  const heavier = sagOf((file) => {
    file.masses = vat(10 + 1500 / G);
  });
  expect(pressed).toBeGreaterThan(0.005);
  expect(pressed / heavier).toBeCloseTo(1, 9);
});

it("adds forces of cases that may act together, with their signs", () => {
  const force = (id: string, size: number, direction: "+z" | "-z" = "-z") => ({
    case: id,
    on: "top",
    force: size,
    direction,
  });
  const alone = sagOf((file) => {
    file.loads = [force("a", 700)];
  });
  const excluded = sagOf((file) => {
    file.loads = [force("a", 700), force("b", 700)];
    file.cases = [{ id: "a", excludes: ["b"] }, { id: "b" }];
  });
  const opposed = sagOf((file) => {
    file.loads = [force("a", 700), force("a", 300, "+z")];
  });
  const both = sagOf((file) => {
    file.loads = [force("a", 400), force("b", 300)];
  });
  const less = sagOf((file) => {
    file.loads = [force("a", 400)];
  });
  expect(excluded / alone).toBeCloseTo(1, 9);
  expect(both / alone).toBeCloseTo(1, 9);
  expect(opposed / less).toBeCloseTo(1, 9);
});

it("turns the root of an overhang by no more than a field held at its sides lets it", () => {
  const plate = { elasticModulus: 12 * (1 - 0.3 ** 2), poisson: 0.3, thickness: 1 };
  const tip = (back: number, between: number): number =>
    overhangPeak(plate, { length: 1, back, between }, 1).deflection;
  // Of a moment M along the edge each sine of M (4/nπ) turns it by 1/2α: at the middle Σ ±(4/nπ) M b / 2nπ D.
  let slope = 0;
  for (let n = 1; n < 4000; n += 2) slope += ((n % 4 === 1 ? 1 : -1) * (4 / (n * Math.PI)) * 0.5) / (2 * n * Math.PI);
  expect(tip(3, 1)).toBeCloseTo(1 / 8 + slope, 6);
  expect(tip(0.3, 1)).toBeCloseTo(1 / 8 + 0.5 * 0.1, 9);
});
