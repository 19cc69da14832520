import type { ModelData } from "../drawing/model3d/model-data.ts";
import { element } from "./element.ts";

export interface Readout {
  readonly root: HTMLElement;
  show(bar: number): void;
  /** The load path that is shown, −1 for none. */
  follow(path: number): void;
}

/** A line that says which bar was touched, and what it uses of its limits or, on a load path, what it takes and gives. */
export function readoutFor(model: ModelData): Readout {
  const root = element(
    "p",
    { class: "readout", role: "status" },
    "Drag to turn, or use the arrow keys; touch a bar to read its shares.",
  );
  let [path, touched] = [-1, -1];
  const sharesOf = (index: number): readonly string[] =>
    model.checks.flatMap(({ rule }, i) => {
      const share = model.bars[index]?.shares[i];
      return typeof share === "number" ? [`${rule} ${Math.round(share * 100)} %`] : [];
    });
  const passedBy = (index: number): readonly string[] =>
    (model.paths[path]?.passings ?? []).flatMap(({ giver, taker, words }) => {
      if (giver === index) return [`gives ${model.bars[taker]?.id ?? ""} ${words}`];
      return taker === index ? [`takes from ${model.bars[giver]?.id ?? ""} ${words}`] : [];
    });
  const write = (): void => {
    const bar = model.bars[touched];
    if (!bar) return;
    const passed = passedBy(touched);
    const words = path >= 0 ? (passed.length > 0 ? passed.join("; ") : "passes little") : sharesOf(touched).join(", ");
    root.replaceChildren(element("b", {}, bar.id), `, ${bar.what}${words === "" ? "" : `: ${words}`}`);
  };
  return {
    root,
    show(index) {
      touched = index;
      write();
    },
    follow(index) {
      path = index;
      if (touched >= 0) write();
      else if (index >= 0) root.replaceChildren("Touch a bar to read what it takes and gives.");
    },
  };
}
