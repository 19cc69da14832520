import type { Finding } from "../../inspection/report.ts";
import { comparePlaces } from "../../model/problem.ts";
import { listed } from "../count.ts";
import { compareNaturally } from "../natural-order.ts";
import { sentence } from "../sentence.ts";
import { LIMIT_FROM, stiffnessWords } from "../words.ts";
import { headed, type Page, paragraph } from "./page.ts";

const INDENT = 8;
/** Sub-parts named behind findings that read the same. */
const PARTS_NAMED = 5;

/** Where the limit came from, under which loads and joint stiffness the value governs, and what it is otherwise. */
function whyOf(finding: Finding): string {
  const { measure } = finding;
  if (measure === undefined) return finding.rule;
  const parts = [`${LIMIT_FROM[measure.from]}, ${measure.basis}`];
  if (measure.under !== undefined) parts.push(`under ${measure.under.combination}`);
  const stiffness = stiffnessWords(measure);
  if (stiffness !== undefined) parts.push(stiffness);
  return `${finding.rule}: ${parts.join("; ")}`;
}

/** What was found, the numbers, why it counts, and what would mend it. */
function* findingLines(page: Page, finding: Finding): Generator<string> {
  const { conceded } = finding;
  const head = conceded === undefined ? finding.level.toUpperCase() : "CONCEDED";
  yield headed(page, head, conceded === undefined ? page.ink[finding.level] : page.ink.note, sentence(finding), INDENT);
  yield paragraph(page, whyOf(finding), INDENT, page.ink.why);
  if (conceded !== undefined) {
    const words = `${finding.level}, conceded by ${conceded.who} until ${conceded.until}: ${conceded.reason}`;
    yield paragraph(page, words, INDENT);
  }
  if (finding.advice !== undefined) yield paragraph(page, `mend: ${finding.advice}`, INDENT);
}

/** Changes that mend a finding. */
function* cureLines(page: Page, finding: Finding): Generator<string> {
  for (const cure of finding.cures) {
    const before = finding.measure?.shown.measured;
    const change = cure.after === undefined || before === undefined ? "" : `; ${before} becomes ${cure.after}`;
    yield paragraph(page, `cure: ${cure.words}${change}`, INDENT);
  }
}

/** Kinds of part that have no heading of their own: they stand under their bar's or joint's. */
const UNDER_ANOTHER: ReadonlySet<string> = new Set(["end", "connector", "screw", "nut"]);

/** The findings of one part; those that read the same stand once, with the sub-parts they are about. */
export function findingsOfPart(page: Page, findings: readonly Finding[]): string {
  const blocks = new Map<string, Finding[]>();
  for (const finding of findings) {
    const block = [...findingLines(page, finding)].join("");
    const known = blocks.get(block);
    if (known === undefined) blocks.set(block, [finding]);
    else known.push(finding);
  }
  let lines = "";
  for (const [block, [first, ...rest]] of blocks) {
    lines += block;
    if (first === undefined) continue;
    // A change tried for one of them mends the others as well, or has words of its own.
    const cures = new Set([first, ...rest].flatMap((finding) => [...cureLines(page, finding)]));
    lines += [...cures].join("");
    const inFileOrder = [first, ...rest].sort(
      (a, b) => comparePlaces(a.place, b.place) || compareNaturally(a.at.id, b.at.id),
    );
    const at = inFileOrder.map((finding) => finding.at.id);
    if (rest.length > 0)
      lines += paragraph(page, `${at.length} times: ${listed(at, PARTS_NAMED)}`, INDENT, page.ink.why);
    else if (UNDER_ANOTHER.has(first.at.kind) && !first.text.includes(first.at.id))
      lines += paragraph(page, `at ${first.at.id}`, INDENT, page.ink.why);
  }
  return lines;
}
