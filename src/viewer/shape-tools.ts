import type { ModelData, ShapeData } from "../drawing/model3d/model-data.ts";
import { element } from "./element.ts";
import type { Stage } from "./stage.ts";

/** Shapes are shown so that the greatest movement is this share of the frame, and the greatest turn this angle [rad], at the most. */
const LARGEST_SHARE = 0.12;
const LARGEST_TURN = 0.4;
const STEPS_OF_SLIDER = 40;
/** One way and back again, ms: slow enough to follow. */
const PERIOD = 3200;

/** A round number near to a value: 1, 2 or 5 times a power of ten. */
function round(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  return ([5, 2, 1].find((lead) => lead * power <= value) ?? 1) * power;
}

const KINDS: readonly (readonly [ShapeData["kind"], string])[] = [
  ["bent", "bent under"],
  ["buckled", "buckles"],
  ["swinging", "swings by itself"],
  ["loose", "moves freely"],
  ["turning", "turns but for friction"],
];

/** Two digits, without an exponent. */
const plain = (value: number): string => String(Number(value.toPrecision(2)));

/** "at 4.2 times permanent + trays", "at 6.1 Hz, next to mixer". */
function nameOf({ kind, name, factor, frequency }: ShapeData): string {
  if (kind === "swinging") return `at ${frequency === undefined ? "" : plain(frequency)} Hz, next to ${name}`;
  return kind === "buckled" ? `at ${factor === undefined ? "" : plain(factor)} times ${name}` : name;
}

function largestFactor({ most, turns }: ShapeData, across: number): number {
  const byShare = most > 0 ? (LARGEST_SHARE * across) / most : Infinity;
  return Math.min(byShare, turns > 0 ? LARGEST_TURN / turns : Infinity);
}

/** By how much a shape is enlarged at a step of the slider. */
export function enlarged(shape: ShapeData, across: number, step: number): number {
  const largest = largestFactor(shape, across);
  if (step === 0 || !Number.isFinite(largest)) return 0;
  if (shape.kind !== "bent") return (largest * step) / STEPS_OF_SLIDER;
  return step === STEPS_OF_SLIDER ? round(largest) : Math.max(1, round((largest * step) / STEPS_OF_SLIDER));
}

function told(shape: ShapeData, factor: number): string {
  if (shape.kind === "bent") return `${factor}-fold; moves ${plain(shape.most)} mm at most`;
  if (shape.kind === "loose") return "nothing stops it";
  return shape.kind === "turning" ? "only friction stops it" : "its size says nothing, its shape does";
}

/** Swings between one way and the other until it is told to stop; it rests while the drawing is out of sight. */
function swinging(root: HTMLElement, show: (share: number) => void): { start(): void; stop(): void } {
  let [frame, begun, seen] = [0, 0, true];
  new IntersectionObserver((entries) => {
    seen = entries.some(({ isIntersecting }) => isIntersecting);
  }).observe(root);
  const step = (now: number): void => {
    begun ||= now;
    if (seen) show(Math.sin((2 * Math.PI * (now - begun)) / PERIOD));
    frame = requestAnimationFrame(step);
  };
  const stop = (): void => {
    cancelAnimationFrame(frame);
    [frame, begun] = [0, 0];
  };
  return {
    start() {
      stop();
      frame = requestAnimationFrame(step);
    },
    stop,
  };
}

export interface ShapeTools {
  readonly nodes: readonly Node[];
  /** Shows the shape of a finding; −1: what the reader had chosen. */
  show(shape: number): void;
}

/** The shapes the frame takes: bent under loads, or swinging gently as it buckles, as it does by itself, or as what is loose in it moves. */
export function shapeTools(model: ModelData, stage: Stage, across: number): ShapeTools {
  if (model.shapes.length === 0) return { nodes: [], show: () => {} };
  const select = element("select", { id: "shape" }, element("option", { value: "-1" }, "as drawn"));
  for (const [kind, words] of KINDS) {
    const own = model.shapes.flatMap((shape, i) =>
      shape.kind === kind ? [element("option", { value: String(i) }, nameOf(shape))] : [],
    );
    if (own.length > 0) select.append(element("optgroup", { label: words }, ...own));
  }
  const slider = element("input", {
    type: "range",
    min: "0",
    max: String(STEPS_OF_SLIDER),
    value: String(STEPS_OF_SLIDER / 2),
    id: "shape-size",
    "aria-label": "How much the movement is enlarged",
  });
  const said = element("output", { for: "shape-size" });
  const moves = element("input", { type: "checkbox", id: "shape-moves" });
  const switched = element("label", { for: "shape-moves" }, moves, " moving");
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  moves.checked = !still.matches;
  let at: { readonly index: number; readonly factor: number } = { index: -1, factor: 0 };
  const swing = swinging(stage.root, (share) => stage.bend(at.index, at.factor * share));
  const show = (): void => {
    const index = Number(select.value);
    const shape = model.shapes[index];
    slider.disabled = !shape;
    switched.hidden = !shape || shape.kind === "bent";
    const factor = shape ? enlarged(shape, across, Number(slider.value)) : 0;
    said.textContent = shape ? ` ${told(shape, factor)}` : "";
    at = { index: shape ? index : -1, factor };
  };
  /** A bent shape stands still: loads that rest do not swing. */
  const run = (): void => {
    show();
    swing.stop();
    if (!switched.hidden && moves.checked) swing.start();
    else stage.bend(at.index, at.factor);
  };
  const resize = (): void => {
    show();
    if (switched.hidden || !moves.checked) stage.bend(at.index, at.factor);
  };
  let own = select.value;
  select.addEventListener("change", () => {
    own = select.value;
    run();
  });
  slider.addEventListener("input", resize);
  moves.addEventListener("change", run);
  still.addEventListener("change", () => {
    if (still.matches) moves.checked = false;
    run();
  });
  run();
  return {
    nodes: [element("label", { for: "shape" }, "Shape "), select, slider, switched, said],
    show(shape) {
      const wanted = shape < 0 ? own : String(shape);
      if (select.value === wanted) return;
      select.value = wanted;
      run();
    },
  };
}
