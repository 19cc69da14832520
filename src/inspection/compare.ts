import { keeps } from "../criteria/keeps.ts";
import { type Body, bodies, cutPoint } from "../facts/bodies.ts";
import { factOf } from "../facts/fact.ts";
import type { Bar, Frame, Triple } from "../model/frame.ts";
import type { Level } from "../rules/shape/rule.ts";
import type { Finding, Report } from "./report.ts";

/** What became of the bars from one revision of a frame to the next. */
export interface BarChanges {
  readonly added: readonly string[];
  readonly removed: readonly string[];
  /** The same bar under another id: alike in profile, place and stance. */
  readonly renamed: readonly { readonly from: string; readonly to: string }[];
  /** Bars gone and bars come that may be one: alike in profile and drawn length, and nothing else says so. They are among those added and removed too. */
  readonly perhaps: readonly { readonly from: string; readonly to: string }[];
  readonly moved: readonly BarMoved[];
  readonly changed: readonly BarChanged[];
}

/** How far the end that moved most went, m: as drawn, and in metal, where bars it meets may cut it otherwise than before. */
export interface BarMoved {
  readonly bar: string;
  readonly by: number;
  readonly inMetal: number;
}

export interface BarChanged {
  readonly bar: string;
  readonly what: readonly BarTrait[];
  /** Where the profile is among it. */
  readonly profile?: { readonly from: string; readonly to: string };
}

export type BarTrait = "profile" | "stance" | "ends" | "holes";

/** A finding of both revisions, in the order old, new. */
export interface FindingPair {
  readonly before: Finding;
  readonly after: Finding;
}

export interface FindingChanges {
  readonly fresh: readonly Finding[];
  readonly gone: readonly Finding[];
  readonly worse: readonly FindingPair[];
  readonly better: readonly FindingPair[];
  readonly alike: readonly FindingPair[];
}

/** Ends nearer to each other than this are where they were, m: rounding of a change of units. */
const STILL = 1e-6;
/** How far a bar went is told in steps of this, a share of a metre: what is finer is rounding. */
const STEPS = 1e9;
const GRAVITY: Readonly<Record<Level, number>> = { note: 1, hold: 2, reject: 3 };

const apart = (a: Triple, b: Triple): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** What an author wrote of an end, without the names it carries. */
const written = ({ ends, holes, stance }: Bar): Readonly<Record<"ends" | "holes" | "stance", string>> => ({
  ends: JSON.stringify([ends.from, ends.to].map(({ cut, cap, edge }) => [cut, cap.kind, edge])),
  holes: JSON.stringify(holes),
  stance: JSON.stringify(stance),
});

function traitsChanged(before: Bar, after: Bar): readonly BarTrait[] {
  const [old, now] = [written(before), written(after)];
  const changed: BarTrait[] = before.profile.name === after.profile.name ? [] : ["profile"];
  for (const trait of ["stance", "ends", "holes"] as const) if (old[trait] !== now[trait]) changed.push(trait);
  return changed;
}

const movedBy = (before: Bar, after: Bar): number =>
  Math.max(apart(before.from, after.from), apart(before.to, after.to));

/** Where the cuts of its ends are, m; a bar without metal is where it is drawn. */
const cutEnds = (bar: Bar, body: Body | undefined): readonly [Triple, Triple] =>
  body?.prism ? [cutPoint(body, "from"), cutPoint(body, "to")] : [bar.from, bar.to];

const exact = (distance: number): number => (distance > STILL ? Math.round(distance * STEPS) / STEPS : 0);

const drawnLength = ({ from, to }: Bar): number => apart(from, to);

/** Of bars gone and bars come those that may be one, each in one pair; those that would have moved least first. */
function perhapsOne(removed: readonly Bar[], added: readonly Bar[]): BarChanges["perhaps"] {
  const pairs = removed
    .flatMap((gone) =>
      added
        .filter(
          (come) => come.profile.name === gone.profile.name && Math.abs(drawnLength(come) - drawnLength(gone)) <= STILL,
        )
        .map((come) => ({ from: gone.ref.id, to: come.ref.id, by: movedBy(gone, come) })),
    )
    .sort((a, b) => a.by - b.by);
  const [from, to] = [new Set<string>(), new Set<string>()];
  return pairs.flatMap((pair) => {
    if (from.has(pair.from) || to.has(pair.to)) return [];
    from.add(pair.from);
    to.add(pair.to);
    return [{ from: pair.from, to: pair.to }];
  });
}

