// Makes the types and the standalone validators from schema/*.schema.json. With --check it writes nothing and
// fails when a checked-in file differs from what it would write.
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import standaloneModule from "ajv/dist/standalone/index.js";
import { build } from "esbuild";
import { compile, type JSONSchema } from "json-schema-to-typescript";

interface Schema {
  readonly $id: string;
  readonly title: string;
  readonly properties?: Record<string, { readonly items?: { readonly $ref?: string } }>;
  readonly $defs?: Record<string, unknown>;
}

// The module is its own default export at run time, whatever its types say.
const standalone = standaloneModule as unknown as typeof standaloneModule.default;
const out = "src/model/generated";
const annotations = ["x-quantity", "x-expected", "tsType"];
const banner = "// Generated from schema/ by `npm run generate`; do not edit.\n";
const check = process.argv.includes("--check");
const stale: string[] = [];

/** The definitions that fill the document's lists: they get a validator each, so that every wrong element is named. */
function listDefinitions(schema: Schema): string[] {
  const names = new Set<string>();
  for (const property of Object.values(schema.properties ?? {})) {
    const ref = property.items?.$ref;
    if (ref?.startsWith("#/$defs/")) names.add(ref.slice("#/$defs/".length));
  }
  return [...names].sort();
}

async function validatorModule(schema: Schema, exportsOf: Record<string, string>, allErrors: boolean): Promise<string> {
  const ajv = new Ajv2020({
    allErrors,
    discriminator: true,
    inlineRefs: false,
    verbose: false,
    strict: true,
    strictRequired: false,
    strictTypes: false,
    allowUnionTypes: true,
    code: { source: true, esm: true, lines: false },
    schemas: [schema],
    keywords: annotations.map((keyword) => ({ keyword })),
  });
  const source = standalone(ajv, exportsOf);
  const bundled = await build({
    stdin: { contents: source, resolveDir: process.cwd(), loader: "js" },
    bundle: true,
    preserveSymlinks: true, // the same text where the packages are linked
    format: "esm",
    write: false,
    platform: "neutral",
    legalComments: "none",
  });
  return `${banner}${bundled.outputFiles[0]?.text ?? ""}`;
}

function declarations(names: readonly string[]): string {
  const lines = names.map((name) => `export const ${name}: Validator;`);
  return `${banner}import type { ErrorObject } from "ajv";\ninterface Validator {\n  (value: unknown): boolean;\n  errors?: readonly ErrorObject[] | null;\n}\n${lines.join("\n")}\n`;
}

function emit(path: string, text: string): void {
  const old = existsSync(path) ? readFileSync(path, "utf8") : undefined;
  if (old === text) return;
  if (check) stale.push(path);
  else writeFileSync(path, text);
}

/** Tuples and shared definitions become named types; unknown annotations are dropped by the compiler. */
async function typesOf(schema: Schema): Promise<string> {
  return compile(structuredClone(schema) as unknown as JSONSchema, schema.title, {
    bannerComment: banner.trimEnd(),
    additionalProperties: false,
    unreachableDefinitions: true,
    format: false,
    strictIndexSignatures: true,
  });
}

mkdirSync(out, { recursive: true });
for (const file of readdirSync("schema")
  .filter((name) => name.endsWith(".schema.json"))
  .sort()) {
  const stem = file.replace(".schema.json", "");
  const schema = JSON.parse(readFileSync(`schema/${file}`, "utf8")) as Schema;
  emit(`${out}/${stem}-file.generated.ts`, await typesOf(schema));
  const elements = listDefinitions(schema);
  const named: Record<string, string> = { whole: schema.$id };
  for (const name of elements) named[name] = `${schema.$id}#/$defs/${name}`;
  emit(`${out}/${stem}-check.generated.js`, await validatorModule(schema, { whole: schema.$id }, false));
  emit(`${out}/${stem}-check.generated.d.ts`, declarations(["whole"]));
  emit(`${out}/${stem}-explain.generated.js`, await validatorModule(schema, named, true));
  emit(`${out}/${stem}-explain.generated.d.ts`, declarations(Object.keys(named)));
}
if (stale.length > 0) {
  console.error(`stale, run npm run generate: ${stale.join(", ")}`);
  process.exitCode = 1;
}
