import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadReference } from "./load-reference.ts";

/** Ids by test file under tests, or by reason; a stem ends in a dot and stands for all values that begin with it. */
export type Stems = Readonly<Record<string, readonly string[]>>;

/**
 * Of every reference value of a family: which test holds it, or why none does. A value in neither list, or in both, fails, and so does
 * a stem that no test file names.
 */
export function registerFamily(family: Parameters<typeof loadReference>[0], held: Stems, notHeld: Stems): void {
  const ids = loadReference(family).checks.map(({ id }) => id);
  const meant = (stem: string): readonly string[] =>
    stem.endsWith(".") ? ids.filter((id) => id.startsWith(stem)) : ids.filter((id) => id === stem);
  const listed = [...Object.values(held), ...Object.values(notHeld)].flat().flatMap(meant);

  describe(`every reference value of ${family}`, () => {
    it.each(ids)("%s is held by a test or listed with a reason, not both", (id) => {
      expect(listed.filter((other) => other === id)).toHaveLength(1);
    });

    it("stems stand for something, and the tests name them", () => {
      for (const [file, stems] of Object.entries(held)) {
        const text = readFileSync(new URL(`../${file}`, import.meta.url), "utf8");
        for (const stem of stems) {
          expect(meant(stem).length, stem).toBeGreaterThan(0);
          expect(text, file).toContain(stem.replace(/\.$/, ""));
        }
      }
      for (const stem of Object.values(notHeld).flat()) expect(meant(stem).length, stem).toBeGreaterThan(0);
    });
  });
}
