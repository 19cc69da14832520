import { dot, type Vec3 } from "../geometry/vector.ts";
import type { Plate } from "../mechanics/plates/levy.ts";
import { type Overhang, overhangPeak } from "../mechanics/plates/overhang.ts";
import { type PlatePeak, platePeak, pushLoad, stretchedDeflection, uniformLoad } from "../mechanics/plates/peak.ts";
import type { Frame, Mass, Panel } from "../model/frame.ts";
import { casesExclude } from "./excluding.ts";
import { defineFact } from "./fact.ts";
import { type PanelField, panelFields } from "./panel-fields.ts";
import { PUSH_PATCH } from "./push-patch.ts";

/** How a panel bends. */
export interface PanelBending extends PanelField {
  /** Under its own weight, declared pressures and forces, and goods on it together; undefined where nothing is declared. */
  readonly loaded: PlatePeak | undefined;
  /** Its overhangs under the same, but for forces and goods, which stand between the bars. */
  readonly hanging: readonly { readonly over: Overhang; readonly peak: PlatePeak }[];
  /** Under a push of so much force (N) on a hand's breadth, where it gives most. */
  push(force: number): PlatePeak;
}

const G = 9.80665;
/** Sets of this many cases, 2^12, are gone through in no time. */
const MOST_VYING = 12;

export function plateOf({ sheet }: Panel): Plate {
  return { elasticModulus: sheet.elasticModulus, poisson: sheet.poisson, thickness: sheet.thickness };
}

/** Of one load case on one panel: Pa and N along its normal, a force on a square patch of this side, m. */
interface Declared {
  pressure: number;
  readonly forces: { readonly force: number; readonly side: number }[];
}

/** What acts on a panel: what is always there, and each case of its own. */
interface DeclaredOn {
  readonly always: Declared;
  readonly cases: ReadonlyMap<string, Declared>;
}

function patchOf(mass: Mass, normal: Vec3): number {
  const sides = mass.box?.filter((_, i) => Math.abs(normal[i as 0 | 1 | 2]) < 0.5) ?? [];
  return sides.length > 0 ? Math.min(...sides) : PUSH_PATCH;
}

function declaredOn(panel: Panel, normal: Vec3, frame: Frame): DeclaredOn {
  const own = -panel.sheet.density * panel.sheet.thickness * G * normal[2];
  const always: Declared = { pressure: own, forces: [] };
  const cases = new Map<string, Declared>();
  const of = (id: string): Declared => {
    const known = cases.get(id) ?? { pressure: 0, forces: [] };
    cases.set(id, known);
    return known;
  };
  const here = frame.masses.filter(({ on }) => on.includes(panel.ref.id));
  for (const { on, amount, direction, case: id } of frame.loads) {
    const towards = dot(direction, normal);
    if (on.includes(panel.ref.id)) {
      if (amount.kind === "pressure") of(id).pressure += amount.value * towards;
      else if (amount.kind === "force") of(id).forces.push({ force: amount.value * towards, side: PUSH_PATCH });
    }
    if (amount.kind !== "force") continue;
    // What a load does to a thing goes the way of the thing's own weight, onto what carries it.
    for (const mass of here)
      if (on.includes(mass.ref.id))
        of(id).forces.push({ force: (amount.value * towards) / mass.on.length, side: patchOf(mass, normal) });
  }
  for (const mass of here) {
    const weight = { force: (-mass.mass * G * normal[2]) / mass.on.length, side: patchOf(mass, normal) };
    (mass.fixed ? always : of(mass.ref.id)).forces.push(weight);
  }
  return { always, cases };
}

/** The largest size, either way, that what is always there and load cases which may act together add up to. */
function most(always: number, byCase: ReadonlyMap<string, number>, frame: Frame): number {
  const excludes = casesExclude(frame);
  const one = (way: 1 | -1): number => {
    const cases = [...byCase].map(([id, value]) => [id, way * value] as const).filter(([, value]) => value > 0);
    const vying = cases.filter(([a]) => cases.some(([b]) => a !== b && excludes(a, b)));
    const free = cases.filter((own) => !vying.includes(own)).reduce((sum, [, value]) => sum + value, 0);
    const best = (i: number, chosen: readonly string[]): number => {
      const [id, value] = vying[i] ?? ["", 0];
      if (i >= vying.length) return 0;
      const without = best(i + 1, chosen);
      return chosen.some((other) => excludes(id, other))
        ? without
        : Math.max(without, value + best(i + 1, [...chosen, id]));
    };
    // Of more cases than this on one panel, what excludes what is not asked: the sum is never less.
    const sum = vying.length <= MOST_VYING ? best(0, []) : vying.reduce((all, [, value]) => all + value, 0);
    return way * always + free + sum;
  };
  return Math.max(one(1), one(-1), 0);
}

/** A peak with the stretching of the middle plane; stress stays that of small deflections, which is never less. */
function stretched({ deflection, stress }: PlatePeak, panel: Panel): PlatePeak {
  return { deflection: stretchedDeflection(deflection, panel.sheet.thickness), stress };
}

/** How panels bend in their largest field, as plates simply supported on what holds them. */
export const panelBending = defineFact<readonly PanelBending[], { fields: typeof panelFields }>({
  id: "panel-bending",
  needs: { fields: panelFields },
  compute({ fields }, frame) {
    return fields.map((one): PanelBending => {
      const { panel, normal, field, overhangs } = one;
      const plate = plateOf(panel);
      const { always, cases } = declaredOn(panel, normal, frame);
      // All that bends a panel bends it most about its middle: peaks are added there, those that lift it taken off.
      const unit = platePeak(plate, field, uniformLoad(field, 1));
      const peakOf = ({ pressure, forces }: Declared): PlatePeak => {
        const pushes = forces.map(({ force, side }) => ({
          force,
          peak: platePeak(plate, field, pushLoad(field, 1, side)),
        }));
        const sum = (key: keyof PlatePeak): number =>
          pushes.reduce((all, { force, peak }) => all + force * peak[key], pressure * unit[key]);
        return { deflection: sum("deflection"), stress: sum("stress") };
      };
      const declared = cases.size > 0 || always.forces.length > 0;
      const peaks = new Map(declared ? [...cases].map(([id, own]) => [id, peakOf(own)] as const) : []);
      const lasting = declared ? peakOf(always) : { deflection: 0, stress: 0 };
      const worst = (key: keyof PlatePeak): number =>
        most(lasting[key], new Map([...peaks].map(([id, peak]) => [id, peak[key]])), frame);
      const loaded = declared
        ? stretched({ deflection: worst("deflection"), stress: worst("stress") }, panel)
        : undefined;
      const pressure = most(always.pressure, new Map([...cases].map(([id, own]) => [id, own.pressure])), frame);
      const hanging =
        cases.size === 0 ? [] : overhangs.map((over) => ({ over, peak: overhangPeak(plate, over, pressure) }));
      return {
        ...one,
        loaded,
        hanging,
        push: (force) => stretched(platePeak(plate, field, pushLoad(field, force, PUSH_PATCH)), panel),
      };
    });
  },
});
