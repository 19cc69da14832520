import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { factOf } from "../../src/facts/fact.ts";
import { guardReach } from "../../src/facts/guard-reach.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/guard.within-reach.ts";
import { frameOf } from "../facts/known.ts";
import { edited } from "./base-frames.ts";

/** A guard 800 x 700 mm of 45 mm bars: planes at x = 22.5 and 777.5, y = 22.5 and 677.5 mm, low rails from 77.5 mm, top at 1322.5 mm. */
const base = JSON.parse(readFileSync("docs/rules/guard.within-reach.sound.frame.json", "utf8")) as FrameFile;
const PLANE = 0.0225;
const GAP = 0.0775;
const TOP = 1.3225;

type Box = NonNullable<FrameFile["zones"]>[number]["box"];
const zone =
  (box: Box, risk: "low" | "high" = "high") =>
  (file: FrameFile): void => {
    file.zones = [{ id: "blade", box, risk }];
  };
const without =
  (...ids: readonly string[]) =>
  (file: FrameFile): void => {
    file.panels = (file.panels ?? []).filter(({ id }) => !ids.includes(id));
  };
const all =
  (...edits: readonly ((file: FrameFile) => void)[]) =>
  (file: FrameFile): void => {
    for (const edit of edits) edit(file);
  };
const floor =
  (z: number) =>
  (file: FrameFile): void => {
    file.floor = { z };
  };
const four = (key: string, measured?: number) =>
  Array.from({ length: 4 }, () => ({ at: "blade", key, ...(measured === undefined ? {} : { measured }) }));

it("guard.within-reach: gap over the floor, guard without a roof, panel left out, by hand", () => {
  const wrong = proveRule(rule, base, [
    {
      title: "8 mm nearer to the gap than an arm reaches",
      edit: zone([
        [200, 300, 900],
        [400, 440, 1050],
      ]),
      finds: [{ at: "blade", key: "through", measured: Math.hypot(0.2 - PLANE, 0.9 - GAP) }],
    },
    {
      title: "10 mm further off than that",
      edit: zone([
        [245, 300, 900],
        [400, 440, 1050],
      ]),
      finds: [],
    },
    { title: "a panel left out", edit: without("right-upper"), finds: [{ at: "blade", key: "body" }] },
    {
      title: "a zone that stands out of the guard at the back",
      edit: zone([
        [300, 300, 950],
        [400, 800, 1050],
      ]),
      finds: [{ at: "blade", key: "bare" }],
    },
    {
      // Low risk, 1322.5 mm of guard: Table 1 asks 200 mm at up to 200 mm of height behind 1.2 m.
      title: "reached over, the guard closed down to the floor",
      edit: all(
        without("roof"),
        floor(GAP * 1e3),
        zone(
          [
            [210, 300, 150],
            [400, 440, 170],
          ],
          "low",
        ),
      ),
      finds: [{ at: "blade", key: "over", measured: 0.21 - PLANE }],
    },
    {
      title: "as far from that side as the table asks",
      edit: all(
        without("roof"),
        floor(GAP * 1e3),
        zone(
          [
            [230, 300, 150],
            [400, 440, 170],
          ],
          "low",
        ),
      ),
      finds: [],
    },
    {
      title: "a floor so high that the guard is stepped over",
      edit: all(
        without("roof"),
        floor(340),
        zone([
          [300, 300, 950],
          [400, 400, 1050],
        ]),
      ),
      finds: four("low", TOP - 0.34),
    },
    {
      // 1022.5 mm of guard count as 1 m, hazard at 650 to 750 mm: Table 2 asks 1500 mm.
      title: "a floor just low enough for a guard of 1 m",
      edit: all(
        without("roof"),
        floor(300),
        zone([
          [300, 300, 950],
          [400, 400, 1050],
        ]),
      ),
      finds: [0.3 - PLANE, 0.3 - PLANE, 0.6775 - 0.4, 0.7775 - 0.4].map((measured) => ({
        at: "blade",
        key: "over",
        measured,
      })),
    },
    {
      title: "a hazard over everybody's head",
      edit: zone([
        [300, 300, 2700],
        [400, 400, 2900],
      ]),
      finds: [],
    },
    { title: "no zone", edit: (file) => delete file.zones, finds: [] },
  ]);
  expect(wrong).toEqual([]);
});

it("an opening is told by its own width: the gap under the low rail, and what a panel left out lets through", () => {
  const clear = (edit: (file: FrameFile) => void): readonly (number | undefined)[] => {
    const [blade] = factOf(guardReach, frameOf(edited(base, edit)));
    return (blade?.sides ?? []).filter(({ name }) => name === "-x side").map(({ through }) => through?.clear);
  };
  expect(clear(() => {})[0]).toBeCloseTo(GAP, 4);
  // Between the posts: 700 - 2 · 45 = 610 mm; between the low rail's top at 122.5 and the middle rail's underside at 617.5 mm: 495 mm.
  expect(clear(without("left-lower"))[0]).toBeCloseTo(0.495, 4);
});
