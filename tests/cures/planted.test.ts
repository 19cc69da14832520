import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { Cure } from "../../src/cures/cure.ts";
import { kneeBrace } from "../../src/cures/knee-brace.ts";
import { postAtMidSpan } from "../../src/cures/post-at-mid-span.ts";
import { seatOnPost } from "../../src/cures/seat-on-post.ts";
import { sturdierJoint } from "../../src/cures/sturdier-joint.ts";
import { noSettings } from "../../src/house/settings.ts";
import { applyEdits } from "../../src/inspection/apply-edits.ts";
import { inspectOnce } from "../../src/inspection/inspect-once.ts";
import { offerCures } from "../../src/inspection/offer-cures.ts";
import type { Finding } from "../../src/inspection/report.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";
import { forceFor, hungRails } from "../rules/hung-rails.ts";

const house = { ...noSettings("2000-01-01"), rules: builtInRules };
const inspectionOf = (file: unknown) => ({
  file: "planted.frame.json",
  bytes: new TextEncoder().encode(JSON.stringify(file)),
  stock: [],
  house,
});

const brackets = (on: readonly ("above" | "below")[]): NonNullable<FrameFile["kits"]>[string] =>
  on.map((face) => ({ connector: "inside-bracket-40", on: face, torque: "20 N·m" })) as NonNullable<
    FrameFile["kits"]
  >[string];

/** Rails of which every end passes this much, N, on brackets on these faces, their posts running on past them. */
function hung(shear: number, on: readonly ("above" | "below")[], top = 1000): FrameFile {
  const file = hungRails(forceFor(shear), top);
  Object.assign(file.kits ?? {}, { rail: brackets(on) });
  return file;
}

const sagging = (): FrameFile => JSON.parse(readFileSync("docs/rules/bar.sags.fault.frame.json", "utf8")) as FrameFile;

/** A tall table: firm between its short sides, and on plain brackets along the long ones. */
function swaying(): FrameFile {
  const file = hungRails(200, 1160);
  file.bars = file.bars.filter(({ id }) => !id.startsWith("tie")) as FrameFile["bars"];
  for (const { id, from, to } of file.bars) {
    if (id === "front" || id === "back") from[2] = to[2] = 1100;
    if (id.startsWith("cross")) from[2] = to[2] = 1000;
  }
  Object.assign(file.kits ?? {}, { rail: brackets(["above", "below"]) });
  file.joints = [
    { bars: ["front", "back"], by: "rail" },
    { bars: ["cross-1", "cross-2", "low-1", "low-2"], by: "firm" },
  ];
  file.criteria = { sway: "span / 300" };
  return file;
}

const rows: readonly (readonly [string, { file: FrameFile; rule: string; cure: Cure; words: RegExp }])[] = [
  [
    "an extra post under the middle of a bar that sags",
    { file: sagging(), rule: "bar.sags", cure: postAtMidSpan, words: /^another post under its middle, like / },
  ],
  [
    "a second bracket where one slips",
    {
      file: hung(900, ["below"]),
      rule: "joint.slips",
      cure: sturdierJoint,
      words: /^a second inside-bracket-40 on "above"/,
    },
  ],
  [
    "a larger bracket where two slip",
    {
      file: hung(1800, ["below", "above"]),
      rule: "joint.slips",
      cure: sturdierJoint,
      words: / instead of inside-bracket-40/,
    },
  ],
  [
    "a seat where a bar hangs",
    { file: hung(510, ["below"], 820), rule: "joint.hung", cure: seatOnPost, words: /^back run over the top of / },
  ],
  [
    "knee braces where a frame sways",
    { file: swaying(), rule: "frame.sways", cure: kneeBrace, words: /^4 knee braces at 45°, 300 mm from the corners / },
  ],
];

it.each(rows)("%s: the frame drawn so has that finding no more, nor any other", (_, { file, rule, cure, words }) => {
  const inspection = inspectionOf(file);
  const before = inspectOnce(inspection);
  const about = (one: Finding): string => `${one.rule} ${one.key} ${one.at.id}`;
  const { findings } = offerCures(inspection, before, [cure], 2);
  const mended = findings.find((one) => one.rule === rule && one.cures.length > 0);
  expect(mended?.cures.map((one) => one.words)).toEqual([expect.stringMatching(words)]);
  const edits = mended?.cures[0]?.edits ?? [];
  // What a reader gets who lets the cure be written into the file.
  const after = inspectOnce(inspectionOf(applyEdits(file, edits))).report;
  const known = before.report.findings.map(about);
  const left = after.findings.map(about);
  expect(left).not.toContain(mended && about(mended));
  for (const one of left) expect(known).toContain(one);
});
