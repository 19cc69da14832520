import { describe, expect, it } from "vitest";
import { buildSheetOf } from "../../src/cli/build-sheet-of.ts";
import { cutSheetOf } from "../../src/cli/cut-sheet-of.ts";
import { buildOrder } from "../../src/facts/build-order.ts";
import { buildPlan } from "../../src/facts/build-plan.ts";
import { factOf } from "../../src/facts/fact.ts";
import { lifted } from "../../src/facts/lifted.ts";
import { noSettings } from "../../src/house/settings.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { buildJson } from "../../src/report/build/json.ts";
import { buildText } from "../../src/report/build/text.ts";
import { cutCsv, cutJson, cutText } from "../../src/report/cuts/forms.ts";
import { edited } from "../rules/base-frames.ts";
import { glazed, ladder, standingBox } from "./build-frames.ts";
import { frameOf, one } from "./known.ts";

/** The front of a box of four posts comes built: its posts and its two rails, with the foot of one post. */
function boxed(built: boolean) {
  const frame = frameOf(
    edited(standingBox(1000), (file) => {
      file.stands = [{ part: "foot-40-M8", bars: ["post-1", "post-2", "post-3", "post-4"] }];
      const front = file.bars.map(({ id }) => id).filter((id) => id.startsWith("front"));
      file.masses = [{ id: "box", mass: 3, centre: [300, 0, 500], on: ["front-low"] }];
      file.groups = [{ id: "kit", parts: ["post-1", "post-2", ...front, "post-1.foot", "box"], built }];
    }),
  );
  const settings = noSettings("2027-03-31");
  return { frame, order: factOf(buildOrder, frame), cuts: cutSheetOf("box.frame.json", frame, 0.0035, settings) };
}

const text = (frame: ReturnType<typeof frameOf>): string =>
  [...buildText(buildSheetOf("box.frame.json", frame, noSettings("2027-03-31")))].join("");

describe("a piece that comes built", () => {
  const [own, kit] = [boxed(false), boxed(true)];
  const inner = (id: string): boolean => id.startsWith("front");

  it("has no steps of its own but for the foot that does not come on it", () => {
    const steps = (order: typeof own.order) => order.steps.filter(({ assembly }) => assembly === "kit");
    expect(steps(own.order).map(({ what }) => what)).toEqual(
      expect.arrayContaining(["place", "square", "feet", "equipment"]),
    );
    expect(steps(kit.order).map(({ what, places }) => [what, ...places.map(({ id }) => id)])).toEqual([
      ["feet", "post-2.foot"],
    ]);
    const tightened = kit.order.steps.flatMap(({ tightens }) => tightens.map(({ id }) => id));
    expect(tightened.filter(inner)).toEqual([]);
    expect(tightened.length).toBeGreaterThan(0);
  });

  it("is lifted in whole, never bar by bar, with the foot and the equipment that come on it", () => {
    const lifts = factOf(lifted, kit.frame).map(({ what }) => what);
    expect(lifts).toContain("kit");
    expect(lifts.filter((what) => inner(what) || what === "post-1")).toEqual([]);
    const mass = ({ frame }: typeof own) => one(factOf(lifted, frame).find(({ what }) => what === "kit")).mass;
    expect(mass(kit)).toBeCloseTo(mass(own), 9);
  });

  it("takes its nuts for other parts, and none for its own joints", () => {
    const plan = one(factOf(buildPlan, kit.frame).find(({ id }) => id === "kit"));
    // Two rails a side end on each post: four nuts, all for the end fasteners of the sides.
    expect(plan.nuts.reduce((sum, nuts) => sum + nuts.count, 0)).toBe(4);
    expect(plan.nuts.every(({ bar }) => bar.startsWith("post"))).toBe(true);
  });

  it("is left out of the cut list and the counts, and listed apart with its mass", () => {
    const count = ({ cuts }: typeof own, kind: string) =>
      cuts.counts.filter((part) => part.kind === kind).reduce((sum, part) => sum + part.count, 0);
    // Two rails with an end fastener, a screw and a nut at both ends; one foot; the caps of two posts.
    expect(count(own, "connector") - count(kit, "connector")).toBe(4);
    expect(count(own, "screw") - count(kit, "screw")).toBe(4);
    expect(count(own, "nut") - count(kit, "nut")).toBe(4);
    expect(count(own, "stand") - count(kit, "stand")).toBe(1);
    expect(count(own, "cap") - count(kit, "cap")).toBe(2);
    const sawn = ({ cuts }: typeof own) => cuts.lines.flatMap(({ bars }) => bars);
    expect(
      sawn(own)
        .filter((bar) => !sawn(kit).includes(bar))
        .sort(),
    ).toEqual(["post-1", "post-2", ...sawn(own).filter(inner)].sort());
    const arrival = one(kit.cuts.arrivals[0]);
    // Without the foot of post-2, which is screwed on here.
    const foot = one(kit.frame.stands[0]).part.mass;
    const whole = one(factOf(lifted, kit.frame).find(({ what }) => what === "kit")).mass;
    expect(arrival.mass).toBeCloseTo(whole - foot, 9);
    expect(own.cuts.arrivals).toEqual([]);
  });

  it("is told in text, table and JSON", () => {
    expect(text(kit.frame)).toMatch(/"kit", arrives built, [\d.]+ kg: 1 person; balances in its middle\n/);
    expect(text(kit.frame)).not.toMatch(/Lay out [^.]*front/);
    expect(text(own.frame)).toMatch(/"kit", flat on a table/);
    const sheet = buildSheetOf("box.frame.json", kit.frame, noSettings("2027-03-31"));
    const piece = one(
      (JSON.parse([...buildJson(sheet)].join("")) as { pieces: { id: string; built?: boolean }[] }).pieces.find(
        ({ id }) => id === "kit",
      ),
    );
    expect(piece.built).toBe(true);
    expect([...cutText(kit.cuts)].join("")).toMatch(/\nArrives built\n {2}kit, [\d.]+ kg\n/);
    // The core of the post whose foot is screwed on here is tapped here, if it is not tapped already.
    expect([...cutText(kit.cuts)].join("")).toContain("still to do: post-2: M8 tapped at from");
    expect([...cutCsv(kit.cuts)].join("")).toMatch(/\r\narrives built,kit,1,/);
    const json = JSON.parse([...cutJson(kit.cuts)].join("")) as { arrivesBuilt: { id: string; mass: number }[] };
    expect(json.arrivesBuilt.map(({ id }) => id)).toEqual(["kit"]);
  });
});

