import type { HouseSettings } from "../../house/house-in-force.ts";
import type { StockBytes } from "../../inspection/inspect-file.ts";
import type { Failure, Report, RuleCard } from "../../inspection/report.ts";
import { failedReport } from "../unread-report.ts";
import { type Conversation, converse } from "./conversation.ts";
import { RulesUnusable } from "./load-rules.ts";
import type { ModuleToLoad } from "./protocol.ts";

/** Time one rule of a team may take for one frame, milliseconds. */
const RULE_BUDGET = 10_000;

export interface RuleThread {
  readonly cards: readonly RuleCard[];
  /** Never rejects: what the team's rules do wrong becomes failures of the report. */
  inspect(frame: {
    readonly file: string;
    readonly bytes: Uint8Array;
    readonly stock: readonly StockBytes[];
    readonly settings: HouseSettings;
    readonly margins?: boolean;
  }): Promise<Report>;
  end(): Promise<void>;
}

async function start(
  entry: URL,
  modules: readonly ModuleToLoad[],
  budget: number,
): Promise<{ readonly talk: Conversation; readonly cards: readonly RuleCard[] }> {
  const talk = converse(entry, budget);
  const answer = await talk.ask({ kind: "load", modules });
  if (answer.kind === "answered" && answer.message.kind === "loaded") return { talk, cards: answer.message.cards };
  await talk.end();
  if (answer.kind === "broken") {
    const what = answer.module === undefined ? "the team's rules" : `the rule module ${answer.module}`;
    throw new RulesUnusable(`${what} cannot be loaded: ${answer.why}`);
  }
  throw new RulesUnusable(
    answer.message.kind === "unusable" ? answer.message.why : "the team's rules cannot be loaded",
  );
}

function withFailures(report: Report, failures: readonly Failure[]): Report {
  return failures.length === 0 ? report : { ...report, complete: false, failures: [...report.failures, ...failures] };
}

/**
 * Starts a thread with the rules of a team. A rule that never returns or brings its thread down is named, and the frame is inspected again
 * in a new thread without it, so that all other findings are those of a run in which it was not there.
 * @throws RulesUnusable when a module cannot be loaded or holds no proper rule
 */
export async function startRuleThread(
  entry: URL,
  modules: readonly ModuleToLoad[],
  budget: number = RULE_BUDGET,
): Promise<RuleThread> {
  let { talk, cards } = await start(entry, modules, budget);
  return {
    cards,
    async inspect({ file, bytes, stock, settings, margins = false }) {
      const failures: Failure[] = [];
      const without: string[] = [];
      for (;;) {
        const answer = await talk.ask({ kind: "inspect", file, bytes, stock, settings, margins, without });
        if (answer.kind === "answered") {
          const { message } = answer;
          if (message.kind !== "done")
            return failedReport(file, message.kind === "failed" ? message.why : "the thread answered out of turn");
          for (const rule of message.printed)
            failures.push({ rule, message: "it printed; a rule may only say judgements" });
          return withFailures(message.report, failures);
        }
        await talk.end();
        try {
          ({ talk, cards } = await start(entry, modules, budget));
        } catch (error) {
          return failedReport(file, error instanceof Error ? error.message : String(error));
        }
        if (answer.rule === undefined) return withFailures(failedReport(file, answer.why), failures);
        failures.push({ rule: answer.rule, message: answer.why });
        without.push(answer.rule);
      }
    },
    end: () => talk.end(),
  };
}
