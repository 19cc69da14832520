import type { Writable } from "node:stream";
import { failureWords } from "./failure-words.ts";
import { type Sink, Undelivered } from "./sink.ts";

const CHUNK_UNITS = 1 << 16;

/** A stream as a sink: waits for each piece to be taken, and tells of a closed pipe or a full disk. */
export function streamSink(stream: Writable, name: string): Sink {
  let waiting: string[] = [];
  let units = 0;
  let broken: unknown;
  // Without a listener a broken stream would end the process with a stack trace and the exit code of findings.
  stream.on("error", (error) => {
    broken ??= error;
  });
  const flush = async (): Promise<void> => {
    if (units === 0) return;
    const text = waiting.join("");
    waiting = [];
    units = 0;
    await new Promise<void>((resolve, reject) => {
      const fail = (error: unknown): void => reject(new Undelivered(name, failureWords(error)));
      if (broken !== undefined) fail(broken);
      else stream.write(text, (error) => (error ? fail(error) : resolve()));
    });
  };
  return {
    name,
    async write(chunk) {
      waiting.push(chunk);
      units += chunk.length;
      if (units >= CHUNK_UNITS) await flush();
    },
    finish: flush,
    async abandon() {
      waiting = [];
      units = 0;
    },
  };
}
