import { describe, expect, it } from "vitest";
import { shortestRing } from "../../src/facts/build/ring.ts";
import { strongComponents } from "../../src/facts/build/strong-components.ts";

// T. Cormen, C. Leiserson, R. Rivest, C. Stein, "Introduction to Algorithms", figure 22.9 (from memory).
const GRAPH: Readonly<Record<string, string>> = {
  a: "b",
  b: "cef",
  c: "dg",
  d: "ch",
  e: "af",
  f: "g",
  g: "fh",
  h: "h",
};
const next = (node: string): readonly string[] => [...(GRAPH[node] ?? "")];

describe("strongly connected sets", () => {
  it("of the textbook's graph are abe, cd, fg and h, and none leads to one that comes later", () => {
    const sets = strongComponents(Object.keys(GRAPH), next).map((set) => [...set].sort().join(""));
    expect([...sets].sort()).toEqual(["abe", "cd", "fg", "h"]);
    const place = (node: string): number => sets.findIndex((set) => set.includes(node));
    for (const node of Object.keys(GRAPH))
      for (const to of next(node)) expect(place(to)).toBeLessThanOrEqual(place(node));
  });

  it("of a long chain take no recursion", () => {
    const nodes = Array.from({ length: 200_000 }, (_, i) => i);
    expect(strongComponents(nodes, (i) => (i + 1 < nodes.length ? [i + 1] : []))).toHaveLength(nodes.length);
  });
});

describe("the shortest ring", () => {
  it("of the textbook's graph is the loop at h; without it, the first of two", () => {
    expect(shortestRing(Object.keys(GRAPH), next)).toEqual(["h"]);
    const plain = (node: string): readonly string[] => next(node).filter((to) => to !== node);
    expect(shortestRing(Object.keys(GRAPH), plain)).toEqual(["c", "d"]);
    expect(shortestRing(["a", "b"], () => [])).toBeUndefined();
  });
});
