import type { ModelData, PoseData } from "../drawing/model3d/model-data.ts";
import { element } from "./element.ts";
import { LEAST, type Stage } from "./stage.ts";
import type { LookTools } from "./tools.ts";

const LEVELS = ["reject", "hold", "note", "conceded"] as const;

interface Entry {
  readonly article: HTMLElement;
  readonly button: HTMLButtonElement;
  readonly pin: number;
  readonly pose: PoseData | undefined;
}

function pinOf(model: ModelData, article: HTMLElement): number {
  const part = article.closest("section.part");
  return model.pins.findIndex(({ number }) => part?.id === `p${number}`);
}

/** Makes each finding something to choose: the view turns to it and brings out its parts. */
function entries(model: ModelData): readonly Entry[] {
  return [...document.querySelectorAll<HTMLElement>("article.finding")].map((article) => {
    const number = article.querySelector(".no");
    const said = article.querySelector("h4")?.textContent?.trim() ?? "";
    const pin = pinOf(model, article);
    const pose = model.poses.find(({ finding }) => article.id === `f${finding}`);
    const button = element(
      "button",
      {
        type: "button",
        class: "pick",
        "aria-pressed": "false",
        title: pin < 0 && !pose ? "It has no place on the drawing" : "Show it on the drawing",
      },
      number?.textContent ?? "",
    );
    button.setAttribute("aria-label", `Show on the drawing: ${said}`);
    number?.replaceWith(button);
    return { article, button, pin, pose };
  });
}

/** How much of the frame there has to be in the picture of a finding. */
function least(model: ModelData, pose: PoseData | undefined): number {
  if (!pose) return LEAST.part;
  if (pose.tool >= 0) return LEAST.part;
  if (pose.path >= 0) return LEAST.path;
  return model.shapes[pose.shape]?.kind === "bent" ? LEAST.part : LEAST.shape;
}

interface Filter {
  readonly root: HTMLElement;
  keeps(article: HTMLElement): boolean;
}

function filterOf(articles: readonly HTMLElement[], changed: () => void): Filter {
  const present = LEVELS.filter((level) => articles.some(({ dataset }) => dataset.level === level));
  const boxes = present.map((level) => {
    const box = element("input", { type: "checkbox", id: `show-${level}` });
    box.checked = true;
    box.addEventListener("change", changed);
    const count = articles.filter(({ dataset }) => dataset.level === level).length;
    return { level, box, label: element("label", { for: `show-${level}` }, box, ` ${level} (${count})`) };
  });
  const groups = [...new Set(articles.map(({ dataset }) => dataset.group ?? ""))].sort();
  const select = element(
    "select",
    { id: "show-group" },
    element("option", { value: "" }, "all groups"),
    ...groups.map((name) => element("option", { value: name }, name)),
  );
  select.addEventListener("change", changed);
  const root = element(
    "div",
    { class: "filter", role: "group", "aria-label": "Which findings are shown" },
    ...boxes.map(({ label }) => label),
    element("label", { for: "show-group" }, "of "),
    select,
  );
  return {
    root,
    keeps: ({ dataset }) =>
      boxes.some(({ level, box }) => level === dataset.level && box.checked) &&
      (select.value === "" || select.value === dataset.group),
  };
}

/** Joins the list of findings and the drawing. */
export function listFor(model: ModelData, stage: Stage | undefined, pose: LookTools["pose"]): void {
  const all = stage ? entries(model) : [];
  const articles = [...document.querySelectorAll<HTMLElement>("article.finding")];
  const choose = (entry: Entry | undefined): void => {
    for (const { article, button } of all) {
      const on = article === entry?.article;
      article.classList.toggle("chosen", on);
      button.setAttribute("aria-pressed", String(on));
    }
    stage?.choose(entry && entry.pin >= 0 ? entry.pin : undefined, least(model, entry?.pose));
    // A finding of the frame as a whole is seen on all of it.
    if (entry && entry.pin < 0) stage?.view("whole");
    pose(entry?.pose);
  };
  for (const entry of all)
    entry.button.addEventListener("click", () =>
      choose(entry.article.classList.contains("chosen") ? undefined : entry),
    );
  const show = (pin: number): void => {
    const entry = all.find((one) => one.pin === pin && !one.article.hidden);
    if (!entry) return;
    choose(entry);
    entry.article.scrollIntoView({
      block: "nearest",
      behavior: matchMedia("(prefers-reduced-motion: reduce)").matches ? "auto" : "smooth",
    });
    entry.button.focus({ preventScroll: true });
  };
  stage?.onPin(show);
  const filters = document.getElementById("filters");
  if (articles.length < 2 || !filters) return;
  const filter = filterOf(articles, () => {
    for (const article of articles) article.hidden = !filter.keeps(article);
    for (const part of document.querySelectorAll<HTMLElement>("section.part"))
      part.hidden = [...part.querySelectorAll<HTMLElement>("article.finding")].every(({ hidden }) => hidden);
    stage?.keep(new Set(all.filter(({ article }) => !article.hidden).map(({ pin }) => pin)));
  });
  filters.append(filter.root);
}
