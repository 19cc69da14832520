import type { FrameParts } from "../assembly/frame.ts";
import type { Numbering } from "../assembly/numbering.ts";
import { HELD, IDLE } from "../assembly/numbering.ts";
import { MechanicsInputError } from "../errors.ts";
import type { AppliedCase, NodeForces } from "../load/applied-case.ts";
import { atNode, compileMemberLoads } from "../load/compile.ts";
import { addFixedEndForces } from "../load/fixed-end.ts";
import { resultant } from "../load/resultant.ts";
import { addToNodes } from "../member/transform.ts";
import type { LoadCase } from "../model.ts";

/** Flattens a load case, or remembers what came of it. Throws MechanicsInputError for a load that nothing can take. */
export function applyCase(parts: FrameParts, numbering: Numbering, loadCase: LoadCase): AppliedCase {
  let applied = parts.applied.get(loadCase);
  if (!applied) {
    applied = flatten(parts, loadCase);
    parts.applied.set(loadCase, applied);
  }
  checkTaken(numbering, loadCase, applied);
  return applied;
}

function checkTaken({ unknownOf }: Numbering, { settlements = [] }: LoadCase, { onNodes }: AppliedCase): void {
  for (const freedom of onNodes.freedoms) {
    if (unknownOf[freedom] !== IDLE) continue;
    const [node, component] = [Math.floor(freedom / 6), freedom % 6];
    throw new MechanicsInputError(`node ${node} is loaded in component ${component}, which nothing there resists`);
  }
  for (const { node, component } of settlements) {
    if (unknownOf[6 * node + component] !== HELD) {
      throw new MechanicsInputError(`node ${node} settles in component ${component}, where no support is fixed`);
    }
  }
}

function flatten(parts: FrameParts, loadCase: LoadCase): AppliedCase {
  const { model, table } = parts;
  const freedoms = 6 * model.nodes.length;
  const onMembers = compileMemberLoads(model, table.length, loadCase);
  const held = new Float64Array(12 * table.count);
  const onNodes = nodeForces(parts, loadCase);
  const total = new Float64Array(freedoms);
  addNodeForces(onNodes, 1, total);
  for (const m of onMembers.loaded) {
    const member = model.members[m];
    if (!member) continue;
    addFixedEndForces(member, table.length[m] as number, onMembers, m, held);
    putOnNodes(parts, m, held, total);
  }
  const settled = settledBy(loadCase, freedoms);
  return { onMembers, held, onNodes, total, settled, resultant: resultant(model, loadCase, onMembers) };
}

function nodeForces({ model }: FrameParts, { nodes = [] }: LoadCase): NodeForces {
  const sums = new Map<number, number>();
  for (const load of nodes) {
    const [force, moment] = atNode(model, load);
    for (const [i, value] of [...force, ...moment].entries()) {
      const freedom = 6 * load.node + i;
      sums.set(freedom, (sums.get(freedom) ?? 0) + value);
    }
  }
  const acting = [...sums].filter(([, value]) => value !== 0);
  return { freedoms: acting.map(([freedom]) => freedom), values: acting.map(([, value]) => value) };
}

/** Adds the forces, times `factor`, to those of all freedoms. */
export function addNodeForces({ freedoms, values }: NodeForces, factor: number, all: Float64Array): void {
  for (let i = 0; i < freedoms.length; i++) {
    const freedom = freedoms[i] as number;
    all[freedom] = (all[freedom] as number) + factor * (values[i] as number);
  }
}

function settledBy({ settlements = [] }: LoadCase, freedoms: number): Float64Array | undefined {
  if (settlements.length === 0) return undefined;
  const settled = new Float64Array(freedoms);
  for (const { node, component, value } of settlements) settled[6 * node + component] = value;
  return settled;
}

const reduced = new Float64Array(12);

/** Puts the held end forces of member m, reversed, on its nodes; released components are passed on by Cᵀ. */
function putOnNodes({ table }: FrameParts, m: number, held: Float64Array, total: Float64Array): void {
  const release = table.releases.get(m);
  if (!release) {
    addToNodes(table, m, held, 12 * m, total, -1);
    return;
  }
  reduced.fill(0);
  for (let i = 0; i < 12; i++) {
    for (let j = 0; j < 12; j++) {
      const own = (release.reduction[12 * i + j] as number) * (held[12 * m + i] as number);
      reduced[j] = (reduced[j] as number) + own;
    }
  }
  addToNodes(table, m, reduced, 0, total, -1);
}
