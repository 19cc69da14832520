import type { Mass } from "../frame.ts";
import type { Mass as MassFile } from "../generated/frame-file.generated.ts";
import { ref } from "../ref.ts";
import { point, positive, quantities, triple } from "./values.ts";
import { name, references, type Work } from "./work.ts";

function resolveMass(work: Work, raw: MassFile, pointer: string): Mass | undefined {
  const mass = positive(work, raw.mass, "mass", `${pointer}/mass`, "mass");
  const centre = point(work, raw.centre, `${pointer}/centre`);
  const [x, y, z] =
    raw.box === undefined ? [] : (quantities(work, raw.box, "length", `${pointer}/box`, positive) ?? []);
  const on = references(work, raw.on, ["bar", "panel"], `${pointer}/on`);
  const shakes =
    raw.shakes === undefined ? undefined : positive(work, raw.shakes, "frequency", `${pointer}/shakes`, "frequency");
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
