import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";

interface PlateHole {
  readonly id: string;
  readonly at: readonly [number, number];
  readonly diameter: number;
}

/** Stock with a caster like caster-75-plate of another name, its plate so large and with these holes, or drilled on the spot. */
export function casterStock(name: string, size: number, holes?: readonly PlateHole[]): string {
  const mount = { by: "plate", size: [size, size], thickness: 4, ...(holes ? { holes } : {}) };
  const caster = {
    name,
    kind: "caster",
    mount,
    diameter: 75,
    collar: size,
    raise: [100, 100],
    capacity: 700,
    mass: 0.6,
  };
  return JSON.stringify({ format: 1, units: "mm-N-kg", title: "casters of the team", stands: [caster] });
}

/** Puts a caster in the place of another; the casters that are then under the legs. */
export function takeCaster(file: FrameFile, instead: string, name: string): string[] {
  const stand = file.stands?.find(({ part }) => part === instead);
  if (!stand) throw new Error(`${file.title} has no ${instead}`);
  stand.part = name;
  return stand.bars.map((leg) => `${leg}.caster`);
}
