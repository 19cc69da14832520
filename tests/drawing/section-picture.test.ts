import { expect, it } from "vitest";
import { sectionPicture } from "../../src/drawing/section-picture.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";

function picture(name: string, as = name): string {
  const profile = builtinStock().profiles.get(name);
  if (!profile) throw new Error(name);
  return sectionPicture({ ...profile, name: as }, sectionOf(profile), "40 mm × 40 mm");
}

const namesIn = (svg: string): readonly string[] => [...svg.matchAll(/>([A-D]\d)</g)].map(([, name = ""]) => name);

it("names every slot by face and number", () => {
  expect(namesIn(picture("40x40-8"))).toEqual(["A1", "B1", "C1", "D1"]);
  expect([...namesIn(picture("40x80-8"))].sort()).toEqual(["A1", "B1", "B2", "C1", "D1", "D2"]);
});

it("draws metal [y, z] with y up and z to the left, to scale", () => {
  // 40 mm on 360 units with 84 round them: the middle at 264; the outline is 40 mm square, so it spans 84 … 444.
  const [, path = ""] = /<path d="(M[^Z]*)Z/.exec(picture("40x40-8")) ?? [];
  const points = path
    .slice(1)
    .split("L")
    .map((pair) => pair.split(" ").map(Number));
  expect(Math.min(...points.map(([x = 0]) => x))).toBe(84);
  expect(Math.max(...points.map(([, y = 0]) => y))).toBe(444);
});

it("shows the shear centre only where it is another point than the centroid", () => {
  expect(picture("40x40-8")).toContain("disc: centroid and shear centre");
  // Two neighbouring faces closed, A (up) and B (left): it lies 5.67 mm up and left of the middle, 51 units.
  const svg = picture("40x40-8-two-closed");
  expect(svg).toContain("diamond: shear centre");
  const [, x, y] = /<path d="M([\d.]+) ([\d.]+)L[\d. ]+L[\d. ]+L[\d. ]+Z" fill="#ffffff"/.exec(svg) ?? [];
  expect(Number(x)).toBeCloseTo(264 - 5.67 * 9, 0);
  expect(Number(y)).toBeCloseTo(264 - 5.67 * 9 - 7, 0);
});

it("is inert: no script, no style, nothing fetched, names escaped", () => {
  const svg = picture("40x40-8", '<script>alert("&")</script>');
  expect(svg).not.toMatch(/<script|<style|style=|href|url\(|on\w+=/);
  expect(svg).toContain("&lt;script&gt;alert(&quot;&amp;&quot;)");
  expect(svg.replaceAll("http://www.w3.org/2000/svg", "")).not.toContain("//");
});
