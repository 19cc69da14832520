import type { ModelData } from "../drawing/model3d/model-data.ts";
import { groupColour, type Rgb, type Scheme, STEPS } from "./colours.ts";
import { element } from "./element.ts";
import type { Stage } from "./stage.ts";

const VIEW_WORDS: readonly (readonly [string, string])[] = [
  ["isometric", "Isometric"],
  ["front", "Front"],
  ["right", "Right"],
  ["back", "Back"],
  ["left", "Left"],
  ["top", "Top"],
  ["whole", "Whole"],
];
/** Bent shapes are shown so that the greatest movement is this share of the frame, at the most. */
const LARGEST_SHARE = 0.12;
const STEPS_OF_SLIDER = 40;

const swatch = ([r, g, b]: Rgb): HTMLElement => {
  const made = element("span", { class: "swatch" });
  made.style.backgroundColor = `rgb(${r},${g},${b})`;
  return made;
};

function legendOf(model: ModelData, scheme: Scheme): readonly Node[] {
  if (scheme.by === "check") {
    const steps = STEPS.map(({ words, colour }) => element("span", {}, swatch(colour), ` ${words}`));
    return [
      element("span", {}, model.checks[scheme.index]?.title ?? "", ": "),
      ...steps,
      element("span", {}, swatch([255, 255, 255]), " does not apply"),
    ];
  }
  if (scheme.by === "group")
    return model.groups.map((name, i) => element("span", {}, swatch(groupColour(i)), ` ${name}`));
  return [];
}

function schemes(model: ModelData): readonly (readonly [string, Scheme])[] {
  return [
    ["plain", { by: "plain" }],
    ...(model.groups.length > 0 ? [["sub-assembly", { by: "group" }] as const] : []),
    ...model.checks.map(({ rule }, index) => [`share used: ${rule}`, { by: "check", index }] as const),
  ];
}

function options(names: readonly string[]): readonly HTMLElement[] {
  return names.map((name, i) => element("option", { value: String(i) }, name));
}

/** A round number near to a value: 1, 2 or 5 times a power of ten. */
function round(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  return ([5, 2, 1].find((lead) => lead * power <= value) ?? 1) * power;
}

function bendTools(model: ModelData, stage: Stage, across: number): readonly Node[] {
  if (model.bends.length === 0) return [];
  const shape = element(
    "select",
    { id: "bend-shape" },
    element("option", { value: "-1" }, "as drawn"),
    ...options(model.bends.map(({ name }) => name)),
  );
  const slider = element("input", {
    type: "range",
    min: "0",
    max: String(STEPS_OF_SLIDER),
    value: String(STEPS_OF_SLIDER / 2),
    id: "bend-factor",
    "aria-label": "How much the bending is enlarged",
  });
  const told = element("output", { for: "bend-factor" });
  const show = (): void => {
    const index = Number(shape.value);
    const most = model.bends[index]?.most ?? 0;
    slider.disabled = most === 0;
    if (most === 0) {
      told.textContent = "";
      stage.bend(-1, 0);
      return;
    }
    const largest = (LARGEST_SHARE * across) / most;
    const step = Number(slider.value);
    const factor =
      step === 0
        ? 0
        : step === STEPS_OF_SLIDER
          ? round(largest)
          : Math.max(1, round((largest * step) / STEPS_OF_SLIDER));
    told.textContent = ` ${factor}-fold; moves ${most.toPrecision(2)} mm at most`;
    stage.bend(index, factor);
  };
  shape.addEventListener("change", show);
  slider.addEventListener("input", show);
  show();
  return [element("label", { for: "bend-shape" }, "Bent under "), shape, slider, told];
}

/** The buttons of the views, over the drawing. */
export function viewTools(stage: Stage): HTMLElement {
  const views = VIEW_WORDS.map(([name, word]) => {
    const button = element("button", { type: "button", "data-view": name }, word);
    button.addEventListener("click", () => stage.view(name));
    return button;
  });
  return element("div", { class: "row tools", role: "group", "aria-label": "Views" }, ...views);
}

/** Colours, bending and spread, under the drawing. */
export function lookTools(model: ModelData, stage: Stage): HTMLElement {
  const all = schemes(model);
  const legend = element("div", { class: "legend" });
  const scheme = element("select", { id: "scheme" }, ...options(all.map(([name]) => name)));
  scheme.addEventListener("change", () => {
    const [, chosen] = all[Number(scheme.value)] ?? ["", { by: "plain" } as const];
    stage.colour(chosen);
    legend.replaceChildren(...legendOf(model, chosen));
  });
  const spread = element("input", { type: "range", min: "0", max: "100", value: "0", id: "spread" });
  spread.addEventListener("input", () => stage.spread(Number(spread.value) / 100));
  const corners = model.bars.flatMap(({ frame }) => [frame.slice(0, 3)]);
  const extent = [0, 1, 2].map(
    (i) => Math.max(...corners.map((c) => c[i] ?? 0)) - Math.min(...corners.map((c) => c[i] ?? 0)),
  );
  const across = Math.hypot(...extent) || 1000;
  return element(
    "div",
    { class: "tools" },
    element(
      "div",
      { class: "row" },
      element("label", { for: "scheme" }, "Colour "),
      scheme,
      element("label", { for: "spread" }, "Drawn apart "),
      spread,
    ),
    element("div", { class: "row" }, ...bendTools(model, stage, across)),
    legend,
  );
}
