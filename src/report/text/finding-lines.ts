import type { Source } from "../../criteria/criterion.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Governing } from "../../rules/shape/message.ts";
import { sentence } from "../sentence.ts";
import { headed, type Page, paragraph } from "./page.ts";

const INDENT = 8;

const FROM: Readonly<Record<Source, string>> = {
  default: "the usual limit",
  stock: "from stock",
  house: "from the house",
  frame: "from the frame's criteria",
  part: "set on the part",
  computed: "computed",
};

const BOUND: Readonly<Record<Governing["bound"], string>> = {
  tested: "joints as tested",
  soft: "joints soft",
  typical: "joints typical",
  stiff: "joints stiff",
};

/** Where the limit came from, under which loads and joint stiffness the value governs, and what it is otherwise. */
export function whyOf(finding: Finding): string {
  const { measure } = finding;
  if (measure === undefined) return finding.rule;
  const parts = [`${measure.basis}, ${FROM[measure.from]}`];
  if (measure.under !== undefined) parts.push(`under ${measure.under.combination}`);
  const stiffness = measure.under === undefined ? [] : [BOUND[measure.under.bound]];
  for (const [bound, value] of Object.entries(measure.otherBounds ?? {})) stiffness.push(`${value} if ${bound}`);
  if (stiffness.length > 0) parts.push(stiffness.join(", "));
  if (measure.hangsOnStiffness) parts.push("hangs on joint stiffness");
  return `${finding.rule}: ${parts.join("; ")}`;
}

/** What was found, the numbers, why it counts, and what would mend it. */
export function* findingLines(page: Page, finding: Finding): Generator<string> {
  const { conceded } = finding;
  const head = conceded === undefined ? finding.level.toUpperCase() : "CONCEDED";
  yield headed(page, head, conceded === undefined ? page.ink[finding.level] : page.ink.note, sentence(finding), INDENT);
  yield paragraph(page, whyOf(finding), INDENT, page.ink.why);
  if (conceded !== undefined) {
    const words = `${finding.level}, conceded by ${conceded.who} until ${conceded.until}: ${conceded.reason}`;
    yield paragraph(page, words, INDENT);
  }
  if (finding.advice !== undefined) yield paragraph(page, `mend: ${finding.advice}`, INDENT);
  for (const cure of finding.cures) {
    const after = cure.after === undefined ? "" : `: ${cure.after}`;
    yield paragraph(page, `cure: ${cure.words}${after}`, INDENT);
  }
}
