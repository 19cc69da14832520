import { dot, type Vec3 } from "../geometry/vector.ts";
import type { Plate } from "../mechanics/plates/levy.ts";
import { type PlatePeak, platePeak, pushLoad, stretchedDeflection, uniformLoad } from "../mechanics/plates/peak.ts";
import type { Frame, Panel } from "../model/frame.ts";
import { defineFact } from "./fact.ts";
import { type PanelField, panelFields } from "./panel-fields.ts";

/** How a panel bends. */
export interface PanelBending extends PanelField {
  /** Under its own weight, declared pressures and forces, and goods on it together; undefined where nothing is declared. */
  readonly loaded: PlatePeak | undefined;
  /** Under a push of so much force (N) on a hand's breadth, where it gives most. */
  push(force: number): PlatePeak;
}

/** Side of the patch that pushes, m. */
export const PUSH_PATCH = 0.1;
const G = 9.80665;

export function plateOf({ sheet }: Panel): Plate {
  return { elasticModulus: sheet.elasticModulus, poisson: sheet.poisson, thickness: sheet.thickness };
}

/** The greatest sum of what load cases bring that may act together; by their signed values. */
function together(byCase: ReadonlyMap<string, number>, frame: Frame): number {
  const excludes = (a: string, b: string): boolean =>
    frame.cases.some(
      ({ id, excludes: others }) => (id === a && others.includes(b)) || (id === b && others.includes(a)),
    );
  const cases = [...byCase];
  let most = 0;
  const add = (i: number, sum: number, chosen: readonly string[]): void => {
    if (Math.abs(sum) > Math.abs(most)) most = sum;
    for (let k = i; k < cases.length; k += 1) {
      const [id, value] = cases[k] ?? ["", 0];
      if (!chosen.some((other) => excludes(id, other))) add(k + 1, sum + value, [...chosen, id]);
    }
  };
  // More cases than this on one panel are added without asking what excludes what.
  if (cases.length <= 8) add(0, 0, []);
  else most = cases.reduce((sum, [, value]) => sum + Math.abs(value), 0);
  return most;
}

interface Declared {
  /** Pa and N, along the normal. */
  readonly pressure: number;
  readonly forces: readonly { readonly force: number; readonly side: number }[];
}

function declaredOn(panel: Panel, normal: Vec3, frame: Frame): Declared {
  const byCase = new Map<string, number>();
  const forces: { force: number; side: number }[] = [];
  for (const load of frame.loads) {
    if (!load.on.includes(panel.ref.id)) continue;
    const towards = dot(load.direction, normal);
    if (load.amount.kind === "pressure")
      byCase.set(load.case, (byCase.get(load.case) ?? 0) + load.amount.value * towards);
    else if (load.amount.kind === "force") forces.push({ force: load.amount.value * towards, side: PUSH_PATCH });
  }
  for (const mass of frame.masses) {
    if (!mass.on.includes(panel.ref.id)) continue;
    const sides = mass.box?.filter((_, i) => Math.abs(normal[i as 0 | 1 | 2]) < 0.5) ?? [];
    const side = sides.length > 0 ? Math.min(...sides) : PUSH_PATCH;
    forces.push({ force: (-mass.mass * G * normal[2]) / mass.on.length, side });
  }
  return { pressure: together(byCase, frame), forces };
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
      const { panel, normal, field } = one;
      const plate = plateOf(panel);
      const { pressure, forces } = declaredOn(panel, normal, frame);
      const own = -panel.sheet.density * panel.sheet.thickness * G * normal[2];
      let loaded: PlatePeak | undefined;
      if (pressure !== 0 || forces.length > 0) {
        const parts = [
          platePeak(plate, field, uniformLoad(field, Math.abs(pressure + own))),
          ...forces.map(({ force, side }) => platePeak(plate, field, pushLoad(field, Math.abs(force), side))),
        ];
        loaded = stretched(
          {
            deflection: parts.reduce((sum, part) => sum + part.deflection, 0),
            stress: parts.reduce((sum, part) => sum + part.stress, 0),
          },
          panel,
        );
      }
      return {
        ...one,
        loaded,
        push: (force) => stretched(platePeak(plate, field, pushLoad(field, force, PUSH_PATCH)), panel),
      };
    });
  },
});
