import type { Report } from "../../../inspection/report.ts";
import type { Frame, Load } from "../../../model/frame.ts";
import { formatQuantity } from "../../../model/units/format-quantity.ts";
import type { Quantity } from "../../../model/units/quantity.ts";
import { listed, percent } from "../../count.ts";
import { html, type Markup } from "../html.ts";

const QUANTITY: Readonly<Record<Load["amount"]["kind"], Quantity>> = {
  force: "force",
  line: "lineLoad",
  pressure: "pressure",
  moment: "moment",
};

const WAYS: readonly (readonly [readonly [number, number, number], string])[] = [
  [[0, 0, -1], "down"],
  [[0, 0, 1], "up"],
  [[1, 0, 0], "along +x"],
  [[-1, 0, 0], "along −x"],
  [[0, 1, 0], "along +y"],
  [[0, -1, 0], "along −y"],
];

function wayOf(direction: Load["direction"]): string {
  const known = WAYS.find(([way]) => way.every((c, i) => Math.abs(c - (direction[i] ?? 0)) < 1e-9));
  return known?.[1] ?? `along [${direction.map((c) => c.toFixed(2)).join(", ")}]`;
}

function loadWords(frame: Frame, { amount, on, direction, at }: Load): string {
  const where = at.kind === "worst" ? ", wherever it is worst" : "";
  const about = amount.kind === "moment" ? "about its axis " : "";
  return `${formatQuantity(amount.value, QUANTITY[amount.kind], frame.units)} ${about}${wayOf(direction)} on ${listed(on, 8)}${where}`;
}

/** What acts on the frame and what its feet then bear. */
export function loadsOf(frame: Frame, { margins = [] }: Report): Markup {
  const feet = margins.filter(({ rule }) => rule === "foot.overloaded");
  return html`<section class="loads" id="loads">
<h2>Loads and supports</h2>
<table><thead><tr><th scope="col">Case</th><th scope="col">Kind</th><th scope="col">Loads</th></tr></thead><tbody>
<tr><th scope="row">self-weight</th><td>permanent</td><td>bars, panels, connectors${frame.masses.some(({ fixed }) => fixed) ? " and equipment bolted down" : ""}</td></tr>
${frame.cases.map(
  ({
    id,
    kind,
  }) => html`<tr><th scope="row">${id}</th><td>${kind}</td><td>${listed(frame.loads.filter((load) => load.case === id).map((load) => loadWords(frame, load)))}</td></tr>
`,
)}${frame.masses.map(
  ({
    ref,
    mass,
    on,
    fixed,
    slides,
  }) => html`<tr><th scope="row">${ref.id}</th><td>${fixed ? "permanent" : "variable"}</td><td>${formatQuantity(mass, "mass", frame.units)} on ${listed(on)}${slides ? `, pulled out by ${formatQuantity(Math.hypot(...slides.by), "length", frame.units)}` : ""}</td></tr>
`,
)}</tbody></table>
${
  feet.length === 0
    ? ""
    : html`<div class="wide" tabindex="0" role="region" aria-label="What the feet bear"><table><thead><tr><th scope="col">Foot or caster</th><th scope="col">Greatest push</th><th scope="col">Capacity</th><th scope="col">Under</th><th scope="col" class="num">Used</th></tr></thead><tbody>
${feet.map(
  ({
    at,
    measured,
    limit,
    under,
    utilisation,
  }) => html`<tr><th scope="row">${at.id}</th><td>${measured}</td><td>${limit}</td><td>${under?.combination ?? ""}</td><td class="num">${percent(utilisation)}</td></tr>
`,
)}</tbody></table></div>`
}
</section>
`;
}
