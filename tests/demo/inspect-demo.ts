import { readFileSync } from "node:fs";
import type { HouseInForce } from "../../src/house/house-in-force.ts";
import { noSettings } from "../../src/house/settings.ts";
import { inspectFile, inspectFrame } from "../../src/inspection/inspect-file.ts";
import type { Report } from "../../src/inspection/report.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";

/** Nobody's house: the built-in rules at their own levels. */
const house: HouseInForce = { ...noSettings("2027-03-31"), rules: builtInRules };

export const SOUND = ["first-bench", "potting-bench", "mixer-guard", "sack-cart", "tray-rack"] as const;
export const FAULTY = ["potting-bench-faulty", "mixer-guard-faulty", "sack-cart-faulty", "tray-rack-faulty"] as const;
export type Demo = (typeof SOUND)[number] | (typeof FAULTY)[number];

function pathOf(demo: Demo): string {
  return `docs/demo/${demo}.frame.json`;
}

export function textOf(demo: Demo): string {
  return readFileSync(pathOf(demo), "utf8");
}

/** The inspection of a text beside the frame that was read from it. */
export function inspectWhole(name: string, text: string): ReturnType<typeof inspectFrame> {
  return inspectFrame({ file: `${name}.frame.json`, bytes: new TextEncoder().encode(text), stock: [], house });
}

export function inspectText(name: string, text: string): Report {
  return inspectFile({ file: `${name}.frame.json`, bytes: new TextEncoder().encode(text), stock: [], house });
}
