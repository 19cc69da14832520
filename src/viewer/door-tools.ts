import type { ModelData } from "../drawing/model3d/model-data.ts";
import { turnAt } from "./doors.ts";
import { element } from "./element.ts";
import type { Stage } from "./stage.ts";

const STEPS = 60;
const degrees = (turn: number): string => `${Math.round((Math.abs(turn) * 180) / Math.PI)}°`;

/** Opens the doors and says how far, and where one strikes something. */
export function doorTools(model: ModelData, stage: Stage): readonly Node[] {
  if (model.doors.length === 0) return [];
  const slider = element("input", { type: "range", min: "0", max: String(STEPS), value: "0", id: "doors-open" });
  const said = element("output", { for: "doors-open" });
  const show = (): void => {
    const share = Number(slider.value) / STEPS;
    stage.open(share);
    said.textContent = model.doors
      .map((door) => {
        const turn = Math.abs(turnAt(door, share) - (share === 0 ? 0 : door.swing[0]));
        const struck = door.strikes !== undefined && turn >= door.strikes;
        return ` ${door.id} ${degrees(turn)}${struck ? `, strikes at ${degrees(door.strikes ?? 0)}` : ""}`;
      })
      .join(";");
  };
  slider.addEventListener("input", show);
  return [
    element("label", { for: "doors-open" }, model.doors.length > 1 ? "Doors opened " : "Door opened "),
    slider,
    said,
  ];
}
