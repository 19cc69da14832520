import { type Command, Option } from "commander";
import { methodInForce } from "../../house/method-in-force.ts";
import { nearest } from "../../model/text/nearest.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-code.ts";
import { problemWords } from "../problem-words.ts";
import { Unusable } from "../unusable.ts";

interface StaticsOptions {
  readonly as: "text" | "json";
  readonly house?: string;
  readonly bar?: string;
}

/** `trysquare statics`: loads and floor of every combination summed up, to check the calculation by hand. */
export function registerStatics(program: Command, context: Context): void {
  program
    .command("statics")
    .summary("show loads, foot reactions and what is left over of every combination")
    .description(
      "Cuts the frame free of the floor for every combination of loads and every joint stiffness: what is applied, what each foot gives, and what is left over of their sums. With --bar also the greatest forces, moments and the sag of one bar.",
    )
    .argument("<file>", "a frame file")
    .addOption(new Option("--as <form>", "form of the output").choices(["text", "json"]).default("text"))
    .option("--bar <id>", "show the forces in this bar")
    .option("--house <file>", "take stock and method from this house file instead of the nearest")
    .action(async (path: string, { as, bar, house }: StaticsOptions) => {
      const [{ openFrame }, { houseForFrame }, { staticsSheetOf }, { staticsText, staticsJson }] = await Promise.all([
        import("../../host/open-frame.ts"),
        import("../house-for-frame.ts"),
        import("../statics-sheet-of.ts"),
        import("../../report/statics/forms.ts"),
      ]);
      const { stock, settings } = await houseForFrame(context, path, house);
      const { file, frame: read, problems } = await openFrame(path, stock);
      const frame = read && methodInForce(read, settings.method);
      for (const problem of problems) context.tell(problemWords(problem));
      if (!frame) {
        context.exit(EXIT.incomplete);
        return;
      }
      const ids = frame.bars.map((one) => one.ref.id);
      if (bar !== undefined && !ids.includes(bar)) {
        const near = nearest(bar, ids);
        throw new Unusable(
          `--bar ${bar}: ${file} has no such bar${near === undefined ? "" : `; did you mean ${near}?`}`,
        );
      }
      const sheet = staticsSheetOf(file, frame, bar);
      if ("why" in sheet) {
        context.tell(`${file}: ${sheet.why}`);
        context.exit(EXIT.incomplete);
        return;
      }
      if (bar !== undefined && !sheet.lines.some((line) => line.bar))
        context.tell(`--bar ${bar}: nothing fastens it to the rest of the frame, so no forces are worked out in it`);
      for (const chunk of (as === "json" ? staticsJson : staticsText)(sheet)) await context.stdout.write(chunk);
    });
}
