import type { Group } from "../frame.ts";
import { type Kind, ref } from "../ref.ts";
import { quote } from "../text/quote.ts";
import { name, references, refuse, type Work } from "./work.ts";

/** What a sub-assembly can be put together from. */
const GROUPED: readonly Kind[] = ["bar", "panel", "door", "stand", "mass"];

export function nameGroups(work: Work): void {
  for (const [index, raw] of (work.file.groups ?? []).entries()) {
    const pointer = `/groups/${index}`;
    name(work, raw.id, { kind: "group", pointer }, `${pointer}/id`);
  }
}

/** Sub-assemblies; a part is built into one of them at most. */
export function resolveGroups(work: Work): Group[] {
  const grouped = new Map<string, string>();
  const groups: Group[] = [];
  for (const [index, raw] of (work.file.groups ?? []).entries()) {
    const pointer = `/groups/${index}/parts`;
    for (const [nth, part] of raw.parts.entries()) {
      const other = grouped.get(part);
      if (other !== undefined && !other.startsWith(`${pointer}/`)) {
        const found = `"${quote(part)}" in a second group`;
        refuse(work, "grouped-twice", `${pointer}/${nth}`, {
          found,
          expected: "one group for each part; line {line} has the first",
          other,
        });
      }
      grouped.set(part, `${pointer}/${nth}`);
    }
    const parts = references(work, raw.parts, GROUPED, pointer);
    groups.push(Object.freeze({ ref: Object.freeze(ref("group", raw.id)), parts, built: raw.built ?? false }));
  }
  return groups;
}
