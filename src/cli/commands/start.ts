import { type Command, Option } from "commander";
import { atomicFile } from "../../host/atomic-file.ts";
import { sameFile } from "../../host/same-file.ts";
import { sourceNamed } from "../../host/source-named.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";
import type { Context } from "../context.ts";
import { fileName } from "../file-name.ts";
import { profilesFor } from "../start/series.ts";
import { Unusable } from "../unusable.ts";

const UNIT_SYSTEMS: readonly UnitSystem[] = ["mm-N-kg", "in-lbf-lb"];

interface StartOptions {
  readonly units: UnitSystem;
  readonly profile?: string;
  readonly length?: string;
  readonly depth?: string;
  readonly height?: string;
  readonly to?: string;
}

/** `trysquare start`: a sound first frame to change from there. */
export function registerStart(program: Command, context: Context): void {
  program
    .command("start")
    .summary("write a first frame: a bench, guard, cart or rack of the size asked for")
    .description(
      "Writes a first frame that comes out accept, to change from there: a bench with a shelf, a guard with a door, a cart or a rack. Sizes are in the frame's units or with a unit of their own: length and depth over all, the height from the floor to the top of the top board of a bench, cart or rack, or of the bars of a guard. The handle of a cart stands higher: its height is that of its tray.",
    )
    .argument("<kind>", "bench, guard, cart or rack")
    .option("--length <size>", "along x")
    .option("--depth <size>", "along y")
    .option("--height <size>", "along z, from the floor to the top board or tray; of a guard to the top of its bars")
    .option(
      "--profile <name>",
      `${profilesFor("mm-N-kg").join(", ")}; with --units in-lbf-lb ${profilesFor("in-lbf-lb").join(", ")}; the smallest are too light for a guard, and some for a cart`,
    )
    .addOption(new Option("--units <system>", "what bare numbers mean").choices(UNIT_SYSTEMS).default("mm-N-kg"))
    .option("--to <file>", "put the frame into this new file", fileName("--to"))
    .action(async (word: string, options: StartOptions) => {
      const [{ isKindName, KINDS }, { wishOf }, { frameText }] = await Promise.all([
        import("../start/kinds.ts"),
        import("../start/order.ts"),
        import("../start/layout.ts"),
      ]);
      if (!isKindName(word))
        throw new Unusable(`start knows no "${word}"; it draws a ${Object.keys(KINDS).join(", ")}`);
      const { kind, usual } = KINDS[word];
      const text = frameText(options.units, kind.draw(wishOf(kind, usual, options)));
      const { to } = options;
      if (to === undefined) {
        await context.stdout.write(text);
        return;
      }
      const named = await sourceNamed(to);
      if (named !== undefined && named !== "frame")
        throw new Unusable(
          `--to ${to} is the name of a ${named} file; name it ${to.replace(/[^.]*\.json$/i, "frame.json")}`,
        );
      if (await sameFile(to, [{ path: to }])) throw new Unusable(`${to} is there already; start replaces no file`);
      const file = atomicFile(to);
      await file.write(text);
      await file.finish();
    });
}
