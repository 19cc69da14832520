import type { Profile } from "../../model/stock/stock.ts";
import { showHidden } from "../../model/text/quote.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";
import { count } from "../count.ts";
import { safeJson } from "../json/safe-json.ts";

/** Every profile on a line of its own: name, outer size, slot size, weight. */
export function* profilesText(profiles: readonly Profile[], units: UnitSystem): Generator<string> {
  const widest = Math.max(0, ...profiles.map(({ name }) => showHidden(name).length));
  for (const { name, height, width, slotSize, weight } of profiles) {
    const size = [height, width].map((side) => formatQuantity(side, "length", units)).join(" × ");
    yield `  ${showHidden(name).padEnd(widest)}  ${size}, slot ${showHidden(slotSize)}, ${weight}\n`;
  }
  yield `${count(profiles.length, "profile")}; \`trysquare section <profile>\` shows one in full.\n`;
}

/** Every profile as one JSON document; lengths in m. */
export function* profilesJson(profiles: readonly Profile[]): Generator<string> {
  yield safeJson({
    formatVersion: "1.0",
    profiles: profiles.map(({ name, height, width, slotSize, weight }) => ({ name, height, width, slotSize, weight })),
  });
  yield "\n";
}
