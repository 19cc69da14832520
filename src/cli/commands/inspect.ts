import { type Command, Option } from "commander";
import { atomicFile } from "../../host/atomic-file.ts";
import { frameFiles } from "../../host/frame-files.ts";
import type { Context } from "../context.ts";
import { CURES_SAID, trials } from "../cure-trials.ts";
import { deliver, type Outlet } from "../deliver.ts";
import { EXIT, exitFor, GATES, type Gate } from "../exit-code.ts";
import { checkTarget } from "../output-target.ts";
import { reportPlan } from "../report-plan.ts";
import { reporterFor } from "../reporter-for.ts";
import { COLOURS, type ColourWish, MOST_COLUMNS, wantsColour, widthOf } from "../terminal.ts";
import { Unusable } from "../unusable.ts";

interface InspectOptions {
  readonly gate: Gate;
  readonly house?: string;
  readonly colour: ColourWish;
  readonly cures?: number;
}

/** `trysquare inspect`: every fault of every frame named, as a ticket and in any machine form. */
export function registerInspect(program: Command, context: Context): void {
  const plan = reportPlan();
  const command = program
    .command("inspect")
    .summary("say what is wrong with frames, where, by how much, and what would mend it")
    .description(
      "Inspects frames. Each argument is a frame file, a folder (every *.frame.json in it) or a pattern in quotes. Exits with 0 when nothing is at the gate, 1 when something is, 2 when the arguments or the house file cannot be used, 3 when a frame could not be read or judged whole, 4 when a report could not be written.",
    )
    .argument("<files...>", "frame files, folders or patterns")
    .addOption(new Option("--gate <level>", "level from which the run fails").choices(GATES).default("hold"))
    .option("--cures <count>", CURES_SAID, trials)
    .option("--house <file>", "use this house file, and trust the rules it lists")
    .addOption(new Option("--colour <when>", "colour the ticket").choices(COLOURS).default("auto"));
  for (const option of plan.options) command.addOption(option);
  command.action(async (args: readonly string[], options: InspectOptions) => {
    const planned = plan.reports();
    const { files, unmatched } = await frameFiles(args);
    if (unmatched.length > 0) throw new Unusable(unmatched.join("\n"));
    const { house } = options;
    const read = house === undefined ? files : [...files, { path: house, name: house }];
    for (const { to } of planned) await checkTarget("--to", to, read);
    const outlets: Outlet[] = [];
    for (const { as, to } of planned) {
      // FORCE_COLOR speaks of standard output: a file is the same on every machine unless its reader asked for colour.
      const coloured = to === undefined ? wantsColour(options.colour, context.terminal) : options.colour === "always";
      const width = to === undefined ? widthOf(context.terminal) : MOST_COLUMNS;
      const reporter = await reporterFor(as, { version: context.version, width, coloured, faults: [] });
      outlets.push({ reporter, sink: to === undefined ? context.stdout : atomicFile(to) });
    }
    const { prepareRun } = await import("../prepare-run.ts");
    const run = await prepareRun(files, house, context, { cureTrials: options.cures ?? "usual" });
    const judged = async function* () {
      for await (const report of run.reports) {
        context.exit(exitFor(report, options.gate));
        yield report;
      }
    };
    const whole = await deliver(judged(), run.cards, outlets, context.tell).finally(run.end);
    if (!whole) context.exit(EXIT.undelivered);
  });
}
