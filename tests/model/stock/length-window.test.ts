import { describe, expect, test } from "vitest";
import { builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import { nutFor } from "../../../src/model/stock/nut-for.ts";
import type { Connector, Profile, Screw, Slot } from "../../../src/model/stock/stock.ts";
import { referenceCheck } from "../../references/load-reference.ts";

const MM = 1e-3;
const FLOAT = 1e-9;
/** What stays free between the tip of a screw and the slot floor. */
const SPARE = 0.5 * MM;
const stock = builtinStock();

/** bracket + washer + lip + nut ≤ L ≤ bracket + washer + slot depth − spare; built-in connectors have no washers. */
function lengthWindow(given: {
  bracket: number;
  washer: number;
  lip: number;
  nut: number;
  depth: number;
  spare: number;
}) {
  const { bracket, washer, lip, nut, depth, spare } = given;
  return { min: bracket + washer + lip + nut, max: bracket + washer + depth - spare };
}

test("the window of bolts.length.window", () => {
  const { inputs, expected } = referenceCheck("bolts", "bolts.length.window");
  const value = (name: string) => Number(inputs[name]?.value);
  const window = lengthWindow({
    bracket: value("t_bracket"),
    washer: value("washer"),
    lip: value("lip"),
    nut: value("nut"),
    depth: value("slot_depth"),
    spare: value("spare"),
  });
  const { min, max } = expected.value as { min: number; max: number };
  expect(window.min).toBeCloseTo(min, 9);
  expect(window.max).toBeCloseTo(max, 9);
});

function slotsFor(connector: Connector): readonly { profile: Profile; slot: Slot }[] {
  return [...stock.profiles.values()]
    .filter(({ slotSize }) => slotSize === connector.slotSize)
    .flatMap((profile) => profile.slots.filter(({ closed }) => !closed).map((slot) => ({ profile, slot })));
}

function screwOf(connector: Connector): Screw {
  const screw = stock.screws.get(connector.screw);
  if (screw === undefined) throw new Error(`no screw ${connector.screw}`);
  return screw;
}

/** Thickness under the head, m: leg or plate; none for an end fastener, whose screw is measured from the cut end. */
function grips(connector: Connector): readonly number[] {
  if (connector.kind === "bracket") return [connector.legs.a.thickness, connector.legs.b.thickness];
  if (connector.kind === "plate" || connector.kind === "hinge" || connector.kind === "pivot")
    return [connector.thickness];
  return connector.kind === "end-fastener" ? [0] : [];
}

const connectors = [...stock.connectors.values()];

describe.each(connectors.filter((one) => grips(one).length > 0))("$name", (connector) => {
  test("its screw reaches through every nut of its slot size and off the slot floor of every profile", () => {
    const screw = screwOf(connector);
    const slots = slotsFor(connector);
    expect(slots.length).toBeGreaterThan(0);
    for (const { profile, slot } of slots) {
      for (const kind of ["end-load", "drop-in"] as const) {
        const nut = nutFor(stock, connector.slotSize, screw.thread, kind);
        for (const bracket of grips(connector)) {
          const { min, max } = lengthWindow({
            bracket,
            washer: 0,
            lip: slot.lip,
            nut: Math.max(nut?.engagement ?? Number.NaN, nut?.thickness ?? Number.NaN),
            depth: slot.depth,
            spare: SPARE,
          });
          expect(screw.length, `${profile.name}: at least ${min}`).toBeGreaterThanOrEqual(min - FLOAT);
          expect(screw.length, `${profile.name}: at most ${max}`).toBeLessThanOrEqual(max + FLOAT);
        }
      }
    }
  });
});

describe.each(connectors.filter((one) => one.kind === "end-screw"))("$name", (connector) => {
  const screw = screwOf(connector);

  test("it fits the bores of its profiles and engages at least 1.5 diameters of aluminium (bolts.engage.rule)", () => {
    const rule = referenceCheck("bolts", "bolts.engage.rule").expected.value as { aluminium_min: number };
    expect(connector.engagement).toBeGreaterThanOrEqual(rule.aluminium_min * screw.diameter - FLOAT);
    const through = /(?:^|-)([\d.]+)$/.exec(connector.name)?.[1];
    for (const { profile, slot } of slotsFor(connector)) {
      expect(profile.bores.map(({ thread }) => thread)).toContain(screw.thread);
      const bar = Number(through) * (screw.thread.startsWith("M") ? MM : 0.0254);
      const grip = connector.head === "in-slot" ? slot.lip : bar;
      expect(screw.length - grip).toBeGreaterThanOrEqual(connector.engagement - FLOAT);
    }
  });

  test("its head lies behind the lips and the key passes the access hole, or the shank does", () => {
    if (connector.head === "on-far-face") {
      expect(connector.accessHole).toBeGreaterThan(screw.diameter);
      return;
    }
    expect(connector.accessHole).toBeGreaterThan((screw.key * 2) / Math.sqrt(3)); // across the corners of a hexagon
    for (const { slot } of slotsFor(connector)) {
      expect(screw.headDiameter).toBeGreaterThan(slot.opening);
      expect(screw.headDiameter).toBeLessThan(slot.cavity);
      expect(screw.headHeight).toBeLessThan(slot.depth - slot.lip);
      expect(screw.diameter).toBeLessThan(slot.opening);
    }
  });
});

describe.each(connectors.filter((one) => one.kind === "side-tie"))("$name", (connector) => {
  test("its screw reaches from slot to slot of two like profiles, its head behind the lips", () => {
    const screw = screwOf(connector);
    for (const { profile, slot } of slotsFor(connector)) {
      const nut = nutFor(stock, connector.slotSize, screw.thread, "end-load");
      expect(screw.length, profile.name).toBeGreaterThanOrEqual(2 * slot.lip + (nut?.engagement ?? Number.NaN) - FLOAT);
      expect(screw.length, profile.name).toBeLessThanOrEqual(slot.lip + slot.depth - SPARE + FLOAT);
      expect(screw.headDiameter).toBeGreaterThan(slot.opening);
      expect(screw.headDiameter).toBeLessThan(slot.cavity);
      expect(screw.headHeight).toBeLessThan(slot.depth - slot.lip);
    }
  });
});
