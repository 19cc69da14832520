import { type Sink, Undelivered } from "../host/sink.ts";
import type { Context } from "./context.ts";
import { EXIT } from "./exit-code.ts";

/** Writes chunks to where they belong, whole or not at all; tells of a place that does not take them. */
export async function poured(chunks: Iterable<string>, sink: Sink, context: Context): Promise<void> {
  try {
    for (const chunk of chunks) await sink.write(chunk);
    await sink.finish();
  } catch (error) {
    await sink.abandon();
    if (!(error instanceof Undelivered)) throw error;
    context.tell(error.message);
    context.exit(EXIT.undelivered);
  }
}
