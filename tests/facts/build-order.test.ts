import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type BuildOrder, buildOrder } from "../../src/facts/build-order.ts";
import { ends } from "../../src/facts/ends.ts";
import { factOf } from "../../src/facts/fact.ts";
import { screwCovers } from "../../src/facts/screw-covers.ts";
import { screwedParts } from "../../src/facts/screwed-parts.ts";
import { subAssemblies } from "../../src/facts/sub-assemblies.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited } from "../rules/base-frames.ts";
import { glazed, ladder, railUnderBeam } from "./build-frames.ts";
import { frameOf, known, one } from "./known.ts";

const steps = (order: BuildOrder) =>
  order.steps.map(({ what, assembly, places }) => [what, assembly, ...places.map((p) => p.id)]);
const at = (order: BuildOrder, id: string): number => one(order.placedAt(id), `step of ${id}`);

describe("the order of building", () => {
  it("a panel held on four sides goes in before the last bar: common practice", () => {
    const order = known(buildOrder, glazed());
    expect(order.deadlock).toBeUndefined();
    const [pane, ...bars] = ["pane", "post-1", "post-2", "low", "high"].map((id) => at(order, id));
    expect(bars.filter((step) => step > one(pane))).toHaveLength(1);
  });

  it("screws are tightened when the frame is square, those a panel then covers before it goes in", () => {
    const open = known(buildOrder, ladder({ low: { z: 100, on: "below" }, high: { z: 900, on: "above" } }));
    expect(open.steps.map((step) => step.what)).toEqual(["place", "place", "place", "square", "finish"]);
    for (const screw of ["low.from/1/a1", "high.to/1/a1"]) expect(open.tightenedAt(screw)).toBe(4);

    // The lower rail's key comes from above, where the panel stands: the upper rail closes the frame.
    const inside = edited(glazed(), (file) => {
      file.joints = [
        { bars: ["low"], ends: "both", by: "above" },
        { bars: ["high"], ends: "both", by: "above" },
      ];
    });
    const order = known(buildOrder, inside);
    expect(order.deadlock).toBeUndefined();
    const pane = at(order, "pane");
    for (const end of ["from", "to"]) expect(one(order.tightenedAt(`low.${end}/1/a1`))).toBeLessThan(pane);
    expect(at(order, "high")).toBeGreaterThan(pane);
  });

  it("finds none where two rails cover each other's screws, and names the ring", () => {
    // 40 mm of rail each, 24 mm of room between them: a 6 mm key needs the length of its short arm, 38 mm.
    const order = known(buildOrder, ladder({ low: { z: 500, on: "above" }, high: { z: 564, on: "below" } }));
    const { ring, parts } = one(order.deadlock);
    expect(parts.map((part) => part.id).sort()).toEqual(["high", "low", "post-1", "post-2"]);
    expect(ring.map(({ part, by, why }) => [part.id, by.id, why]).sort()).toEqual([
      ["high", "low", "covered"],
      ["low", "high", "covered"],
    ]);
    expect(ring.flatMap(({ screws }) => screws.map((screw) => screw.id))).toContain("low.from/1/a1");
    // Every part has its step all the same.
    for (const id of ["low", "high", "post-1", "post-2", "low.from/1/a1"]) expect(at(order, id)).toBeGreaterThan(0);
  });

  it("finds one as soon as one of them turns its screws away, or stands the key's length off", () => {
    const away = known(buildOrder, ladder({ low: { z: 500, on: "above" }, high: { z: 564, on: "above" } }));
    expect(away.deadlock).toBeUndefined();
    expect(one(away.tightenedAt("low.from/1/a1"))).toBeLessThan(at(away, "high"));
    // The short arm of a 6 mm key is 38 mm long (ISO 2936).
    for (const [apart, caught] of [
      [40 + 37, true],
      [40 + 38, false],
    ] as const) {
      const order = known(buildOrder, ladder({ low: { z: 500, on: "above" }, high: { z: 500 + apart, on: "below" } }));
      expect(order.deadlock !== undefined, `${apart} mm`).toBe(caught);
    }
  });

  it("builds what the author groups as one, and says where that cannot be", () => {
    const grouped = (...parts: [string, ...string[]]) =>
      edited(glazed(), (file) => {
        file.groups = [{ id: "ring", parts }];
      });
    const sound = known(buildOrder, grouped("post-1", "post-2", "low"));
    expect(sound.undone).toEqual([]);
    expect(steps(sound).filter(([, assembly]) => assembly === "")).toEqual([
      ["place", "", "ring", "pane"],
      ["place", "", "high"],
      ["square", ""],
      ["finish", "", "post-1/to", "post-2/to"],
    ]);
    // All four bars first leave the panel no way in.
    const shut = known(buildOrder, grouped("post-1", "post-2", "low", "high"));
    expect(shut.undone.map(({ group }) => group.id)).toEqual(["ring"]);
    expect(shut.deadlock).toBeUndefined();
  });
});

