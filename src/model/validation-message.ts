import { comparePlaces, compareProblems, type Place, type Problem } from "./problem.ts";
import type { Document } from "./text/document.ts";
import { nearest } from "./text/nearest.ts";
import { keysOf, pointerTo } from "./text/pointer.ts";
import { quote } from "./text/quote.ts";
import { withoutNoise } from "./validation/best-branch.ts";
import { describe, oneOf, ownWords, showValue, typeWords } from "./validation/expectation.ts";
import {
  isNode,
  listOf,
  member,
  nodeAt,
  nodesFor,
  raises,
  type SchemaError,
  type SchemaNode,
  sameValueNodes,
} from "./validation/schema-nodes.ts";

/** Where in the document, and with which part of the schema, a validator began. */
export interface Beginning {
  /** Pointer of the value that was validated; "" for the whole document. */
  readonly pointer: string;
  /** Reference to the part of the schema that validated it, like "#/$defs/bar"; "#" for the whole. */
  readonly definition: string;
}

interface Case {
  readonly error: SchemaError;
  readonly pointer: string;
  readonly value: unknown;
  /** All nodes that speak about the value, holders first. */
  readonly nodes: readonly SchemaNode[];
  /** The one that raised the error. */
  readonly node: SchemaNode | undefined;
  readonly root: SchemaNode;
}

interface Words {
  readonly code: string;
  readonly found: string;
  readonly expected: string;
  readonly mend?: string;
}

function valueAt(document: Document, pointer: string): unknown {
  let value: unknown = document.value;
  for (const key of keysOf(pointer)) value = Array.isArray(value) ? value[Number(key)] : member(value, key);
  return value;
}

function schemaWords({ node, nodes }: Case): string | undefined {
  return ownWords(node) ?? ownWords(nodes.find((one) => ownWords(one) !== undefined));
}

function suggest(word: unknown, candidates: readonly unknown[]): string | undefined {
  const words = candidates.filter((candidate) => typeof candidate === "string");
  return typeof word === "string" ? nearest(word, words) : undefined;
}

function words(code: string, found: string, expected: string, mend?: string): Words {
  return mend === undefined ? { code, found, expected } : { code, found, expected, mend };
}

function propertiesOf(one: Case): readonly string[] {
  const own = Object.keys(isNode(one.node?.properties) ? one.node.properties : {});
  if (own.length > 0) return own;
  return one.nodes.flatMap((node) => (isNode(node.properties) ? Object.keys(node.properties) : []));
}

function unknownKey(one: Case): Words {
  const key = String(one.error.params.additionalProperty ?? one.error.params.unevaluatedProperty);
  const known = propertiesOf(one);
  const free = known.filter((name) => member(one.value, name) === undefined);
  const meant = nearest(key, free) ?? nearest(key, known);
  const expected = known.length === 0 ? "no keys here" : oneOf(known);
  return words(
    "unknown-key",
    `the key "${quote(key)}"`,
    expected,
    meant === undefined ? undefined : `write "${meant}"`,
  );
}

function missingKey(one: Case): Words {
  const key = String(one.error.params.missingProperty);
  const property = one.nodes.map((node) => member(node.properties, key)).find(isNode);
  const about =
    property &&
    sameValueNodes(one.root, [property])
      .map(ownWords)
      .find((text) => text !== undefined);
  const present = Object.keys(isNode(one.value) ? one.value : {});
  const found = present.length === 0 ? "an empty object" : `an object without "${quote(key)}"`;
  return words("missing-key", found, `the key "${quote(key)}"${about === undefined ? "" : `: ${about}`}`);
}

function wrongKey(one: Case): Words {
  const judges = sameValueNodes(one.root, one.nodes.map((node) => node.propertyNames).filter(isNode));
  const expected = judges.map(describe).find((text) => text !== undefined);
  return words("wrong-key", `the key "${quote(String(one.error.params.propertyName))}"`, expected ?? "another key");
}

function choice(one: Case): Words {
  if (listOf(one.error.params.passingSchemas).length > 0) {
    return words(
      "value-not-allowed",
      `${showValue(one.value)}, which fits several forms`,
      schemaWords(one) ?? "one form",
    );
  }
  const branches = listOf(one.node?.[one.error.keyword])
    .filter(isNode)
    .flatMap((branch) => sameValueNodes(one.root, [branch]));
  const allowed = branches.flatMap((branch) => [
    ...listOf(branch.enum),
    ...(Object.hasOwn(branch, "const") ? [branch.const] : []),
  ]);
  const forms = branches.map(describe).filter((text) => text !== undefined);
  const stated = member(one.node, "x-expected");
  const expected = typeof stated === "string" ? stated : [...new Set(forms)].join(", or ");
  const meant = suggest(one.value, allowed);
  return words(
    "value-not-allowed",
    showValue(one.value),
    expected,
    meant === undefined ? undefined : `write "${meant}"`,
  );
}

function tagged(one: Case): Words {
  const tag = String(one.error.params.tag);
  const branches = one.nodes.flatMap((node) => listOf(node.oneOf)).filter(isNode);
  const properties = sameValueNodes(one.root, branches).map((node) => member(node.properties, tag));
  const allowed = properties.flatMap((node) =>
    isNode(node) ? (Array.isArray(node.enum) ? node.enum : [node.const]) : [],
  );
  const known = [...new Set(allowed.filter((value) => value !== undefined))];
  const value = one.error.params.tagValue;
  if (value === undefined)
    return words("missing-key", `an object without "${tag}"`, `the key "${tag}": ${oneOf(known)}`);
  const meant = suggest(value, known);
  return words(
    "value-not-allowed",
    showValue(value),
    oneOf(known),
    meant === undefined ? undefined : `write "${meant}"`,
  );
}

