import { MechanicsInputError } from "../errors.ts";
import type { AppliedCase } from "../load/applied-case.ts";
import type { MemberTable } from "../member/table.ts";
import { memberTable } from "../member/table.ts";
import type { FrameModel, LoadCase, Spring } from "../model.ts";
import { GROUND } from "../model.ts";
import { isTriad } from "../triad.ts";
import type { Block } from "./blocks.ts";
import { addLink, diagonalOf, linkBlock, stiffnessBlocks, together } from "./blocks.ts";
import type { Link } from "./link.ts";
import { couplingLink, slideLink, turnLink } from "./link.ts";
import { supports } from "./numbering.ts";

/** One of the six springs of a spring element. */
export interface SpringLink {
  readonly spring: number;
  /** 0..5 along and about the spring's axes. */
  readonly component: number;
  readonly link: Link;
  readonly stiffness: number;
}

/** A frame taken apart into what the solver sums up: everything but its contacts. */
export interface FrameParts {
  readonly model: FrameModel;
  readonly table: MemberTable;
  readonly springs: readonly SpringLink[];
  /** One for each coupling of the model. */
  readonly couplings: readonly { readonly link: Link; readonly stiffness: number }[];
  readonly fixed: Uint8Array;
  /** Stiffness to ground by freedom. */
  readonly elastic: ReadonlyMap<number, number>;
  /** Stiffness of the members alone; `blocks` begins with these. */
  readonly memberBlocks: Iterable<Block>;
  /** Each block is good until the next is asked for. */
  readonly blocks: Iterable<Block>;
  readonly diagonal: Float64Array;
  /** Load cases made ready for these nodes and members, as they come. */
  readonly applied: Map<LoadCase, AppliedCase>;
}

function springLinks(model: FrameModel, spring: Spring, index: number): SpringLink[] {
  if (!isTriad(spring.axes)) throw new MechanicsInputError(`spring ${index} has axes that are not orthonormal`);
  if (spring.to !== GROUND && !model.nodes[spring.to]) {
    throw new MechanicsInputError(`spring ${index} names a node that does not exist`);
  }
  const { x, y, z } = spring.axes;
  const links: SpringLink[] = [];
  spring.stiffness.forEach((stiffness, component) => {
    if (!(stiffness >= 0 && Number.isFinite(stiffness))) {
      throw new MechanicsInputError(`spring ${index} has a stiffness that is negative or not finite`);
    }
    if (stiffness === 0) return;
    const axis = [x, y, z][component % 3] ?? x;
    const link =
      component < 3
        ? slideLink(model, spring.from, spring.to, spring.at, axis)
        : turnLink(spring.from, spring.to, axis);
    links.push({ spring: index, component, link, stiffness });
  });
  return links;
}

const sameFreedoms = (block: Block, { freedoms }: Link): boolean =>
  block.freedoms.length === freedoms.length && block.freedoms.every((freedom, i) => freedom === freedoms[i]);

function membersOf(model: FrameModel): Pick<FrameParts, "table" | "memberBlocks" | "applied"> {
  for (const node of model.nodes) {
    if (!node.every(Number.isFinite)) throw new MechanicsInputError("a node position is not a finite number");
  }
  const table = memberTable(model);
  return { table, memberBlocks: stiffnessBlocks(table), applied: new Map() };
}

/**
 * Checks a model and builds its stiffness blocks. What hangs on nodes and members alone is taken over from `like` where
 * that has the very same ones. Throws MechanicsInputError.
 */
export function frameParts(model: FrameModel, like?: FrameParts): FrameParts {
  const same = like?.model.nodes === model.nodes && like.model.members === model.members;
  const { table, memberBlocks, applied } = same ? like : membersOf(model);
  const springs = (model.springs ?? []).flatMap((spring, index) => springLinks(model, spring, index));
  const couplings = (model.couplings ?? []).map((coupling, index) => {
    if (!(coupling.stiffness > 0 && Number.isFinite(coupling.stiffness)))
      throw new MechanicsInputError(`coupling ${index} has a stiffness that is not positive and finite`);
    return { link: couplingLink(model, coupling), stiffness: coupling.stiffness };
  });
  const { fixed, elastic } = supports(model);
  const others: Block[] = [];
  let last = -1;
  for (const { spring, link, stiffness } of springs) {
    // The links of one spring act on the same freedoms: one block holds them all.
    const previous = others[others.length - 1];
    if (spring === last && previous) addLink(link, stiffness, previous.values);
    else others.push(linkBlock(link, stiffness));
    last = spring;
  }
  let shared: Block | undefined;
  for (const { link, stiffness } of couplings) {
    if (shared && sameFreedoms(shared, link)) addLink(link, stiffness, shared.values);
    else {
      shared = linkBlock(link, stiffness);
      others.push(shared);
    }
  }
  for (const [freedom, stiffness] of elastic) {
    others.push({ freedoms: Int32Array.of(freedom), values: Float64Array.of(stiffness) });
  }
  const blocks = together(memberBlocks, others);
  const diagonal = diagonalOf(blocks, fixed.length);
  return { model, table, springs, couplings, fixed, elastic, memberBlocks, blocks, diagonal, applied };
}
