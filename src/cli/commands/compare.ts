import { type Command, Option } from "commander";
import { atomicFile } from "../../host/atomic-file.ts";
import { nameOf } from "../../host/frame-files.ts";
import type { Report } from "../../inspection/report.ts";
import type { Revision } from "../../report/compare/page/compare-document.ts";
import type { Context } from "../context.ts";
import { atGate, EXIT, GATES, type Gate, levelOf } from "../exit-code.ts";
import { fileName } from "../file-name.ts";
import { checkTarget } from "../output-target.ts";
import { poured } from "../poured.ts";
import { problemWords } from "../problem-words.ts";

const FORMS = ["text", "json", "html"] as const;

interface CompareOptions {
  readonly as: (typeof FORMS)[number];
  readonly to?: string;
  readonly gate: Gate;
  readonly house?: string;
}

/** `trysquare compare`: what became of a frame from one revision to the next. */
export function registerCompare(program: Command, context: Context): void {
  program
    .command("compare")
    .summary("say what changed between two revisions of a frame, and what that did to its findings")
    .description(
      "Inspects two revisions of a frame and says which bars were added, removed, renamed, moved or changed, which panels, doors, joints, stands, masses and loads are written otherwise, and which findings are new, gone, better or worse. Exits with 1 when a new or worse finding is at the gate; findings that stay as they were do not count. As html it is one page that needs no network, with both frames in one drawing.",
    )
    .argument("<old>", "the frame file as it was")
    .argument("<new>", "the frame file as it is")
    .addOption(new Option("--as <form>", "form of the output").choices(FORMS).default("text"))
    .option("--to <file>", "put the comparison into this file instead of standard output", fileName("--to"))
    .addOption(
      new Option("--gate <level>", "level of new and worse findings from which the run fails")
        .choices(GATES)
        .default("hold"),
    )
    .option("--house <file>", "use this house file, and trust the rules it lists")
    .action(async (oldPath: string, newPath: string, { as, to, gate, house }: CompareOptions) => {
      const files = [oldPath, newPath].map((path) => ({ path, name: nameOf(path) }));
      const read = house === undefined ? files : [...files, { path: house, name: house }];
      await checkTarget("--to", to, read);
      const [{ prepareRun }, { compareBars, compareFindings }, { compareWritten }, forms, { compareDocument }] =
        await Promise.all([
          import("../prepare-run.ts"),
          import("../../inspection/compare.ts"),
          import("../../inspection/compare-written.ts"),
          import("../../report/compare/forms.ts"),
          import("../../report/compare/page/compare-document.ts"),
        ]);
      const run = await prepareRun(files, house, context);
      try {
        const reports: Report[] = [];
        const revisions: Revision[] = [];
        for await (const { report, bytes = new Uint8Array(), frame: judged } of run.inspected) {
          const file = files[reports.length];
          const known = file && (await run.houseOf(file));
          const frame = judged();
          reports.push(report);
          revisions.push({ bytes, ...(frame ? { frame } : {}), ...(known ? { house: known.name } : {}) });
        }
        const [before, after] = reports;
        const [was, is] = revisions;
        if (!before || !after || !was || !is) throw new Error("two files were inspected and two did not come");
        for (const report of reports) {
          if (!report.complete) context.exit(EXIT.incomplete);
          for (const problem of report.problems) context.tell(problemWords(problem));
        }
        const findings = compareFindings(before, after);
        const risen = [...findings.fresh, ...findings.worse.map((pair) => pair.after)].filter(
          ({ conceded }) => !conceded,
        );
        // A verdict may also turn graver without a finding, by a value that cannot be settled.
        const [wasLevel, isLevel] = [levelOf(before), levelOf(after)];
        const graver = isLevel !== wasLevel && (wasLevel === undefined || atGate(isLevel, wasLevel));
        const levels = [...risen.map((finding) => finding.level), ...(graver ? [isLevel] : [])];
        if (after.complete && levels.some((level) => atGate(level, gate))) context.exit(EXIT.atGate);
        const bars = was.frame && is.frame ? compareBars(was.frame, is.frame) : undefined;
        const parts = bars ? compareWritten(was.bytes, is.bytes, bars.renamed) : undefined;
        const comparison = { before, after, findings, ...(bars ? { bars } : {}), ...(parts ? { parts } : {}) };
        const write = {
          text: () => forms.compareText(comparison),
          json: () => forms.compareJson(comparison),
          html: () => compareDocument({ comparison, before: was, after: is, version: context.version }),
        };
        await poured(write[as](), to === undefined ? context.stdout : atomicFile(to), context);
      } finally {
        await run.end();
      }
    });
}
