import { nearest } from "../text/nearest.ts";
import { keysOf } from "../text/pointer.ts";
import { isNode, listOf, nodesFor, raises, type SchemaError, type SchemaNode, sameValueNodes } from "./schema-nodes.ts";

/** A branch whose type does not fit is no candidate; one whose words or tags do not fit is a poor one. */
const WRONG_TYPE = 1000;
const WRONG_WORD = 100;
/** A key that is nearly one of the branch's tells that the branch was meant. */
const NEARLY_KNOWN_KEY = -0.5;

/** An error with the part of the schema it speaks for. */
export interface Kept {
  readonly error: SchemaError;
  /** The branch that was meant, and the path of the value it judges; absent where no choice was made. */
  readonly branch?: { readonly node: SchemaNode; readonly path: string };
}

interface Branch {
  readonly node: SchemaNode;
  readonly errors: readonly Kept[];
  readonly cost: number;
}

function isChoice({ keyword }: SchemaError): boolean {
  return keyword === "anyOf" || keyword === "oneOf";
}

function isUnder(path: string, outer: string): boolean {
  return path === outer || path.startsWith(`${outer}/`);
}

function belongs(root: SchemaNode, branch: SchemaNode, choice: SchemaError, error: SchemaError): boolean {
  if (!isUnder(error.instancePath, choice.instancePath)) return false;
  const keys = keysOf(error.instancePath.slice(choice.instancePath.length));
  return nodesFor(root, branch, keys).some((node) => raises(node, error));
}

function knownKeys(root: SchemaNode, branch: SchemaNode, keys: readonly string[]): readonly string[] {
  return nodesFor(root, branch, keys).flatMap((node) => (isNode(node.properties) ? Object.keys(node.properties) : []));
}

function costOf(root: SchemaNode, branch: SchemaNode, choice: SchemaError, errors: readonly Kept[]): number {
  let cost = 0;
  for (const { error } of errors) {
    const inside = keysOf(error.instancePath.slice(choice.instancePath.length));
    cost += 1;
    if (error.keyword === "type" && inside.length === 0) cost += WRONG_TYPE;
    if ((error.keyword === "const" || error.keyword === "enum") && inside.length <= 1) cost += WRONG_WORD;
    if (error.keyword !== "additionalProperties") continue;
    const key = String(error.params.additionalProperty);
    if (nearest(key, knownKeys(root, branch, inside)) !== undefined) cost += NEARLY_KNOWN_KEY;
  }
  return cost;
}

/** The one branch that the author most likely meant; undefined when none stands out. */
function meant(branches: readonly Branch[]): Branch | undefined {
  const [best, second] = branches.filter((branch) => branch.errors.length > 0).sort((a, b) => a.cost - b.cost);
  if (best === undefined || best.cost >= WRONG_WORD) return undefined;
  return second === undefined || best.cost < second.cost ? best : undefined;
}

/** Takes off what the schema for keys raised: it stands at the object, without the key, and the error for the key sums it up. */
function dropKeyErrors(root: SchemaNode, start: SchemaNode, kept: Kept[], sum: SchemaError): void {
  const holders = nodesFor(root, start, keysOf(sum.instancePath));
  const judges = sameValueNodes(root, holders.map((node) => node.propertyNames).filter(isNode));
  for (let last = kept.at(-1); last?.error.instancePath === sum.instancePath; last = kept.at(-1)) {
    const one = last.error;
    if (one.propertyName === undefined && !judges.some((node) => raises(node, one))) return;
    kept.pop();
  }
}

/**
 * Errors without the noise of choices: where a value fits no branch of an anyOf or oneOf, the errors of the branch it fits best stay, or the
 * choice alone when no branch stands out. The order of ajv is relied on: the errors of branches come right before that of their choice.
 */
export function withoutNoise(root: SchemaNode, start: SchemaNode, errors: readonly SchemaError[]): readonly Kept[] {
  const kept: Kept[] = [];
  for (const error of errors) {
    // "if" only repeats that an error before it was raised.
    if (error.keyword === "if") continue;
    if (error.keyword === "propertyNames") dropKeyErrors(root, start, kept, error);
    if (!isChoice(error) || listOf(error.params.passingSchemas).length > 0) {
      kept.push({ error });
      continue;
    }
    const holders = nodesFor(root, start, keysOf(error.instancePath)).filter((node) => error.keyword in node);
    const branches = holders.flatMap((node) => listOf(node[error.keyword])).filter(isNode);
    const inside: Kept[] = [];
    for (let last = kept.at(-1); last !== undefined; last = kept.at(-1)) {
      const one = last;
      if (!branches.some((branch) => belongs(root, branch, error, one.error))) break;
      inside.unshift(one);
      kept.pop();
    }
    const judged = branches.map((node) => {
      const own = inside.filter((one) => belongs(root, node, error, one.error));
      return { node, errors: own, cost: costOf(root, node, error, own) };
    });
    const best = meant(judged);
    if (best === undefined) kept.push({ error });
    // A branch inside the branch was chosen before and says more.
    else for (const one of best.errors) kept.push({ branch: { node: best.node, path: error.instancePath }, ...one });
  }
  return kept;
}
