import type {
  Cap as RawCap,
  Gasket as RawGasket,
  Material as RawMaterial,
  SheetFamily,
  StockStand,
} from "../generated/stock-file.generated.ts";
import { si } from "../units/quantity.ts";
import { showNumber } from "./family-name.ts";
import { holesOf } from "./resolve-connector.ts";
import type { Cap, Gasket, Material, Sheet, Stand } from "./stock.ts";
import type { StockReader } from "./stock-reader.ts";

export function resolveMaterial(raw: RawMaterial, at: string, read: StockReader): Material {
  return {
    name: raw.name,
    elasticModulus: read.size(raw.elasticModulus, "stress", `${at}/elasticModulus`),
    shearModulus: read.size(raw.shearModulus, "stress", `${at}/shearModulus`),
    density: read.size(raw.density, "massDensity", `${at}/density`),
    expansion: raw.expansion,
    proof: read.size(raw.proof, "stress", `${at}/proof`),
    ultimate: read.size(raw.ultimate, "stress", `${at}/ultimate`),
    bucklingClass: raw.bucklingClass,
    source: raw.source,
  };
}

/** All thicknesses of a sheet. */
export function resolveSheets(raw: SheetFamily, at: string, read: StockReader): readonly Sheet[] {
  const elasticModulus = read.size(raw.elasticModulus, "stress", `${at}/elasticModulus`);
  const family = {
    elasticModulus,
    poisson: raw.poisson,
    shearModulus:
      raw.shearModulus === undefined
        ? si(elasticModulus / (2 * (1 + raw.poisson)), "stress")
        : read.size(raw.shearModulus, "stress", `${at}/shearModulus`),
    density: read.size(raw.density, "massDensity", `${at}/density`),
    expansion: raw.expansion,
    strength: read.size(raw.strength, "stress", `${at}/strength`),
    moisture: raw.moisture ?? 0,
    brittle: raw.brittle,
    source: raw.source,
  };
  return raw.thicknesses.map((thickness, i) => ({
    name: raw.name.replaceAll("{thickness}", showNumber(thickness)),
    thickness: read.size(thickness, "length", `${at}/thicknesses/${i}`, "sheet thickness"),
    ...family,
  }));
}

export function resolveCap(raw: RawCap, at: string, read: StockReader): Cap {
  return {
    name: raw.name,
    profiles: raw.profiles,
    thickness: read.size(raw.thickness, "length", `${at}/thickness`),
    mass: read.amount(raw.mass, "mass", `${at}/mass`),
  };
}

export function resolveGasket(raw: RawGasket, at: string, read: StockReader): Gasket {
  return {
    name: raw.name,
    slotSize: raw.slotSize,
    sheet: read.range(raw.sheet, `${at}/sheet`),
    depth: read.size(raw.depth, "length", `${at}/depth`),
  };
}

function mountOf(raw: StockStand["mount"], at: string, read: StockReader): Stand["mount"] {
  if (raw.by === "stem") {
    return { by: "stem", thread: raw.thread, engagement: read.size(raw.engagement, "length", `${at}/engagement`) };
  }
  const size = [
    read.size(raw.size[0], "length", `${at}/size/0`),
    read.size(raw.size[1], "length", `${at}/size/1`),
  ] as const;
  const thickness = read.size(raw.thickness, "length", `${at}/thickness`);
  return {
    by: "plate",
    size,
    thickness,
    ...(raw.holes === undefined ? {} : { holes: holesOf(raw.holes, `${at}/holes`, read) }),
  };
}

export function resolveStand(raw: StockStand, at: string, read: StockReader): Stand {
  return {
    name: raw.name,
    kind: raw.kind,
    mount: mountOf(raw.mount, `${at}/mount`, read),
    diameter: read.size(raw.diameter, "length", `${at}/diameter`),
    collar: read.size(raw.collar, "length", `${at}/collar`),
    raise: read.range(raw.raise, `${at}/raise`),
    capacity: read.size(raw.capacity, "force", `${at}/capacity`, "part force capacity"),
    brake: raw.brake ?? false,
    swivel: raw.swivel ?? false,
    mass: read.amount(raw.mass, "mass", `${at}/mass`),
  };
}
