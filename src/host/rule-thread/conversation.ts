import { Worker } from "node:worker_threads";
import type { FromThread, ToThread } from "./protocol.ts";

/** How a request to the thread came out; `rule` is the team's rule that was running when it broke off, `module` the module that was being loaded. */
export type Answer =
  | { readonly kind: "answered"; readonly message: FromThread }
  | { readonly kind: "broken"; readonly why: string; readonly rule?: string; readonly module?: string };

export interface Conversation {
  ask(order: ToThread): Promise<Answer>;
  end(): Promise<void>;
}

/**
 * A thread that answers one order at a time. Each stretch without a sign of life (loading, or one rule) may last the budget; a thread that
 * overruns, dies or throws is ended, and the answer says during which rule.
 * @param budget milliseconds
 */
export function converse(entry: URL, budget: number): Conversation {
  const worker = new Worker(entry, { stdout: true, stderr: true, env: {}, argv: [] });
  let died: string | undefined;
  let settle: ((answer: Answer) => void) | undefined;
  let rule: string | undefined;
  let module: string | undefined;
  let clock: NodeJS.Timeout | undefined;

  const answer = (given: Answer): void => {
    clearTimeout(clock);
    settle?.(given);
    settle = undefined;
  };
  const brokenOff = (why: string): void => {
    died ??= why;
    answer({
      kind: "broken",
      why,
      ...(rule === undefined ? {} : { rule }),
      ...(module === undefined ? {} : { module }),
    });
  };
  const wind = (): void => {
    clearTimeout(clock);
    clock = setTimeout(() => {
      brokenOff(`it did not come to an end within ${budget / 1000} s`);
      void worker.terminate();
    }, budget);
  };
  worker.on("message", (message: FromThread) => {
    if (message.kind === "rule") {
      rule = message.rule;
      wind();
    } else if (message.kind === "module") module = message.module;
    else answer({ kind: "answered", message });
  });
  worker.on("error", (error) => brokenOff(error instanceof Error ? error.message : String(error)));
  worker.on("exit", () => brokenOff("it ended the thread it ran in"));
  return {
    ask(order) {
      return new Promise((resolve) => {
        rule = undefined;
        module = undefined;
        if (died !== undefined) return resolve({ kind: "broken", why: died });
        settle = resolve;
        // Built-in rules may take as long as a large frame needs: only loading and the team's rules are timed.
        if (order.kind === "load") wind();
        worker.postMessage(order);
      });
    },
    async end() {
      settle = undefined;
      clearTimeout(clock);
      await worker.terminate();
    },
  };
}
