import { readFileSync } from "node:fs";

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
/** The parts of a JSON Schema 2020-12 that the frame format uses. */
interface Schema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly enum?: readonly Json[];
  readonly const?: Json;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: Schema | boolean;
  readonly items?: Schema | boolean;
  readonly prefixItems?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
  readonly $defs?: Readonly<Record<string, Schema>>;
}

const format = JSON.parse(readFileSync("schema/frame.schema.json", "utf8")) as Schema;

/** What to put for a value of the kind (`length`, `point`, `bar`: a name of the schema's `$defs`), its own parts already changed. */
export type Change = Readonly<Record<string, (value: Json) => Json>>;

function fits(value: Json, schema: Schema): boolean {
  if (schema.$ref !== undefined) return fits(value, defined(schema.$ref).schema);
  if (schema.anyOf !== undefined) return schema.anyOf.some((one) => fits(value, one));
  if (schema.const !== undefined) return schema.const === value;
  if (schema.enum !== undefined) return schema.enum.includes(value);
  const type = Array.isArray(value) ? "array" : typeof value;
  return (
    schema.type === undefined ||
    [schema.type].flat().some((one) => one === type || (one === "integer" && type === "number"))
  );
}

function defined(ref: string): { readonly name: string; readonly schema: Schema } {
  const name = ref.replace("#/$defs/", "");
  const schema = format.$defs?.[name];
  if (schema === undefined) throw new Error(`the schema has no ${ref}`);
  return { name, schema };
}

function walk(value: Json, schema: Schema, change: Change): Json {
  if (schema.$ref !== undefined) {
    const { name, schema: target } = defined(schema.$ref);
    const inner = walk(value, target, change);
    return change[name]?.(inner) ?? inner;
  }
  if (schema.anyOf !== undefined) {
    const branch = schema.anyOf.find((one) => fits(value, one));
    return branch === undefined ? value : walk(value, branch, change);
  }
  if (Array.isArray(value))
    return value.map((item, index) => {
      const of = schema.prefixItems?.[index] ?? schema.items;
      return typeof of === "object" ? walk(item, of, change) : item;
    });
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => {
      const of = schema.properties?.[key] ?? schema.additionalProperties;
      return [key, typeof of === "object" ? walk(item, of, change) : item];
    }),
  );
}

/** A frame file with values changed by their kind, innermost first. */
export function changeFrame(file: Json, change: Change): Json {
  return walk(file, format, change);
}
