import type { ModelData, PoseData } from "../drawing/model3d/model-data.ts";
import { element } from "./element.ts";
import { filterOf, type Listed } from "./filter.ts";
import { type Outcome, outcomesOf } from "./outcomes.ts";
import { LEAST, type Stage } from "./stage.ts";
import type { LookTools } from "./tools.ts";

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
        title: pin < 0 ? "Show the whole frame" : "Show it on the drawing",
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
  if (pose.tool >= 0 || pose.guard >= 0) return LEAST.part;
  if (pose.open.length > 0) return LEAST.path;
  if (pose.path >= 0) return LEAST.path;
  const kind = model.shapes[pose.shape]?.kind;
  return kind === "bent" || kind === "turning" ? LEAST.part : LEAST.shape;
}

/** What was met and what was undecided, put under the findings once it is asked for. */
function outcomeList(
  outcomes: readonly Outcome[],
  under: HTMLElement,
  shares: LookTools["shares"] | undefined,
  judged: ReadonlySet<string>,
): readonly Listed[] {
  let pressed: HTMLButtonElement | undefined;
  const button = (rule: string): HTMLButtonElement => {
    const made = element("button", { type: "button", class: "pick", "aria-pressed": "false" }, "Show its shares");
    made.setAttribute("aria-label", `Show its shares: bars coloured by ${rule}`);
    made.addEventListener("click", () => {
      const on = pressed !== made;
      pressed?.setAttribute("aria-pressed", "false");
      pressed = on ? made : undefined;
      made.setAttribute("aria-pressed", String(on));
      shares?.(on ? rule : undefined);
    });
    return made;
  };
  const root = element("section", { class: "outcomes" });
  under.append(root);
  return outcomes.map((outcome): Listed => {
    let made: HTMLElement | undefined;
    const { rule } = outcome;
    return {
      level: outcome.level,
      groups: outcome.groups,
      show(on) {
        if (!made && !on) return;
        if (!made) {
          made = outcome.make();
          if (shares && rule !== undefined && judged.has(rule)) made.querySelector(".trace")?.prepend(button(rule));
          root.append(made);
        }
        if (!on && pressed && made.contains(pressed)) pressed.click();
        made.hidden = !on;
      },
    };
  });
}

/** On the still drawings too only parts with a finding that is shown keep their balloon. */
function hideMarks(articles: readonly HTMLElement[]): void {
  const shown = new Set(
    articles.filter(({ hidden }) => !hidden).map((article) => article.closest("section.part")?.id.slice(1)),
  );
  for (const mark of document.querySelectorAll<SVGElement>(".board .view [data-mark]"))
    mark.toggleAttribute("hidden", !shown.has(mark.dataset.mark));
}

/** Joins the list of findings and the drawing. */
export function listFor(model: ModelData, stage: Stage | undefined, looks: LookTools | undefined): void {
  const all = stage ? entries(model) : [];
  const articles = [...document.querySelectorAll<HTMLElement>("article.finding")];
  const choose = (entry: Entry | undefined): void => {
    for (const { article, button } of all) {
      const on = article === entry?.article;
      article.classList.toggle("chosen", on);
      button.setAttribute("aria-pressed", String(on));
    }
    const seen = least(model, entry?.pose);
    stage?.choose(entry && entry.pin >= 0 ? entry.pin : undefined, seen);
    // A finding of the frame as a whole is seen on all of it as it is first shown; one with which all of it moves on all of it.
    if (entry && entry.pin < 0) stage?.view("isometric");
    else if (entry && seen === LEAST.shape) stage?.view("whole");
    looks?.pose(entry?.pose);
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
  const [filters, findings] = [document.getElementById("filters"), document.getElementById("findings")];
  if (!filters || !findings) return;
  const judged = new Set(model.checks.map(({ rule }) => rule));
  const listed: readonly Listed[] = [
    ...articles.map((article) => ({
      level: article.dataset.level ?? "",
      groups: [article.dataset.group ?? ""],
      show: (on: boolean) => {
        article.hidden = !on;
      },
    })),
    ...outcomeList(outcomesOf(document), findings, looks?.shares, judged),
  ];
  if (listed.length < 2) return;
  const filter = filterOf(listed, () => {
    for (const part of document.querySelectorAll<HTMLElement>("section.part"))
      part.hidden = [...part.querySelectorAll<HTMLElement>("article.finding")].every(({ hidden }) => hidden);
    const kept = new Set(all.filter(({ article }) => !article.hidden).map(({ pin }) => pin));
    stage?.keep(kept);
    if (all.some(({ article }) => article.hidden && article.classList.contains("chosen"))) choose(undefined);
    hideMarks(articles);
  });
  filters.append(filter);
}
