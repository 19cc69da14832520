import { keysOf } from "../text/pointer.ts";

/** A JSON Schema (2020-12) or a part of one. */
export type SchemaNode = Readonly<Record<string, unknown>>;

/** An error as ajv reports it; only what is read here. */
export interface SchemaError {
  readonly keyword: string;
  readonly instancePath: string;
  readonly params: Readonly<Record<string, unknown>>;
  /** The key that was judged, where a schema for keys (propertyNames) did. */
  readonly propertyName?: string;
}

/** Keywords whose schemas speak about the same value as the schema that holds them. */
const IN_PLACE_LISTS = ["allOf", "anyOf", "oneOf"] as const;
const IN_PLACE = ["if", "then", "else", "not"] as const;

export function isNode(value: unknown): value is SchemaNode {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Own members only: a key such as "constructor" finds nothing that the schema does not say. */
export function member(node: unknown, key: string): unknown {
  return isNode(node) && Object.hasOwn(node, key) ? node[key] : undefined;
}

export function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** The node that a pointer inside the schema names; only references within one file are followed. */
export function nodeAt(root: SchemaNode, reference: string): SchemaNode | undefined {
  const [, pointer = ""] = reference.split("#", 2);
  let node: unknown = root;
  for (const key of keysOf(decodeURIComponent(pointer)))
    node = Array.isArray(node) ? node[Number(key)] : member(node, key);
  return isNode(node) ? node : undefined;
}

/** A node with all that speak about the same value: what it refers to, its branches and conditions. Holders come before what they hold. */
export function sameValueNodes(root: SchemaNode, starts: Iterable<SchemaNode>): readonly SchemaNode[] {
  const found = new Set<SchemaNode>(starts);
  for (const node of found) {
    const next: unknown[] = [];
    if (typeof node.$ref === "string") next.push(nodeAt(root, node.$ref));
    for (const keyword of IN_PLACE_LISTS) for (const branch of listOf(node[keyword])) next.push(branch);
    for (const keyword of IN_PLACE) next.push(node[keyword]);
    for (const one of next) if (isNode(one)) found.add(one);
  }
  return [...found];
}

/** The schemas that a node holds for one member or entry of its value. */
function childNodes(node: SchemaNode, key: string): readonly unknown[] {
  const property = member(node.properties, key);
  const matching = Object.entries(isNode(node.patternProperties) ? node.patternProperties : {})
    .filter(([pattern]) => new RegExp(pattern, "u").test(key))
    .map(([, schema]) => schema);
  const children: unknown[] = property === undefined ? matching : [property, ...matching];
  if (children.length === 0) children.push(node.additionalProperties);
  if (/^\d+$/.test(key)) {
    const prefix = listOf(node.prefixItems);
    children.push(Number(key) < prefix.length ? prefix[Number(key)] : node.items, node.contains);
  }
  return children;
}

/** All nodes that speak about the value at these keys, seen from a node. */
export function nodesFor(root: SchemaNode, start: SchemaNode, keys: readonly string[]): readonly SchemaNode[] {
  let nodes = sameValueNodes(root, [start]);
  for (const key of keys) {
    const children = nodes.flatMap((node) => childNodes(node, key)).filter(isNode);
    nodes = sameValueNodes(root, children);
  }
  return nodes;
}

function alike(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** Whether a node's own keyword can have raised the error. */
export function raises(node: SchemaNode, { keyword, params }: SchemaError): boolean {
  switch (keyword) {
    case "required":
      return listOf(node.required).includes(params.missingProperty);
    case "additionalProperties":
      return (
        node.additionalProperties === false && member(node.properties, String(params.additionalProperty)) === undefined
      );
    case "enum":
      return alike(node.enum, params.allowedValues);
    case "const":
      return Object.hasOwn(node, "const") && alike(node.const, params.allowedValue);
    case "type":
      return alike(node.type, params.type);
    case "pattern":
      return node.pattern === params.pattern;
    case "items":
      return node.items === false && listOf(node.prefixItems).length === params.limit;
    default:
      return keyword in node && (params.limit === undefined || node[keyword] === params.limit);
  }
}
