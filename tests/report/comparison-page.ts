import { compareBars, compareFindings } from "../../src/inspection/compare.ts";
import { compareWritten } from "../../src/inspection/compare-written.ts";
import { compareDocument } from "../../src/report/compare/page/compare-document.ts";
import { sheetInput } from "./sheet-of-text.ts";

/** The page for two texts, as the command makes it. */
export function comparisonPage(before: string, after: string): string {
  const [was, is] = [sheetInput(before), sheetInput(after)];
  const bars = was.frame && is.frame ? compareBars(was.frame, is.frame) : undefined;
  const parts = bars ? compareWritten(was.bytes, is.bytes, bars.renamed) : undefined;
  const comparison = {
    before: was.report,
    after: is.report,
    findings: compareFindings(was.report, is.report),
    ...(bars ? { bars } : {}),
    ...(parts ? { parts } : {}),
  };
  return [...compareDocument({ comparison, before: was, after: is, version: "1.2.3" })].join("");
}
