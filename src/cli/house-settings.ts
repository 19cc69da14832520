import { houseInWords } from "../host/house-in-words.ts";
import { today } from "../host/today.ts";
import type { HouseSettings } from "../house/house-in-force.ts";
import { noSettings } from "../house/settings.ts";
import type { Context } from "./context.ts";
import { usableOrTold } from "./prepare-run.ts";

/** Limits that the house file named, or the nearest, sets for one frame file; runs no code of the team. */
export async function houseSettings(
  context: Context,
  frame: string,
  house: string | undefined,
): Promise<HouseSettings> {
  const day = today();
  const engine = await context.engine();
  const words = await usableOrTold(() =>
    houseInWords({ engine, today: day, frame, ...(house === undefined ? {} : { house }) }),
  );
  return words?.settings ?? noSettings(day);
}
