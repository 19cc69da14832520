import { keeps } from "../criteria/keeps.ts";
import type { Concession } from "../house/concession.ts";
import type { HouseInForce } from "../house/house-in-force.ts";
import { readQuantity } from "../model/units/read-quantity.ts";
import type { UnitSystem } from "../model/units/unit-system.ts";
import type { Finding } from "./report.ts";

interface Conceded {
  readonly findings: readonly Finding[];
  /** Concessions that ended, lapsed or matched nothing, in words. */
  readonly remarks: readonly string[];
}

function matches(concession: Concession, finding: Finding): boolean {
  if (concession.rule !== finding.rule) return false;
  if (concession.key !== undefined && concession.key !== finding.key) return false;
  const parts = [finding.at.id, ...finding.related.map((other) => other.at.id)];
  return concession.at.length > 0 && concession.at.every((id) => parts.includes(id));
}

function worse(concession: Concession, finding: Finding, units: UnitSystem): boolean {
  const { measure } = finding;
  if (concession.measured === undefined || !measure) return false;
  const then = readQuantity(concession.measured, measure.quantity, units);
  // Printed values are rounded: one unit of the last digit is no worsening.
  if (!("si" in then)) return true;
  const slack = Math.abs(then.si) * 0.01;
  return !keeps(measure.measured, measure.sense === "at most" ? then.si + slack : then.si - slack, measure.sense);
}

const line = (concession: Concession): string =>
  `${concession.rule} on ${concession.at.join(", ")} (${concession.place.file}:${concession.place.line})`;

/** Marks the findings that somebody permitted, and says which permissions no longer hold. */
export function concede(findings: readonly Finding[], house: HouseInForce, units: UnitSystem): Conceded {
  const remarks: string[] = [];
  const out = [...findings];
  for (const concession of house.concessions) {
    const hit = out.findIndex((finding) => !finding.conceded && matches(concession, finding));
    const found = out[hit];
    if (!found) remarks.push(`concession for ${line(concession)} matches no finding: remove it`);
    else if (concession.until < house.today)
      remarks.push(`concession for ${line(concession)} ended on ${concession.until}`);
    else if (worse(concession, found, units))
      remarks.push(
        `concession for ${line(concession)} lapsed: granted at ${concession.measured ?? ""}, now ${found.measure?.shown.measured ?? ""}`,
      );
    else out[hit] = { ...found, conceded: { reason: concession.reason, who: concession.who, until: concession.until } };
  }
  return { findings: out, remarks };
}
