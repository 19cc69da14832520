import type { FrameFile } from "../host/frame-files.ts";
import { readBytes } from "../host/read-bytes.ts";
import { today } from "../host/today.ts";
import { failedReport, fileProblem, unreadReport } from "../host/unread-report.ts";
import { bareHouse } from "../house/house-in-force.ts";
import type { Report, RuleCard } from "../inspection/report.ts";
import { ruleCard } from "../report/rule-card.ts";
import type { Context } from "./context.ts";

export interface Run {
  readonly cards: readonly RuleCard[];
  readonly reports: AsyncIterable<Report>;
}

/** Inspects the files one after the other; what goes wrong with one stays with that one. */
export async function inspectAll(
  files: readonly FrameFile[],
  _house: string | undefined,
  { engine }: Context,
): Promise<Run> {
  const house = bareHouse(engine.rules, today());
  const reports = async function* (): AsyncGenerator<Report> {
    for (const { path, name } of files) {
      const read = await readBytes(path);
      if ("refused" in read) {
        yield unreadReport(name, [fileProblem(name, read.refused, "a frame file")]);
        continue;
      }
      try {
        yield engine.inspect({ file: name, bytes: read.bytes, stock: [], house });
      } catch (error) {
        yield failedReport(name, error instanceof Error ? error.message : String(error));
      }
    }
  };
  return { cards: engine.rules.map(ruleCard), reports: reports() };
}