/** Bars of two revisions by their ids; what has a new id alone is told as renamed. */
export function compareBars(before: Frame, after: Frame): BarChanges {
  const old = new Map(before.bars.map((bar) => [bar.ref.id, bar]));
  const now = new Map(after.bars.map((bar) => [bar.ref.id, bar]));
  const removed = new Map([...old].filter(([id]) => !now.has(id)));
  const added = new Map([...now].filter(([id]) => !old.has(id)));
  const renamed: { from: string; to: string }[] = [];
  for (const [to, bar] of added) {
    for (const [from, gone] of removed) {
      if (movedBy(gone, bar) > STILL || traitsChanged(gone, bar).length > 0) continue;
      renamed.push({ from, to });
      removed.delete(from);
      added.delete(to);
      break;
    }
  }
  const moved: BarMoved[] = [];
  const changed: BarChanged[] = [];
  const [oldBodies, nowBodies] = [factOf(bodies, before), factOf(bodies, after)];
  for (const [id, bar] of now) {
    const known = old.get(id);
    if (!known) continue;
    const [[wasFrom, wasTo], [isFrom, isTo]] = [cutEnds(known, oldBodies.get(id)), cutEnds(bar, nowBodies.get(id))];
    const by = exact(movedBy(known, bar));
    const inMetal = exact(Math.max(apart(wasFrom, isFrom), apart(wasTo, isTo)));
    if (by > 0 || inMetal > 0) moved.push({ bar: id, by, inMetal });
    const what = traitsChanged(known, bar);
    const profile = what.includes("profile") ? { profile: { from: known.profile.name, to: bar.profile.name } } : {};
    if (what.length > 0) changed.push({ bar: id, what, ...profile });
  }
  const perhaps = perhapsOne([...removed.values()], [...added.values()]);
  return { added: [...added.keys()], removed: [...removed.keys()], renamed, perhaps, moved, changed };
}

/** Positive where the later finding is graver or further from its limit; nought where nothing tells them apart. */
function worsened({ before, after }: FindingPair): number {
  const level = (finding: Finding): number => (finding.conceded ? 0 : GRAVITY[finding.level]);
  if (level(before) !== level(after)) return level(after) - level(before);
  const [was, is] = [before.measure, after.measure];
  if (!was || !is) return 0;
  // Against its own limit each, as the limit may have changed too.
  const [a, b] = [was.utilisation, is.utilisation];
  if (a !== undefined && b !== undefined) return keeps(b, a, "at most") ? (keeps(a, b, "at most") ? 0 : -1) : 1;
  if (keeps(is.measured, was.measured, is.sense)) return keeps(was.measured, is.measured, is.sense) ? 0 : -1;
  return 1;
}

/** Findings of two revisions: the same rule saying the same of the same parts, by fingerprint; else of the same part. */
export function compareFindings(before: Report, after: Report): FindingChanges {
  const about = ({ rule, key, at }: Finding): string => `${rule} ${key} ${at.kind} ${at.id}`;
  const left = [...before.findings];
  const take = (same: (finding: Finding) => boolean): Finding | undefined => {
    const index = left.findIndex(same);
    return index < 0 ? undefined : left.splice(index, 1)[0];
  };
  const partners = new Map<Finding, Finding>();
  for (const finding of after.findings) {
    const partner = take(({ print }) => print === finding.print);
    if (partner) partners.set(finding, partner);
  }
  for (const finding of after.findings) {
    if (partners.has(finding)) continue;
    const partner = take((other) => about(other) === about(finding));
    if (partner) partners.set(finding, partner);
  }
  const pairs = after.findings.flatMap((finding): FindingPair[] => {
    const partner = partners.get(finding);
    return partner ? [{ before: partner, after: finding }] : [];
  });
  return {
    fresh: after.findings.filter((finding) => !partners.has(finding)),
    gone: left,
    worse: pairs.filter((pair) => worsened(pair) > 0),
    better: pairs.filter((pair) => worsened(pair) < 0),
    alike: pairs.filter((pair) => worsened(pair) === 0),
  };
}
