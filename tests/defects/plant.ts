import { readdirSync } from "node:fs";
import type { Finding, Report } from "../../src/inspection/report.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import type { Fault } from "./fault.ts";
import { frameText, inspectFrame } from "./inspect-frame.ts";

export type Size = "plain" | "just beyond" | "far beyond";

/** What came of one fault planted in one frame. */
export interface Trial {
  readonly fault: string;
  readonly rule: string;
  readonly frame: string;
  readonly size: Size;
  readonly found: boolean;
  /** What else the inspection said that does not follow from the fault: rule/message at part: sentence. */
  readonly strange: readonly { readonly rule: string; readonly words: string }[];
  /** Why it cannot count: the file was not read, or no size just beyond was found. */
  readonly trouble?: string;
}

/** A fault with the name of its file. */
export interface NamedFault {
  readonly name: string;
  readonly fault: Fault;
}

const FOLDER = "tests/defects/faults";

/** Every fault in the folder, by file name. */
export async function allFaults(): Promise<readonly NamedFault[]> {
  const files = readdirSync(FOLDER)
    .filter((file) => file.endsWith(".ts"))
    .sort();
  return Promise.all(
    files.map(async (file) => {
      const { fault } = (await import(`./faults/${file.slice(0, -3)}.ts`)) as { fault: Fault };
      return { name: file.slice(0, -".ts".length), fault };
    }),
  );
}

/** Rules of which no fault is planted. */
export function unplanted(rules: readonly string[], faults: readonly NamedFault[]): readonly string[] {
  const planted = new Set(faults.map(({ fault }) => fault.rule));
  return rules.filter((id) => !planted.has(id));
}

interface Planted {
  readonly report: Report;
  readonly parts: readonly string[];
}

function planted({ fault }: NamedFault, frame: string, size: number): Planted {
  const file = JSON.parse(frameText(frame)) as FrameFile;
  const spot = fault.spots[frame] ?? "";
  const parts = fault.plant(file, spot, size, frame);
  return { report: inspectFrame(frame, JSON.stringify(file), fault.stock), parts };
}

/** A part is meant by a finding on it, on a part of it, or that names it. */
function concerns(finding: Finding, part: string): boolean {
  return [finding.at.id, ...finding.related.map(({ at }) => at.id)].some(
    (id) => id === part || id.startsWith(`${part}/`) || id.startsWith(`${part}.`),
  );
}

/** Findings of the message in question; those that speak only for softer joints than usual do not count. */
function saidBy({ rule, key }: Fault, report: Report): readonly Finding[] {
  return report.findings.filter(
    (one) => one.rule === rule && one.key === key && !(one.level === "note" && one.measure?.hangsOnStiffness),
  );
}

function isSaid(fault: Fault, { report, parts }: Planted): boolean {
  const said = saidBy(fault, report);
  return said.length > 0 && parts.every((part) => said.some((finding) => concerns(finding, part)));
}

const BECAUSE_LOOSE = /^because of frame\.loose/;
/** What a frame that tips over stands on is not known, and frame.tips says so. */
const LIFTS = /the frame lifts off its feet$/;

function strangeIn({ rule, key, consequences = {} }: Fault, report: Report): Trial["strange"] {
  const follows = (finding: Finding): boolean =>
    (finding.rule === rule && finding.key === key) ||
    finding.rule in consequences ||
    `${finding.rule}/${finding.key}` in consequences;
  const findings = report.findings
    .filter((finding) => !follows(finding))
    .map((finding) => ({
      rule: finding.rule,
      words: `${finding.rule}/${finding.key} at ${finding.at.id}: ${finding.text}`,
    }));
  const held = report.findings.some((finding) => ["bar.adrift", "frame.loose"].includes(finding.rule));
  const tips = "frame.tips" in consequences && report.findings.some(({ rule: id }) => id === "frame.tips");
  const undecided = report.undecided
    .filter(({ why }) => !(held && BECAUSE_LOOSE.test(why)) && !(tips && LIFTS.test(why)))
    .map(({ rules, why }) => ({ rule: rules[0] ?? "", words: `undecided: ${why} (${rules.join(", ")})` }));
  return [...findings, ...undecided];
}

function troubleIn({ problems, complete, failures }: Report): string | undefined {
  const [problem] = problems;
  if (problem) return `the file: ${problem.found}; expected ${problem.expected}`;
  if (!complete) return `not complete: ${failures.map(({ message }) => message).join("; ")}`;
  return undefined;
}

function trial(named: NamedFault, frame: string, size: Size, at: number): Trial {
  const result = planted(named, frame, at);
  const trouble = troubleIn(result.report);
  return {
    fault: named.name,
    rule: named.fault.rule,
    frame,
    size,
    found: isSaid(named.fault, result),
    strange: strangeIn(named.fault, result.report),
    ...(trouble === undefined ? {} : { trouble }),
  };
}

/** Inspections that a search for the limit may take. */
const SEARCHES = 14;
/** A value counts as just beyond its limit up to here, as a share of it. */
const HAIR = 0.02;

function over(fault: Fault, { report, parts }: Planted): number {
  const uses = saidBy(fault, report)
    .filter((one) => parts.length === 0 || parts.some((part) => concerns(one, part)))
    .flatMap(({ measure }) => {
      if (!measure) return [];
      const { measured, limit, sense } = measure;
      return [sense === "at most" ? measured / limit : limit / measured];
    });
  return uses.reduce((a, b) => Math.max(a, b), 0);
}

/** The least size found at which the rule speaks, its value no more than a hair beyond the limit: by halving, on what the report says. */
function justBeyond(named: NamedFault, frame: string, sizes: { sound: number; faulty: number }): number | undefined {
  let { sound: low, faulty: high } = sizes;
  for (let i = 0; i < SEARCHES; i += 1) {
    const middle = (low + high) / 2;
    const result = planted(named, frame, middle);
    const use = over(named.fault, result);
    if (isSaid(named.fault, result)) {
      if (use > 0 && use <= 1 + HAIR) return middle;
      high = middle;
    } else low = middle;
  }
  return undefined;
}

/** All sizes of one fault in one frame; `quick` leaves out the search for the limit. */
export function trialsOf(named: NamedFault, frame: string, quick = false): readonly Trial[] {
  const { sizes } = named.fault;
  if (sizes === "plain") return [trial(named, frame, "plain", 1)];
  if ("just" in sizes)
    return [
      trial(named, frame, "just beyond", sizes.just),
      ...(quick ? [] : [trial(named, frame, "far beyond", sizes.far)]),
    ];
  const far = trial(named, frame, "far beyond", sizes.faulty);
  if (quick) return [far];
  const at = justBeyond(named, frame, sizes);
  if (at === undefined) {
    const trouble = "no size was found at which the rule just speaks";
    return [far, { ...far, size: "just beyond", found: false, strange: [], trouble }];
  }
  return [far, trial(named, frame, "just beyond", at)];
}
