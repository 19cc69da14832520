import type { Command } from "commander";
import { Option } from "commander";
import { atomicFile } from "../../host/atomic-file.ts";
import { nameOf } from "../../host/frame-files.ts";
import type { Context } from "../context.ts";
import { CURES_SAID, trials } from "../cure-trials.ts";
import { exitFor, GATES, type Gate } from "../exit-code.ts";
import { fileName } from "../file-name.ts";
import { checkTarget } from "../output-target.ts";
import { poured } from "../poured.ts";

interface SheetOptions {
  readonly to?: string;
  readonly gate: Gate;
  readonly house?: string;
  readonly cures?: number;
}

/** `trysquare sheet`: the inspection of one frame as a page to look at, to hand on and to sign. */
export function registerSheet(program: Command, context: Context): void {
  program
    .command("sheet")
    .summary("draw a frame with its findings on one page to look at, print and sign")
    .description(
      "Inspects one frame and writes its inspection sheet: one HTML file that needs no network, with the frame drawn, every finding pinned to its place with its numbers and cures, the margins of what was met, and a record to sign. Exits like inspect.",
    )
    .argument("<file>", "a frame file")
    .option("--to <file>", "put the sheet into this file instead of standard output", fileName("--to"))
    .addOption(new Option("--gate <level>", "level from which the run fails").choices(GATES).default("hold"))
    .option("--cures <count>", CURES_SAID, trials)
    .option("--house <file>", "use this house file, and trust the rules it lists")
    .action(async (path: string, { to, gate, house, cures }: SheetOptions) => {
      const file = { path, name: nameOf(path) };
      const read = house === undefined ? [file] : [file, { path: house, name: house }];
      await checkTarget("--to", to, read);
      const [{ prepareRun }, { sheetDocument }] = await Promise.all([
        import("../prepare-run.ts"),
        import("../../report/sheet/sheet-document.ts"),
      ]);
      const run = await prepareRun([file], house, context, { cureTrials: cures ?? "usual", margins: true });
      try {
        const known = await run.houseOf(file);
        for await (const { report, bytes = new Uint8Array(), frame: judged } of run.inspected) {
          context.exit(exitFor(report, gate));
          const frame = judged();
          const chunks = sheetDocument({
            report,
            ...(frame ? { frame } : {}),
            cards: run.cards,
            bytes,
            ...(known ? { house: known.name } : {}),
            version: context.version,
          });
          await poured(chunks, to === undefined ? context.stdout : atomicFile(to), context);
        }
      } finally {
        await run.end();
      }
    });
}
