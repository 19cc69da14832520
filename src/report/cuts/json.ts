import { safeJson } from "../json/safe-json.ts";
import { LEFT_OUT } from "../left-out.ts";
import { type CutSheet, massesOf } from "./cut-sheet.ts";

/** The cut list as one JSON document; lengths in m, angles in rad, masses in kg. */
export function* cutJson(sheet: CutSheet): Generator<string> {
  const { file, title, kerf, lines, plans, counts, arrivals } = sheet;
  yield safeJson({
    formatVersion: "1.0",
    file,
    title,
    kerf,
    bars: lines.map(({ profile, length, mass, operations, pair, bars }) => ({
      profile: profile.name,
      length,
      lengthOver: "long points",
      mass,
      count: bars.length,
      operations,
      ...(pair ? { cuts: pair } : {}),
      bars,
    })),
    plans: plans.map(({ profile, stock, nesting, mass }) => ({ profile, stock, mass, ...nesting })),
    parts: counts,
    masses: massesOf(sheet),
    massesWithout: LEFT_OUT,
    arrivesBuilt: arrivals.map(({ ref, mass, centre, parts, work }) => ({ id: ref.id, mass, centre, parts, work })),
  });
  yield "\n";
}
