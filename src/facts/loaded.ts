import { defineFact } from "./fact.ts";

/** Which bars carry declared loads or equipment, straight or through a panel; and the cases they act in. */
export interface Loaded {
  has(bar: string): boolean;
  casesOn(bar: string): readonly string[];
}

/** Where the declared loads and masses go first. */
export const loaded = defineFact<Loaded>({
  id: "loaded",
  compute(_, frame) {
    const cases = new Map<string, Set<string>>();
    const panels = new Map(frame.panels.map((panel) => [panel.ref.id, panel]));
    const masses = new Map(frame.masses.map((mass) => [mass.ref.id, mass]));
    const add = (id: string, name: string): void => {
      const panel = panels.get(id);
      if (panel) {
        const bars =
          panel.held.kind === "in-slot"
            ? panel.held.edges.flatMap((edge) => (edge.kind === "bar" ? [edge.bar] : []))
            : panel.held.bars;
        for (const bar of bars) add(bar, name);
        return;
      }
      const mass = masses.get(id);
      if (mass) {
        for (const carrier of mass.on) add(carrier, name); // bars and panels: a mass carries no other
        return;
      }
      const known = cases.get(id);
      if (known) known.add(name);
      else cases.set(id, new Set([name]));
    };
    for (const load of frame.loads) for (const id of load.on) add(id, load.case);
    for (const mass of frame.masses) for (const id of mass.on) add(id, mass.ref.id);
    return { has: (bar) => cases.has(bar), casesOn: (bar) => [...(cases.get(bar) ?? [])].sort() };
  },
});
