import { type Sink, Undelivered } from "../host/sink.ts";
import { failedReport } from "../host/unread-report.ts";
import type { Report, Reporter, RuleCard } from "../inspection/report.ts";

/** A reporter and where its text goes. */
export interface Outlet {
  readonly reporter: Reporter;
  readonly sink: Sink;
}

async function pour(sink: Sink, chunks: Iterable<string>): Promise<void> {
  for (const chunk of chunks) await sink.write(chunk);
}

/**
 * Writes each report to every outlet as it comes. An outlet that breaks is told of and left out; the others go on.
 * @returns whether every outlet got everything.
 */
export async function deliver(
  reports: AsyncIterable<Report>,
  cards: readonly RuleCard[],
  outlets: readonly Outlet[],
  tell: (words: string) => void,
): Promise<boolean> {
  const open = new Set(outlets);
  let whole = true;
  const everywhere = async (write: (outlet: Outlet) => Promise<void>): Promise<void> => {
    for (const outlet of open) {
      try {
        await write(outlet);
      } catch (error) {
        open.delete(outlet);
        await outlet.sink.abandon();
        if (!(error instanceof Undelivered)) throw error;
        tell(error.message);
      }
    }
  };
  // A report that cannot be put into words must not leave half a document behind: its failure takes its place.
  const chunksOf = (reporter: Reporter, report: Report): readonly string[] => {
    try {
      return [...reporter.frame(report)];
    } catch (error) {
      whole = false;
      const why = `its report could not be written: ${error instanceof Error ? error.message : String(error)}`;
      tell(`${report.file}: ${why}`);
      return [...reporter.frame(failedReport(report.file, why))];
    }
  };
  try {
    await everywhere(({ reporter, sink }) => pour(sink, reporter.begin(cards)));
    for await (const report of reports)
      await everywhere(({ reporter, sink }) => pour(sink, chunksOf(reporter, report)));
    await everywhere(async ({ reporter, sink }) => {
      await pour(sink, reporter.end());
      await sink.finish();
    });
  } catch (error) {
    for (const { sink } of open) await sink.abandon();
    throw error;
  }
  return whole && open.size === outlets.length;
}
