import type { MessagePort } from "node:worker_threads";
import type { AnyRule } from "../../rules/shape/rule.ts";
import type { Engine } from "../engine.ts";
import { ruleCard } from "../rule-card.ts";
import { loadRules } from "./load-rules.ts";
import type { FromThread, ToThread } from "./protocol.ts";

function wordsOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** What rules print would be mixed into reports: it is thrown away, and who printed is remembered. */
function silencePrinting(current: () => string | undefined): Set<string> {
  const printed = new Set<string>();
  for (const stream of [process.stdout, process.stderr]) {
    stream.write = () => {
      const rule = current();
      if (rule !== undefined) printed.add(rule);
      return true;
    };
  }
  return printed;
}

/** Serves inspections with the built-in rules and those of a team; runs in a thread of its own, one frame after the other. */
export function serveRules(engine: Engine, port: MessagePort): void {
  const say = (message: FromThread): void => port.postMessage(message);
  let team: readonly AnyRule[] = [];
  let current: string | undefined;
  const printed = silencePrinting(() => current);

  const inspect = (order: Extract<ToThread, { kind: "inspect" }>): void => {
    const ids = new Set(team.map((rule) => rule.id));
    printed.clear();
    const ruleStarts = (rule: string): void => {
      current = ids.has(rule) ? rule : undefined;
      if (current !== undefined) say({ kind: "rule", rule: current });
    };
    const rules = [...engine.rules, ...team.filter((rule) => !order.without.includes(rule.id))];
    const { file, bytes, stock, settings, margins } = order;
    try {
      const { report } = engine.inspect({ file, bytes, stock, house: { ...settings, rules }, margins, ruleStarts });
      say({ kind: "done", report, printed: [...printed].sort() });
    } catch (error) {
      say({ kind: "failed", why: wordsOf(error) });
    } finally {
      current = undefined;
    }
  };

  port.on("message", (order: ToThread) => {
    if (order.kind === "inspect") return inspect(order);
    loadRules(order.modules, (module) => say({ kind: "module", module })).then(
      (rules) => {
        team = rules;
        say({ kind: "loaded", cards: [...engine.rules, ...team].map(ruleCard) });
      },
      (error: unknown) => say({ kind: "unusable", why: wordsOf(error) }),
    );
  });
}
