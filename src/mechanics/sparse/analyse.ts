import { at } from "./at.ts";
import { type EliminationTree, eliminationTree, factorFlops, postorder } from "./elimination-tree.ts";
import { type FrontPlan, planFronts } from "./front-plan.ts";
import { groupByJoint, type JointGraph } from "./joint-graph.ts";
import { minimumDegree } from "./minimum-degree.ts";
import { nestedDissection } from "./nested-dissection.ts";
import { reverseCuthillMcKee } from "./reverse-cuthill-mckee.ts";
import { supernodes } from "./supernodes.ts";
import type { SymmetricMatrix } from "./symmetric-matrix.ts";

export type OrderingName = "minimum degree" | "nested dissection" | "reverse Cuthill-McKee";

/** Everything about factorising a matrix that hangs on its pattern alone; serves every matrix of the same pattern. */
export interface Analysis {
  readonly n: number;
  readonly ordering: OrderingName;
  /** Unknowns in the order of elimination. */
  readonly order: Int32Array;
  /** Floating-point operations of one factorisation by each ordering tried. */
  readonly flops: Readonly<Record<OrderingName, number>>;
  /** Numbers stored in the factor, and numbers needed besides while it is formed. */
  readonly memory: { readonly factor: number; readonly working: number };
  readonly pattern: { readonly colStart: Int32Array; readonly rowIndex: Int32Array };
  readonly plan: FrontPlan;
}

const ORDERINGS: readonly { readonly name: OrderingName; readonly find: (graph: JointGraph) => Int32Array }[] = [
  { name: "minimum degree", find: minimumDegree },
  { name: "nested dissection", find: nestedDissection },
  { name: "reverse Cuthill-McKee", find: reverseCuthillMcKee },
];

/**
 * Orders the unknowns, on the graph of joints, and plans the factorisation. Of several orderings the one with the fewest
 * predicted operations is kept, the first of equals. `nodeOf[i]` is any number naming the joint of unknown i.
 */
export function analyse(matrix: SymmetricMatrix, nodeOf?: Int32Array): Analysis {
  const joints = groupByJoint(matrix, nodeOf);
  const flops = { "minimum degree": 0, "nested dissection": 0, "reverse Cuthill-McKee": 0 };
  let ordering: OrderingName = "minimum degree";
  let best: EliminationTree | undefined;
  for (const { name, find } of ORDERINGS) {
    const tree = eliminationTree(joints.graph, find(joints.graph));
    flops[name] = factorFlops(joints.graph, tree);
    if (best !== undefined && flops[name] >= flops[ordering]) continue;
    best = tree;
    ordering = name;
  }
  const tree = inPostorder(best ?? eliminationTree(joints.graph, new Int32Array(0)));
  const plan = planFronts(matrix, joints, tree.order, supernodes(joints.graph, tree));
  return {
    n: matrix.n,
    ordering,
    order: plan.unknownAt,
    flops,
    memory: { factor: plan.panelStart[plan.fronts] as number, working: plan.stackSize + plan.largestPanel },
    pattern: { colStart: matrix.colStart, rowIndex: matrix.rowIndex },
    plan,
  };
}

/** The same elimination with every subtree in one run; the child with the longest column comes last, beside its parent. */
function inPostorder(tree: EliminationTree): EliminationTree {
  const post = postorder(tree.parent, tree.height);
  const place = new Int32Array(post.length);
  for (let k = 0; k < post.length; k++) place[at(post, k)] = k;
  return {
    order: post.map((k) => at(tree.order, k)),
    parent: post.map((k) => (at(tree.parent, k) === -1 ? -1 : at(place, at(tree.parent, k)))),
    height: post.map((k) => at(tree.height, k)),
  };
}
