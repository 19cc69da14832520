import { type Command, Option } from "commander";
import { atomicFile } from "../../host/atomic-file.ts";
import { nearest } from "../../model/text/nearest.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-code.ts";
import { fileName } from "../file-name.ts";
import { checkTarget } from "../output-target.ts";
import { problemWords } from "../problem-words.ts";
import { Unusable } from "../unusable.ts";

interface ReachOptions {
  readonly as: "text" | "json";
  readonly house?: string;
  readonly picture?: string;
}

/** `trysquare reach`: which tool gets to a screw, how far it turns, and a picture of it. */
export function registerReach(program: Command, context: Context): void {
  program
    .command("reach")
    .summary("show which tools get to a screw and how far they turn, and draw it")
    .description(
      "Tries every tool in stock on the screws of a frame, among the parts that stand when each is tightened: the free length in front of it, the free arc of the handle, and where nothing does the least move along its slot that helps. With a screw named, every way to hold every tool that fits; without, the tool for each screw.",
    )
    .argument("<file>", "a frame file")
    .argument("[screw]", 'a screw, such as "rail-1.from/1/a1"')
    .addOption(new Option("--as <form>", "form of the output").choices(["text", "json"]).default("text"))
    .option("--picture <file>", "draw the tool on the screw into this SVG file", fileName("--picture"))
    .option("--house <file>", "take stock and room for hands from this house file instead of the nearest")
    .action(async (path: string, screw: string | undefined, { as, picture, house }: ReachOptions) => {
      const [{ openFrame }, { houseForFrame }, { reachSheetOf }, forms] = await Promise.all([
        import("../../host/open-frame.ts"),
        import("../house-for-frame.ts"),
        import("../reach-sheet-of.ts"),
        import("../../report/reach/forms.ts"),
      ]);
      const { stock, settings } = await houseForFrame(context, path, house);
      const { file, frame, problems } = await openFrame(path, stock);
      for (const problem of problems) context.tell(problemWords(problem));
      if (!frame) {
        context.exit(EXIT.incomplete);
        return;
      }
      if (picture !== undefined && screw === undefined)
        throw new Unusable("--picture draws one screw: name it after the file");
      await checkTarget("--picture", picture, [{ path, name: file }]);
      const sheet = reachSheetOf(file, frame, screw, settings);
      if ("screws" in sheet) {
        const near = nearest(screw ?? "", sheet.screws);
        throw new Unusable(`${file} has no screw "${screw}"${near === undefined ? "" : `; did you mean ${near}?`}`);
      }
      if (picture !== undefined) {
        const { sweepPicture } = await import("../../report/reach/sweep-picture.ts");
        const room = sheet.list[0]?.room;
        const drawn = room && sweepPicture(room, sheet.units);
        if (drawn === undefined) throw new Unusable(`no tool in stock fits ${screw}: there is nothing to draw`);
        const sink = atomicFile(picture);
        await sink.write(drawn);
        await sink.finish();
      }
      for (const chunk of (as === "json" ? forms.reachJson : forms.reachText)(sheet)) await context.stdout.write(chunk);
    });
}
