import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { placePicture } from "../../src/drawing/place-picture.ts";
import { sceneOf } from "../../src/drawing/scene.ts";
import { frameOf, one } from "../facts/known.ts";

const sceneFor = (rule: string) =>
  sceneOf(frameOf(JSON.parse(readFileSync(`docs/rules/${rule}.fault.frame.json`, "utf8"))));
/** What is drawn in the ochre of parts brought out: far less blue than red. */
const broughtOut = (svg: string): readonly string[] =>
  [...svg.matchAll(/<g data-part="([^"]*)"[^>]*>(.*?)<\/g>/g)]
    .filter(([, , drawn = ""]) => {
      const [, fill = "ffffff"] = /fill="#([0-9a-f]{6})"/.exec(drawn) ?? [];
      const [red, blue] = [0, 4].map((at) => Number.parseInt(fill.slice(at, at + 2), 16));
      return (blue ?? 0) < 0.75 * (red ?? 0);
    })
    .map(([, part = ""]) => part);

describe("where the parts of a finding are", () => {
  const clash = sceneFor("bar.clash");
  const plain = { title: "where they are", near: () => true, whole: () => true };

  it("shows two bars that meet from near by, where they do", () => {
    const picture = one(placePicture(clash, ["rail", "stay"], [], plain));
    expect(picture.seen).toBe("near");
    expect([...new Set(broughtOut(picture.svg))].sort()).toEqual(["bar rail", "bar stay"]);
  });

  it("shows one bar on the whole frame, if that may be drawn", () => {
    const picture = one(placePicture(clash, ["rail"], [], plain));
    expect(picture.seen).toBe("whole");
    expect(broughtOut(picture.svg)).toEqual(["bar rail"]);
    expect(placePicture(clash, ["rail"], [], { ...plain, whole: () => false })).toBeUndefined();
  });

  it("shows the connectors of screws and nuts with the bar they are in, not all that is on the bar", () => {
    const named = ["leg-1", "lower.from/1/b1/nut", "rail.from/2/b1/nut"];
    const picture = one(placePicture(sceneFor("nut.clash"), named, [], plain));
    expect(picture.seen).toBe("near");
    const parts = new Set(broughtOut(picture.svg));
    expect(parts).toContain("bar leg-1");
    for (const part of parts)
      expect(part).toMatch(/^(bar leg-1|(connector|screw) (lower\.from\/1|rail\.from\/2)\b.*)$/);
  });

  it("shows a zone as the twelve edges of its box", () => {
    const frame = frameOf(JSON.parse(readFileSync("docs/rules/guard.within-reach.fault.frame.json", "utf8")));
    const { ref, low, high } = one(frame.zones[0]);
    const picture = one(placePicture(sceneOf(frame), [ref.id], [{ id: ref.id, low, high }], plain));
    expect(picture.svg.match(/data-band="blade"/g)).toHaveLength(12);
  });

  it("shows nothing of what has no shape", () => {
    expect(placePicture(clash, ["nowhere"], [], plain)).toBeUndefined();
  });
});
