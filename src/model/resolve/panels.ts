import type { Panel, PanelEdge, Triple } from "../frame.ts";
import type { Panel as PanelFile } from "../generated/frame-file.generated.ts";
import { ref } from "../ref.ts";
import { choice, criteria, direction, notNegative, pair, positive, quantities, triple } from "./values.ts";
import { name, references, refersTo, refuse, stockPart, type Work } from "./work.ts";

const FREE: PanelEdge = Object.freeze({ kind: "free" });

function edgesOf(work: Work, raw: NonNullable<PanelFile["edges"]>, pointer: string): readonly PanelEdge[] | undefined {
  const edges: PanelEdge[] = [];
  for (const [index, edge] of raw.entries()) {
    if (edge === "free") edges.push(FREE);
    else if (refersTo(work, edge.bar, ["bar"], `${pointer}/${index}/bar`)) {
      const slot = edge.slot === undefined ? {} : { slot: choice(edge.slot) };
      edges.push(Object.freeze({ kind: "bar", bar: edge.bar, ...slot }));
    }
  }
  if (raw.every((edge) => edge === "free")) {
    refuse(work, "edges-all-free", pointer, { found: "only free edges", expected: "edges in the slots of bars" });
    return undefined;
  }
  return edges.length === raw.length ? Object.freeze(edges) : undefined;
}

type Key = "edges" | "bars" | "on" | "overhang" | "gasket" | "screws";
/** What each way of holding needs, and what means nothing to it. */
const KEYS: Readonly<Record<PanelFile["held"], { readonly needs: readonly Key[]; readonly idle: readonly Key[] }>> = {
  "in-slot": { needs: ["edges"], idle: ["bars", "on", "overhang", "screws"] },
  "on-face": { needs: ["bars", "on"], idle: ["edges", "gasket"] },
  laid: { needs: ["bars"], idle: ["edges", "gasket", "screws"] },
};

function keysFit(work: Work, raw: PanelFile, pointer: string): boolean {
  const { needs, idle } = KEYS[raw.held];
  const missing = needs.filter((key) => raw[key] === undefined);
  for (const key of missing) {
    refuse(work, "panel-lacks", `${pointer}/held`, {
      found: `"held": "${raw.held}" without ${key}`,
      expected: `${needs.join(" and ")} with it`,
    });
  }
  for (const key of idle) {
    if (raw[key] === undefined) continue;
    const words = {
      found: `${key} of a panel held ${raw.held}`,
      expected: needs.join(" and "),
      mend: `leave out ${key}`,
    };
    refuse(work, "panel-key-idle", `${pointer}/${key}`, words, true);
  }
  return missing.length === 0;
}

type Overhang = readonly [number, number, number, number];
const NO_OVERHANG: Overhang = Object.freeze([0, 0, 0, 0] as const);

function overhangOf(work: Work, raw: PanelFile["overhang"], pointer: string): Overhang | undefined {
  if (raw === undefined) return NO_OVERHANG;
  const [a, b, c, d] = quantities(work, raw, "length", pointer, undefined, "coordinate") ?? [];
  if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
  return Object.freeze([a, b, c, d] as const);
}

const UP: Triple = triple(0, 0, 1);

function screwsOf(work: Work, raw: PanelFile["screws"], pointer: string) {
  if (raw === undefined) return {};
  const pitch = positive(work, raw.pitch, "length", `${pointer}/pitch`);
  const screw =
    raw.screw === undefined ? undefined : stockPart(work, work.stock.screws, "screw", raw.screw, `${pointer}/screw`);
  return { ...(pitch === undefined ? {} : { pitch }), ...(screw === undefined ? {} : { screw }) };
}

function heldOf(work: Work, raw: PanelFile, pointer: string): Panel["held"] | undefined {
  if (!keysFit(work, raw, pointer)) return undefined;
  if (raw.held === "in-slot") {
    const edges = raw.edges === undefined ? undefined : edgesOf(work, raw.edges, `${pointer}/edges`);
    const gasket =
      raw.gasket === undefined
        ? undefined
        : stockPart(work, work.stock.gaskets, "gasket", raw.gasket, `${pointer}/gasket`);
    if (edges === undefined) return undefined;
    return Object.freeze({ kind: "in-slot", edges, ...(gasket === undefined ? {} : { gasket }) });
  }
  const bars = references(work, raw.bars ?? [], ["bar"], `${pointer}/bars`);
  const on = raw.on === undefined ? UP : direction(work, raw.on, `${pointer}/on`);
  const overhang = overhangOf(work, raw.overhang, `${pointer}/overhang`);
  if (on === undefined || overhang === undefined) return undefined;
  if (raw.held === "laid") return Object.freeze({ kind: "laid", bars, on, overhang });
  return Object.freeze({ kind: "on-face", bars, on, overhang, ...screwsOf(work, raw.screws, `${pointer}/screws`) });
}

function resolvePanel(work: Work, raw: PanelFile, pointer: string): Panel | undefined {
  const sheet = stockPart(work, work.stock.sheets, "sheet", raw.sheet, `${pointer}/sheet`);
  const held = heldOf(work, raw, pointer);
  const size = raw.size && pair(quantities(work, raw.size, "length", `${pointer}/size`, positive, "panel size"));
  const notches = raw.notches && pair(quantities(work, raw.notches, "length", `${pointer}/notches`, notNegative));
  if (sheet === undefined || held === undefined) return undefined;
  return Object.freeze({
    ref: Object.freeze(ref("panel", raw.id)),
    sheet,
    held,
    ...(size === undefined ? {} : { size }),
    ...(notches === undefined ? {} : { notches }),
    criteria: criteria(raw.criteria),
  });
}

export function namePanels(work: Work): void {
  for (const [index, raw] of (work.file.panels ?? []).entries()) {
    const pointer = `/panels/${index}`;
    name(work, raw.id, { kind: "panel", pointer }, `${pointer}/id`);
  }
}

export function resolvePanels(work: Work): Panel[] {
  const panels: Panel[] = [];
  for (const [index, raw] of (work.file.panels ?? []).entries()) {
    const panel = resolvePanel(work, raw, `/panels/${index}`);
    if (panel !== undefined) panels.push(panel);
  }
  return panels;
}
