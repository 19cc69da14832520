import type { Command } from "commander";
import { today } from "../../host/today.ts";
import { housePage } from "../../report/text/house-page.ts";
import type { Context } from "../context.ts";
import { pageFor } from "../terminal.ts";

/** `trysquare house`: what a team's house file sets, which file says so, and what it replaces. */
export function registerHouse(program: Command, context: Context): void {
  program
    .command("house")
    .summary("show what the house file sets, and why")
    .description(
      "Shows which levels, limits, rules, stock and concessions the house file sets, and which file says so. Runs no code of the team.",
    )
    .argument("[file]", "a frame file, to see what holds for it; otherwise what holds in this folder")
    .option("--house <file>", "look at this house file instead of the nearest")
    .action(async (frame: string | undefined, { house }: { readonly house?: string }) => {
      const { houseInWords } = await import("../../host/house-in-words.ts");
      const { usableOrTold } = await import("../prepare-run.ts");
      const { stdout } = context;
      const engine = await context.engine();
      const question = {
        engine,
        today: today(),
        ...(house === undefined ? {} : { house }),
        ...(frame === undefined ? {} : { frame }),
      };
      const words = await usableOrTold(() => houseInWords(question));
      if (words === undefined)
        await stdout.write("There is no house file: every rule is at its own level, with the usual limits.\n");
      else for (const chunk of housePage(pageFor(context.terminal), words)) await stdout.write(chunk);
    });
}
