import type { HoleSpec, LegSpec, Connector as RawConnector, Tested } from "../generated/stock-file.generated.ts";
import { si } from "../units/quantity.ts";
import type { BracketLeg, Connector, ConnectorHole, TestedValues } from "./stock.ts";
import type { StockReader } from "./stock-reader.ts";

export function holesOf(raw: readonly HoleSpec[], at: string, read: StockReader): readonly ConnectorHole[] {
  const seen = new Set<string>();
  return raw.map((hole, i) => {
    const here = `${at}/${i}`;
    if (seen.has(hole.id))
      read.refuse("duplicate-name", `${here}/id`, `a second hole "${hole.id}"`, "an id of its own for every hole");
    seen.add(hole.id);
    const diameter = read.size(hole.diameter, "length", `${here}/diameter`);
    return { id: hole.id, at: read.pair(hole.at, `${here}/at`), diameter };
  });
}

function legOf(raw: LegSpec, at: string, read: StockReader): BracketLeg {
  return {
    length: read.size(raw.length, "length", `${at}/length`),
    thickness: read.size(raw.thickness, "length", `${at}/thickness`),
    holes: holesOf(raw.holes, `${at}/holes`, read),
  };
}

function testedOf(raw: Tested, at: string, read: StockReader): TestedValues {
  const { rotationalStiffness, slip, moment } = raw;
  return {
    reference: raw.reference,
    ...(rotationalStiffness === undefined
      ? {}
      : { rotationalStiffness: read.size(rotationalStiffness, "rotationalStiffness", `${at}/rotationalStiffness`) }),
    ...(slip === undefined ? {} : { slip: read.size(slip, "force", `${at}/slip`, "part force capacity") }),
    ...(moment === undefined ? {} : { moment: read.size(moment, "moment", `${at}/moment`, "part moment capacity") }),
  };
}

/** A connector of the file in SI; problems go to the reader. Whether its screw exists is for the caller to check. */
export function resolveConnector(raw: RawConnector, at: string, read: StockReader): Connector {
  const common = {
    name: raw.name,
    about: raw.about ?? "",
    slotSize: raw.slotSize,
    mass: read.amount(raw.mass, "mass", `${at}/mass`),
    screw: raw.screw,
    ...(raw.tested === undefined ? {} : { tested: testedOf(raw.tested, `${at}/tested`, read) }),
  };
  switch (raw.kind) {
    case "bracket": {
      const legs = { a: legOf(raw.legs.a, `${at}/legs/a`, read), b: legOf(raw.legs.b, `${at}/legs/b`, read) };
      const gussets = raw.gussets ?? 0;
      const gussetThickness =
        raw.gussetThickness === undefined
          ? si(0, "length")
          : read.size(raw.gussetThickness, "length", `${at}/gussetThickness`);
      if (gussets > 0 && raw.gussetThickness === undefined) {
        read.refuse("missing-value", at, "gussets without gussetThickness", "gussetThickness");
      }
      const width = read.size(raw.width, "length", `${at}/width`);
      return { ...common, kind: "bracket", legs, width, gussets, gussetThickness, lugs: raw.lugs ?? false };
    }
    case "plate":
      return {
        ...common,
        kind: "plate",
        outline: raw.outline.map((point, i) => read.pair(point, `${at}/outline/${i}`)),
        thickness: read.size(raw.thickness, "length", `${at}/thickness`),
        holes: holesOf(raw.holes, `${at}/holes`, read),
      };
    case "end-fastener":
      return {
        ...common,
        kind: "end-fastener",
        depth: read.size(raw.depth, "length", `${at}/depth`),
        keyFrom: read.size(raw.keyFrom, "length", `${at}/keyFrom`),
        keyHole: read.size(raw.keyHole, "length", `${at}/keyHole`),
        body: read.size(raw.body, "length", `${at}/body`),
        lugs: raw.lugs ?? false,
      };
    case "end-screw":
      return {
        ...common,
        kind: "end-screw",
        head: raw.head,
        accessHole: read.size(raw.accessHole, "length", `${at}/accessHole`),
        engagement: read.size(raw.engagement, "length", `${at}/engagement`),
      };
    case "side-tie":
      return {
        ...common,
        kind: "side-tie",
        ...(raw.accessHole === undefined
          ? {}
          : { accessHole: read.size(raw.accessHole, "length", `${at}/accessHole`) }),
        lugs: raw.lugs ?? false,
      };
    case "pivot":
    case "hinge":
      return {
        ...common,
        kind: raw.kind,
        gap: read.amount(raw.gap, "length", `${at}/gap`),
        thickness: read.size(raw.thickness, "length", `${at}/thickness`),
        holes: holesOf(raw.holes, `${at}/holes`, read),
      };
  }
}
