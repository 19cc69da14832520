import { unlinkSync } from "node:fs";

const SIGNALS = ["SIGINT", "SIGTERM", "SIGHUP"] as const;
const unfinished = new Set<string>();

/** Removes what is half written, then lets the signal end the process as if nobody had listened: exit code 128 + n in a shell. */
function onSignal(signal: NodeJS.Signals): void {
  for (const path of unfinished) {
    try {
      unlinkSync(path);
    } catch {
      // It may never have been made; nothing else can be done while the process ends.
    }
  }
  unfinished.clear();
  listen(false);
  process.kill(process.pid, signal);
}

function listen(on: boolean): void {
  for (const signal of SIGNALS) {
    if (on) process.on(signal, onSignal);
    else process.removeListener(signal, onSignal);
  }
}

/** Remembers a temporary file so that a signal does not leave it behind. */
export function markUnfinished(path: string): void {
  if (unfinished.size === 0) listen(true);
  unfinished.add(path);
}

export function markFinished(path: string): void {
  if (unfinished.delete(path) && unfinished.size === 0) listen(false);
}
