import { type Command, Option } from "commander";
import { atomicFile } from "../../host/atomic-file.ts";
import { nameOf } from "../../host/frame-files.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-code.ts";
import { fileName } from "../file-name.ts";
import { checkTarget } from "../output-target.ts";
import { problemWords } from "../problem-words.ts";

const FORMS = ["text", "json", "svg"] as const;

interface BuildOptions {
  readonly as: (typeof FORMS)[number];
  readonly house?: string;
  readonly to?: string;
}

/** `trysquare build`: in what order the frame is put together, for the person on the floor. */
export function registerBuild(program: Command, context: Context): void {
  program
    .command("build")
    .summary("say in what order to build: nuts to lay in, steps, torques, lifting")
    .description(
      "Finds an order in which a frame can be built, in pieces that people can lift, and prints it step by step: bars to lay out, nuts to lay into slots before they close, what goes on and which way, screws with their torques, what to square, feet, caps, masses and cautions.",
    )
    .argument("<file>", "a frame file")
    .addOption(new Option("--as <form>", "form of the steps; svg draws them").choices(FORMS).default("text"))
    .option("--house <file>", "take stock, spare nuts and lifting limits from this house file instead of the nearest")
    .option("--to <file>", "put the steps into this file", fileName("--to"))
    .action(async (path: string, options: BuildOptions) => {
      const [{ openFrame }, { houseForFrame }, { buildSheetOf }] = await Promise.all([
        import("../../host/open-frame.ts"),
        import("../house-for-frame.ts"),
        import("../build-sheet-of.ts"),
      ]);
      await checkTarget("--to", options.to, [{ path, name: nameOf(path) }]);
      const known = await houseForFrame(context, path, options.house);
      const { file, bytes, stock, frame, problems } = await openFrame(path, known.stock);
      for (const problem of problems) context.tell(problemWords(problem));
      if (!frame || !bytes) {
        context.exit(EXIT.incomplete);
        return;
      }
      const { rules, inspect } = await context.engine();
      // A frame that would be rejected is told how to build all the same, but not without saying so.
      const { report } = inspect({ file, bytes, stock, house: { ...known.settings, rules } });
      const sheet = buildSheetOf(file, frame, known.settings, report.findings);
      const { buildText, buildJson, buildSvg } = await import("../../report/build/forms.ts");
      const chunks = { text: buildText, json: buildJson, svg: buildSvg }[options.as](sheet);
      const sink = options.to === undefined ? context.stdout : atomicFile(options.to);
      for (const chunk of chunks) await sink.write(chunk);
      await sink.finish();
    });
}
