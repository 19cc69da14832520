import type { ModelData } from "../drawing/model3d/model-data.ts";
import { type Opened, turnAt } from "./doors.ts";
import { element } from "./element.ts";
import type { Stage } from "./stage.ts";

const STEPS = 60;
/** Doors that went this share of their way beyond where they strike are there: what is told of a door is rounded, rad. */
const ROUNDED = 1e-4;
const degrees = (turn: number): string => `${Math.round((Math.abs(turn) * 180) / Math.PI)}°`;

export interface DoorTools {
  readonly nodes: readonly Node[];
  /** Opens the doors as a finding has them; none: as the reader had them. */
  show(opened: Opened): void;
}

/** Opens the doors and says how far, and where one strikes something. */
export function doorTools(model: ModelData, stage: Stage): DoorTools {
  if (model.doors.length === 0) return { nodes: [], show: () => {} };
  const slider = element("input", { type: "range", min: "0", max: String(STEPS), value: "0", id: "doors-open" });
  const said = element("output", { for: "doors-open" });
  let own = "0";
  let shown = "";
  const open = (shares: Opened): void => {
    const key = shares.join(" ");
    if (key === shown) return;
    shown = key;
    stage.open(shares);
    said.textContent = model.doors
      .map((door, i) => {
        const share = shares[i] ?? 0;
        const turn = Math.abs(turnAt(door, share) - (share === 0 ? 0 : door.swing[0]));
        const struck = share > 0 && door.strikes !== undefined && turn >= door.strikes - ROUNDED;
        return ` ${door.id} ${degrees(turn)}${struck ? `, strikes at ${degrees(door.strikes ?? 0)}` : ""}`;
      })
      .join(";");
  };
  const all = (): Opened => model.doors.map(() => Number(slider.value) / STEPS);
  slider.addEventListener("input", () => {
    own = slider.value;
    open(all());
  });
  return {
    nodes: [
      element("label", { for: "doors-open" }, model.doors.length > 1 ? "Doors opened " : "Door opened "),
      slider,
      said,
    ],
    show(opened) {
      slider.value = opened.length === 0 ? own : String(Math.round(STEPS * Math.max(...opened)));
      open(opened.length === 0 ? all() : opened);
    },
  };
}
