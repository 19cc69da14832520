import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import type {
  Cap,
  Connector,
  Gasket,
  Nut,
  Profile,
  Screw,
  Sheet,
  Stand,
  Stock,
  Tool,
} from "../../src/model/stock/stock.ts";
import { formatQuantity } from "../../src/model/units/format-quantity.ts";
import type { Quantity } from "../../src/model/units/quantity.ts";
import type { UnitSystem } from "../../src/model/units/unit-system.ts";

/** Inch parts carry a fraction or a decimal inch in their name. */
function print(name: string, value: number, quantity: Quantity): string {
  const units: UnitSystem = /\d\/\d|\d\.\d|\din\b|-\d\d?-\d\d$|^1x1|-1($|-)/.test(name) ? "in-lbf-lb" : "mm-N-kg";
  return formatQuantity(value, quantity, units);
}

const raised = ({ name, raise: [low, high] }: Stand): string =>
  low === high ? print(name, low, "length") : `${print(name, low, "length")} to ${print(name, high, "length")}`;

const profile = (p: Profile): string =>
  `${print(p.name, p.height, "length")} × ${print(p.name, p.width, "length")}, slot ${p.slotSize}, ${p.weight}`;
const connector = (c: Connector): string => c.kind;
const stand = (s: Stand): string =>
  `${s.kind}, ${s.mount.by === "stem" ? `stem ${s.mount.thread}` : "plate"}, floor to bar ${raised(s)}, carries ${print(s.name, s.capacity, "force")}${s.brake ? ", brake" : ""}${s.swivel ? ", swivels" : ""}`;
/** A sheet of inch stock ends in the unit: "aluminium-0.063in", but "aluminium-1.5". */
const sheet = (s: Sheet): string =>
  `${formatQuantity(s.thickness, "length", s.name.endsWith("in") ? "in-lbf-lb" : "mm-N-kg")} thick`;
const gasket = (g: Gasket): string =>
  `slot ${g.slotSize}, sheets of ${g.sheet.map((t) => print(g.name, t, "length")).join(" to ")}`;
const screw = (s: Screw): string => `${s.thread} × ${print(s.name, s.length, "length")}, head ${s.head}`;
const nut = (n: Nut): string => `${n.kind}, slot ${n.slotSize}, ${n.thread}`;
const cap = (c: Cap): string => `for ${c.profiles.join(", ")}`;
const tool = (t: Tool): string => `${t.kind}, ${print(t.name, t.key, "length")} across flats`;

function table<T extends { readonly name: string }>(parts: ReadonlyMap<string, T>, words: (part: T) => string): string {
  const rows = [...parts.values()].map((part) => `| \`${part.name}\` | ${words(part)} |`);
  return ["| name | is |", "| --- | --- |", ...rows].join("\n");
}

const TABLES: Readonly<Record<string, (stock: Stock) => string>> = {
  profiles: ({ profiles }) => table(profiles, profile),
  connectors: ({ connectors }) => table(connectors, connector),
  stands: ({ stands }) => table(stands, stand),
  sheets: ({ sheets }) => table(sheets, sheet),
  gaskets: ({ gaskets }) => table(gaskets, gasket),
  screws: ({ screws }) => table(screws, screw),
  nuts: ({ nuts }) => table(nuts, nut),
  caps: ({ caps }) => table(caps, cap),
  tools: ({ tools }) => table(tools, tool),
};

/** A table of one kind of part in the built-in stock. */
export function stockBlock(kind: string): string {
  const of = TABLES[kind];
  if (!of) throw new Error(`the stock has no ${kind}`);
  return of(builtinStock());
}
