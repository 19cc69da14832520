import type { ModelData } from "../drawing/model3d/model-data.ts";
import { element } from "./element.ts";

/** A line that says which bar was touched and what it uses of its limits. */
export function readoutFor(model: ModelData): { readonly root: HTMLElement; show(bar: number): void } {
  const root = element(
    "p",
    { class: "readout", role: "status" },
    "Drag to turn, or use the arrow keys; touch a bar to read its shares.",
  );
  return {
    root,
    show(index) {
      const bar = model.bars[index];
      if (!bar) return;
      const shares = model.checks.flatMap(({ rule }, i) => {
        const share = bar.shares[i];
        return typeof share === "number" ? [`${rule} ${Math.round(share * 100)} %`] : [];
      });
      root.replaceChildren(
        element("b", {}, bar.id),
        `, ${bar.what}${shares.length > 0 ? `: ${shares.join(", ")}` : ""}`,
      );
    },
  };
}
