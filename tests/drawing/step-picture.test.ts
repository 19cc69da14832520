import { expect, it } from "vitest";
import { buildSheetOf } from "../../src/cli/build-sheet-of.ts";
import { stepPictures } from "../../src/drawing/step-picture.ts";
import { buildOrder } from "../../src/facts/build-order.ts";
import { factOf } from "../../src/facts/fact.ts";
import { noSettings } from "../../src/house/settings.ts";
import { buildSvg } from "../../src/report/build/svg.ts";
import { cradled, glazed, standingBox } from "../facts/build-frames.ts";
import { frameOf, one } from "../facts/known.ts";
import { edited } from "../rules/base-frames.ts";

const SEEN_THROUGH = /fill-opacity="0\.35"/;

it("a panel is drawn as it is put in, before the last bar round it", () => {
  const frame = frameOf(glazed());
  const order = factOf(buildOrder, frame);
  const draw = stepPictures(frame, [400, 300]);
  const pane = (number: number): boolean => SEEN_THROUGH.test(draw({ first: number, last: number }, "step"));
  const at = one(order.placedAt("pane"));
  expect(order.steps.find(({ number }) => number > at && number)?.what).toBe("place");
  expect([pane(at - 1), pane(at)]).toEqual([false, true]);
});

it("equipment and caps are drawn from the step that puts them on, brought out there", () => {
  const frame = frameOf(
    edited(standingBox(1000), (file) => {
      file.masses = [
        { id: "box", mass: 3, centre: [300, 0, 500], box: [100, 60, 100], on: ["front-low"] },
        { id: "goods", mass: 3, centre: [300, 200, 500], box: [100, 60, 100], on: ["front-low"], fixed: false },
      ];
    }),
  );
  const { steps } = factOf(buildOrder, frame);
  const draw = stepPictures(frame, [400, 300]);
  const shown = (number: number): string => draw({ first: number, last: number }, "step");
  const equipment = one(steps.find(({ what }) => what === "equipment")).number;
  expect(shown(equipment - 1)).not.toMatch(SEEN_THROUGH);
  expect(shown(equipment)).toMatch(SEEN_THROUGH);
  expect(shown(equipment)).not.toContain("mass goods");
  // Once on, it is drawn as the rest.
  const boxIn = (picture: string) => /<g data-part="mass box"[\s\S]*?<\/g>/.exec(picture)?.[0];
  expect(boxIn(shown(equipment + 1))).toBeDefined();
  expect(boxIn(shown(equipment + 1))).not.toBe(boxIn(shown(equipment)));
});

it("words under a picture stay inside its cell", () => {
  const frame = frameOf(standingBox(1000));
  const svg = [...buildSvg(buildSheetOf("box.frame.json", frame, noSettings("2027-03-31")))].join("");
  const words = [...svg.matchAll(/<text x="10"[^>]*>([^<]*)</g)].map(([, text = ""]) => text);
  expect(words.some((text) => text.includes("end-fastener-8"))).toBe(true);
  // A letter of this size is at most about 6.6 wide in the mean; the cell is 420 wide.
  for (const text of words) expect(text.length).toBeLessThanOrEqual(60);
  // Nothing is cut off, and no word of any cell lies under its frame.
  expect(svg).not.toContain("…");
  const cells = svg.split('<g transform="translate(').slice(1);
  expect(cells.length).toBeGreaterThan(3);
  for (const cell of cells) {
    const high = Number(/<rect width="420" height="(\d+)"/.exec(cell)?.[1]);
    const lows = [...cell.matchAll(/<text x="10" y="(\d+)"/g)].map(([, y]) => Number(y));
    expect(Math.max(...lows)).toBeLessThan(high);
  }
});

/** How high on the picture, counted downwards, the outlines of all parts start, and the corners of the table lie. */
function heights(picture: string): { readonly parts: readonly number[]; readonly table: readonly number[] } {
  const parts = [...picture.matchAll(/<g data-part=[\s\S]*?<\/g>/g)].flatMap(([part]) =>
    [...part.matchAll(/M-?[\d.]+[ ,]?(-?[\d.]+)/g)].map(([, y]) => Number(y)),
  );
  const [, ring = ""] = /data-band="the table" d="M([^"]*)"/.exec(picture) ?? [];
  return { parts, table: ring.split("L").map((corner) => Number(corner.split(" ")[1])) };
}

it("pieces lie on a table, and what goes into the frame has an arrow for each leg of its way", () => {
  const frame = frameOf(cradled());
  const { steps } = factOf(buildOrder, frame);
  const draw = stepPictures(frame, [400, 300]);
  const into = one(steps.find(({ assembly, path }) => assembly === "" && path?.legs.length === 2)).number;
  const standing = draw({ first: into, last: into }, "step");
  expect(standing).not.toContain("the table");
  expect(standing.match(/data-band="way in, step/g)).toHaveLength(2);
  const first = one(steps.find(({ assembly, what }) => assembly === "cradle" && what === "place")).number;
  expect(draw({ first, last: first }, "step")).not.toContain("way in");
});

it("a flat piece that stands in the frame is drawn lying: all of it over the table, not above it", () => {
  const frame = frameOf(standingBox(1000));
  const { steps } = factOf(buildOrder, frame);
  const last = one(steps.findLast(({ assembly, what }) => assembly !== "" && what === "place")).number;
  const { parts, table } = heights(stepPictures(frame, [400, 300])({ first: last, last }, "step"));
  expect(parts.length).toBeGreaterThan(10);
  expect(table).toHaveLength(5);
  // The table stands out by 6 % of its length all round, more than a bar is thick as seen from a corner; posts 1000 mm high would rise far over it.
  expect(Math.min(...parts)).toBeGreaterThan(Math.min(...table));
  expect(Math.max(...parts)).toBeLessThan(Math.max(...table));
});
