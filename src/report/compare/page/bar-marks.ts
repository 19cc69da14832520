import type { Fate, FatedBar } from "../../../drawing/overlay.ts";
import type { BarChanges } from "../../../inspection/compare.ts";
import type { Frame } from "../../../model/frame.ts";
import { changedBarWords, movedWords } from "../bar-words.ts";

/** A bar that is not as it was, with the letter and number of its balloon and what there is to say of it. */
export interface BarMark extends FatedBar {
  readonly what: string;
}

const LETTER: Readonly<Record<Fate, string>> = { added: "A", removed: "R", moved: "M", changed: "C" };

/** Bars that were added, removed, moved or changed; one that moved and changed is told once, as moved. */
export function barMarks(changes: BarChanges, before: Frame, after: Frame): readonly BarMark[] {
  const profileIn = ({ bars }: Frame, id: string): string => bars.find(({ ref }) => ref.id === id)?.profile.name ?? "";
  const changed = new Map(changes.changed.map((one) => [one.bar, changedBarWords(one)]));
  const moved = new Set(changes.moved.map(({ bar }) => bar));
  const was = new Map(changes.perhaps.map(({ from, to }) => [to, from]));
  const is = new Map(changes.perhaps.map(({ from, to }) => [from, to]));
  const perhaps = (other: string | undefined, how: string): string =>
    other === undefined ? "" : `; perhaps ${other}, ${how}`;
  const rows: Readonly<Record<Fate, readonly (readonly [string, string])[]>> = {
    added: changes.added.map((bar) => [bar, profileIn(after, bar) + perhaps(was.get(bar), "renamed and moved")]),
    removed: changes.removed.map((bar) => [
      bar,
      profileIn(before, bar) + perhaps(is.get(bar), "which has its profile and length"),
    ]),
    moved: changes.moved.map((one) => {
      const { bar } = one;
      const also = changed.get(bar);
      return [bar, `an end by ${movedWords(one, after.units)}${also === undefined ? "" : `; ${also}`}`];
    }),
    changed: [...changed].filter(([bar]) => !moved.has(bar)),
  };
  return (Object.keys(rows) as Fate[]).flatMap((fate) =>
    rows[fate].map(([bar, what], i) => ({ word: `${LETTER[fate]}${i + 1}`, bar, fate, what })),
  );
}
