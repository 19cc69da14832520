import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/panel.flexes.ts";
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
