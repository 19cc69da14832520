import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assembleSymmetric } from "../../../src/mechanics/sparse/assemble.ts";
import { eliminationTree, factorFlops, postorder } from "../../../src/mechanics/sparse/elimination-tree.ts";
import { groupByJoint, type JointGraph } from "../../../src/mechanics/sparse/joint-graph.ts";
import { minimumDegree } from "../../../src/mechanics/sparse/minimum-degree.ts";
import { nestedDissection } from "../../../src/mechanics/sparse/nested-dissection.ts";
import { reverseCuthillMcKee } from "../../../src/mechanics/sparse/reverse-cuthill-mckee.ts";
import { gridFrame } from "./frames.ts";

const ORDERINGS = [minimumDegree, nestedDissection, reverseCuthillMcKee] as const;

function graphOf(
  joints: number,
  edges: readonly (readonly [number, number])[],
  weight?: readonly number[],
): JointGraph {
  const sets = Array.from({ length: joints }, () => new Set<number>());
  for (const [a, b] of edges) {
    if (a === b) continue;
    sets[a]?.add(b);
    sets[b]?.add(a);
  }
  const start = new Int32Array(joints + 1);
  sets.forEach((set, v) => {
    start[v + 1] = (start[v] ?? 0) + set.size;
  });
  return {
    joints,
    start,
    neighbour: Int32Array.from(sets.flatMap((set) => [...set])),
    weight: Int32Array.from({ length: joints }, (_, v) => weight?.[v] ?? 1),
  };
}

const graphs = fc
  .integer({ min: 1, max: 90 })
  .chain((joints) =>
    fc
      .tuple(
        fc.array(fc.tuple(fc.nat(joints - 1), fc.nat(joints - 1)), { maxLength: 3 * joints }),
        fc.array(fc.integer({ min: 1, max: 6 }), { minLength: joints, maxLength: joints }),
      )
      .map(([edges, weight]) => graphOf(joints, edges, weight)),
  );

function grid(nx: number, ny: number): JointGraph {
  const edges: [number, number][] = [];
  for (let x = 0; x < nx; x++) {
    for (let y = 0; y < ny; y++) {
      if (x + 1 < nx) edges.push([x * ny + y, (x + 1) * ny + y]);
      if (y + 1 < ny) edges.push([x * ny + y, x * ny + y + 1]);
    }
  }
  return graphOf(nx * ny, edges);
}

/** Column heights by playing the elimination game (Parter 1961) on sets. */
function playElimination(graph: JointGraph, order: Int32Array): number[] {
  const sets = Array.from(
    { length: graph.joints },
    (_, v) => new Set(graph.neighbour.subarray(graph.start[v], graph.start[v + 1])),
  );
  return [...order].map((v) => {
    const later = [...(sets[v] ?? [])];
    for (const a of later) {
      sets[a]?.delete(v);
      for (const b of later) if (a !== b) sets[a]?.add(b);
    }
    return later.reduce((sum, u) => sum + (graph.weight[u] ?? 0), graph.weight[v] ?? 0);
  });
}

describe.each(ORDERINGS.map((find) => [find.name, find] as const))("%s", (_name, find) => {
  test("numbers every joint exactly once, whatever the graph", () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const order = find(graph);
        expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: graph.joints }, (_, v) => v));
      }),
    );
  });

  test("repeats itself", () => {
    const graph = grid(23, 17);
    expect(find(graph)).toEqual(find(graph));
  });

  test("makes little fill in a chain, which costs 4(n − 1) + 1 operations at best", () => {
    const n = 400;
    const chain = graphOf(
      n,
      Array.from({ length: n - 1 }, (_, v) => [v, v + 1] as const),
    );
    const flops = factorFlops(chain, eliminationTree(chain, find(chain)));
    // Cutting a chain in the middle costs some fill: three entries a column at most, so 9 n operations.
    expect(flops).toBeLessThanOrEqual(find === nestedDissection ? 9 * n : 4 * (n - 1) + 1);
  });
});

describe("quality of the orderings", () => {
  const side = 63;
  const cost = (find: (graph: JointGraph) => Int32Array): number => {
    const graph = grid(side, side);
    return factorFlops(graph, eliminationTree(graph, find(graph)));
  };

  test("nested dissection of a k × k grid is of the order of k³ operations (George 1973), far below a band's k⁴", () => {
    // George 1973: 829/84·k³ multiplications for the nine-point grid; two operations each. The five-point grid needs fewer.
    expect(cost(nestedDissection)).toBeLessThan(2 * (829 / 84) * side ** 3);
    expect(cost(minimumDegree)).toBeLessThan(2 * (829 / 84) * side ** 3);
  });

  test("reverse Cuthill-McKee keeps a k × k grid within its band of k + 1", () => {
    expect(cost(reverseCuthillMcKee)).toBeLessThan(side ** 2 * (side + 1) ** 2);
  });
});

test("minimum degree puts a joint that everything hangs on last", () => {
  const leaves = 3000;
  const edges = Array.from({ length: leaves }, (_, v) => [0, v + 1] as const);
  const star = graphOf(leaves + 1, edges);
  const order = minimumDegree(star);
  expect(order[leaves]).toBe(0);
  expect(factorFlops(star, eliminationTree(star, order))).toBe(4 * leaves + 1);
  const two = graphOf(leaves + 1, [...edges, ...Array.from({ length: leaves - 1 }, (_, v) => [1, v + 2] as const)]);
  expect(new Set(minimumDegree(two).subarray(leaves - 1))).toEqual(new Set([0, 1]));
});

describe("elimination tree", () => {
  test("column heights are those of the elimination game", () => {
    fc.assert(
      fc.property(graphs, fc.constantFrom(...ORDERINGS), (graph, find) => {
        const order = find(graph);
        expect([...eliminationTree(graph, order).height]).toEqual(playElimination(graph, order));
      }),
    );
  });

  test("a postorder puts children before parents and keeps subtrees together", () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const { parent, height } = eliminationTree(
          graph,
          Int32Array.from({ length: graph.joints }, (_, v) => v),
        );
        const post = postorder(parent, height);
        const place = new Map([...post].map((v, k) => [v, k]));
        const size = new Int32Array(graph.joints).fill(1);
        const lowest = Int32Array.from({ length: graph.joints }, (_, v) => place.get(v) ?? -1);
        for (const v of post) {
          const up = parent[v] ?? -1;
          if (up === -1) continue;
          expect(place.get(up)).toBeGreaterThan(place.get(v) ?? -1);
          size[up] = (size[up] ?? 0) + (size[v] ?? 0);
          lowest[up] = Math.min(lowest[up] ?? 0, lowest[v] ?? 0);
        }
        for (const v of post) expect((place.get(v) ?? -1) - (lowest[v] ?? 0) + 1).toBe(size[v]);
      }),
    );
  });
});

test("unknowns of one joint are found from the pattern as well as from their names", () => {
  const frame = gridFrame(4, 3, 3);
  const matrix = assembleSymmetric(frame.unknowns, frame.blocks);
  const told = groupByJoint(matrix, frame.nodeOf);
  const found = groupByJoint(matrix);
  expect(found.jointOf).toEqual(told.jointOf);
  expect(found.graph).toEqual(told.graph);
  expect(told.graph.joints).toBe(4 * 3 * 2);
});
