import { compareProblems, type Place, type Problem } from "./problem.ts";
import type { Document } from "./text/document.ts";
import { keysOf, pointerTo } from "./text/pointer.ts";
import { withoutNoise } from "./validation/best-branch.ts";
import { member, nodeAt, nodesFor, raises, type SchemaError, type SchemaNode } from "./validation/schema-nodes.ts";
import { type Case, inWords, meantKey } from "./validation/wording.ts";

/** Where in the document, and with which part of the schema, a validator began. */
export interface Beginning {
  /** Pointer of the value that was validated; "" for the whole document. */
  readonly pointer: string;
  /** Reference to the part of the schema that validated it, like "#/$defs/bar"; "#" for the whole. */
  readonly definition: string;
}

function valueAt(document: Document, pointer: string): unknown {
  let value: unknown = document.value;
  for (const key of keysOf(pointer)) value = Array.isArray(value) ? value[Number(key)] : member(value, key);
  return value;
}

/** The first character only: a whole object marked red says less than its opening bracket. */
function opening(place: Place): Place {
  return { ...place, endLine: place.line, endColumn: place.column + 1 };
}

function judgedKey({ error: { params } }: Case): unknown {
  return params.additionalProperty ?? params.unevaluatedProperty ?? params.propertyName;
}

/** The value or key that the message is about. */
function subjectOf(one: Case): string {
  const key = one.error.keyword === "discriminator" ? one.error.params.tag : judgedKey(one);
  return key === undefined ? one.pointer : pointerTo(one.pointer, String(key));
}

function placeOf(document: Document, one: Case, code: string): Place {
  if (code === "missing-key") return opening(document.place(one.pointer));
  return judgedKey(one) === undefined ? document.place(subjectOf(one)) : document.keyPlace(subjectOf(one));
}

/** A missing key beside an unknown one that is nearly it is one slip, not two. */
function withoutEchoes(cases: readonly Case[]): readonly Case[] {
  const meant = new Set<string>();
  for (const one of cases) {
    const key = meantKey(one);
    if (key !== undefined) meant.add(pointerTo(one.pointer, key));
  }
  return cases.filter(({ error, pointer }) => {
    return error.keyword !== "required" || !meant.has(pointerTo(pointer, String(error.params.missingProperty)));
  });
}

/**
 * Says in our own words what ajv (2020-12, allErrors, discriminator) found wrong with a document, each thing once, in the order of the text.
 * A choice (anyOf, oneOf) is reduced to the branch that was most likely meant. The schema's `x-expected` or `description` is repeated
 * where it has one.
 */
export function explainErrors(
  errors: readonly SchemaError[],
  document: Document,
  schema: SchemaNode,
  beginning: Beginning = { pointer: "", definition: "#" },
): readonly Problem[] {
  const start = nodeAt(schema, beginning.definition) ?? schema;
  const cases = withoutNoise(schema, start, errors).map(({ error, branch = { node: start, path: "" } }): Case => {
    const pointer = beginning.pointer + error.instancePath;
    const nodes = nodesFor(schema, branch.node, keysOf(error.instancePath.slice(branch.path.length)));
    const node = nodes.find((one) => raises(one, error));
    return { error, pointer, value: valueAt(document, pointer), nodes, node, root: schema };
  });
  // One pass for all: what is asked for below is then known.
  document.places(cases.flatMap((one) => [one.pointer, subjectOf(one)]));
  const problems = withoutEchoes(cases).map((one): Problem => {
    const { code, ...texts } = inWords(one);
    return { code, weight: "error", place: placeOf(document, one, code), ...texts };
  });
  const sorted = problems.sort(compareProblems);
  return sorted.filter((problem, i) => {
    const before = sorted[i - 1];
    return before === undefined || compareProblems(before, problem) !== 0;
  });
}
