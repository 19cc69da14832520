import type { ModelData } from "../drawing/model3d/model-data.ts";
import { element } from "./element.ts";
import { PATH_INKS } from "./path-mesh.ts";
import type { Stage } from "./stage.ts";
import { swatch } from "./swatch.ts";

export interface PathTools {
  readonly nodes: readonly Node[];
  /** Shows the load path of a finding; −1: what the reader had chosen. */
  show(path: number): void;
}

/** Which loads are followed through the frame to its feet. */
export function pathTools(model: ModelData, stage: Stage, chosen: (path: number) => void): PathTools {
  if (model.paths.length === 0) return { nodes: [], show: () => {} };
  const select = element(
    "select",
    { id: "load-path" },
    element("option", { value: "-1" }, "not shown"),
    ...model.paths.map(({ name }, i) => element("option", { value: String(i) }, name)),
  );
  const said = element("output", { for: "load-path" });
  const legend = element("div", { class: "legend" });
  const follow = (): void => {
    const index = Number(select.value);
    const path = model.paths[index];
    said.textContent = path ? ` ${path.sum}` : "";
    legend.replaceChildren(
      ...(path ? PATH_INKS.map(({ words, colour }) => element("span", {}, swatch(colour), ` ${words}`)) : []),
    );
    stage.path(index);
    chosen(index);
  };
  let own = select.value;
  select.addEventListener("change", () => {
    own = select.value;
    follow();
  });
  return {
    nodes: [
      element("div", { class: "row" }, element("label", { for: "load-path" }, "Load path of "), select, said),
      legend,
    ],
    show(path) {
      const wanted = path < 0 ? own : String(path);
      if (select.value === wanted) return;
      select.value = wanted;
      follow();
    },
  };
}
