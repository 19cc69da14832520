import { buriedScrews } from "../facts/buried-screws.ts";
import { defineFact } from "../facts/fact.ts";
import { frameRef } from "../model/ref.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

/** What works screws loose, in words; undefined where nothing does. */
const shaking = defineFact<string | undefined>({
  id: "what-shakes-it",
  compute(_, frame) {
    if (frame.site.vibration !== "none") return "the vibration of the site";
    if (frame.stands.some((stand) => stand.hold === "rolling")) return "its rolling";
    const mass = frame.masses.find((one) => one.shakes !== undefined);
    return mass?.ref.id;
  },
});

export const rule = defineRule({
  id: "screw.buried",
  title: "Screws that may work loose can be reached when the frame is done",
  group: "access and build",
  level: "note",
  basis: ["common practice: torque is checked again after a day and after transport"],
  needs: { buriedScrews, shaking },
  criteria: {},
  messages: {
    buried: {
      text: "{screws:parts} have no lock and lie behind {cover:part} for good, and {shaking:word} may work them loose",
      advice: "give them a lock, turn them to another face, or put them where the part comes off",
    },
  },
  *inspect({ buriedScrews: burials, shaking: by }, _, say) {
    if (by === undefined) {
      yield notApplicable(frameRef, "nothing shakes it");
      return;
    }
    if (burials.length === 0) yield say.buried(frameRef, { screws: [], cover: frameRef, shaking: by }, true);
    for (const { cover, screws } of burials) yield say.buried(cover, { screws, cover, shaking: by }, false);
  },
});
