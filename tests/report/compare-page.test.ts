import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { textOf } from "../demo/inspect-demo.ts";
import { comparisonPage } from "./comparison-page.ts";
import { revisedBench } from "./revised-bench.ts";

const old = textOf("potting-bench");
/** Eight bars: enough where nothing is drawn anew. */
const small = readFileSync("docs/rules/frame.unbraced.sound.frame.json", "utf8");

describe("the page of a comparison", () => {
  const page = comparisonPage(old, revisedBench());

  it("draws what was added, moved and changed solid, and what was removed, moved or changed also as it was", () => {
    const isometric = page.slice(page.indexOf('data-view="isometric"'), page.indexOf('data-view="narrow"'));
    const ghosts = [...isometric.matchAll(/data-ghost="bar ([^"]*)"/g)].map(([, id]) => id);
    expect(ghosts.sort()).toEqual(["cross-3", "shelf-2", "side-2"]);
    const solid = [...isometric.matchAll(/data-part="bar ([^"]*)"/g)].map(([, id]) => id);
    expect(solid).toContain("upright-3");
    expect(solid).not.toContain("shelf-2");
    for (const word of ["A1", "R1", "M1", "C1"]) expect(isometric).toContain(`>${word}</text>`);
  });

  it("says of each bar what became of it", () => {
    expect(page).toMatch(/A1<\/span><\/td><th scope="row">upright-3<\/th><td>added<\/td><td>40x40-8/);
    expect(page).toMatch(/R1<\/span><\/td><th scope="row">shelf-2<\/th><td>removed/);
    expect(page).toMatch(/M1<\/span><\/td><th scope="row">cross-3<\/th><td>moved<\/td><td>an end by 150 mm/);
    // shelf-2 of 1500 mm is not upright-3; bars of which the same is said stand in one row.
    expect(page).not.toContain("perhaps");
    expect(page).toMatch(/C1<\/span><\/td><th scope="row">side-2<\/th><td>changed<\/td><td>profile 40x40-8 → 40x80-8/);
  });

  it("tells what other parts say otherwise, or that none does", () => {
    const other = comparisonPage(small, small.replace('"units"', '"method": "allowable-stress", "units"'));
    expect(other).toMatch(/<td>frame<\/td>.*<td>changed<\/td><td>method not given → allowable-stress<\/td>/);
    expect(comparisonPage(small, small)).toContain("No other part was added, removed or changed.");
  });

  it("tells new findings apart from those that are gone", () => {
    expect(page).toContain("6 new, 0 worse, 0 better, 0 gone, 0 as before.");
    const back = comparisonPage(revisedBench(), old);
    expect(back).toContain("0 new, 0 worse, 0 better, 6 gone, 0 as before.");
    expect(back).toContain('<section id="gone">');
    expect(back).not.toContain('<section id="new">');
  });

  it("shows what was and what is of a finding that got worse", () => {
    const heavy = (line: string): string => small.replace(/"line": [^,}\]]+/g, `"line": ${line}`);
    const worse = comparisonPage(heavy("30"), heavy("45"));
    const section = worse.slice(worse.indexOf('<section id="worse">'));
    expect(section).toContain('<th scope="col">Was</th><th scope="col">Is</th>');
  });

  it("marks nothing where nothing changed", () => {
    const same = comparisonPage(small, small);
    expect(same).toContain("No bar was added, removed, moved or changed.");
    expect(same).not.toContain("data-ghost");
  });

  it("compares nothing where a file cannot be read, and says so", () => {
    const torn = comparisonPage(small, "{");
    expect(torn).toContain("neither parts nor findings can be compared");
    expect(torn).toContain("UNREAD");
    expect(torn).not.toContain("<figure");
  });

  it("lets in its style alone, holds no script, and is the same for the same input", () => {
    expect(page).toMatch(
      /content="default-src &#39;none&#39;; style-src &#39;sha256-[^&]+&#39;; base-uri &#39;none&#39;; form-action &#39;none&#39;"/,
    );
    expect(page).not.toMatch(/<script|<img|\sstyle=|https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
    expect(comparisonPage(old, revisedBench())).toBe(page);
  });
});
