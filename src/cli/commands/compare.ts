import { type Command, Option } from "commander";
import { nameOf } from "../../host/frame-files.ts";
import type { Report } from "../../inspection/report.ts";
import type { Context } from "../context.ts";
import { atGate, EXIT, GATES, type Gate, levelOf } from "../exit-code.ts";
import { problemWords } from "../problem-words.ts";

interface CompareOptions {
  readonly as: "text" | "json";
  readonly gate: Gate;
  readonly house?: string;
}

/** `trysquare compare`: what became of a frame from one revision to the next. */
export function registerCompare(program: Command, context: Context): void {
  program
    .command("compare")
    .summary("say what changed between two revisions of a frame, and what that did to its findings")
    .description(
      "Inspects two revisions of a frame and says which bars were added, removed, renamed, moved or changed, and which findings are new, gone, better or worse. Exits with 1 when a new or worse finding is at the gate; findings that stay as they were do not count.",
    )
    .argument("<old>", "the frame file as it was")
    .argument("<new>", "the frame file as it is")
    .addOption(new Option("--as <form>", "form of the output").choices(["text", "json"]).default("text"))
    .addOption(
      new Option("--gate <level>", "level of new and worse findings from which the run fails")
        .choices(GATES)
        .default("hold"),
    )
    .option("--house <file>", "use this house file, and trust the rules it lists")
    .action(async (oldPath: string, newPath: string, { as, gate, house }: CompareOptions) => {
      const [{ prepareRun }, { openFrame }, { compareBars, compareFindings }, forms] = await Promise.all([
        import("../prepare-run.ts"),
        import("../../host/open-frame.ts"),
        import("../../inspection/compare.ts"),
        import("../../report/compare/forms.ts"),
      ]);
      const files = [oldPath, newPath].map((path) => ({ path, name: nameOf(path) }));
      const run = await prepareRun(files, house, context);
      try {
        const reports: Report[] = [];
        for await (const report of run.reports) reports.push(report);
        const [before, after] = reports;
        if (!before || !after) throw new Error("two files were inspected and two reports did not come");
        const frames = [];
        for (const file of files) frames.push((await openFrame(file.path, (await run.houseOf(file))?.stock)).frame);
        for (const report of reports) {
          if (!report.complete) context.exit(EXIT.incomplete);
          for (const problem of report.problems) context.tell(problemWords(problem));
        }
        const [was, is] = frames;
        const findings = compareFindings(before, after);
        const risen = [...findings.fresh, ...findings.worse.map((pair) => pair.after)].filter(
          ({ conceded }) => !conceded,
        );
        // A verdict may also turn graver without a finding, by a value that cannot be settled.
        const [wasLevel, isLevel] = [levelOf(before), levelOf(after)];
        const graver = isLevel !== wasLevel && (wasLevel === undefined || atGate(isLevel, wasLevel));
        const levels = [...risen.map((finding) => finding.level), ...(graver ? [isLevel] : [])];
        if (after.complete && levels.some((level) => atGate(level, gate))) context.exit(EXIT.atGate);
        const comparison = { before, after, findings, ...(was && is ? { bars: compareBars(was, is) } : {}) };
        for (const chunk of (as === "json" ? forms.compareJson : forms.compareText)(comparison))
          await context.stdout.write(chunk);
      } finally {
        await run.end();
      }
    });
}
