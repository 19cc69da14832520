import { Option } from "commander";
import { fileName } from "./file-name.ts";
import { Unusable } from "./unusable.ts";

const FORMATS = ["text", "json", "sarif"] as const;
export type Format = (typeof FORMATS)[number];

/** One report to write: in which form, and to which file; standard output where there is none. */
export interface PlannedReport {
  readonly as: Format;
  readonly to?: string;
}

export interface ReportPlan {
  readonly options: readonly Option[];
  /** @throws Unusable when two reports want standard output or one file. */
  reports(): readonly PlannedReport[];
}

function isFormat(word: string): word is Format {
  return (FORMATS as readonly string[]).includes(word);
}

function checkTargets(planned: readonly PlannedReport[]): void {
  const targets = new Set<string>();
  for (const { to } of planned) {
    if (targets.has(to ?? "")) {
      throw new Unusable(`two reports for ${to ?? "standard output"}: give each a --to of its own`);
    }
    targets.add(to ?? "");
  }
}

/** Gathers `--as` and `--to` in the order they stand: a file belongs to the form named just before it. */
export function reportPlan(): ReportPlan {
  const planned: PlannedReport[] = [];
  const as = new Option(
    "--as <form>",
    `form of a report: ${FORMATS.join(", ")}; may stand several times, each with its --to`,
  );
  as.argParser((word) => {
    if (!isFormat(word)) throw new Unusable(`there is no report form "${word}"; there are ${FORMATS.join(", ")}`);
    planned.push({ as: word });
  });
  const to = new Option("--to <file>", "put the report named just before into this file");
  const named = fileName("--to");
  to.argParser((written) => {
    const file = named(written);
    const last = planned.pop() ?? { as: "text" };
    if (last.to !== undefined) throw new Unusable(`--to ${file} has no --as of its own in front`);
    planned.push({ ...last, to: file });
  });
  return {
    options: [as, to],
    reports() {
      // The ticket is for the person who waits; it is left out only where another report takes its place.
      const ticket = planned.every((report) => report.to !== undefined && report.as !== "text");
      const reports: readonly PlannedReport[] = ticket ? [{ as: "text" }, ...planned] : planned;
      checkTargets(reports);
      return reports;
    },
  };
}

/** The machine form that standard output was promised, read from raw arguments, for when the rest of them is unusable. */
export function promisedForm(argv: readonly string[]): Format | undefined {
  const promised: string[] = [];
  for (const [i, argument] of argv.entries()) {
    if (argument === "--") break;
    if (argument === "--as") promised.push(argv[i + 1] ?? "");
    else if (argument.startsWith("--as=")) promised.push(argument.slice("--as=".length));
    else if (argument === "--to" || argument.startsWith("--to=")) promised.pop();
  }
  const last = promised.filter((word) => word !== "text").at(-1);
  return last !== undefined && isFormat(last) ? last : undefined;
}
