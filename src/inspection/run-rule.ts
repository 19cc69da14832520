import { keeps, utilisation } from "../criteria/keeps.ts";
import { FactFailed, knownOf } from "../facts/fact.ts";
import type { Frame } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { formatPair } from "../model/units/format-quantity.ts";
import type { Quantity } from "../model/units/quantity.ts";
import { type Judgement, sayFor } from "../rules/shape/judgement.ts";
import type { Measurement } from "../rules/shape/message.ts";
import type { AnyRule, Level } from "../rules/shape/rule.ts";
import { finding, hangs, type Setting } from "./finding.ts";
import { givenFor } from "./given-for.ts";
import type { Limits } from "./limits.ts";
import type { Failure, Finding, Tally } from "./report.ts";

/** What one rule came to: what is kept of it while the rest is only counted. */
export interface RuleOutcome {
  readonly tally: Tally;
  readonly findings: readonly Finding[];
  readonly undecided: readonly { readonly at: Ref; readonly why: string }[];
  readonly failures: readonly Failure[];
}

interface Counting {
  met: number;
  notMet: number;
  notApplicable: number;
  closest?: NonNullable<Tally["closest"]>;
  readonly findings: Finding[];
  readonly undecided: { at: Ref; why: string }[];
  readonly failures: Failure[];
}

function isJudgement(value: unknown): value is Judgement {
  return typeof value === "object" && value !== null && "kind" in value && "at" in value;
}

/** Share of the limit used. What equals its limit by choice, like a count or a caster's one height, says nothing about margins. */
function shareOf(
  { measured, limit }: Measurement,
  quantity: Quantity,
  sense: "at most" | "at least",
): number | undefined {
  const chosen = quantity === "count" || measured === limit.value;
  return chosen ? undefined : utilisation(measured, limit.value, sense);
}

function keepMargin(
  { margins, frame }: Setting,
  rule: string,
  { at, m }: Judgement & { readonly kind: "measured" },
  quantity: Quantity,
  sense: "at most" | "at least",
): void {
  const share = margins && shareOf(m, quantity, sense);
  if (share === undefined) return;
  margins?.push({
    rule,
    at,
    met: keeps(m.measured, m.limit.value, sense),
    utilisation: share,
    sense,
    ...formatPair(m.measured, m.limit.value, quantity, frame.units),
    ...(m.under ? { under: m.under } : {}),
  });
}

function count(setting: Setting, rule: AnyRule, strict: Level | undefined, judgement: Judgement, into: Counting): void {
  switch (judgement.kind) {
    case "not applicable":
      into.notApplicable += 1;
      return;
    case "undecided":
      into.undecided.push({ at: judgement.at, why: judgement.why });
      return;
    case "stated":
      if (judgement.met) into.met += 1;
      else {
        into.notMet += 1;
        into.findings.push(finding(setting, rule, strict, judgement));
      }
      return;
    case "measured": {
      const message = rule.messages[judgement.key];
      const { measured, limit } = judgement.m;
      if (!message?.measures || !Number.isFinite(measured))
        throw new Error(`it measured ${String(measured)} for "${judgement.key}"`);
      const sense = message.sense ?? "at most";
      const { watch } = setting;
      if (watch && watch.rule === rule.id && watch.key === judgement.key && watch.at === judgement.at.id) {
        setting.watched.push(formatPair(measured, limit.value, message.measures, setting.frame.units).measured);
      }
      keepMargin(setting, rule.id, judgement, message.measures, sense);
      if (!keeps(measured, limit.value, sense)) {
        into.notMet += 1;
        into.findings.push(finding(setting, rule, strict, judgement));
        return;
      }
      if (hangs(judgement.m, sense)) {
        // Sound with joints as they usually are, not with soft ones: worth knowing, no more.
        into.notMet += 1;
        into.findings.push(withoutWorking(finding(setting, rule, "note", whereItFails(judgement, sense))));
        return;
      }
      into.met += 1;
      const share = shareOf(judgement.m, message.measures, sense);
      if (share === undefined || share <= (into.closest?.utilisation ?? 0)) return;
      into.closest = {
        at: judgement.at,
        quantity: message.measures,
        utilisation: share,
        sense,
        ...formatPair(measured, limit.value, message.measures, setting.frame.units),
      };
      return;
    }
    default:
      throw new Error("it yielded no judgement");
  }
}

/** The figures of a judgement belong to the joint stiffness that governs, not to the one it is told for. */
function withoutWorking(one: Finding): Finding {
  if (!one.measure?.working) return one;
  const { working: _, ...measure } = one.measure;
  return { ...one, measure };
}

/** The same judgement told for the joint stiffness with which the limit is not kept. */
function whereItFails(
  judgement: Judgement & { readonly kind: "measured" },
  sense: "at most" | "at least",
): Judgement & { readonly kind: "measured" } {
  const { m } = judgement;
  const failing = Object.entries(m.otherBounds ?? {}).find(([, value]) => !keeps(value, m.limit.value, sense));
  if (!failing || !m.under) return judgement;
  const [bound, measured] = failing;
  const { [bound]: _, ...others } = m.otherBounds ?? {};
  const values = Object.fromEntries(
    Object.entries(judgement.values).map(([name, value]) => [name, value === m.measured ? measured : value]),
  );
  const under = { ...m.under, bound: bound as typeof m.under.bound };
  return {
    ...judgement,
    values,
    m: { ...m, measured, under, otherBounds: { [m.under.bound]: m.measured, ...others } },
  };
}

/** Runs one rule over a frame, at the level a house sets or at its own, contained: what it throws or yields wrongly is a failure of the rule, and the rest stands. */
export function runRule(
  rule: AnyRule,
  frame: Frame,
  limits: Limits,
  strict: Level | undefined,
  setting: Setting,
): RuleOutcome {
  const into: Counting = { met: 0, notMet: 0, notApplicable: 0, findings: [], undecided: [], failures: [] };
  let at: Ref | undefined;
  try {
    const known = knownOf(rule.needs, frame);
    const say = sayFor(rule.messages);
    for (const judgement of rule.inspect(known as never, givenFor(rule, limits) as never, say as never)) {
      if (!isJudgement(judgement)) throw new Error("it yielded something that is no judgement");
      at = judgement.at;
      count(setting, rule, strict, judgement, into);
    }
  } catch (cause) {
    const message = cause instanceof Error ? cause.message : String(cause);
    const fact = cause instanceof FactFailed ? { fact: cause.fact } : {};
    into.failures.push({ rule: rule.id, ...fact, ...(at ? { at } : {}), message });
  }
  const { met, notMet, notApplicable, closest } = into;
  const tally: Tally = {
    rule: rule.id,
    met,
    notMet,
    notApplicable,
    undecided: into.undecided.length,
    ...(closest ? { closest } : {}),
  };
  return { tally, findings: into.findings, undecided: into.undecided, failures: into.failures };
}
