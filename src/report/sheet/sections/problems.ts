import type { Problem } from "../../../model/problem.ts";
import { alikeProblems, othersToo } from "../../alike-problems.ts";
import { html, type Markup } from "../html.ts";

/** What is wrong with or doubtful in a file, in its order. */
export function problemsOf(problems: readonly Problem[]): Markup {
  return html`<ul>${alikeProblems(problems).map((alike) => {
    const { weight, place, found, expected, mend } = alike.first;
    return html`<li><b>${weight}</b>, ${place.file} line ${place.line}${othersToo(alike)}: found ${found}; expected ${expected}${mend === undefined ? "" : html`; ${mend}`}</li>`;
  })}</ul>`;
}
