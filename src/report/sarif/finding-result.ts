import type { Finding, Report, RuleCard } from "../../inspection/report.ts";
import { overlaps, sentence } from "../sentence.ts";
import { fingerprints } from "./fingerprints.ts";
import { logicalLocation, physicalLocation } from "./location.ts";
import { overlapId, SARIF_LEVEL, slotsOf } from "./rule-descriptor.ts";
import { linkText, plainWords } from "./words.ts";

/** Ingesters take no more locations than this in one result. */
const RELATED_MOST = 100;

interface RuleAt {
  readonly card: RuleCard;
  readonly index: number;
}

function relatedOf({ related }: Finding): readonly Finding["related"][number][] {
  return related.slice(0, RELATED_MOST);
}

function messageOf(finding: Finding, rule: RuleAt | undefined): object {
  const links = relatedOf(finding).map(({ at }, i) => `[${linkText(at.id)}](${i + 1})`);
  const mend = finding.advice === undefined ? "" : ` Mend: ${finding.advice}.`;
  const said = plainWords(`${finding.where}: ${sentence(finding)}.${mend}`);
  const text = links.length === 0 ? said : `${said} See ${links.join(", ")}.`;
  const message = rule?.card.messages[finding.key];
  if (message === undefined) return { text };
  const overlap = overlaps(finding) ? message.overlap : undefined;
  const template = overlap ?? message.text;
  const id = overlap === undefined ? finding.key : overlapId(finding.key);
  const shown = new Map(Object.entries(finding.shown));
  return { text, id, arguments: slotsOf(template).map((slot) => plainWords(shown.get(slot) ?? "")) };
}

function propertiesOf({ level, where, measure, cures }: Finding): object {
  const measured = measure && {
    quantity: measure.quantity,
    value: measure.measured,
    limit: measure.limit,
    sense: measure.sense,
    utilisation: measure.utilisation,
    shown: measure.shown,
    from: measure.from,
    basis: measure.basis,
    under: measure.under,
    hangsOnStiffness: measure.hangsOnStiffness,
    soundAbove: measure.soundAbove,
  };
  return { level, where, ...(measured && { measured }), ...(cures.length > 0 && { cures }) };
}

function suppressionsOf({ conceded }: Finding): readonly object[] {
  if (conceded === undefined) return [];
  const { reason, who, until } = conceded;
  return [{ kind: "external", status: "accepted", justification: plainWords(reason), properties: { who, until } }];
}

/** A finding as a result. Suppressions stand on every result, empty where nothing is conceded: all of a run or none (3.27.23). */
export function findingResult(report: Report, finding: Finding, rule: RuleAt | undefined): object {
  return {
    ruleId: finding.rule,
    ...(rule && { ruleIndex: rule.index }),
    kind: "fail",
    level: SARIF_LEVEL[finding.level],
    message: messageOf(finding, rule),
    locations: [
      {
        physicalLocation: physicalLocation(finding.place),
        logicalLocations: [logicalLocation(finding.at.id, finding.place.pointer)],
      },
    ],
    relatedLocations: relatedOf(finding).map(({ at, place }, i) => ({
      id: i + 1,
      physicalLocation: physicalLocation(place),
      logicalLocations: [logicalLocation(at.id, place.pointer)],
      message: { text: plainWords(at.id) },
    })),
    partialFingerprints: fingerprints(report.file, finding.print),
    suppressions: suppressionsOf(finding),
    properties: propertiesOf(finding),
  };
}
