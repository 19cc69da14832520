import { describe, expect, it } from "vitest";
import { GRAVITY } from "../../src/facts/acting.ts";
import { factOf } from "../../src/facts/fact.ts";
import { gathered, masses } from "../../src/facts/mass.ts";
import { opposite } from "../../src/facts/opposite.ts";
import { type Response, response, type View } from "../../src/facts/response.ts";
import { secondOrder } from "../../src/facts/second-order.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { valueAt } from "../../src/mechanics/piecewise.ts";
import type { Frame } from "../../src/model/frame.ts";
import { PORTAL, portal, testedBracket } from "../rules/portal.ts";
import { frameFrom } from "../rules/table.ts";

const CORNER = 8e3; // N·m/rad

/** The portals with this load on the rails, N/mm. */
function loaded(line: number): Frame {
  const file = portal("tested");
  for (const load of file.loads ?? []) load.line = line;
  return frameFrom(file, testedBracket("tested", CORNER));
}

/**
 * By how much the corner moment of a leaning leg exceeds the force times its height: pinned at its foot, held at its head by a spring S
 * and free to sway, M = H tan(kh) / (k − N tan(kh) / S) with k² = N / EI (Timoshenko and Gere, ch. 1: beam-column with end moments).
 */
function byHand(frame: Frame, line: number): number {
  const EI = (name: string): number => {
    const profile = frame.stock.profiles.get(name);
    if (!profile) throw new Error(name);
    return 70e9 * sectionOf(profile).Iz;
  };
  const { height: h, span: b } = PORTAL;
  const corner = 1 / (b / (6 * EI("40x80-8")) + 1 / CORNER);
  const weight = 1.35 * gathered(factOf(masses, frame).own).mass * GRAVITY + 1.5 * 2 * line * 1e3 * 1.42;
  const N = weight / 4;
  const k = Math.sqrt(N / EI("40x40-8"));
  return Math.tan(k * h) / (k * h) / (1 - (N * Math.tan(k * h)) / (corner * k));
}

const viewsOf = (found: Response): readonly View[] => (found.kind === "solved" ? found.views : []);
const LEANING = "1.35 self-weight + 1.5 goods, out of plumb along +x";

/** Corner moments of a leg that leans along x: all of it, and half of what changes when it leans the other way, N·m. */
function corner(views: readonly View[]): { readonly all: number; readonly sway: number } {
  const view = views.find(({ combination, bound }) => bound === "typical" && combination.name === LEANING);
  const other = view && opposite(view, views);
  if (!view || !other) throw new Error("no such views");
  const moment = (of: View): number => {
    const forces = of.forces("leg-1");
    // About y in the plane of the portal; the legs lie along z, so that it is one of their two bending moments.
    const at = PORTAL.height;
    const [My, Mz] = [forces?.My, forces?.Mz].map((field) => (field ? valueAt(field, at, "before") : 0));
    return Math.abs(My ?? 0) > Math.abs(Mz ?? 0) ? (My ?? 0) : (Mz ?? 0);
  };
  return { all: moment(view), sway: (moment(view) - moment(other)) / 2 };
}

describe("what sways, grown by the axial forces that follow", () => {
  it.each([0.8, 1.2, 1.6, 2])("is the sway of an exact beam-column within 2 percent, under %s N/mm", (line) => {
    const frame = loaded(line);
    const [first, second] = [corner(viewsOf(factOf(response, frame))), corner(viewsOf(factOf(secondOrder, frame)))];
    const exact = byHand(frame, line);
    expect(exact).toBeGreaterThan(1.11);
    expect(Math.abs(second.sway / first.sway / exact - 1)).toBeLessThan(0.02);
    // The part that does not sway stays.
    expect(second.all - second.sway).toBeCloseTo(first.all - first.sway, 6);
  });

  it("leaves a frame alone that is far from buckling", () => {
    const frame = loaded(0.5);
    expect(viewsOf(factOf(secondOrder, frame))).toEqual(viewsOf(factOf(response, frame)));
  });

  it("grows all of it where declared loads push sideways by themselves", () => {
    const file = portal("tested");
    for (const load of file.loads ?? []) load.line = 1.6;
    file.loads?.push({ case: "goods", on: "top-1", force: 900, direction: "+y", at: "middle" });
    const frame = frameFrom(file, testedBracket("tested", CORNER));
    const of = (views: readonly View[]): readonly number[] =>
      views
        .filter(({ combination: c, bound }) => c.across && c.kind === "strength" && bound === "typical")
        .map((view) => view.link(0)[2]);
    const [first, second] = [of(viewsOf(factOf(response, frame))), of(viewsOf(factOf(secondOrder, frame)))];
    expect(first.length).toBeGreaterThan(0);
    for (const [i, value] of second.entries()) expect(Math.abs(value)).toBeGreaterThan(1.05 * Math.abs(first[i] ?? 0));
  });
});
