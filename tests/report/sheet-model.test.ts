import { describe, expect, it } from "vitest";
import { MANY_BARS, thinned } from "../../src/drawing/many-bars.ts";
import { modelOf } from "../../src/drawing/model3d/model-of.ts";
import { sceneOf } from "../../src/drawing/scene.ts";
import { SHARE_STEPS } from "../../src/drawing/share-steps.ts";
import { symbolsOf } from "../../src/drawing/symbols.ts";
import { bodies } from "../../src/facts/bodies.ts";
import { factOf } from "../../src/facts/fact.ts";
import { response } from "../../src/facts/response.ts";
import { area } from "../../src/geometry/polygon.ts";
import { length } from "../../src/geometry/vector.ts";
import { movedAt } from "../../src/viewer/bend.ts";
import { axesOf, between, fitted, matrixOf, seenAt, VIEWS } from "../../src/viewer/camera.ts";
import { rgb } from "../../src/viewer/colours.ts";
import { fibre, meshesOf } from "../../src/viewer/mesh.ts";
import { textOf } from "../demo/inspect-demo.ts";
import { frameOf } from "../facts/known.ts";

const frame = frameOf(JSON.parse(textOf("potting-bench")));
const scene = sceneOf(frame);
const model = modelOf(frame, { scene, symbols: symbolsOf(frame, scene), pins: [], checks: [] });

describe("the numbers a viewer is given", () => {
  it("make bars as long as they are cut, between their cuts", () => {
    const all = factOf(bodies, frame);
    for (const bar of model.bars) {
      const { from, to } = fibre(bar, 0, 0);
      const long = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
      expect(long).toBeCloseTo((all.get(bar.id)?.cutLength ?? 0) * 1000, 1);
    }
  });

  it("fill the metal of each section and no more: triangles against Green's theorem", () => {
    const [profile] = model.profiles;
    const real = frame.bars[0]?.profile.region;
    if (!profile || !real) throw new Error("no profile");
    const points = [profile.outer, ...profile.holes].flat();
    const at = (i: number): readonly [number, number] => [points[2 * i] ?? 0, points[2 * i + 1] ?? 0];
    let sum = 0;
    for (let i = 0; i < profile.triangles.length; i += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => at(profile.triangles[i + k] ?? 0));
      if (a && b && c) sum += ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
    }
    expect(sum / 1e6 / area(real)).toBeCloseTo(1, 3);
  });

  it("put the corners of each piece where its solid has them, though pieces alike share one shape", () => {
    const solids = scene.solids.filter(({ kind }) => kind !== "bar");
    expect(model.pieces).toHaveLength(solids.length);
    solids.forEach(({ of, surfaces }, i) => {
      const piece = model.pieces[i];
      const { points = [] } = model.forms[piece?.form ?? -1] ?? {};
      expect(piece?.id).toBe(of.id);
      for (const axis of [0, 1, 2]) {
        const own = points.filter((_, k) => k % 3 === axis).map((tenths) => (piece?.origin[axis] ?? 0) + tenths / 10);
        const skin = surfaces.flatMap(({ kind, rings: [ring = []] }) => (kind === "skin" ? ring : []));
        const real = skin.map((point) => (point[axis] ?? 0) * 1000);
        for (const side of [Math.min, Math.max]) expect(Math.abs(side(...own) - side(...real))).toBeLessThan(0.11);
      }
    });
    expect(model.forms.length).toBeLessThan(model.pieces.length / 4);
  });

  it("bend each bar as the response has it at its ends", () => {
    const found = factOf(response, frame);
    if (found.kind !== "solved") throw new Error("not solved");
    const [bend] = model.shapes;
    const view = found.views.find(({ combination, bound }) => combination.name === bend?.name && bound === "typical");
    const moved = view?.deflections("front");
    if (!moved || !bend) throw new Error("no bending");
    const index = model.bars.findIndex(({ id }) => id === "front");
    // front runs along +x, face A up: local x, y, z are global x, z, -y.
    const at = movedAt(model, index, 0, 0);
    const start = (p: { coefficients: Float64Array }): number => (p.coefficients[0] ?? 0) * 1000;
    expect(at).toEqual([
      expect.closeTo(start(moved.x), 3),
      expect.closeTo(-start(moved.z), 3),
      expect.closeTo(start(moved.y), 3),
    ]);
    expect(length(at)).toBeLessThanOrEqual(bend.most);
  });

  it("give normals that look outwards: every face of a bar's mesh is turned away from its axis", () => {
    const { solid } = meshesOf(model);
    const [bar] = model.bars;
    if (!bar) throw new Error("no bar");
    const [half] = model.profiles[bar.profile]?.half ?? [20];
    let faces = 0;
    solid.part.forEach((part, i) => {
      if (part !== 0) return;
      const p = [0, 1, 2].map((k) => (solid.at[3 * i + k] ?? 0) - (bar.frame[k] ?? 0));
      const n = [0, 1, 2].map((k) => solid.normal[3 * i + k] ?? 0);
      const [y, ny] = [p, n].map((v) => v.reduce((sum, c, k) => sum + c * (bar.frame[6 + k] ?? 0), 0));
      // On the outer faces alone: walls of slots look into the bar by right.
      if (y !== undefined && ny !== undefined && Math.abs(Math.abs(y) - half) < 0.01 && Math.abs(ny) > 0.99) {
        faces++;
        expect(Math.sign(ny)).toBe(Math.sign(y));
      }
    });
    expect(faces).toBeGreaterThan(10);
  });
});

