import { toolSweepPicture } from "../../drawing/tool-sweep-picture.ts";
import type { ToolRoom } from "../../facts/tool-room.ts";
import { toolScene } from "../../facts/tool-scene.ts";
import { mostInTheWay, serves, type Trial, tryWay } from "../../facts/tool-trial.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";
import { handWords, reachWords, wayWords } from "./forms.ts";

/** The best tool on a screw, or the one named by `wayWords`; undefined where no tool fits it. */
export function trialOf(room: ToolRoom, named?: string): Trial | undefined {
  const way = room.ways.find((one) => wayWords({ way: one }) === named);
  return way && way !== room.best?.way ? tryWay(way, room.socket, room.near) : room.best;
}

/** The picture of the best tool on a screw, or of the one named by `wayWords`, with its free and blocked turn; undefined where no tool fits it. */
export function sweepPicture(room: ToolRoom, units: UnitSystem, named?: string): string | undefined {
  const best = trialOf(room, named);
  if (!best) return undefined;
  const line = { trial: best, serves: serves(best), inTheWay: mostInTheWay(best)?.id, hand: undefined };
  const found = reachWords(line, units);
  const scene = toolScene(room, best);
  const { hand } = scene;
  return toolSweepPicture(room, best, scene, {
    title: `${room.screw.ref.id}: ${wayWords(best)}`,
    lines: [
      found,
      "tinted: free for the handle; grey: in its heights; pale: below; dashed: where it is put in",
      ...(hand ? [`dotted: room for the hand, ${handWords(2 * hand.halfWidth, units)}`] : []),
    ],
  });
}
