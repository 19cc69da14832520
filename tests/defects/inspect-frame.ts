import { readdirSync, readFileSync } from "node:fs";
import type { HouseInForce } from "../../src/house/house-in-force.ts";
import { noSettings } from "../../src/house/settings.ts";
import { inspectFile } from "../../src/inspection/inspect-file.ts";
import type { Report } from "../../src/inspection/report.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";

/** Nobody's house: the built-in rules at their own levels. */
const house: HouseInForce = { ...noSettings("2027-03-31"), rules: builtInRules };

const FOLDER = "tests/defects/frames";
const ENDING = ".frame.json";

/** Names of the sound frames: all that lie in the folder. */
export const SOUND_FRAMES: readonly string[] = readdirSync(FOLDER)
  .filter((file) => file.endsWith(ENDING))
  .map((file) => file.slice(0, -ENDING.length))
  .sort();

export function frameText(name: string): string {
  return readFileSync(`${FOLDER}/${name}${ENDING}`, "utf8");
}

/** Inspects a frame file with stock of the team's, without trying cures. */
export function inspectFrame(name: string, text: string, stock?: string): Report {
  const bytes = (of: string): Uint8Array => new TextEncoder().encode(of);
  return inspectFile({
    file: `${name}${ENDING}`,
    bytes: bytes(text),
    stock: stock === undefined ? [] : [{ file: "team.stock.json", bytes: bytes(stock) }],
    house,
  });
}