describe("what is drawn before the first turn", () => {
  /** The bars over again, until there are this many. */
  const repeated = (count: number) => ({
    ...model,
    pieces: [],
    bars: Array.from({ length: count }, (_, i) => model.bars[i % model.bars.length]).filter((bar) => bar !== undefined),
  });
  /** Corners of triangles and ends of lines that a card without help of hardware draws many times a second. */
  const OF_DEMO = 90_000;
  const OF_MANY = 150_000;
  const corners = ({ solid, panels, edges }: ReturnType<typeof meshesOf>): number =>
    solid.part.length + panels.part.length + edges.part.length;

  it("is bounded for a demo, and for 2,000 bars", () => {
    expect(corners(meshesOf(model))).toBeLessThan(OF_DEMO);
    expect(corners(meshesOf(repeated(2000)))).toBeLessThan(OF_MANY);
  });

  it("gets finer where a shape is shown, of many bars less so, and there alone", () => {
    const stations = (of: typeof model, bends: boolean) =>
      new Set(meshesOf({ ...of, pieces: [] }, bends).solid.station).size;
    expect([stations(model, false), stations(model, true)]).toEqual([2, 9]);
    const many = repeated(MANY_BARS + 1);
    expect([stations(many, false), stations(many, true)]).toEqual([2, 5]);
  });

  it("keeps both ends where stations are thinned", () => {
    expect(thinned([0, 1, 2, 3, 4, 5, 6, 7, 8], 5)).toEqual([0, 2, 4, 6, 8]);
    expect(thinned([0, 1], 5)).toEqual([0, 1]);
  });
});

describe("the eye of the viewer", () => {
  it("sees all three axes alike in the isometric view, at √(2/3) of their length (ISO 5456-3)", () => {
    const eye = { turn: 0, lift: 0, centre: [0, 0, 0] as const, height: 2, ...VIEWS.isometric };
    const { right, up } = axesOf(eye);
    for (const i of [0, 1, 2] as const) expect(Math.hypot(right[i], up[i])).toBeCloseTo(Math.sqrt(2 / 3), 12);
  });

  it("puts points where the matrix puts them, and the whole frame inside the picture", () => {
    const eye = fitted(VIEWS.isometric ?? { turn: 0, lift: 0 }, [0, 0, 0], [1800, 700, 1400], 1.5);
    const m = matrixOf(eye, 1.5, 5000);
    for (const p of [
      [0, 0, 0],
      [1800, 700, 1400],
      [1800, 0, 0],
      [0, 700, 1400],
    ] as const) {
      const [x, y] = [0, 1].map(
        (r) => (m[r] ?? 0) * p[0] + (m[4 + r] ?? 0) * p[1] + (m[8 + r] ?? 0) * p[2] + (m[12 + r] ?? 0),
      );
      const [sx, sy] = seenAt(eye, p, 900, 600);
      expect(sx).toBeCloseTo(450 + 450 * (x ?? 0), 3);
      expect(sy).toBeCloseTo(300 - 300 * (y ?? 0), 3);
      expect(Math.max(Math.abs(x ?? 9), Math.abs(y ?? 9))).toBeLessThan(1);
    }
  });

  it("glides the short way round", () => {
    const eye = { turn: 3, lift: 0, centre: [0, 0, 0] as const, height: 1 };
    expect(between(eye, { ...eye, turn: -3 }, 0.5).turn).toBeCloseTo(Math.PI, 6);
  });
});

it("shares are painted darker the more is used: they read without colour (WCAG relative luminance)", () => {
  const luminance = (c: readonly number[]): number => {
    const [r = 0, g = 0, b = 0] = c.map((v) =>
      v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4,
    );
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const steps = SHARE_STEPS.map(({ colour }) => luminance(rgb(colour)));
  // Neighbouring steps differ by a contrast of 1.5 and more.
  for (const [i, one] of steps.slice(1).entries()) expect(((steps[i] ?? 0) + 0.05) / (one + 0.05)).toBeGreaterThan(1.5);
});
