import type { Nut as RawNut, ScrewFamily, ToolFamily } from "../generated/stock-file.generated.ts";
import { showNumber } from "./family-name.ts";
import type { Nut, Screw, Tool } from "./stock.ts";
import type { StockReader } from "./stock-reader.ts";

/** All screws of a family, in the order of its lengths. */
export function resolveScrews(raw: ScrewFamily, at: string, read: StockReader): readonly Screw[] {
  const family = {
    thread: raw.thread,
    diameter: read.size(raw.diameter, "length", `${at}/diameter`),
    pitch: read.size(raw.pitch, "length", `${at}/pitch`),
    head: raw.head,
    headDiameter: read.amount(raw.headDiameter, "length", `${at}/headDiameter`),
    headHeight: read.amount(raw.headHeight, "length", `${at}/headHeight`),
    key: read.size(raw.key, "length", `${at}/key`),
    socketDepth: read.amount(raw.socketDepth, "length", `${at}/socketDepth`),
    propertyClass: raw.propertyClass,
    torque: read.size(raw.torque, "moment", `${at}/torque`, "torque"),
    source: raw.source,
  };
  return raw.lengths.map((length, i) => ({
    name: raw.name.replaceAll("{length}", showNumber(length)),
    length: read.size(length, "length", `${at}/lengths/${i}`, "screw length"),
    ...family,
  }));
}

export function resolveNut(raw: RawNut, at: string, read: StockReader): Nut {
  return {
    name: raw.name,
    kind: raw.kind,
    slotSize: raw.slotSize,
    thread: raw.thread,
    length: read.size(raw.length, "length", `${at}/length`),
    width: read.size(raw.width, "length", `${at}/width`),
    thickness: read.size(raw.thickness, "length", `${at}/thickness`),
    engagement: read.size(raw.engagement, "length", `${at}/engagement`),
  };
}

/** All sizes of a tool. */
export function resolveTools(raw: ToolFamily, at: string, read: StockReader): readonly Tool[] {
  const swing = read.size(raw.swing, "angle", `${at}/swing`);
  const tilt = read.amount(raw.tilt, "angle", `${at}/tilt`);
  return raw.sizes.map((size, i) => {
    const here = `${at}/sizes/${i}`;
    return {
      name: raw.name.replaceAll("{size}", size.size),
      kind: raw.kind,
      key: read.size(size.key, "length", `${here}/key`),
      longArm: read.size(size.longArm, "length", `${here}/longArm`),
      shortArm: read.size(size.shortArm, "length", `${here}/shortArm`),
      swing,
      tilt,
      torque: read.size(size.torque, "moment", `${here}/torque`),
      source: raw.source,
    };
  });
}
