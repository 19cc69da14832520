import { type Command, Option } from "commander";
import { ruleCard } from "../../host/rule-card.ts";
import { nearest } from "../../model/text/nearest.ts";
import { safeJson } from "../../report/json/safe-json.ts";
import { ruleList, rulePage } from "../../report/text/rule-pages.ts";
import type { Context } from "../context.ts";
import { pageFor } from "../terminal.ts";
import { Unusable } from "../unusable.ts";

/** `trysquare rules`: every built-in rule by group, or one in full. */
export function registerRules(program: Command, context: Context): void {
  program
    .command("rules")
    .summary("list the rules, or show one in full with its limits and their basis")
    .description("Lists the built-in rules by group, or shows one in full with its limits and their basis.")
    .argument("[id]", "id of one rule")
    .addOption(new Option("--as <form>", "form of the output").choices(["text", "json"]).default("text"))
    .action(async (id: string | undefined, { as }: { readonly as: "text" | "json" }) => {
      const cards = (await context.engine()).rules.map(ruleCard);
      const chosen = id === undefined ? cards : cards.filter((card) => card.id === id);
      if (id !== undefined && chosen.length === 0) {
        const near = nearest(
          id,
          cards.map((card) => card.id),
        );
        throw new Unusable(`there is no rule "${id}"${near === undefined ? "" : `; did you mean ${near}?`}`);
      }
      const page = pageFor(context.terminal);
      const [one] = chosen;
      const text = id === undefined || one === undefined ? ruleList(page, chosen) : rulePage(page, one);
      const chunks = as === "json" ? [`${safeJson({ formatVersion: "1.0", rules: chosen })}\n`] : text;
      for (const chunk of chunks) await context.stdout.write(chunk);
    });
}
