// Bundles the command, the library and the thread for a team's rules into dist/, with the licences of what is bundled, and
// writes the library's types; with --to <folder> into that folder. The three share their chunks, so that a team's rules and the built-in ones use one library.
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { build } from "esbuild";

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license: string;
}

const { to: dist, "no-types": noTypes } = parseArgs({
  options: { to: { type: "string", default: "dist" }, "no-types": { type: "boolean", default: false } },
}).values;
rmSync(dist, { recursive: true, force: true });
mkdirSync(dist, { recursive: true });

const { metafile } = await build({
  entryPoints: { cli: "src/cli/cli.ts", index: "src/index.ts", worker: "src/host/worker.ts" },
  outdir: dist,
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20",
  chunkNames: "chunks/[name]-[hash]",
  legalComments: "none",
  minify: true,
  metafile: true,
  // CommonJS packages ask for the platform's modules by require, which ES modules do not have.
  banner: {
    js: 'import { createRequire as requireFor } from "node:module"; const require = requireFor(import.meta.url);',
  },
});

/** "node_modules/a/b/c.js" → "node_modules/a"; scoped names have two pieces. */
function packageOf(input: string): string | undefined {
  const [, root] = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(input) ?? [];
  return root;
}

function licenceText(root: string): string {
  const file = readdirSync(root)
    .sort()
    .find((name) => /^licen[cs]e/i.test(name));
  return file === undefined ? "" : readFileSync(`${root}/${file}`, "utf8").trim();
}

const bundled = new Set<string>();
for (const input of Object.keys(metafile.inputs)) {
  const root = packageOf(input);
  if (root !== undefined) bundled.add(root);
}
const licences = [...bundled].sort().map((root) => {
  const { name, version, license } = JSON.parse(readFileSync(`${root}/package.json`, "utf8")) as Manifest;
  return `${name} ${version} (${license})\n\n${licenceText(root)}\n`;
});
writeFileSync(
  `${dist}/LICENSES.txt`,
  `Packages contained in the files of this folder, with their licences.\n\n${licences.join(`\n${"-".repeat(72)}\n\n`)}`,
);

const tsc = "node_modules/typescript/bin/tsc";
if (existsSync(tsc) && !noTypes)
  execFileSync(process.execPath, [tsc, "-p", ".ci/tsconfig.types.json", "--outDir", `${dist}/types`], {
    stdio: "inherit",
  });

const sizes = Object.entries(metafile.outputs).map(([file, { bytes }]) => `${String(bytes).padStart(8)} ${file}`);
console.log(sizes.sort().reverse().join("\n"));
