import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { loadReference } from "./load-reference.ts";

/*
 * Reference values of the family bolts are held by tests of the parts they belong to. This register says which test holds which, or why
 * none does, and fails when a value is in neither list, in both, or when a test no longer names what it is said to hold.
 */

/** Ids are the stem and one of the rests; without rests the stem is the id. "all" is for tests that take a stem's ids as they come. */
interface Ids {
  readonly stem: string;
  readonly rests?: readonly string[] | "all";
}

const SIZES = ["M4", "M5", "M6", "M8", "M10", "M12"];
const each = (...stems: readonly string[]): readonly Ids[] => stems.map((stem) => ({ stem }));

/** By test file under tests. */
const RUN: Readonly<Record<string, readonly Ids[]>> = {
  "mechanics/fasteners.test.ts": [
    { stem: "bolts.metric.", rests: "all" },
    { stem: "bolts.unc.", rests: "all" },
    { stem: "bolts.torque.8.8.", rests: ["M3", "M4", "M6", "M8", "M12"] },
    ...each(
      "bolts.torque.lub.M8",
      "bolts.torque.inverse.M6",
      "bolts.ex.shigley83",
      "bolts.lip.torque-limit",
      "bolts.slip.ec3",
      "bolts.slip.frame-M8",
      "bolts.prying.angle",
    ),
  ],
  "mechanics/references/fastener-groups.test.ts": each(
    "bolts.group.shigley87",
    "bolts.group.bhandari73",
    "bolts.group.bhandari75",
    "bolts.group.bhandari78",
    "bolts.group.two-inline",
    "bolts.group.ic.two-in-row",
    "bolts.turn.single-M8",
    "bolts.turn.pair",
  ),
  "model/stock/fasteners.test.ts": [
    {
      stem: "bolts.head.",
      rests: SIZES.flatMap((size) => [`ISO4762.${size}`, `ISO7380-1.${size}`, `ISO10642.${size}`]),
    },
    { stem: "bolts.head.B18.3.", rests: ["#10", "1/4", "5/16", "3/8"] },
    { stem: "bolts.unc.", rests: ["#10-24", "1/4-20", "5/16-18", "3/8-16"] },
    { stem: "bolts.torque.8.8.", rests: ["M4", "M6", "M8", "M12"] },
    { stem: "bolts.metric.", rests: SIZES },
    { stem: "bolts.hexkey.", rests: ["2", "2.5", "3", "4", "5", "6", "8", "10"] },
    { stem: "bolts.hexkey.in.", rests: ["5/32", "3/16", "1/4", "5/16"] },
    { stem: "bolts.ballend" },
  ],
  "model/stock/connectors.test.ts": each("bolts.en.edge", "bolts.access.corner"),
  "model/stock/length-window.test.ts": each("bolts.length.window", "bolts.engage.rule"),
  "model/stock/lip-rating.test.ts": each("bolts.lip.nut20", "bolts.lip.torque-limit"),
  "facts/tool-room.test.ts": each("bolts.access.key-above", "bolts.swing"),
  "rules/screw.misfit.test.ts": each("bolts.length.window"),
  "rules/hole.near-edge.test.ts": each("bolts.en.edge-M8"),
  "references/bolts.test.ts": [
    { stem: "bolts.metric.", rests: ["M3", ...SIZES] },
    { stem: "bolts.unc.", rests: ["1/4-20", "5/16-18", "3/8-16", "7/16-14", "1/2-13"] },
    { stem: "bolts.hole.", rests: ["M5", "M6", "M8", "M10"] },
    ...each(
      "bolts.K.zinc-plated",
      "bolts.K.lubricated",
      "bolts.mu.design",
      "bolts.swing",
      "bolts.en.edge",
      "bolts.en.edge-M8",
      "bolts.bear.end-on",
    ),
  ],
};

/** By reason. */
const NOT_RUN: Readonly<Record<string, readonly Ids[]>> = {
  "stock holds no screw of this size": [
    { stem: "bolts.head.", rests: ["ISO4762.M3", "ISO7380-1.M3", "ISO10642.M3", "B18.3.7/16", "B18.3.1/2"] },
    ...each("bolts.hole.M3"),
  ],
  "no connector in stock has holes for this screw": [{ stem: "bolts.hole.", rests: ["M4", "M12"] }],
  "no screw in stock takes this key": [{ stem: "bolts.hexkey.", rests: ["1.5", "12", "in.3/8"] }],
  "these nuts belong to the tables of machines; nuts for profiles follow no standard and are measured in stock": [
    { stem: "bolts.tnut.DIN508.", rests: ["M5", "M6", "M8", "M10", "M12"] },
  ],
  "screws are taken as delivered, zinc-plated and dry, or well oiled where that is worse; no other finish is told apart":
    [{ stem: "bolts.K.", rests: ["nonplated-black", "cadmium", "anti-seize"] }],
  "slip is judged by the load that 95 of 100 screws exceed, without a factor for the shape of the hole":
    each("bolts.slip.ks"),
  "blasted steel, blasted aluminium and laboratory-clean faces are not those of anodised profiles (bolts.mu.design)": [
    { stem: "bolts.mu.", rests: ["surface-classes", "al-blasted", "handbook"] },
  ],
  "screws in slots work by friction: none is judged by its shear or by the bearing of its hole": each(
    "bolts.en.shear-tension.M8",
    "bolts.en.bearing",
  ),
  "the legs of brackets are taken as stiff levers (bolts.prying.angle), none as a flange that yields":
    each("bolts.prying.tstub"),
  "stock holds no wrench and no hexagon head": [
    ...each("bolts.wrench.opening", "bolts.prefer.external-hex"),
    { stem: "bolts.wrench.boxhead.", rests: ["7/16", "1/2", "9/16", "5/8", "3/4"] },
  ],
};

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");

/** Whether a test names this: between quotation marks, as the first part of a name there, or as a key. */
const names = (text: string, word: string): boolean =>
  new RegExp(`"${escaped(word)}["-]|\\b${escaped(word)}:`).test(text);

const known = new Set(loadReference("bolts").checks.map(({ id }) => id));
const idsOf = ({ stem, rests = [""] }: Ids): readonly string[] =>
  rests === "all" ? [...known].filter((id) => id.startsWith(stem)) : rests.map((rest) => stem + rest);
const run = new Set(Object.values(RUN).flatMap((held) => held.flatMap(idsOf)));
const listed = Object.values(NOT_RUN).flatMap((left) => left.flatMap(idsOf));

describe("every reference value of bolts", () => {
  test.each([...known])("%s is held by a test or listed with a reason, not both", (id) => {
    expect(Number(run.has(id)) + listed.filter((other) => other === id).length).toBe(1);
  });
  test("nothing is held or listed that is no reference value", () => {
    for (const id of [...run, ...listed]) expect(known.has(id), id).toBe(true);
  });
});

describe.each(Object.entries(RUN))("tests/%s", (file, held) => {
  const text = readFileSync(new URL(`../${file}`, import.meta.url), "utf8");
  test.each(held)("names $stem and each of its sizes", (ids) => {
    expect(text).toContain(ids.stem);
    const rests = ids.rests ?? [];
    if (rests === "all") {
      expect(idsOf(ids).length).toBeGreaterThan(0);
      return;
    }
    for (const rest of rests)
      for (const word of rest.split(/\.(?=\D)/)) expect(names(text, word), `${ids.stem}${rest}`).toBe(true);
  });
});
