import { bar, point } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "stand.misfit",
  key: "mitred",
  slip: "a sill drawn from leg to leg and mitred like the corner of a picture frame, the feet left under the legs",
  spots: { "timber-table": "leg-1 leg-2 inside-bracket-40", "inch-bench": "leg-1 leg-2 inside-bracket-1.5" },
  sizes: "plain",
  plant(file, spot) {
    const [first = "", second = "", part = ""] = spot.split(" ");
    for (const leg of [first, second]) bar(file, leg).ends = { from: { mitre: "sill" } };
    const [from, to] = [point(file, first, "from"), point(file, second, "from")];
    const ends = { from: { mitre: first }, to: { mitre: second } };
    file.bars.push({ id: "sill", profile: bar(file, first).profile, from, to, ends });
    file.fastenings ??= [];
    file.fastenings.push(
      { part, on: "+z", against: "+x", at: from, holds: ["sill", first] },
      { part, on: "+z", against: "-x", at: to, holds: ["sill", second] },
    );
    return [`${first}.foot`, `${second}.foot`];
  },
};
