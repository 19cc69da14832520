import type { Report, Undecided } from "../../inspection/report.ts";
import { fingerprints } from "./fingerprints.ts";
import { logicalLocation, physicalLocation } from "./location.ts";
import { plainWords } from "./words.ts";

/** Parts named in one result; the json report holds all. */
const PARTS_MOST = 100;

/** What one rule could not decide, as an open result (3.27.9): neither passed nor failed. */
export function undecidedResult(report: Report, undecided: Undecided, rule: string, index: number | undefined): object {
  const { why, at, holds } = undecided;
  const place = { file: report.file, pointer: "", line: 1, column: 1, endLine: 1, endColumn: 1 };
  const named = at.slice(0, PARTS_MOST);
  const left = at.length > PARTS_MOST ? ` ${at.length - PARTS_MOST} more parts wait for it.` : "";
  return {
    ruleId: rule,
    ...(index !== undefined && { ruleIndex: index }),
    kind: "open",
    level: "none",
    message: { text: `${plainWords(`Undecided: ${why}.`)}${left}` },
    locations: [
      { physicalLocation: physicalLocation(place), logicalLocations: named.map(({ id }) => logicalLocation(id)) },
    ],
    relatedLocations: [],
    partialFingerprints: fingerprints(report.file, JSON.stringify(["undecided", rule, why])),
    suppressions: [],
    properties: { holds },
  };
}
