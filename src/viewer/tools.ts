import type { ModelData, PoseData } from "../drawing/model3d/model-data.ts";
import { SHARE_STEPS, UNJUDGED } from "../drawing/share-steps.ts";
import { groupColour, rgb, type Scheme } from "./colours.ts";
import { doorTools } from "./door-tools.ts";
import { element } from "./element.ts";
import { pathTools } from "./path-tools.ts";
import { shapeTools } from "./shape-tools.ts";
import type { Stage } from "./stage.ts";
import { swatch } from "./swatch.ts";

const VIEW_WORDS: readonly (readonly [string, string])[] = [
  ["isometric", "Isometric"],
  ["front", "Front"],
  ["right", "Right"],
  ["back", "Back"],
  ["left", "Left"],
  ["top", "Top"],
  ["whole", "Whole"],
];
function legendOf(model: ModelData, scheme: Scheme): readonly Node[] {
  if (scheme.by === "check") {
    const steps = SHARE_STEPS.map(({ words, colour }) => element("span", {}, swatch(rgb(colour)), ` ${words}`));
    return [
      element("span", {}, model.checks[scheme.index]?.title ?? "", ": "),
      ...steps,
      element("span", {}, swatch(rgb(UNJUDGED.colour)), " does not apply"),
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

/** The buttons of the views, over the drawing. */
export function viewTools(stage: Stage): HTMLElement {
  const views = VIEW_WORDS.map(([name, word]) => {
    const button = element("button", { type: "button", "data-view": name }, word);
    button.addEventListener("click", () => stage.view(name));
    return button;
  });
  return element("div", { class: "row tools", role: "group", "aria-label": "Views" }, ...views);
}

export interface LookTools {
  readonly root: HTMLElement;
  /** Shows the shape, load path and turn of a tool of a finding; undefined: what the reader had chosen. */
  pose(finding: PoseData | undefined): void;
  /** Colours bars by the share they use of this rule's limit, where it gives them one; undefined: as the reader had chosen. */
  shares(rule: string | undefined): void;
}

/** Colours, spread, shapes and load paths, under the drawing. */
export function lookTools(model: ModelData, stage: Stage, followed: (path: number) => void): LookTools {
  const all = schemes(model);
  const legend = element("div", { class: "legend" });
  const scheme = element("select", { id: "scheme" }, ...options(all.map(([name]) => name)));
  let own = scheme.value;
  const colour = (): void => {
    const [, chosen] = all[Number(scheme.value)] ?? ["", { by: "plain" } as const];
    stage.colour(chosen);
    legend.replaceChildren(...legendOf(model, chosen));
  };
  scheme.addEventListener("change", () => {
    own = scheme.value;
    colour();
  });
  const spread = element("input", { type: "range", min: "0", max: "100", value: "0", id: "spread" });
  spread.addEventListener("input", () => stage.spread(Number(spread.value) / 100));
  const corners = model.bars.flatMap(({ frame }) => [frame.slice(0, 3)]);
  const extent = [0, 1, 2].map(
    (i) => Math.max(...corners.map((c) => c[i] ?? 0)) - Math.min(...corners.map((c) => c[i] ?? 0)),
  );
  const across = Math.hypot(...extent) || 1000;
  const shapes = shapeTools(model, stage, across);
  const doors = doorTools(model, stage);
  const paths = pathTools(model, stage, followed);
  const root = element(
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
    element("div", { class: "row" }, ...shapes.nodes),
    legend,
    element("div", { class: "row" }, ...doors.nodes),
    ...paths.nodes,
  );
  return {
    root,
    pose(finding) {
      shapes.show(finding?.shape ?? -1);
      paths.show(finding?.path ?? -1);
      stage.tool(finding?.tool ?? -1);
      stage.guard(finding?.guard ?? -1);
      stage.tip(finding?.tip ?? -1);
      doors.show(finding?.open ?? []);
    },
    shares(rule) {
      const wanted = all.findIndex(([, one]) => one.by === "check" && model.checks[one.index]?.rule === rule);
      scheme.value = wanted < 0 ? own : String(wanted);
      colour();
    },
  };
}