describe("an order in which every screw is reached", () => {
  // The gussets' inner screws in the beam look down on the rail: 25 mm are free under it, less than the key and the head ask for.
  const found = (list: (bars: FrameFile["bars"]) => FrameFile["bars"]) => {
    const frame = frameOf(
      edited(railUnderBeam(), (file) => {
        file.bars = list(file.bars);
      }),
    );
    return { frame, order: factOf(buildOrder, frame) };
  };
  const first = found((bars) => bars);

  it("makes the joints of the beam before the rail comes under them", () => {
    const { frame, order } = first;
    const covers = factOf(screwCovers, frame);
    const covered = factOf(screwedParts, frame)
      .all.flatMap(({ screws }) => screws.map(({ ref }) => ref.id))
      .filter((screw) => covers.of(screw).includes("rail"));
    expect(covered).toEqual(["post-1.to/1/b1", "post-2.to/2/b1"]);
    for (const screw of covered) expect(one(order.tightenedAt(screw))).toBeLessThan(at(order, "rail"));
    for (const post of ["post-1", "post-2", "beam"]) expect(at(order, post)).toBeLessThan(at(order, "rail"));
  });

  it.each([1, 2, 3])("is the same however its bars are listed: from number %i on, and backwards", (from) => {
    const turned = found((bars) => [...bars.slice(from), ...bars.slice(0, from)] as FrameFile["bars"]).order;
    const backwards = found(
      (bars) => [...bars.slice(from), ...bars.slice(0, from)].reverse() as FrameFile["bars"],
    ).order;
    const placed = (order: BuildOrder) =>
      order.steps.map(({ what, places, tightens }) => [
        what,
        what === "finish" ? [] : places.map((part) => part.id),
        tightens.map((screw) => screw.id).sort(),
      ]);
    expect(placed(turned)).toEqual(placed(first.order));
    expect(placed(backwards)).toEqual(placed(first.order));
  });
});

const DEMOS = ["potting-bench", "first-bench", "mixer-guard", "sack-cart", "tray-rack"];

describe.each(DEMOS)("the order of %s", (name) => {
  const file: FrameFile = JSON.parse(readFileSync(`docs/demo/${name}.frame.json`, "utf8"));
  const frame = frameOf(file);
  const order = factOf(buildOrder, frame);

  it("exists, and keeps the sub-assemblies", () => {
    expect(order.deadlock).toBeUndefined();
    expect(order.undone).toEqual([]);
    const subs = factOf(subAssemblies, frame).map((sub) => sub.id);
    expect(order.assemblies.map((assembly) => assembly.id).sort()).toEqual(["", ...subs].sort());
  });

  it("places every part once", () => {
    const placed = order.steps
      .flatMap((step) => step.places)
      .filter((part) => part.kind !== "group" && part.kind !== "door");
    const ids = placed.map((part) => part.id);
    const subs = new Set(factOf(subAssemblies, frame).map((sub) => sub.id));
    // A sub-assembly found goes by the name of its first bar: once to be built, once to be put in.
    for (const part of [...frame.bars, ...frame.panels, ...frame.stands])
      expect(ids.filter((id) => id === part.ref.id)).toHaveLength(subs.has(part.ref.id) ? 2 : 1);
    const { all: connectors } = factOf(screwedParts, frame);
    expect(order.steps.flatMap((step) => step.connectors.map((c) => c.id)).sort()).toEqual(
      connectors.map((c) => c.ref.id).sort(),
    );
    expect(order.steps.flatMap((step) => step.tightens.map((s) => s.id)).sort()).toEqual(
      connectors.flatMap((c) => c.screws.map((s) => s.ref.id)).sort(),
    );
  });

  it("reaches every screw when it is tightened, with the bar of its nut there", () => {
    const covers = factOf(screwCovers, frame);
    for (const connector of factOf(screwedParts, frame).all) {
      for (const screw of connector.screws) {
        const there = order.presentAt(one(order.tightenedAt(screw.ref.id)));
        expect(covers.of(screw.ref.id).filter((cover) => there.has(cover))).toEqual([]);
        expect(there.has(screw.into.kind === "nut" ? screw.into.landing.bar : screw.into.bar)).toBe(true);
      }
    }
  });

  it("caps every end that the frame leaves open", () => {
    const capped = factOf(ends, frame).filter((end) => end.capped && end.covers.length === 0);
    for (const end of capped) expect(order.placedAt(end.ref.id)).toBe(order.steps.length);
  });
});
