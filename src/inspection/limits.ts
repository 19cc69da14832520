import type { Criterion, Given, Limit, Source } from "../criteria/criterion.ts";
import type { HouseInForce } from "../house/house-in-force.ts";
import type { CriterionSetting, Frame } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import { type Quantity, type Si, si } from "../model/units/quantity.ts";
import { readQuantity } from "../model/units/read-quantity.ts";
import type { UnitSystem } from "../model/units/unit-system.ts";

/** A limit as its writer meant it: so much, or a share of the span but at least so much. */
type Meant = { readonly fixed: number } | { readonly shareOf: number; readonly atLeast: number };

const SHARE = /^span\s*\/\s*(\d+(?:\.\d+)?)(?:\s*,?\s*at least\s+(.+))?$/;

export interface BadSetting {
  readonly name: string;
  readonly where: Source;
  readonly part?: Ref;
  readonly found: string;
  readonly expected: string;
}

function meant(
  written: number | string,
  quantity: Quantity,
  system: UnitSystem,
): Meant | { found: string; expected: string } {
  const share = typeof written === "string" ? SHARE.exec(written.trim()) : null;
  if (share) {
    const floor = share[2] === undefined ? { si: 0 } : readQuantity(share[2], quantity, system);
    if (!("si" in floor)) return { found: floor.found, expected: floor.expected };
    const divisor = Number(share[1]);
    if (!(divisor > 0)) return { found: `"${written}"`, expected: "a divisor above zero" };
    return { shareOf: divisor, atLeast: floor.si };
  }
  const read = readQuantity(written, quantity, system);
  return "si" in read ? { fixed: read.si } : { found: read.found, expected: read.expected };
}

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

/** All limits in force for one frame: part before frame before house before the standard value. */
export class Limits {
  private readonly frame: Frame;
  private readonly house: HouseInForce;
  readonly bad: BadSetting[] = [];
  private readonly parts = new Map<string, ReadonlyMap<string, CriterionSetting>>();

  constructor(frame: Frame, house: HouseInForce) {
    this.frame = frame;
    this.house = house;
    for (const part of [...frame.bars, ...frame.panels])
      if (part.criteria.size > 0) this.parts.set(part.ref.id, part.criteria);
  }

  private read(
    criterion: Criterion,
    setting: CriterionSetting,
    where: Source,
    part?: Ref,
  ): { meant: Meant; basis: string; from: Source } | undefined {
    const found = meant(setting.value, criterion.quantity, this.frame.units);
    if ("found" in found) {
      const said = this.bad.some(
        (bad) => bad.name === criterion.name && bad.where === where && bad.part?.id === part?.id,
      );
      if (!said)
        this.bad.push({
          name: criterion.name,
          where,
          found: found.found,
          expected: found.expected,
          ...(part ? { part } : {}),
        });
      return undefined;
    }
    return { meant: found, from: where, basis: setting.basis ?? NO_BASIS };
  }

  private standard(criterion: Criterion): { meant: Meant; basis: string; from: Source } {
    const found = meant(criterion.standard, criterion.quantity, "mm-N-kg");
    if ("found" in found)
      throw new Error(`criterion ${criterion.name}: standard value ${found.found}, expected ${found.expected}`);
    return { meant: found, basis: criterion.basis, from: "default" };
  }

  /** The criterion as the frame has it, with what holds for single parts behind `at`. */
  given<Q extends Quantity>(criterion: Criterion<Q>): Given<Q> {
    const { name, quantity } = criterion;
    const inFrame = this.frame.criteria.get(name);
    const inHouse = this.house.criteria.get(name);
    const general =
      (inFrame && this.read(criterion, inFrame, "frame")) ??
      (inHouse && this.read(criterion, inHouse, "house")) ??
      this.standard(criterion);
    const limit = (of: { meant: Meant; basis: string; from: Source }, span: number | undefined): Limit<Q> => {
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
        const read = own && this.read(criterion, own, "part", part);
        return limit(read ?? general, span);
      },
    };
  }
}
