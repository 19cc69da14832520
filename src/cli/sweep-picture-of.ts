import { toolSweepPicture } from "../drawing/tool-sweep-picture.ts";
import { toolScene } from "../facts/tool-scene.ts";
import { mostInTheWay, serves } from "../facts/tool-trial.ts";
import { reachWords, wayWords } from "../report/reach/forms.ts";
import type { ReachSheet } from "../report/reach/reach-sheet.ts";

/** The picture of the tool chosen for the first screw of a sheet; undefined where no tool fits it. */
export function sweepPictureOf({ list, units }: ReachSheet): string | undefined {
  const room = list[0]?.room;
  const best = room?.best;
  if (!room || !best) return undefined;
  const found = reachWords({ trial: best, serves: serves(best), inTheWay: mostInTheWay(best)?.id }, units);
  return toolSweepPicture(room, best, toolScene(room, best), {
    title: `${room.screw.ref.id}: ${wayWords(best)}`,
    lines: [found, "tinted: free for the handle; grey: in its heights; pale: below; dashed: where it is put in"],
  });
}
