import { ends } from "./ends.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";
import { sheets } from "./sheets.ts";
import { standings } from "./standings.ts";

/** So many of one part of stock. */
export interface PartCount {
  readonly kind: "connector" | "screw" | "nut" | "cap" | "stand" | "sheet";
  readonly name: string;
  readonly count: number;
  /** Of a sheet: its size, m; undefined where it follows from slots. */
  readonly size?: readonly [number, number];
}

/** What has to lie on the bench beside the bars, counted. */
export const partCounts = defineFact<
  readonly PartCount[],
  { placements: typeof placements; ends: typeof ends; standings: typeof standings; sheets: typeof sheets }
>({
  id: "part-counts",
  needs: { placements, ends, standings, sheets },
  compute({ placements: placed, ends: states, standings: standing, sheets: laid }, frame) {
    const counts = new Map<
      string,
      { kind: PartCount["kind"]; name: string; count: number; size?: readonly [number, number] }
    >();
    const add = (kind: PartCount["kind"], name: string, size?: readonly [number, number]): void => {
      const key = `${kind} ${name} ${size?.join("x") ?? ""}`;
      const known = counts.get(key);
      if (known) known.count += 1;
      else counts.set(key, { kind, name, count: 1, ...(size ? { size } : {}) });
    };
    for (const connector of placed.connectors) {
      add("connector", connector.part.name);
      for (const screw of connector.screws) {
        add("screw", screw.screw.name);
        if (screw.into.kind === "nut" && screw.into.nut) add("nut", screw.into.nut.name);
      }
    }
    for (const state of states) {
      // A standard cap goes on a bare end only: where a foot or a bar covers part of it, it would be in the way.
      if (!state.capped || (state.end.cap.kind === "if-open" && state.covers.length > 0)) continue;
      const { cap, bar } = state.end;
      const profile = frame.bars.find((b) => b.ref.id === bar)?.profile.name ?? "";
      const fitting =
        cap.kind === "part"
          ? cap.part.name
          : [...frame.stock.caps.values()].find((c) => c.profiles.includes(profile))?.name;
      add("cap", fitting ?? `a cap for ${profile}`);
    }
    for (const { stand } of standing.all) add("stand", stand.part.name);
    for (const panel of frame.panels) {
      const sheet = laid.find((s) => s.panel === panel);
      add("sheet", panel.sheet.name, panel.size ?? sheet?.size);
    }
    return [...counts.values()].sort((a, b) =>
      a.kind < b.kind ? -1 : a.kind > b.kind ? 1 : a.name < b.name ? -1 : a.name > b.name ? 1 : 0,
    );
  },
});
