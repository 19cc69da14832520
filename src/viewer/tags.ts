import { type Eye, seenAt } from "./camera.ts";
import { element } from "./element.ts";
import type { Vec } from "./vec.ts";

/** Words at places of the drawing. */
export interface Tags {
  set(list: readonly { readonly at: Vec; readonly words: string }[]): void;
  place(eye: Eye, width: number, height: number): void;
}

export function tagsIn(root: HTMLElement): Tags {
  let shown: readonly { readonly at: Vec; readonly tag: HTMLElement }[] = [];
  return {
    set(list) {
      for (const { tag } of shown) tag.remove();
      shown = list.map(({ at, words }) => ({ at, tag: element("span", { class: "tag" }, words) }));
      root.append(...shown.map(({ tag }) => tag));
    },
    place(eye, width, height) {
      for (const { at, tag } of shown) {
        const [x, y] = seenAt(eye, at, width, height);
        tag.style.visibility = x < 0 || y < 0 || x > width || y > height ? "hidden" : "visible";
        tag.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px) translate(12px,-50%)`;
      }
    },
  };
}
