import { describe, expect, it } from "vitest";
import { buildSheetOf } from "../../src/cli/build-sheet-of.ts";
import { buildPlan } from "../../src/facts/build-plan.ts";
import { factOf } from "../../src/facts/fact.ts";
import { noSettings } from "../../src/house/settings.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import type { BuildSheet, Handling } from "../../src/report/build/build-sheet.ts";
import { handlingWords } from "../../src/report/build/step-words.ts";
import { buildSvg } from "../../src/report/build/svg.ts";
import { buildText } from "../../src/report/build/text.ts";
import { edited } from "../rules/base-frames.ts";
import { ladder } from "./build-frames.ts";
import { frameOf } from "./known.ts";

const sheetOf = (file: FrameFile): BuildSheet =>
  buildSheetOf("gaps.frame.json", frameOf(file), noSettings("2027-03-31"));
const textOf = (file: FrameFile): string => [...buildText(sheetOf(file))].join("");

const twoRails = (): FrameFile => ladder({ low: { z: 100, on: "above" }, high: { z: 900, on: "above" } });

it("a group of which nothing joins the parts is named, and no other", () => {
  const text = textOf({ ...twoRails(), groups: [{ id: "posts", parts: ["post-1", "post-2"] }] });
  expect(text).toContain('"posts" is no piece: nothing in it joins post-2 to the rest of it.');
  expect(textOf({ ...twoRails(), groups: [{ id: "side", parts: ["post-1", "low"] }] })).not.toContain("is no piece");
});

describe("screws that find no slot", () => {
  /** The rail is drawn 12 mm beside the middle of the posts, so that its screws meet no slot. */
  const beside = edited(twoRails(), (file) => {
    for (const bar of file.bars) if (bar.id === "low") Object.assign(bar, { from: [0, 12, 100], to: [600, 12, 100] });
  });

  it("make up, with the nuts laid in, what is tightened", () => {
    const pieces = factOf(buildPlan, frameOf(beside));
    const sum = (counts: readonly { readonly count: number }[]): number =>
      counts.reduce((total, { count }) => total + count, 0);
    const without = pieces.flatMap(({ slotless }) => slotless);
    expect(without).toHaveLength(2);
    expect(sum(pieces.flatMap(({ nuts }) => nuts)) + without.length).toBe(
      sum(pieces.flatMap(({ steps }) => steps.flatMap(({ tightens }) => tightens))),
    );
    expect(textOf(beside)).toContain("No slot, or no nut that fits it, for 2 screws: ");
  });

  it("are not named of a sound frame", () => {
    expect(textOf(twoRails())).not.toContain("No slot");
  });
});

it("screws and nuts are said to be left out where they may be what is too much for one", () => {
  const sheet = sheetOf(twoRails());
  // 25 kg: ISO 11228-1, for one person.
  const weighing = (mass: number): Handling => ({
    ref: { kind: "bar", id: "low" },
    what: "low",
    centre: [0, 0, 0],
    mass,
    people: sheet.peopleFor(mass),
  });
  expect(handlingWords(weighing(24), sheet)).toBe("24 kg without screws and nuts: 1 person");
  expect(handlingWords(weighing(20), sheet)).toBe("20 kg: 1 person");
  expect(handlingWords(weighing(26), sheet)).toBe("26 kg: 2 people");
});

it("pictures say where the frame lies, as the words do", () => {
  const sheet = sheetOf(twoRails());
  const [piece] = sheet.pieces;
  if (!piece) throw new Error("no piece");
  const [first, ...others] = piece.planned.steps;
  if (!first) throw new Error("no step");
  const lying = {
    ...sheet,
    pieces: [
      {
        ...piece,
        planned: {
          ...piece.planned,
          lyingOn: [-1, 0, 0] as const,
          steps: [{ ...first, step: { ...first.step, lying: true } }, ...others],
        },
      },
    ],
  };
  expect([...buildSvg(lying)].join("")).toContain("begin it lying on its -x side");
  expect([...buildSvg(sheet)].join("")).not.toContain("lying on");
});
