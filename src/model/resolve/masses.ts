import type { Mass } from "../frame.ts";
import type { Mass as MassFile } from "../generated/frame-file.generated.ts";
import { ref } from "../ref.ts";
import { point, positive, quantities, triple } from "./values.ts";
import { name, references, refuse, type Work } from "./work.ts";

/** How a mass is pulled out; complains of one that goes nowhere. */
function slidesOf(work: Work, raw: MassFile["slides"], pointer: string): Mass["slides"] {
  const by = raw && point(work, raw.by, `${pointer}/by`);
  if (!raw || !by) return undefined;
  if (Math.hypot(...by) === 0) {
    refuse(work, "slides-nowhere", `${pointer}/by`, {
      found: "a way out of length 0",
      expected: "how far and which way it is pulled out",
      mend: 'leave out "slides" where nothing is pulled out',
    });
    return undefined;
  }
  if (raw.interlock === undefined) work.assumed.add("what slides is pulled out one at a time");
  return Object.freeze({ by, interlock: raw.interlock ?? true });
}

function resolveMass(work: Work, raw: MassFile, pointer: string): Mass | undefined {
  const mass = positive(work, raw.mass, "mass", `${pointer}/mass`, "mass");
  const centre = point(work, raw.centre, `${pointer}/centre`);
  const [x, y, z] =
    raw.box === undefined ? [] : (quantities(work, raw.box, "length", `${pointer}/box`, positive) ?? []);
  const on = references(work, raw.on, ["bar", "panel"], `${pointer}/on`);
  const shakes =
    raw.shakes === undefined ? undefined : positive(work, raw.shakes, "frequency", `${pointer}/shakes`, "frequency");
  const slides = slidesOf(work, raw.slides, `${pointer}/slides`);
  if (raw.fixed === undefined) work.assumed.add("masses are bolted down");
  if (mass === undefined || centre === undefined) return undefined;
  return Object.freeze({
    ref: Object.freeze(ref("mass", raw.id)),
    mass,
    centre,
    ...(x === undefined || y === undefined || z === undefined ? {} : { box: triple(x, y, z) }),
    on,
    fixed: raw.fixed ?? true,
    rigid: raw.rigid ?? false,
    ...(shakes === undefined ? {} : { shakes }),
    ...(slides === undefined ? {} : { slides }),
  });
}

export function nameMasses(work: Work): void {
  for (const [index, raw] of (work.file.masses ?? []).entries()) {
    const pointer = `/masses/${index}`;
    name(work, raw.id, { kind: "mass", pointer }, `${pointer}/id`);
  }
}

export function resolveMasses(work: Work): Mass[] {
  const masses: Mass[] = [];
  for (const [index, raw] of (work.file.masses ?? []).entries()) {
    const mass = resolveMass(work, raw, `/masses/${index}`);
    if (mass !== undefined) masses.push(mass);
  }
  return masses;
}
