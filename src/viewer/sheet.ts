import type { ModelData } from "../drawing/model3d/model-data.ts";
import { listFor } from "./list.ts";
import { readoutFor } from "./readout.ts";
import { stageFor } from "./stage.ts";
import { type LookTools, lookTools, viewTools } from "./tools.ts";

/** Puts the turning view in the place of the isometric drawing, where the browser can draw it; otherwise the drawings stay. */
function start(): void {
  const data = document.getElementById("model")?.textContent;
  const easel = document.getElementById("easel");
  if (!data || !easel) return;
  const model = JSON.parse(data) as ModelData;
  const stage = stageFor(model);
  let looks: LookTools | undefined;
  if (stage) {
    const readout = readoutFor(model);
    stage.onBar((bar) => readout.show(bar));
    looks = lookTools(model, stage, (path) => readout.follow(path));
    easel.append(viewTools(stage), stage.root, readout.root, looks.root);
    document.body.classList.add("turning");
  }
  listFor(model, stage, looks);
}

start();
