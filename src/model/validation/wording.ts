import { nearest } from "../text/nearest.ts";
import { quote } from "../text/quote.ts";
import { describe, oneOf, ownWords, showValue, typeWords } from "./expectation.ts";
import { isNode, listOf, member, type SchemaError, type SchemaNode, sameValueNodes } from "./schema-nodes.ts";

/** One error with what is needed to speak about it. */
export interface Case {
  readonly error: SchemaError;
  readonly pointer: string;
  readonly value: unknown;
  /** All nodes that speak about the value, holders first. */
  readonly nodes: readonly SchemaNode[];
  /** The one that raised the error. */
  readonly node: SchemaNode | undefined;
  readonly root: SchemaNode;
}

export interface Words {
  readonly code: string;
  readonly found: string;
  readonly expected: string;
  readonly mend?: string;
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

function unknownKeyOf({ error }: Case): string | undefined {
  const key = error.params.additionalProperty ?? error.params.unevaluatedProperty;
  return key === undefined ? undefined : String(key);
}

/** The known key that an unknown one was most likely meant to be; rather one that is not there yet. */
export function meantKey(one: Case): string | undefined {
  const key = unknownKeyOf(one);
  if (key === undefined) return undefined;
  const known = propertiesOf(one);
  const free = known.filter((name) => member(one.value, name) === undefined);
  return nearest(key, free) ?? nearest(key, known);
}

function unknownKey(one: Case): Words {
  const key = unknownKeyOf(one) ?? "";
  const known = propertiesOf(one);
  const meant = meantKey(one);
  const expected = known.length === 0 ? "no keys here" : oneOf(known);
  return words(
    "unknown-key",
    `the key "${quote(key)}"`,
    expected,
    meant === undefined ? undefined : `write "${meant}"`,
  );
}

function keysFound({ value }: Case, key: string): string {
  return Object.keys(isNode(value) ? value : {}).length === 0 ? "an empty object" : `an object without "${quote(key)}"`;
}

function missingKey(one: Case): Words {
  const key = String(one.error.params.missingProperty);
  const property = one.nodes.map((node) => member(node.properties, key)).find(isNode);
  if (property !== undefined && Object.hasOwn(property, "const"))
    return words("missing-key", keysFound(one, key), `the key "${quote(key)}": ${oneOf([property.const])}`);
  const about =
    property &&
    sameValueNodes(one.root, [property])
      .map(ownWords)
      .find((text) => text !== undefined);
  return words("missing-key", keysFound(one, key), `the key "${quote(key)}"${about === undefined ? "" : `: ${about}`}`);
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

/** What a whole file holds, in the words of its schema up to the first stop: "one frame of T-slotted aluminium bars". */
function wholeWords(one: Case): string {
  const [short = "what the format asks for"] = (schemaWords(one) ?? "").split(/, format \d/);
  return short === "" ? "what the format asks for" : short;
}

/** What was found and expected, in our own words. */
export function inWords(one: Case): Words {
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
      if (one.pointer === "" && error.params.type === "object")
        return words("wrong-type", found, `one object { … } that holds ${wholeWords(one)}`);
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
