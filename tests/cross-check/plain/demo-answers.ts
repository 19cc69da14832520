import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { bodies } from "../../../src/facts/bodies.ts";
import { factOf } from "../../../src/facts/fact.ts";
import { footing } from "../../../src/facts/footing.ts";
import { massedModel } from "../../../src/facts/massed-model.ts";
import { panelShares } from "../../../src/facts/panel-shares.ts";
import { response, type View } from "../../../src/facts/response.ts";
import { solverModel } from "../../../src/facts/solver-model.ts";
import { structure } from "../../../src/facts/structure.ts";
import { sways } from "../../../src/facts/sway.ts";
import { prepareFrame } from "../../../src/mechanics/frame.ts";
import { sag } from "../../../src/mechanics/member/sag.ts";
import { naturalModes } from "../../../src/mechanics/stability/frequency.ts";
import type { Frame } from "../../../src/model/frame.ts";
import { readFrame } from "../../../src/model/read-frame.ts";
import { builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import type { Asked } from "./asked.ts";

/** What is read of a demo frame, typical joints: N, m, Hz. */
export interface DemoAnswers {
  /** What each foot bears, by case. */
  readonly pushes: Readonly<Record<string, readonly number[]>>;
  readonly sags: Readonly<Record<string, number>>;
  /** Along x and y. */
  readonly sways: readonly number[];
  readonly frequency?: number;
}

export const textOf = (id: string): string =>
  readFileSync(fileURLToPath(new URL(`../../../docs/demo/${id}.frame.json`, import.meta.url)), "utf8");

function frameOf(id: string): Frame {
  const bytes = new TextEncoder().encode(textOf(id));
  const { frame } = readFrame({ file: `${id}.frame.json`, bytes, stock: builtinStock() });
  if (!frame) throw new Error(`${id} cannot be read`);
  return frame;
}

function frequencyOf(frame: Frame): number {
  const [known, all] = [factOf(structure, frame), factOf(bodies, frame)];
  const bare = solverModel(known, all, factOf(footing, frame), frame.stock, "typical", "held", []);
  const { model } = massedModel(frame, known, all, factOf(panelShares, frame), bare);
  const found = naturalModes(prepareFrame(model), 1);
  return found.kind === "modes" ? (found.modes[0]?.frequency ?? Number.NaN) : Number.NaN;
}

/** What the facts of a frame say, as rules read them. */
export function factAnswers({ id, cases, frequency }: Asked): DemoAnswers {
  const frame = frameOf(id);
  const found = factOf(response, frame);
  if (found.kind !== "solved") throw new Error(`${id} is not solved`);
  const viewOf = (name: string): View => {
    const view = found.views.find(
      ({ bound, combination }) => bound === "typical" && combination.name === `self-weight + ${name}`,
    );
    if (!view) throw new Error(`${id} has no ${name}`);
    return view;
  };
  const feet = factOf(footing, frame);
  const pushes = Object.fromEntries(
    Object.keys(cases).map((name) => [name, feet.map((_, i) => viewOf(name).reaction(i).force[2])]),
  );
  const sags = Object.entries(cases).flatMap(([name, bars]) =>
    Object.entries(bars).map(([bar, ends]) => {
      const moved = viewOf(name).deflections(bar);
      if (!moved) throw new Error(`${bar} does not move`);
      // Stations run from the cut end; the bars asked about between places start where they are drawn.
      const [from, to] = ends ?? [0, moved.y.breaks.at(-1) ?? 0];
      return [`${bar} under ${name}`, Math.abs(sag(moved, from, to).value)] as const;
    }),
  );
  const swaying = factOf(sways, frame).filter(({ view }) => view.bound === "typical");
  return {
    pushes,
    sags: Object.fromEntries(sags),
    // A frame that is light while it is empty is pushed by less; laden it takes the whole push.
    sways: [0, 1].map((axis) => Math.max(...swaying.filter((sway) => sway.axis === axis).map(({ amount }) => amount))),
    ...(frequency ? { frequency: frequencyOf(frame) } : {}),
  };
}
