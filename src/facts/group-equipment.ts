import type { Frame } from "../model/frame.ts";

/** What each piece of equipment that a group names is bolted on before that is lifted in: the group, or the one part it has. */
export function boltedOn(frame: Frame): ReadonlyMap<string, string> {
  const masses = new Set(frame.masses.map((mass) => mass.ref.id));
  const stands = new Set(frame.stands.map((stand) => stand.ref.id));
  return new Map(
    frame.groups.flatMap(({ ref, parts, built }) => {
      const [only, ...others] = parts.filter((part) => !masses.has(part) && !stands.has(part));
      const on = only !== undefined && others.length === 0 && !built ? only : ref.id;
      return parts.filter((part) => masses.has(part)).map((thing) => [thing, on] as const);
    }),
  );
}
