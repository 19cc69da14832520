import type { Frame } from "../frame.ts";
import { compareText } from "../problem.ts";
import { nameBars, resolveBars } from "./bars.ts";
import { resolveCases } from "./cases.ts";
import { nameDoors, resolveDoors } from "./doors.ts";
import { resolveFastenings, resolvePivots, resolveTies } from "./fastenings.ts";
import { nameGroups, resolveGroups } from "./groups.ts";
import { type Jointed, resolveJoints } from "./joints.ts";
import { resolveLoads } from "./loads.ts";
import { nameMasses, resolveMasses } from "./masses.ts";
import { namePanels, resolvePanels } from "./panels.ts";
import { resolveStands } from "./stands.ts";
import { resolveFloor, resolveSite, resolveZones } from "./surroundings.ts";
import { criteria } from "./values.ts";
import type { Work } from "./work.ts";

/**
 * The frame that a file of sound form means; complains about everything that is wrong with it, and then is not to be used.
 * Parts are named before any is resolved, so that the order of a file means nothing.
 */
export function resolveFrame(work: Work): Frame {
  const { file } = work;
  nameBars(work);
  namePanels(work);
  nameMasses(work);
  nameDoors(work);
  nameGroups(work);
  const bars = resolveBars(work);
  const jointed: Jointed = new Map();
  const frame = {
    title: file.title,
    ...(file.revision === undefined ? {} : { revision: file.revision }),
    units: file.units,
    stock: work.stock,
    bars: Object.freeze(bars),
    joints: Object.freeze(resolveJoints(work, bars, jointed)),
    fastenings: Object.freeze(resolveFastenings(work, bars)),
    ties: Object.freeze(resolveTies(work)),
    pivots: Object.freeze(resolvePivots(work)),
    panels: Object.freeze(resolvePanels(work)),
    doors: Object.freeze(resolveDoors(work)),
    stands: Object.freeze(resolveStands(work)),
    masses: Object.freeze(resolveMasses(work)),
    loads: Object.freeze(resolveLoads(work, bars)),
    cases: resolveCases(work),
    groups: Object.freeze(resolveGroups(work)),
    zones: Object.freeze(resolveZones(work)),
    site: resolveSite(work),
    floor: resolveFloor(work),
    criteria: criteria(file.criteria),
  };
  return Object.freeze({ ...frame, assumed: Object.freeze([...work.assumed].sort(compareText)) });
}
