import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadReference } from "../references/load-reference.ts";

const FAMILIES = ["beams", "columns", "torsion-and-sections", "bolts", "materials", "loads", "plates", "safety"];
const PAGE = "docs/method/check-values.md";
const ids = FAMILIES.flatMap((family) => loadReference(family).checks.map(({ id }) => id));
const [used = "", unused = ""] = readFileSync(PAGE, "utf8").split("\n## ");

/** Ids named in a text: between backquotes, beginning with the name of a family. */
const named = (text: string): readonly string[] =>
  Array.from(text.matchAll(/`([^`\s]+)`/g), ([, name = ""]) => name).filter((name) =>
    FAMILIES.some((family) => name.startsWith(`${family}.`)),
  );
const meant = (pattern: string): readonly string[] =>
  pattern.endsWith("*") ? ids.filter((id) => id.startsWith(pattern.slice(0, -1))) : ids.filter((id) => id === pattern);
const rows = (text: string): readonly string[] => text.split("\n").filter((line) => line.startsWith("| "));
const inTable = (text: string): readonly string[] => named(rows(text).join("\n")).flatMap(meant);

describe("the page that says which value stands behind which formula", () => {
  it("names every reference value once: behind a formula, or with the reason why it is not", () => {
    const placed = [...inTable(used), ...inTable(unused)];
    const counts = ids.map((id) => ({ id, times: placed.filter((other) => other === id).length }));
    expect(counts.filter(({ times }) => times !== 1)).toEqual([]);
  });

  it("names no value that is not there", () => {
    expect(named(used + unused).filter((pattern) => meant(pattern).length === 0)).toEqual([]);
  });

  it("names tests that are there, and headings that are there", () => {
    const files = Array.from((used + unused).matchAll(/tests\/[\w./-]+\.ts/g), ([file]) => file);
    expect(files.filter((file) => !existsSync(file))).toEqual([]);
    const links = Array.from(used.matchAll(/\]\(([^)#]+)#([^)]+)\)/g), ([, file = "", anchor = ""]) => ({
      file,
      anchor,
    }));
    const missing = links.filter(({ file, anchor }) => {
      const text = readFileSync(`docs/method/${file}`, "utf8");
      const anchors = Array.from(text.matchAll(/^#+ (.+)$/gm), ([, title = ""]) =>
        title
          .toLowerCase()
          .replace(/[^\w\s-]/g, "")
          .trim()
          .replace(/\s/g, "-"),
      );
      return !anchors.includes(anchor);
    });
    expect(missing).toEqual([]);
  });

  it("each row that names a formula names a value and a test", () => {
    for (const row of rows(used).slice(2)) {
      expect(named(row).length, row).toBeGreaterThan(0);
      expect(row, row).toMatch(/tests\//);
    }
  });
});