const BOUNDS: Readonly<Record<string, string>> = {
  minimum: "at least",
  maximum: "at most",
  exclusiveMinimum: "more than",
  exclusiveMaximum: "less than",
  minLength: "at least",
  maxLength: "at most",
  minItems: "at least",
  maxItems: "at most",
  items: "at most",
  minProperties: "at least",
  maxProperties: "at most",
};

function bounded(one: Case, low: string, high: string): string {
  const [least, most] = [one.node?.[low], one.node?.[high]];
  if (least !== undefined && least === most) return `exactly ${least}`;
  return `${BOUNDS[one.error.keyword] ?? "within"} ${one.error.params.limit}`;
}

function inWords(one: Case): Words {
  const { error, value, node } = one;
  const found = showValue(value);
  const about = schemaWords(one);
  const also = about === undefined ? "" : `; ${about}`;
  switch (error.keyword) {
    case "additionalProperties":
    case "unevaluatedProperties":
      return unknownKey(one);
    case "required":
    case "dependentRequired":
      return missingKey(one);
    case "propertyNames":
      return wrongKey(one);
    case "anyOf":
    case "oneOf":
      return choice(one);
    case "discriminator":
      return tagged(one);
    case "type":
      return words("wrong-type", found, `${typeWords(error.params.type)}${also}`);
    case "enum":
    case "const": {
      const allowed = error.keyword === "enum" ? listOf(error.params.allowedValues) : [error.params.allowedValue];
      const meant = suggest(value, allowed);
      return words("value-not-allowed", found, oneOf(allowed), meant === undefined ? undefined : `write "${meant}"`);
    }
    case "minimum":
    case "maximum":
    case "exclusiveMinimum":
    case "exclusiveMaximum":
      return words("out-of-range", found, `a number ${BOUNDS[error.keyword]} ${error.params.limit}${also}`);
    case "multipleOf":
      return words("out-of-range", found, `a multiple of ${error.params.multipleOf}${also}`);
    case "minLength":
    case "maxLength": {
      const length = typeof value === "string" ? `text of ${[...value].length} characters` : found;
      return words("wrong-length", length, `text of ${bounded(one, "minLength", "maxLength")} characters${also}`);
    }
    case "minItems":
    case "maxItems":
    case "items": {
      const wanted = error.keyword === "items" ? `at most ${error.params.limit}` : bounded(one, "minItems", "maxItems");
      return words("wrong-count", found, `a list of ${wanted}${also}`);
    }
    case "minProperties":
    case "maxProperties":
      return words("wrong-count", found, `an object of ${bounded(one, "minProperties", "maxProperties")} keys${also}`);
    case "uniqueItems": {
      const again = showValue(listOf(value)[Number(error.params.i)]);
      return words(
        "repeated-entry",
        `${again} twice, as entries ${error.params.j} and ${error.params.i}`,
        `each entry once${also}`,
      );
    }
    case "pattern":
      return words("wrong-form", found, about ?? `text that matches ${String(node?.pattern ?? error.params.pattern)}`);
    default:
      return words("value-not-allowed", found, about ?? "nothing here");
  }
}

/** The first character only: a whole object marked red says less than its opening bracket. */
function opening(place: Place): Place {
  return { ...place, endLine: place.line, endColumn: place.column + 1 };
}

function placeOf(document: Document, one: Case, code: string): Place {
  const { params, keyword } = one.error;
  const key = params.additionalProperty ?? params.unevaluatedProperty ?? params.propertyName;
  if (key !== undefined) return document.keyPlace(pointerTo(one.pointer, String(key)));
  if (code === "missing-key") return opening(document.place(one.pointer));
  if (keyword === "discriminator") return document.place(pointerTo(one.pointer, String(params.tag)));
  return document.place(one.pointer);
}

/** A missing key beside an unknown one that is nearly it is one slip, not two. */
function withoutEchoes(problems: readonly Problem[], parents: ReadonlyMap<Problem, string>): readonly Problem[] {
  const meant = new Set<string>();
  for (const problem of problems)
    if (problem.code === "unknown-key") meant.add(`${parents.get(problem)} ${problem.mend}`);
  return problems.filter((problem) => {
    const key = /^the key (".*?")/.exec(problem.expected)?.[1];
    return problem.code !== "missing-key" || !meant.has(`${parents.get(problem)} write ${key}`);
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
  const parents = new Map<Problem, string>();
  const cases = withoutNoise(schema, start, errors).map((error): Case => {
    const pointer = beginning.pointer + error.instancePath;
    const nodes = nodesFor(schema, start, keysOf(error.instancePath));
    const node = nodes.find((one) => raises(one, error));
    return { error, pointer, value: valueAt(document, pointer), nodes, node, root: schema };
  });
  document.places(cases.map((one) => one.pointer));
  const problems = cases.map((one): Problem => {
    const { code, ...texts } = inWords(one);
    const problem: Problem = { code, weight: "error", place: placeOf(document, one, code), ...texts };
    parents.set(problem, one.pointer);
    return problem;
  });
  const sorted = [...withoutEchoes(problems, parents)].sort(compareProblems);
  return sorted.filter((problem, i) => {
    const before = sorted[i - 1];
    return (
      before === undefined || comparePlaces(before.place, problem.place) !== 0 || compareProblems(before, problem) !== 0
    );
  });
}
