// Computes the section properties of the built-in profiles, so that no frame pays for them. With --check it only says
// whether a profile is missing or was computed for another polygon.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { builtinStock } from "../src/model/stock/builtin-stock.ts";

const target = "src/facts/sections.generated.json";
if (!existsSync(target)) writeFileSync(target, "{}\n");
const { regionKey } = await import("../src/facts/sections.ts");
const { sectionProperties } = await import("../src/section/section-properties.ts");
const old = JSON.parse(readFileSync(target, "utf8")) as Record<string, { of: string }>;
const check = process.argv.includes("--check");
const fresh = process.argv.includes("--all");

const made: Record<string, unknown> = {};
const stale: string[] = [];
for (const profile of builtinStock().profiles.values()) {
  const of = regionKey(profile);
  const held = old[profile.name];
  if (held?.of === of && !fresh) made[profile.name] = held;
  else if (check) stale.push(profile.name);
  else made[profile.name] = { of, ...sectionProperties(profile.region) };
}
if (check) {
  for (const name of Object.keys(old)) if (!builtinStock().profiles.has(name)) stale.push(name);
  if (stale.length > 0) {
    console.error(`stale, run npm run generate: ${target} (${stale.join(", ")})`);
    process.exitCode = 1;
  }
} else writeFileSync(target, `${JSON.stringify(made, undefined, 1)}\n`);
