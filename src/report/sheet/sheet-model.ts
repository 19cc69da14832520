import type { ModelData, PinData } from "../../drawing/model3d/model-data.ts";
import { modelOf, pinPoint } from "../../drawing/model3d/model-of.ts";
import type { Scene } from "../../drawing/scene.ts";
import { symbolsOf } from "../../drawing/symbols.ts";
import type { Report, RuleCard } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { showHidden } from "../../model/text/quote.ts";
import { findingPoses } from "./finding-poses.ts";
import { placesOfParts } from "./part-places.ts";
import type { PartOfSheet } from "./parts.ts";
import { sharesOfBars } from "./sections/bars.ts";

/** Bars that a finding is about: the part's own, those it names, and those of the connector it is on. */
function barsOf(frame: Frame, scene: Scene, { findings }: PartOfSheet): readonly string[] {
  const ids = new Set(frame.bars.map(({ ref }) => ref.id));
  const found = new Set<string>();
  for (const { finding } of findings) {
    for (const { id } of [finding.at, ...finding.related.map((other) => other.at)]) {
      const bar = id.split("/")[0] ?? "";
      if (ids.has(id)) found.add(id);
      else if (ids.has(bar)) found.add(bar);
      else
        for (const solid of scene.solids)
          if (solid.of.id === id || solid.with.includes(id))
            for (const one of solid.with) if (ids.has(one)) found.add(one);
    }
  }
  return [...found];
}

/** What the viewer of a sheet is given. Names are only ever shown, with what hides in them written out. */
export function sheetModel(
  frame: Frame,
  scene: Scene,
  report: Report,
  parts: readonly PartOfSheet[],
  cards: readonly RuleCard[],
): ModelData {
  const placeOf = placesOfParts(frame, scene);
  const pins = parts.flatMap((part): PinData[] => {
    const at = placeOf(part);
    const { number, where, level } = part;
    const id = part.findings[0]?.finding.at.id ?? "";
    return at ? [{ number, where, level, at: pinPoint(at), part: id, bars: barsOf(frame, scene, part) }] : [];
  });
  const titles = new Map(cards.map(({ id, title }) => [id, title]));
  const checks = [...sharesOfBars(report)].map(([rule, own]) => ({
    rule,
    title: titles.get(rule) ?? rule,
    shareOf: (bar: string) => own.get(bar)?.utilisation,
  }));
  return shown(
    modelOf(frame, { scene, symbols: symbolsOf(frame, scene), pins, checks, poses: findingPoses(frame, parts) }),
  );
}

/** Every text with its hidden characters written out; all of them in the same way, so that names still match. */
function shown<T>(value: T): T {
  if (typeof value === "string") return showHidden(value) as T;
  if (Array.isArray(value)) return value.map(shown) as T;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, shown(one)])) as T;
}
