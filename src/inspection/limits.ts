import type { Criterion, Given, Limit, Source } from "../criteria/criterion.ts";
import { type Meant, readLimit, readStandard } from "../criteria/read-limit.ts";
import type { HouseInForce } from "../house/house-in-force.ts";
import type { CriterionSetting, Frame } from "../model/frame.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import { type Quantity, type Si, si } from "../model/units/quantity.ts";
import type { UnitSystem } from "../model/units/unit-system.ts";

function amountOf(limit: Meant, span: number | undefined, name: string): number {
  if ("fixed" in limit) return limit.fixed;
  if (span === undefined) throw new Error(`criterion ${name} is a share of a span, and no span was given`);
  return Math.max(span / limit.shareOf, limit.atLeast);
}

function words(limit: Meant, quantity: Quantity, system: UnitSystem): string {
  if ("fixed" in limit) return "";
  const floor = limit.atLeast > 0 ? `, at least ${formatQuantity(limit.atLeast, quantity, system)}` : "";
  return `span / ${limit.shareOf}${floor}`;
}

/** Printed for a limit that somebody set without saying why. */
const NO_BASIS = "no basis stated";

interface Chosen {
  readonly meant: Meant;
  readonly basis: string;
  readonly from: Source;
}

/** All limits in force for one frame: part before frame before house before the standard value. All have been read and found in range. */
export class Limits {
  private readonly frame: Frame;
  private readonly house: HouseInForce;
  private readonly parts = new Map<string, ReadonlyMap<string, CriterionSetting>>();

  constructor(frame: Frame, house: HouseInForce) {
    this.frame = frame;
    this.house = house;
    for (const part of [...frame.bars, ...frame.panels])
      if (part.criteria.size > 0) this.parts.set(part.ref.id, part.criteria);
  }

  private read(criterion: Criterion, { value, basis }: CriterionSetting, from: Source): Chosen {
    const meant = readLimit(value, criterion, this.frame.units);
    if ("found" in meant)
      throw new Error(`criterion ${criterion.name} (${from}): found ${meant.found}, expected ${meant.expected}`);
    return { meant, from, basis: basis ?? NO_BASIS };
  }

  /** The criterion as the frame has it, with what holds for single parts behind `at`. */
  given<Q extends Quantity>(criterion: Criterion<Q>): Given<Q> {
    const { name, quantity } = criterion;
    const inFrame = this.frame.criteria.get(name);
    const inHouse = this.house.criteria.get(name);
    const general =
      (inFrame && this.read(criterion, inFrame, "frame")) ??
      (inHouse && this.read(criterion, inHouse, "house")) ??
      ({ meant: readStandard(criterion), from: "default", basis: criterion.basis } as const);
    const limit = (of: Chosen, span: number | undefined): Limit<Q> => {
      const share = words(of.meant, quantity, this.frame.units);
      return {
        value: si(amountOf(of.meant, span, name), quantity) as Si<Q>,
        from: of.from,
        basis: share === "" ? of.basis : `${share}, ${of.basis}`,
      };
    };
    const whole: Limit<Q> = "fixed" in general.meant ? limit(general, undefined) : limit(general, 0);
    return {
      ...whole,
      at: (part, span) => {
        const own = this.parts.get(part.id.split(/[/.]/)[0] ?? part.id)?.get(name);
        const read = own && this.read(criterion, own, "part");
        return limit(read ?? general, span);
      },
    };
  }
}
