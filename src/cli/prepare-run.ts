import type { FrameFile } from "../host/frame-files.ts";
import { HouseUnusable } from "../host/house-files.ts";
import { NoSuchFrame } from "../host/house-in-words.ts";
import { type Inspector, type InspectorOptions, prepare, UntrustedRules } from "../host/inspector.ts";
import { RulesUnusable } from "../host/rule-thread/load-rules.ts";
import { today } from "../host/today.ts";
import type { Context } from "./context.ts";
import { Unusable } from "./unusable.ts";

/** What is wrong with a house file, in lines. */
function houseWords({ message, problems }: HouseUnusable): string {
  const lines = problems.map(({ place, found, expected, mend }) => {
    const pointer = place.pointer === "" ? "" : `, at ${place.pointer}`;
    return `${place.file}:${place.line}:${place.column}${pointer}: found ${found}; expected ${expected}${mend === undefined ? "" : `; ${mend}`}`;
  });
  return [message, ...lines].join("\n");
}

/** House and team's rules failing to load, or a frame that is not there, is a matter of the command line: told in words, exit code 2. */
export async function usableOrTold<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof HouseUnusable) throw new Unusable(houseWords(error));
    const told = [UntrustedRules, RulesUnusable, NoSuchFrame].some((kind) => error instanceof kind);
    if (told && error instanceof Error) throw new Unusable(error.message);
    throw error;
  }
}

/** Gets ready to inspect files with the house named, or with the houses found beside them. */
export async function prepareRun(
  files: readonly FrameFile[],
  house: string | undefined,
  context: Context,
  wanted: Pick<InspectorOptions, "cureTrials" | "margins"> = {},
): Promise<Inspector> {
  const { worker } = context;
  const engine = await context.engine();
  return usableOrTold(() =>
    prepare(files, { engine, worker, today: today(), ...wanted, ...(house === undefined ? {} : { house }) }),
  );
}
