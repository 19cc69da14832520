import { quote } from "../text/quote.ts";
import { listOf, member, type SchemaNode } from "./schema-nodes.ts";

/** Longest list of allowed values that is written out. */
const LISTED = 40;
/** Characters of a description that are repeated. */
const DESCRIPTION_LENGTH = 240;

const TYPE_WORDS: Readonly<Record<string, string>> = {
  object: "an object",
  array: "a list",
  string: "text",
  number: "a number",
  integer: "a whole number",
  boolean: "true or false",
  null: "null",
};

/** A value of the file as a message may repeat it. */
export function showValue(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
  if (typeof value === "object" && value !== null)
    return Object.keys(value).length === 0 ? "an empty object" : "an object";
  return typeof value === "string" ? `"${quote(value)}"` : quote(String(value));
}

export function typeWords(type: unknown): string {
  const names = Array.isArray(type) ? type : [type];
  return names.map((name) => TYPE_WORDS[String(name)] ?? String(name)).join(" or ");
}

export function oneOf(values: readonly unknown[]): string {
  const shown = values.slice(0, LISTED).map((value) => (typeof value === "string" ? quote(value) : showValue(value)));
  if (values.length === 1) return shown[0] ?? "";
  const more = values.length > LISTED ? ` and ${values.length - LISTED} more` : "";
  return `one of ${shown.join(", ")}${more}`;
}

/** The schema's own words for what it wants, made to stand inside a sentence. */
export function ownWords(node: SchemaNode | undefined): string | undefined {
  const stated = member(node, "x-expected");
  if (typeof stated === "string") return stated;
  const description = member(node, "description");
  if (typeof description !== "string" || description === "") return undefined;
  const short = description.length > DESCRIPTION_LENGTH ? `${description.slice(0, DESCRIPTION_LENGTH)}…` : description;
  const sentence = short.replace(/\.$/, "");
  // "N·m" or "EN 1999" at the beginning keeps its capitals.
  return /^[A-Z][a-z]|^A /.test(sentence) ? sentence.charAt(0).toLowerCase() + sentence.slice(1) : sentence;
}

/** What a node lets through, in words; undefined when it says nothing by itself. */
export function describe(node: SchemaNode): string | undefined {
  const stated = member(node, "x-expected");
  if (typeof stated === "string") return stated;
  if (Object.hasOwn(node, "const")) return oneOf([node.const]);
  if (Array.isArray(node.enum)) return oneOf(node.enum);
  const required = listOf(node.required);
  if (required.length > 0) return `an object with ${required.map((key) => quote(String(key))).join(", ")}`;
  return ownWords(node) ?? (node.type === undefined ? undefined : typeWords(node.type));
}
