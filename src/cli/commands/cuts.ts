import { type Command, Option } from "commander";
import { atomicFile } from "../../host/atomic-file.ts";
import { nameOf } from "../../host/frame-files.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { readQuantity } from "../../model/units/read-quantity.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-code.ts";
import { fileName } from "../file-name.ts";
import { checkTarget } from "../output-target.ts";
import { problemWords } from "../problem-words.ts";
import { Unusable } from "../unusable.ts";

const FORMS = ["text", "csv", "json"] as const;

/** No saw for bars cuts wider, m: blades are 2 to 5 mm thick (common practice). */
const WIDEST_KERF = 0.02;

interface CutsOptions {
  readonly as: (typeof FORMS)[number];
  readonly house?: string;
  readonly kerf: string;
  readonly to?: string;
}

/** `trysquare cuts`: what to saw, from which stock bars, and what to lay out beside them. */
export function registerCuts(program: Command, context: Context): void {
  program
    .command("cuts")
    .summary("list what to saw and what to lay out: bars, stock bars, screws, nuts, caps, panels")
    .description(
      "Lists the bars of a frame as the saw wants them, with the work on each, laid out on stock bars; and counts connectors, screws, nuts, caps, feet and panels.",
    )
    .argument("<file>", "a frame file")
    .addOption(new Option("--as <form>", "form of the list").choices(FORMS).default("text"))
    .option("--kerf <width>", "width of the saw cut, a number in the frame's unit or with its own", "3.5 mm")
    .option("--house <file>", "take stock and spare nuts from this house file instead of the nearest")
    .option("--to <file>", "put the list into this file", fileName("--to"))
    .action(async (path: string, options: CutsOptions) => {
      await checkTarget("--to", options.to, [{ path, name: nameOf(path) }]);
      const [{ openFrame }, { houseForFrame }, { cutSheetOf }] = await Promise.all([
        import("../../host/open-frame.ts"),
        import("../house-for-frame.ts"),
        import("../cut-sheet-of.ts"),
      ]);
      const known = await houseForFrame(context, path, options.house);
      const { file, frame, problems } = await openFrame(path, known.stock);
      for (const problem of problems) context.tell(problemWords(problem));
      if (!frame) {
        context.exit(EXIT.incomplete);
        return;
      }
      const bare = options.kerf.trim() === "" ? Number.NaN : Number(options.kerf);
      const kerf = readQuantity(Number.isFinite(bare) ? bare : options.kerf, "length", frame.units);
      if (!("si" in kerf) || kerf.si < 0 || kerf.si > WIDEST_KERF)
        throw new Unusable(
          `--kerf ${options.kerf}: expected 0 to ${formatQuantity(WIDEST_KERF, "length", frame.units)}, a number in the frame's unit or like "3.5 mm"`,
        );
      const sheet = cutSheetOf(file, frame, kerf.si, known.settings);
      const { cutText, cutCsv, cutJson } = await import("../../report/cuts/forms.ts");
      const chunks = { text: cutText, csv: cutCsv, json: cutJson }[options.as](sheet);
      const sink = options.to === undefined ? context.stdout : atomicFile(options.to);
      for (const chunk of chunks) await sink.write(chunk);
      await sink.finish();
    });
}
