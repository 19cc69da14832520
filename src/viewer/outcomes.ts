import { element } from "./element.ts";

/** What came of a rule besides findings: what was met with its closest margin, or what could not be decided and why. */
export interface Outcome {
  readonly level: "undecided" | "met";
  readonly groups: readonly string[];
  /** Of what was met. */
  readonly rule?: string;
  make(): HTMLElement;
}

function metOutcome(row: HTMLTableRowElement): Outcome {
  const group = row.closest("tbody")?.dataset.group ?? "";
  const rule = row.querySelector("code")?.textContent ?? "";
  const title = row.querySelector("th span")?.textContent ?? "";
  const [, margin, used] = row.querySelectorAll("td");
  const make = (): HTMLElement => {
    const closest = margin?.textContent
      ? [`, closest ${margin.textContent}: `, ...[...(used?.childNodes ?? [])].map((node) => node.cloneNode(true))]
      : [", nothing measured"];
    return element(
      "article",
      { class: "outcome l-met" },
      element("h4", {}, element("span", { class: "level" }, "MET"), ` ${title || rule}`),
      element("p", {}, `${row.dataset.met} met`, ...closest),
      element("p", { class: "trace" }, element("code", {}, rule)),
    );
  };
  return { level: "met", groups: [group], rule, make };
}

function undecidedOutcome(item: HTMLElement): Outcome {
  const make = (): HTMLElement =>
    element(
      "article",
      { class: "outcome l-undecided" },
      element("h4", {}, element("span", { class: "level" }, "UNDECIDED")),
      element("p", {}, ...[...item.childNodes].map((node) => node.cloneNode(true))),
    );
  return { level: "undecided", groups: (item.dataset.undecided ?? "").split("|"), make };
}

/** Read from where the sheet tells them: its list of what is open, and its table of checks, what comes nearest to its limit first. */
export function outcomesOf(page: Document): readonly Outcome[] {
  const open = [...page.querySelectorAll<HTMLElement>("#open li[data-undecided]")].map(undecidedOutcome);
  const used = ({ dataset }: HTMLTableRowElement): number => Number(dataset.used ?? -1);
  const met = [...page.querySelectorAll<HTMLTableRowElement>("#checks tr[data-met]")]
    .filter(({ dataset }) => Number(dataset.met) > 0)
    .sort((a, b) => used(b) - used(a))
    .map(metOutcome);
  return [...open, ...met];
}
