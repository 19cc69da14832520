import { houseInWords } from "../host/house-in-words.ts";
import { today } from "../host/today.ts";
import type { HouseSettings } from "../house/house-in-force.ts";
import { noSettings } from "../house/settings.ts";
import type { StockBytes } from "../inspection/stock-in-force.ts";
import type { Context } from "./context.ts";
import { usableOrTold } from "./prepare-run.ts";

/** What a house gives commands that look at a frame without rules. */
export interface FrameHouse {
  readonly settings: HouseSettings;
  readonly stock: readonly StockBytes[];
}

/** Limits and stock that the house file named, or the nearest, sets for one frame file; runs no code of the team. */
export async function houseForFrame(context: Context, frame: string, house: string | undefined): Promise<FrameHouse> {
  const day = today();
  const engine = await context.engine();
  const words = await usableOrTold(() =>
    houseInWords({ engine, today: day, frame, ...(house === undefined ? {} : { house }) }),
  );
  return words ? { settings: words.settings, stock: words.house.stock } : { settings: noSettings(day), stock: [] };
}
