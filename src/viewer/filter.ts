import { element } from "./element.ts";

/** Something in the list that a filter shows or hides. */
export interface Listed {
  readonly level: string;
  readonly groups: readonly string[];
  show(on: boolean): void;
}

/** In the order they are offered; the last two are shown when they are asked for, or where there is nothing else. */
const LEVELS = ["reject", "hold", "note", "conceded", "undecided", "met"] as const;
const ASKED_FOR: ReadonlySet<string> = new Set(["undecided", "met"]);

/** Choices of level and group, each with how many there are, and what is then shown. */
export function filterOf(listed: readonly Listed[], changed: () => void): HTMLElement {
  const nothingElse = listed.every(({ level }) => ASKED_FOR.has(level));
  const boxes = LEVELS.flatMap((level) => {
    const count = listed.filter((one) => one.level === level).length;
    if (count === 0) return [];
    const box = element("input", { type: "checkbox", id: `show-${level}` });
    box.checked = nothingElse || !ASKED_FOR.has(level);
    return [{ level, box, label: element("label", { for: `show-${level}` }, box, ` ${level} (${count})`) }];
  });
  const groups = [...new Set(listed.flatMap((one) => one.groups))].sort();
  const select = element(
    "select",
    { id: "show-group" },
    element("option", { value: "" }, "all groups"),
    ...groups.map((name) => element("option", { value: name }, name)),
  );
  const said = element("output", { for: "show-group" });
  const apply = (): void => {
    const levels = new Set<string>(boxes.filter(({ box }) => box.checked).map(({ level }) => level));
    let shown = 0;
    for (const one of listed) {
      const on = levels.has(one.level) && (select.value === "" || one.groups.includes(select.value));
      one.show(on);
      if (on) shown += 1;
    }
    said.textContent = shown === 0 ? "nothing to show" : `${shown} shown`;
    changed();
  };
  for (const { box } of boxes) box.addEventListener("change", apply);
  select.addEventListener("change", apply);
  if (nothingElse) apply();
  return element(
    "div",
    { class: "filter", role: "group", "aria-label": "Which findings and outcomes are shown" },
    ...boxes.map(({ label }) => label),
    element("span", { class: "kept" }, element("label", { for: "show-group" }, "of "), select),
    said,
  );
}
