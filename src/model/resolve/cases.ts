import type { LoadCase } from "../frame.ts";
import { compareText } from "../problem.ts";
import { quote } from "../text/quote.ts";
import { refuse, suggestion, type Work, warn } from "./work.ts";

function excludedBy(work: Work, known: ReadonlySet<string>): ReadonlyMap<string, ReadonlySet<string>> {
  const excluded = new Map<string, Set<string>>();
  const exclude = (a: string, b: string): void => {
    const others = excluded.get(a) ?? new Set();
    excluded.set(a, others.add(b));
  };
  for (const [index, raw] of (work.file.cases ?? []).entries()) {
    for (const [nth, other] of (raw.excludes ?? []).entries()) {
      const pointer = `/cases/${index}/excludes/${nth}`;
      if (other === raw.id) {
        refuse(work, "names-itself", pointer, {
          found: `case "${quote(other)}" excludes itself`,
          expected: "another case",
        });
      } else if (!known.has(other)) {
        const mend = suggestion(work, other, () => known);
        refuse(work, "unknown-case", pointer, {
          found: `case "${quote(other)}"`,
          expected: "a case of this file",
          ...mend,
        });
      } else {
        exclude(raw.id, other);
        exclude(other, raw.id);
      }
    }
  }
  return excluded;
}

/** Warns about a case that no load is in, and about one that is spelt almost like a listed one. */
function checkUse(work: Work, listed: ReadonlyMap<string, string>, used: ReadonlyMap<string, string>): void {
  let misspelt = false;
  for (const [id, pointer] of used) {
    if (listed.has(id)) continue;
    const { mend } = suggestion(work, id, () => listed.keys());
    if (mend === undefined) continue;
    misspelt = true;
    warn(work, "case-not-listed", pointer, {
      found: `case "${quote(id)}", which cases does not list`,
      expected: "a listed case",
      mend,
    });
  }
  for (const [id, pointer] of listed) {
    // A case named wrongly is told where it is named.
    if (used.has(id) || misspelt) continue;
    warn(work, "unused-case", pointer, {
      found: `case "${quote(id)}", which no load is in`,
      expected: "a case some load names",
    });
  }
}

/** The case of what always acts, which the frame file does not name. */
const OWN = "self-weight";

/** Refuses names that mean something already: what the frame weighs, and equipment that comes and goes. */
function checkNames(work: Work, pointers: ReadonlyMap<string, string>): void {
  const equipment = new Map(
    (work.file.masses ?? []).flatMap((mass, i) =>
      mass.fixed === false ? [[mass.id, `/masses/${i}/id`] as const] : [],
    ),
  );
  for (const [id, pointer] of pointers) {
    const other = equipment.get(id);
    if (id === OWN)
      refuse(work, "name-taken", pointer, {
        found: `a case named "${OWN}"`,
        expected: "another name: this one is the weight of the frame itself",
      });
    else if (other !== undefined)
      refuse(work, "name-taken", pointer, {
        found: `case "${quote(id)}"`,
        expected:
          "another name: line {line} has equipment of this name, which is a case of its own where it comes and goes",
        other,
      });
  }
}

/** Refuses a load that always acts and yet has no place of its own. */
function checkPlaces(work: Work, kinds: ReadonlyMap<string, LoadCase["kind"]>): void {
  for (const [index, raw] of (work.file.loads ?? []).entries())
    if (raw.at === "worst" && kinds.get(raw.case) === "permanent")
      refuse(work, "permanent-roams", `/loads/${index}/at`, {
        found: `a load of the permanent case "${quote(raw.case)}" at its worst place`,
        expected: "one place: what always acts does not move",
        mend: "give its distance, or make the case variable",
      });
}

/** Every load case, listed or only named by a load, in the order of their ids; excluding is mutual. */
export function resolveCases(work: Work): readonly LoadCase[] {
  const listed = new Map<string, string>();
  const kinds = new Map<string, LoadCase["kind"]>();
  for (const [index, raw] of (work.file.cases ?? []).entries()) {
    const pointer = `/cases/${index}/id`;
    const other = listed.get(raw.id);
    if (other !== undefined) {
      const expected = "each case once: line {line} lists this one";
      refuse(work, "duplicate-id", pointer, { found: `case "${quote(raw.id)}"`, expected, other });
      continue;
    }
    listed.set(raw.id, pointer);
    if (raw.kind !== undefined) kinds.set(raw.id, raw.kind);
  }
  const used = new Map<string, string>();
  for (const [index, raw] of (work.file.loads ?? []).entries()) {
    if (!used.has(raw.case)) used.set(raw.case, `/loads/${index}/case`);
  }
  checkUse(work, listed, used);
  checkNames(work, new Map([...used, ...listed]));
  checkPlaces(work, kinds);
  const ids = [...new Set([...listed.keys(), ...used.keys()])].sort(compareText);
  const excluded = excludedBy(work, new Set(ids));
  const open = ids.filter((id) => !kinds.has(id));
  if (open.length > 0) work.assumed.add("load cases of no stated kind are variable");
  return Object.freeze(
    ids.map((id) =>
      Object.freeze({
        id,
        kind: kinds.get(id) ?? "variable",
        excludes: Object.freeze([...(excluded.get(id) ?? [])].sort(compareText)),
      }),
    ),
  );
}
