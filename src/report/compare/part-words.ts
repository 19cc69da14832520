import type { WrittenChanged, WrittenChanges, WrittenKey } from "../../inspection/compare-written.ts";
import { count, listed } from "../count.ts";

/** One of each list of a frame file, and many. */
const NOUNS: Readonly<Record<string, readonly [string, string]>> = {
  bars: ["bar", "bars"],
  joints: ["joint", "joints"],
  fastenings: ["fastening", "fastenings"],
  ties: ["tie", "ties"],
  pivots: ["pivot", "pivots"],
  panels: ["panel", "panels"],
  doors: ["door", "doors"],
  stands: ["stand", "stands"],
  masses: ["mass", "masses"],
  loads: ["load", "loads"],
  cases: ["load case", "load cases"],
  groups: ["group", "groups"],
  zones: ["zone", "zones"],
  copies: ["copy", "copies"],
};

/** A value longer than this is not spelled out, in characters: the edges of a panel, the hinges of a door. */
const LONG = 40;

export const nounOf = (list: string, number = 1): string => NOUNS[list]?.[number === 1 ? 0 : 1] ?? list;

const valueWords = (value: unknown): string =>
  value === undefined ? "not given" : typeof value === "string" ? value : JSON.stringify(value).replaceAll(",", ", ");

function keyWords({ key, from, to }: WrittenKey): string {
  const [was, is] = [valueWords(from), valueWords(to)];
  return was.length > LONG || is.length > LONG ? key : `${key} ${was} → ${is}`;
}

/** "sheet polycarbonate-5 → polycarbonate-6 and edges". */
export const changedPartWords = ({ keys }: WrittenChanged): string => listed(keys.map(keyWords));

/** Parts other than bars, those of which the same is said in one line; `most` names in each. */
export function partLines({ added, removed, changed }: WrittenChanges, most: number): readonly string[] {
  const said: (readonly [list: string, fate: string, part: string])[] = [
    ...added.map(({ list, part }) => [list, "added", part] as const),
    ...removed.map(({ list, part }) => [list, "removed", part] as const),
    ...changed.map((one) => [one.list, `changed in ${changedPartWords(one)}`, one.part] as const),
  ];
  const groups = new Map<string, { readonly list: string; readonly fate: string; readonly names: string[] }>();
  for (const [list, fate, part] of said) {
    const group = groups.get(`${list} ${fate}`);
    if (group) group.names.push(part);
    else groups.set(`${list} ${fate}`, { list, fate, names: [part] });
  }
  return [...groups.values()].map(({ list, fate, names }) =>
    list === "frame"
      ? `the frame ${fate}`
      : `${count(names.length, nounOf(list), NOUNS[list]?.[1])} ${fate}: ${listed(names, most)}`,
  );
}
