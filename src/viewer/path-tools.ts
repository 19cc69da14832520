import type { ModelData } from "../drawing/model3d/model-data.ts";
import { element } from "./element.ts";
import { PATH_INKS } from "./path-mesh.ts";
import type { Stage } from "./stage.ts";
import { swatch } from "./swatch.ts";

/** Which loads are followed through the frame to its feet. */
export function pathTools(model: ModelData, stage: Stage, chosen: (path: number) => void): HTMLElement | undefined {
  if (model.paths.length === 0) return undefined;
  const select = element(
    "select",
    { id: "load-path" },
    element("option", { value: "-1" }, "not shown"),
    ...model.paths.map(({ name }, i) => element("option", { value: String(i) }, name)),
  );
  const said = element("output", { for: "load-path" });
  const legend = element("div", { class: "legend" });
  select.addEventListener("change", () => {
    const index = Number(select.value);
    const path = model.paths[index];
    said.textContent = path ? ` ${path.sum}` : "";
    legend.replaceChildren(
      ...(path ? PATH_INKS.map(({ words, colour }) => element("span", {}, swatch(colour), ` ${words}`)) : []),
    );
    stage.path(index);
    chosen(index);
  });
  return element(
    "div",
    {},
    element("div", { class: "row" }, element("label", { for: "load-path" }, "Load path of "), select, said),
    legend,
  );
}
