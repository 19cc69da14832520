import { greatest, type Traced, traced } from "../facts/along-bar.ts";
import { offChord } from "../facts/off-chord.ts";
import type { View } from "../facts/response.ts";
import type { Span } from "../facts/spans.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import type { Quantity } from "../model/units/quantity.ts";
import type { UnitSystem } from "../model/units/unit-system.ts";
import { escaped, tidy } from "./svg.ts";

const WIDE = 460;
const LEFT = 96;
const RIGHT = 14;
const STRIP = 58;
const REACH = 19;
const INK = "#20262b";
const SOFT = "#545d63";
/** A second direction with less than this share of the first is left out. */
const WORTH = 0.15;

interface Strip {
  readonly name: string;
  readonly points: readonly Traced[];
  readonly quantity: Quantity;
  /** Drawn as a line that bends, not as an area. */
  readonly line?: boolean;
}

export interface BarDiagramWish {
  readonly bar: string;
  readonly view: View;
  readonly spans: readonly Span[];
  readonly units: UnitSystem;
  /** Stations of holes to be shown, m from the cut from end. */
  readonly holes?: readonly number[];
  /** Whether it is about how the bar winds up: its turn about its own axis and the torque in it go first. */
  readonly twists?: boolean;
}

/** Where a bar is held, stations in m. */
const heldIn = (spans: readonly Span[]): readonly number[] => [
  ...new Set(spans.flatMap((span) => (span.kind === "overhang" ? [span.held] : [span.from, span.to]))),
];

/** Bent shape off the line through what holds the bar, then the forces worth showing, greatest first of each pair. */
function stripsOf({ bar, view, spans, twists = false }: BarDiagramWish): readonly Strip[] {
  const [moved, forces] = [view.deflections(bar), view.forces(bar)];
  if (!moved || !forces) return [];
  const size = ({ points }: Strip): number => Math.abs(greatest(points).value);
  const pair = (a: Strip, b: Strip): readonly Strip[] => {
    const [first, second] = size(a) >= size(b) ? [a, b] : [b, a];
    return size(second) > WORTH * size(first) ? [first, second] : [first];
  };
  const held = heldIn(spans);
  const strip = (name: string, points: readonly Traced[], quantity: Quantity): Strip => ({ name, points, quantity });
  const bent = (axis: "y" | "z"): Strip => ({
    name: `${held.length > 1 ? "bends" : "moves"} along ${axis}`,
    points: offChord(moved[axis], held),
    quantity: "length",
    line: true,
  });
  const [shape] = pair(bent("y"), bent("z"));
  return [
    ...(twists
      ? [strip("turns about x", traced(moved.turnX), "angle"), strip("torque", traced(forces.T), "moment")]
      : []),
    ...(shape ? [shape] : []),
    ...pair(strip("moment about z", traced(forces.Mz), "moment"), strip("moment about y", traced(forces.My), "moment")),
    strip("axial force", traced(forces.N), "force"),
  ].filter((one) => size(one) > 0);
}

function stripDrawn(strip: Strip, top: number, length: number, { units, spans, holes = [] }: BarDiagramWish): string {
  const x = (at: number): number => LEFT + (at / length) * (WIDE - LEFT - RIGHT);
  const middle = top + STRIP / 2;
  const most = greatest(strip.points);
  const scale = REACH / Math.abs(most.value);
  // What moves up is drawn up; moments are drawn on the side they stretch.
  const y = (value: number): number => middle - value * scale * (strip.line ? 1 : -1);
  const path = strip.points.map(({ at, value }) => `${tidy(x(at))} ${tidy(y(value))}`).join("L");
  const area = `M${tidy(x(0))} ${tidy(middle)}L${path}L${tidy(x(length))} ${tidy(middle)}Z`;
  const drawn = strip.line
    ? `<path d="M${path}" fill="none" stroke="${INK}" stroke-width="2.2"/>`
    : `<path d="${area}" fill="#c9d8da" stroke="${INK}" stroke-width="1.1"/>`;
  const held = strip.line
    ? heldIn(spans)
        .map(
          (at) =>
            `<path d="M${tidy(x(at))} ${tidy(middle)}l5 9h-10z" fill="#ffffff" stroke="${INK}" stroke-width="1"/>`,
        )
        .join("")
    : "";
  const words = formatQuantity(most.value, strip.quantity, units);
  const side = y(most.value) < middle ? -4 : 11;
  const at = Math.min(Math.max(x(most.at), LEFT + 30), WIDE - 46);
  return [
    `<text x="0" y="${tidy(middle + 4)}" font-family="sans-serif" font-size="11" fill="${SOFT}">${escaped(strip.name)}</text>`,
    `<path d="M${LEFT} ${tidy(middle)}H${WIDE - RIGHT}" stroke="${SOFT}" stroke-width="0.8"/>`,
    drawn,
    held,
    ...holes.map(
      (at) =>
        `<path data-hole="${tidy(1000 * at)}" d="M${tidy(x(at))} ${tidy(top)}V${tidy(top + STRIP)}" stroke="#84230f" stroke-width="1.2" stroke-dasharray="4 3"/>`,
    ),
    `<circle cx="${tidy(x(most.at))}" cy="${tidy(y(most.value))}" r="2.4" fill="${INK}"/>`,
    `<text x="${tidy(at)}" y="${tidy(y(most.value) + side)}" font-family="sans-serif" font-size="11" font-weight="bold" fill="${INK}" text-anchor="middle">${escaped(words)}</text>\n`,
  ].join("");
}

/** How a bar bends under one combination and the forces in it, each with its greatest value; undefined where it is no part of the structure. */
export function barDiagram(wish: BarDiagramWish): string | undefined {
  const strips = stripsOf(wish);
  const length = strips[0]?.points.at(-1)?.at ?? 0;
  if (!(length > 0)) return undefined;
  const high = strips.length * STRIP + 6;
  const title = `${wish.bar} under ${wish.view.combination.name}: ${strips.map(({ name }) => name).join(", ")}`;
  return `<svg class="picture" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDE} ${high}" role="img"><title>${escaped(title)}</title>\n${strips.map((strip, i) => stripDrawn(strip, i * STRIP, length, wish)).join("")}</svg>`;
}
