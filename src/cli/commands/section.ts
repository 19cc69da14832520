import { type Command, Option } from "commander";
import { atomicFile } from "../../host/atomic-file.ts";
import { nameOf } from "../../host/frame-files.ts";
import { readBytes } from "../../host/read-bytes.ts";
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

/** `trysquare section`: what a profile's cross-section is worth, and a picture of it. */
export function registerSection(program: Command, context: Context): void {
  program
    .command("section")
    .summary("show the properties of a profile's cross-section, and draw it")
    .description(
      "Shows area, mass, second moments, moduli, torsion constant with its bounds, shear areas and shear centre of a profile, computed from its cross-section; and draws it.",
    )
    .argument("<profile>", "name of a profile in stock")
    .addOption(new Option("--as <form>", "form of the output").choices(["text", "json"]).default("text"))
    .addOption(new Option("--units <unit>", "units of the text").choices(["mm", "in"]).default("mm"))
    .option("--stock <file>", "look into this stock file first")
    .option("--picture <file>", "draw the section into this SVG file", fileName("--picture"))
    .action(async (name: string, { as, units, picture, stock: extra }: SectionOptions) => {
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
      const profile = stock.profiles.get(name);
      const material = profile && stock.materials.get(profile.material);
      if (!profile || !material) {
        const near = nearest(name, stock.profiles.keys());
        throw new Unusable(`there is no profile "${name}"${near === undefined ? "" : `; did you mean ${near}?`}`);
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
