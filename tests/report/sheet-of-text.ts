import { ruleCard } from "../../src/host/rule-card.ts";
import { noSettings } from "../../src/house/settings.ts";
import { inspectFrame } from "../../src/inspection/inspect-file.ts";
import { sheetDocument } from "../../src/report/sheet/sheet-document.ts";
import type { SheetInput } from "../../src/report/sheet/sheet-input.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";

const house = { ...noSettings("2027-03-31"), rules: builtInRules };

/** The inspection of a text with all its margins, as the command gives it to the sheet. */
export function sheetInput(text: string): SheetInput {
  const bytes = new TextEncoder().encode(text);
  const file = "bench.frame.json";
  const { report, frame } = inspectFrame({ file, bytes, stock: [], house, margins: true });
  return { report, ...(frame ? { frame } : {}), cards: builtInRules.map(ruleCard), bytes, version: "1.2.3" };
}

export const sheetOfText = (text: string): string => [...sheetDocument(sheetInput(text))].join("");
