import { type Command, Option } from "commander";
import { atomicFile } from "../../host/atomic-file.ts";
import { nameOf } from "../../host/frame-files.ts";
import { readBytes } from "../../host/read-bytes.ts";
import { kinOf } from "../../model/text/kin.ts";
import { nearest } from "../../model/text/nearest.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";
import type { Context } from "../context.ts";
import { fileName } from "../file-name.ts";
import { checkTarget } from "../output-target.ts";
import { problemWords } from "../problem-words.ts";
import { Unusable } from "../unusable.ts";

interface SectionOptions {
  readonly as: "text" | "json";
  readonly units: "mm" | "in";
  readonly picture?: string;
  readonly stock?: string;
}

const SYSTEMS: Readonly<Record<SectionOptions["units"], UnitSystem>> = { mm: "mm-N-kg", in: "in-lbf-lb" };

/** Profiles that are named where none is near. */
const KIN_WORDS = 5;

/** `trysquare section`: what a profile's cross-section is worth, and a picture of it. */
export function registerSection(program: Command, context: Context): void {
  program
    .command("section")
    .summary("show the properties of a profile's cross-section, and draw it; list the profiles")
    .description(
      "Shows area, mass, second moments, moduli, torsion constant with its bounds, shear areas and shear centre of a profile, computed from its cross-section; and draws it. Without a name it lists the profiles in stock.",
    )
    .argument("[profile]", "name of a profile in stock")
    .addOption(new Option("--as <form>", "form of the output").choices(["text", "json"]).default("text"))
    .addOption(new Option("--units <unit>", "units of the text").choices(["mm", "in"]).default("mm"))
    .option("--stock <file>", "look into this stock file first")
    .option("--picture <file>", "draw the section into this SVG file", fileName("--picture"))
    .action(async (name: string | undefined, { as, units, picture, stock: extra }: SectionOptions) => {
      const [{ stockInForce }, { sectionOf }, forms] = await Promise.all([
        import("../../inspection/stock-in-force.ts"),
        import("../../facts/sections.ts"),
        import("../../report/section/forms.ts"),
      ]);
      const files = [];
      if (extra !== undefined) {
        const read = await readBytes(extra);
        if ("refused" in read) throw new Unusable(`${nameOf(extra)}: ${read.refused}`);
        files.push({ file: nameOf(extra), bytes: read.bytes });
      }
      const { stock, problems } = stockInForce(files);
      if (problems.some((problem) => problem.weight === "error"))
        throw new Unusable(problems.map(problemWords).join("\n"));
      if (name === undefined) {
        if (picture !== undefined) throw new Unusable("--picture needs the name of a profile to draw");
        const { profilesJson, profilesText } = await import("../../report/section/list.ts");
        const all = [...stock.profiles.values()];
        for (const chunk of as === "json" ? profilesJson(all) : profilesText(all, SYSTEMS[units]))
          await context.stdout.write(chunk);
        return;
      }
      const profile = stock.profiles.get(name);
      const material = profile && stock.materials.get(profile.material);
      if (!profile || !material) {
        const near = nearest(name, stock.profiles.keys());
        const kin = kinOf(name, stock.profiles.keys(), KIN_WORDS);
        const others = kin.length > 0 ? `there are ${kin.join(", ")}; ` : "";
        const mend = near === undefined ? `${others}\`trysquare section\` lists them all` : `did you mean ${near}?`;
        throw new Unusable(`there is no profile "${name}"; ${mend}`);
      }
      const sheet = { profile, material, section: sectionOf(profile), units: SYSTEMS[units] };
      if (picture !== undefined) {
        await checkTarget("--picture", picture, extra === undefined ? [] : [{ path: extra, name: nameOf(extra) }]);
        const { sectionPicture } = await import("../../drawing/section-picture.ts");
        const sink = atomicFile(picture);
        await sink.write(sectionPicture(profile, sheet.section, forms.outerSize(sheet)));
        await sink.finish();
      }
      for (const chunk of (as === "json" ? forms.sectionJson : forms.sectionText)(sheet))
        await context.stdout.write(chunk);
    });
}