describe("a ring that comes built", () => {
  const grouped = (base: FrameFile, parts: readonly string[]) =>
    frameOf(
      edited(base, (file) => {
        file.groups = [{ id: "ring", parts: [...parts] as [string, ...string[]], built: true }];
      }),
    );

  it("needs no order of its own: a panel held on all four edges comes in it", () => {
    const all = ["post-1", "post-2", "low", "high", "pane"];
    expect(factOf(buildOrder, grouped(glazed(), all)).undone).toEqual([]);
  });

  it("that shuts out what goes into it has to be taken apart", () => {
    const frame = grouped(glazed(), ["post-1", "post-2", "low", "high"]);
    const { undone } = factOf(buildOrder, frame);
    expect(undone.map(({ group, built }) => [group.id, built])).toEqual([["ring", true]]);
    expect(text(frame)).toContain(
      '"ring" comes built but cannot be put in whole: take it apart, keep its screws and nuts, and put its parts in one by one with them.',
    );
  });

  it("names the nuts that get into its slots no more", () => {
    const rails = ladder({ low: { z: 0, on: "above" }, mid: { z: 500, on: "above" }, high: { z: 1000, on: "below" } });
    const frame = frameOf(
      edited(rails, (file) => {
        // The two outer rails run over the ends of the posts and shut their slots.
        for (const id of ["low", "high"]) {
          const bar = one(file.bars.find((b) => b.id === id));
          [bar.from, bar.to] = [
            [-100, 0, id === "low" ? -20 : 1020],
            [700, 0, id === "low" ? -20 : 1020],
          ];
        }
        for (const id of ["post-1", "post-2"])
          one(file.bars.find((b) => b.id === id)).ends = { both: { cut: "as-drawn" } };
        file.joints = [
          { bars: ["post-1", "post-2"], ends: "both", by: [{ connector: "gusset-bracket-40", on: "outer" }] },
          { bars: ["mid"], ends: "both", by: "above" },
        ];
        file.groups = [{ id: "ring", parts: ["post-1", "post-2", "low", "high"], built: true }];
      }),
    );
    expect(text(frame)).toContain("No way in any more for mid.from/1/a1/nut and mid.to/1/a1/nut: take drop-in nuts.");
  });
});
