import type { KitItem } from "../model/generated/frame-file.generated.ts";
import type { Patient } from "./cure.ts";

/** The connectors of a joint as its author listed them. */
export interface ConnectorList {
  readonly pointer: string;
  readonly items: readonly KitItem[];
  /** The kit, where other joints may share the list. */
  readonly shared: string | undefined;
}

/** Where the connectors of a joint are written: its own list, or a kit that other joints share. */
export function connectorsOf(joint: string, patient: Patient): ConnectorList | undefined {
  const index = /^\/joints\/(\d+)$/.exec(patient.pointerOf({ kind: "joint", id: joint }))?.[1];
  const written = index === undefined ? undefined : patient.file.joints?.[Number(index)];
  if (!written) return undefined;
  if (typeof written.by !== "string") return { pointer: `/joints/${index}/by`, items: written.by, shared: undefined };
  const items = patient.file.kits?.[written.by];
  return items && { pointer: `/kits/${written.by}`, items, shared: written.by };
}

/** Says that a change reaches all joints of a kit. */
export function inKit(list: ConnectorList): string {
  return list.shared === undefined ? "" : ` in kit "${list.shared}"`;
}
