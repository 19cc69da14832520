import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, it } from "vitest";

const pages = [
  "README.md",
  "DEVELOPERS.md",
  ...readdirSync("docs", { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".md"))
    .map((name) => `docs/${name}`),
];

it.each(pages)("every file that %s links to exists", (page) => {
  const targets = Array.from(readFileSync(page, "utf8").matchAll(/\]\(([^)#\s:]+)(?:#[^)]*)?\)/g), ([, to = ""]) => to);
  expect(targets.filter((to) => !existsSync(join(dirname(page), to)))).toEqual([]);
});
