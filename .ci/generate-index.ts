// Makes the lists of all rules and all facts from the files that define them: no list is kept by hand. With --check it writes
// nothing and fails when a checked-in list differs.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { groups } from "../src/rules/shape/rule.ts";

const banner = "// Generated from the files of this folder by `npm run generate`; do not edit.\n";
const check = process.argv.includes("--check");
const stale: string[] = [];

interface Defined {
  readonly file: string;
  readonly name: string;
  readonly text: string;
}

/** Files of a folder that export a constant made by `maker`, in the order of their names. */
function defined(folder: string, maker: string): readonly Defined[] {
  const found: Defined[] = [];
  const pattern = new RegExp(`^export const (\\w+) = ${maker}\\b`, "gm");
  for (const file of readdirSync(folder).sort()) {
    if (!file.endsWith(".ts") || file.endsWith(".generated.ts")) continue;
    const text = readFileSync(`${folder}/${file}`, "utf8");
    for (const [, name = ""] of text.matchAll(pattern)) found.push({ file, name, text });
  }
  return found;
}

function emit(path: string, text: string): void {
  const old = existsSync(path) ? readFileSync(path, "utf8") : undefined;
  if (old === text) return;
  if (check) stale.push(path);
  else writeFileSync(path, text);
}

function groupOf({ file, text }: Defined): number {
  const [, group = ""] = /^ {2}group: "([^"]+)",$/m.exec(text) ?? [];
  const place = (groups as readonly string[]).indexOf(group);
  if (place < 0) throw new Error(`src/rules/${file}: unknown group "${group}"`);
  return place;
}

/** "bar.sags.ts" → "barSags" */
function camel(file: string): string {
  return file.replace(/\.ts$/, "").replace(/[.-](\w)/g, (_, letter: string) => letter.toUpperCase());
}

const rules = [...defined("src/rules", "defineRule")].sort((a, b) => groupOf(a) - groupOf(b));
const imports = [...rules]
  .sort((a, b) => (a.file < b.file ? -1 : 1))
  .map(({ file, name }) => `import { ${name} as ${camel(file)} } from "./${file}";`);
const entries = rules.map(({ file }) => `  ${camel(file)},`);
emit(
  "src/rules/index.generated.ts",
  `${banner}${imports.join("\n")}\nimport type { AnyRule } from "./shape/rule.ts";\n\n/** Every built-in rule, by group, then by id. */\nexport const builtInRules: readonly AnyRule[] = [\n${entries.join("\n")}\n];\n`,
);

const facts = defined("src/facts", "defineFact").map(({ file, name }) => `export { ${name} } from "./${file}";`);
emit("src/facts/index.generated.ts", `${banner}${facts.join("\n")}\n`);

const cures = readdirSync("src/cures")
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".generated.ts"))
  .sort()
  .flatMap((file) =>
    [...readFileSync(`src/cures/${file}`, "utf8").matchAll(/^export const (\w+): Cure\b/gm)].map(([, name = ""]) => ({
      file,
      name,
    })),
  );
emit(
  "src/cures/index.generated.ts",
  `${banner}${cures.map(({ file, name }) => `import { ${name} } from "./${file}";`).join("\n")}\nimport type { Cure } from "./cure.ts";\n\n/** Every cure that is tried. */\nexport const builtInCures: readonly Cure[] = [\n${cures.map(({ name }) => `  ${name},`).join("\n")}\n];\n`,
);

if (stale.length > 0) {
  console.error(`stale, run npm run generate: ${stale.join(", ")}`);
  process.exitCode = 1;
}
