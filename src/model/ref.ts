/** What a finding can point at. */
export type Kind =
  | "frame"
  | "bar"
  | "end"
  | "joint"
  | "connector"
  | "screw"
  | "nut"
  | "panel"
  | "door"
  | "stand"
  | "mass"
  | "load"
  | "group"
  | "zone";

/**
 * A part or sub-part of a frame by its id: "rail-1", "rail-1/to" (an end), "rail-1.from" (a joint), "rail-1.from/2" (its
 * second connector), "rail-1.from/2/b1" (a screw), "rail-1.from/2/b1/nut".
 */
export interface Ref<K extends Kind = Kind> {
  readonly kind: K;
  readonly id: string;
}

/** A reference; equal ones are the same to a reader, so compare `kind` and `id`. */
export function ref<K extends Kind>(kind: K, id: string): Ref<K> {
  return { kind, id };
}

/** The reference to the whole frame. */
export const frameRef: Ref<"frame"> = { kind: "frame", id: "frame" };

export type EndName = "from" | "to";

export function endRef(bar: string, end: EndName): Ref<"end"> {
  return { kind: "end", id: `${bar}/${end}` };
}
