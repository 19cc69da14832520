import { describe, expect, test } from "vitest";
import { builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import { nutFor } from "../../../src/model/stock/nut-for.ts";
import type { Screw } from "../../../src/model/stock/stock.ts";
import { loadReference, type ReferenceCheck, referenceCheck } from "../../references/load-reference.ts";

const MM = 1e-3;
const INCH = 0.0254;
const POUND_INCH = 4.4482216152605 * INCH;
const stock = builtinStock();
const screws = [...stock.screws.values()];

function numbers(check: ReferenceCheck): Readonly<Record<string, number>> {
  return check.expected.value as Readonly<Record<string, number>>;
}

function checks(prefix: string): readonly ReferenceCheck[] {
  return loadReference("bolts").checks.filter(({ id }) => id.startsWith(prefix));
}

function only(of: readonly Screw[]): Screw {
  const [first] = of;
  if (first === undefined) throw new Error("no such screw in stock");
  return first;
}

const HEADS = { ISO4762: "cap", "ISO7380-1": "button", ISO10642: "countersunk" } as const;
const SIZES = ["M4", "M5", "M6", "M8", "M10", "M12"];

describe.each(Object.entries(HEADS))("%s", (standard, head) => {
  test.each(SIZES)(`head and socket of %s are those of bolts.head.${standard}`, (size) => {
    const { dk, k, s, t } = numbers(referenceCheck("bolts", `bolts.head.${standard}.${size}`));
    const own = screws.filter((screw) => screw.thread === size && screw.head === head);
    expect(own.length).toBeGreaterThan(0);
    for (const { headDiameter, headHeight, key, socketDepth } of own) {
      expect([headDiameter, headHeight, key, socketDepth].map((size) => Number((size / MM).toFixed(6)))).toEqual([
        dk,
        k,
        s,
        t,
      ]);
    }
  });
});

test.each(SIZES)("pitch of %s is that of bolts.metric", (size) => {
  const { pitch } = numbers(referenceCheck("bolts", `bolts.metric.${size}`));
  for (const screw of screws.filter(({ thread }) => thread === size))
    expect(screw.pitch / MM).toBeCloseTo(pitch ?? 0, 9);
});

test.each(["M4", "M6", "M8", "M12"])("torque of a cap screw %s is that of bolts.torque.8.8, rounded", (size) => {
  const expected = numbers(referenceCheck("bolts", `bolts.torque.8.8.${size}`)).T ?? Number.NaN;
  const screw = only(screws.filter(({ thread, head }) => thread === size && head === "cap"));
  expect(Math.abs(screw.torque / expected - 1)).toBeLessThan(0.06);
});

test.each(["#10-24", "1/4-20", "5/16-18", "3/8-16"])(
  "%s: head of bolts.head.B18.3, diameter of bolts.unc, torque from its proof load",
  (thread) => {
    const { D = 0, proof_g5 = 0 } = numbers(referenceCheck("bolts", `bolts.unc.${thread}`));
    const head = referenceCheck("bolts", `bolts.head.B18.3.${thread.split("-")[0]}`).expected.value as Record<
      string,
      number | string
    >;
    const [over, under] = String(head.key).split("/").map(Number);
    const screw = only(screws.filter((one) => one.thread === thread && one.head === "cap"));
    expect(screw.diameter / INCH).toBeCloseTo(D, 9);
    expect(screw.headDiameter / INCH).toBeCloseTo(Number(head.dk), 9);
    expect(screw.headHeight / INCH).toBeCloseTo(Number(head.k), 9);
    expect(screw.socketDepth / INCH).toBeCloseTo(Number(head.t), 9);
    expect(screw.key / INCH).toBeCloseTo((over ?? 0) / (under ?? 1), 9);
    expect(Math.abs(screw.torque / POUND_INCH / (0.2 * 0.75 * proof_g5 * D) - 1)).toBeLessThan(0.02);
  },
);

test.each(
  checks("bolts.hexkey.").filter(({ id }) => ["2", "2.5", "3", "4", "5", "6", "8", "10"].includes(id.slice(13))),
)("arms and torque of the hex keys are those of $id", ({ id, expected }) => {
  const { l1, l1_long, l2, Md } = expected.value as Record<string, number>;
  const size = id.slice("bolts.hexkey.".length);
  const short = stock.tools.get(`hex-key-${size}`);
  const long = stock.tools.get(`hex-key-long-${size}`);
  expect(short?.longArm).toBeCloseTo((l1 ?? 0) * MM, 9);
  expect(long?.longArm).toBeCloseTo((l1_long ?? 0) * MM, 9);
  for (const tool of [short, long]) {
    expect(tool?.shortArm).toBeCloseTo((l2 ?? 0) * MM, 9);
    expect(tool?.torque).toBe(Md);
    expect(tool?.swing).toBeCloseTo(Math.PI / 3, 9); // bolts.swing: 60° for a hex key that is not turned over
    expect(tool?.tilt).toBe(0);
  }
});

test.each(["5/32", "3/16", "1/4", "5/16"])("arms of the inch key %s are those of bolts.hexkey.in", (size) => {
  const { l1_long = 0, l2 = 0 } = numbers(referenceCheck("bolts", `bolts.hexkey.in.${size}`));
  const tool = stock.tools.get(`hex-key-long-${size}`);
  expect(tool?.longArm).toBeCloseTo(l1_long * INCH, 9);
  expect(tool?.shortArm).toBeCloseTo(l2 * INCH, 9);
});

test("a ball end tilts by the usable 25° of bolts.ballend", () => {
  const usable = numbers(referenceCheck("bolts", "bolts.ballend")).usable ?? 0;
  const tilts = [...stock.tools.values()].filter(({ kind }) => kind === "ball-end-key").map(({ tilt }) => tilt);
  expect(tilts.length).toBeGreaterThan(0);
  for (const tilt of tilts) expect(tilt).toBeCloseTo((usable * Math.PI) / 180, 9);
});

test("a straight key is there for every screw; for cap heads it gives the torque", () => {
  const keys = [...stock.tools.values()].filter(({ kind }) => kind === "hex-key");
  for (const screw of screws) {
    const fitting = keys.filter(({ key }) => Math.abs(key - screw.key) < 1e-5);
    expect(fitting.length, screw.name).toBeGreaterThan(0);
    if (screw.head === "cap")
      for (const { torque } of fitting) expect(torque, screw.name).toBeGreaterThan(screw.torque);
  }
});

test("the first nut by name is taken, of the kind asked for, and none for what does not exist", () => {
  expect(nutFor(stock, "8", "M8", "end-load")?.name).toBe("nut-8-M8");
  expect(nutFor(stock, "8", "M8", "drop-in")?.name).toBe("drop-in-8-M8");
  expect(nutFor(stock, "5", "M8", "end-load")).toBeUndefined();
});

test("nuts lie in the slots they are for", () => {
  for (const nut of stock.nuts.values()) {
    const profiles = [...stock.profiles.values()].filter(({ slotSize }) => slotSize === nut.slotSize);
    expect(profiles.length, nut.name).toBeGreaterThan(0);
    for (const slot of profiles.flatMap(({ slots }) => slots.filter(({ closed }) => !closed))) {
      expect(nut.width).toBeGreaterThan(slot.opening);
      expect(nut.width).toBeLessThan(slot.cavity);
      expect(nut.thickness).toBeLessThanOrEqual(slot.depth - slot.lip);
      if (nut.kind === "drop-in") expect(nut.thickness).toBeLessThan(slot.opening);
    }
  }
});
