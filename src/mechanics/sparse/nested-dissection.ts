import { at } from "./at.ts";
import type { JointGraph } from "./joint-graph.ts";
import { fromOneEnd, levelStructure } from "./level-structure.ts";
import { minimumDegree } from "./minimum-degree.ts";
import { thinSeparator } from "./separator.ts";

const SMALL_PIECE = 60; // joints; below, minimum degree finds as good an order as cutting further (measured)

interface Piece {
  readonly joints: Int32Array;
  /** Its joints are to fill the order from this place on. */
  readonly from: number;
}

/**
 * Cuts the frame in two at a few joints, numbers these last, and goes on with both halves.
 * George 1973, "Nested dissection of a regular finite element mesh"; the cut is a middle level of a level structure,
 * George, Liu 1978, "An automatic nested dissection algorithm for irregular finite element problems", thinned by moving
 * joints across it. No coordinates are needed.
 */
export function nestedDissection(graph: JointGraph): Int32Array {
  const { joints } = graph;
  const order = new Int32Array(joints);
  const piece = new Int32Array(joints);
  const distance = new Int32Array(joints);
  const renumbered = new Int32Array(joints).fill(-1);
  const waiting: Piece[] = [{ joints: Int32Array.from({ length: joints }, (_, v) => v), from: 0 }];
  let labels = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const label = ++labels;
    for (const v of next.joints) piece[v] = label;
    let from = next.from;
    for (const v of next.joints) {
      if (at(piece, v) !== label) continue;
      const component = levelStructure(graph, v, piece, label, distance).joint;
      const own = ++labels;
      for (const u of component) piece[u] = own;
      if (component.length <= SMALL_PIECE || !cut(component, own, from)) orderSmall(component, from);
      from += component.length;
    }
  }
  return order;

  /** Cuts a connected piece and puts its halves on the waiting list; false where it has no middle. */
  function cut(component: Int32Array, label: number, from: number): boolean {
    const levels = fromOneEnd(graph, at(component, 0), piece, label, distance);
    const parts = thinSeparator(graph, levels, piece, label, distance);
    if (parts === undefined) return false;
    const { before, after, separator } = parts;
    waiting.push({ joints: before, from }, { joints: after, from: from + before.length });
    order.set(separator, from + before.length + after.length);
    for (const v of separator) piece[v] = 0;
    return true;
  }

  function orderSmall(component: Int32Array, from: number): void {
    for (let k = 0; k < component.length; k++) renumbered[at(component, k)] = k;
    const start = new Int32Array(component.length + 1);
    const neighbour: number[] = [];
    const weight = new Int32Array(component.length);
    for (let k = 0; k < component.length; k++) {
      const v = at(component, k);
      weight[k] = at(graph.weight, v);
      for (let e = at(graph.start, v); e < at(graph.start, v + 1); e++) {
        const u = at(renumbered, at(graph.neighbour, e));
        if (u !== -1) neighbour.push(u);
      }
      start[k + 1] = neighbour.length;
    }
    const inner = minimumDegree({ joints: component.length, start, neighbour: Int32Array.from(neighbour), weight });
    for (let k = 0; k < component.length; k++) order[from + k] = at(component, at(inner, k));
    for (const v of component) {
      renumbered[v] = -1;
      piece[v] = 0;
    }
  }
}
