import type { Frame } from "../frame.ts";
import { compareText } from "../problem.ts";
import { nameBars, resolveBars } from "./bars.ts";
import { resolveCases } from "./cases.ts";
import { resolveScrewing } from "./connectors.ts";
import { type CopyStep, type Instance, withCopies } from "./copies.ts";
import { copyBar } from "./copy-bars.ts";
import { copyFastening, copyJoint, copyPivot, copyStand, copyTie } from "./copy-joints.ts";
import { copyDoor, copyGroup, copyLoad, copyMass, copyPanel, copyZone } from "./copy-others.ts";
import { planCopies } from "./copy-plan.ts";
import { nameDoors, resolveDoors } from "./doors.ts";
import { resolveFastenings, resolvePivots, resolveTies } from "./fastenings.ts";
import { nameGroups, resolveGroups } from "./groups.ts";
import { type Jointed, resolveJoints } from "./joints.ts";
import { resolveLoads } from "./loads.ts";
import { nameMasses, resolveMasses } from "./masses.ts";
import { namePanels, resolvePanels } from "./panels.ts";
import { resolveStands } from "./stands.ts";
import { nameZones, resolveFloor, resolveSite, resolveZones } from "./surroundings.ts";
import { criteria } from "./values.ts";
import type { Work } from "./work.ts";

/** Parts that were named before they are resolved: they are copied when they are named by the entry, or need only such parts. */
function named<Part extends { readonly ref: { readonly id: string } }>(
  work: Work,
  steps: readonly CopyStep[],
  drawn: Part[],
  copy: (part: Part, instance: Instance) => Part | undefined,
): readonly Part[] {
  return withCopies(work, steps, drawn, { needs: (part) => [part.ref.id], copy });
}

function byId<Part extends { readonly ref: { readonly id: string } }>(
  parts: readonly Part[],
): ReadonlyMap<string, Part> {
  return new Map(parts.map((part) => [part.ref.id, part]));
}

/** Parts that nothing refers to but copies and groups, with those that bars need. */
function jointsAndStands(work: Work, steps: readonly CopyStep[], frameBars: Frame["bars"]) {
  const bars = byId(frameBars);
  const jointed: Jointed = new Map();
  return {
    joints: withCopies(work, steps, resolveJoints(work, frameBars, jointed), {
      needs: (joint) => [joint.bar],
      copy: (joint, instance) => copyJoint(work, joint, bars, jointed, instance),
    }),
    fastenings: withCopies(work, steps, resolveFastenings(work, frameBars), {
      needs: (fastening) => fastening.holds,
      copy: (fastening, instance) => copyFastening(work, fastening, bars, instance),
    }),
    ties: withCopies(work, steps, resolveTies(work), {
      needs: (tie) => tie.bars,
      copy: (tie, instance) => copyTie(work, tie, instance),
    }),
    pivots: withCopies(work, steps, resolvePivots(work), {
      needs: (pivot) => pivot.bars,
      copy: (pivot, instance) => copyPivot(work, pivot, instance),
    }),
    stands: withCopies(work, steps, resolveStands(work), {
      needs: (stand) => [stand.bar],
      copy: (stand, instance) => copyStand(work, stand, instance),
    }),
  };
}

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
  nameZones(work);
  const steps = planCopies(work);
  const bars = named(work, steps, resolveBars(work), (bar, instance) => copyBar(work, bar, instance));
  const barsById = byId(bars);
  const parts = jointsAndStands(work, steps, bars);
  const stands = byId(parts.stands);
  const frame = {
    title: file.title,
    ...(file.revision === undefined ? {} : { revision: file.revision }),
    units: file.units,
    stock: work.stock,
    bars,
    ...parts,
    panels: named(work, steps, resolvePanels(work), (panel, instance) => copyPanel(work, panel, barsById, instance)),
    doors: named(work, steps, resolveDoors(work), copyDoor),
    masses: named(work, steps, resolveMasses(work), copyMass),
    loads: withCopies(work, steps, resolveLoads(work, bars), {
      needs: (load) => load.on,
      copy: (load, instance) => copyLoad(work, load, barsById, instance),
    }),
    cases: resolveCases(work),
    groups: named(work, steps, resolveGroups(work), (group, instance) => copyGroup(group, stands, instance)),
    zones: named(work, steps, resolveZones(work), copyZone),
    site: resolveSite(work),
    floor: resolveFloor(work),
    ...(file.method === undefined ? {} : { method: file.method }),
    screwing: resolveScrewing(work),
    criteria: criteria(file.criteria),
  };
  return Object.freeze({ ...frame, assumed: Object.freeze([...work.assumed].sort(compareText)) });
}
