// Plants every fault of tests/defects/faults in every sound frame it names, just beyond the limit and far beyond, and prints for each
// rule how many were found and how many findings followed from none: `npm run bench:defects`, or with words of fault names. Whole, it
// also inspects what `trysquare start` draws at every end of its ranges, which is to be without findings.
import { fork } from "node:child_process";
import { KINDS } from "../src/cli/start/kinds.ts";
import { frameText as startedText } from "../src/cli/start/layout.ts";
import { wishOf } from "../src/cli/start/order.ts";
import { builtInRules } from "../src/rules/index.generated.ts";
import { ALL_SIZES } from "../tests/cli/start-sizes.ts";
import { frameText, inspectFrame, SOUND_FRAMES } from "../tests/defects/inspect-frame.ts";
import { allFaults, type Trial, trialsOf, unplanted } from "../tests/defects/plant.ts";

const PROCESSES = 2;

interface Task {
  readonly fault: string;
  readonly frame: string;
}

const sound = (frame: string, text: string): Trial["strange"] =>
  inspectFrame(frame, text).findings.map((finding) => ({
    rule: finding.rule,
    words: `${finding.rule}/${finding.key} at ${finding.at.id}: ${finding.text}`,
  }));

/** The sound frames, and where all is asked also what `start` draws at every end of its ranges, by name. */
function soundTexts(all: boolean): readonly (readonly [string, string])[] {
  const drawn = all
    ? ALL_SIZES.map((order) => {
        const { kind, usual } = KINDS[order.name];
        const named = `${order.name} of ${order.profile}, ${order.length} x ${order.depth} x ${order.height}`;
        return [named, startedText(order.units, kind.draw(wishOf(kind, usual, order)))] as const;
      })
    : [];
  return [...SOUND_FRAMES.map((name) => [name, frameText(name)] as const), ...drawn];
}

async function work(): Promise<void> {
  const faults = new Map((await allFaults()).map((named) => [named.name, named]));
  process.on("message", (task: Task) => {
    const named = faults.get(task.fault);
    process.send?.(named ? trialsOf(named, task.frame) : []);
  });
  process.send?.([]);
}

function runAll(tasks: readonly Task[]): Promise<readonly Trial[]> {
  const trials: Trial[] = [];
  let next = 0;
  const one = (): Promise<void> =>
    new Promise((resolve, reject) => {
      const child = fork(import.meta.filename, ["--work"], { execArgv: ["--import", "tsx"] });
      child.on("error", reject);
      child.on("exit", (code) =>
        code === 0 || code === null ? resolve() : reject(new Error(`a process ended with ${code}`)),
      );
      child.on("message", (done: Trial[]) => {
        trials.push(...done);
        const task = tasks[next];
        next += 1;
        if (task) child.send(task);
        else child.disconnect();
      });
    });
  return Promise.all(Array.from({ length: PROCESSES }, one)).then(() => trials);
}

async function main(words: readonly string[]): Promise<void> {
  const start = Date.now();
  const faults = (await allFaults()).filter(
    ({ name }) => words.length === 0 || words.some((word) => name.includes(word)),
  );
  const tasks = faults.flatMap(({ name, fault }) => Object.keys(fault.spots).map((frame) => ({ fault: name, frame })));
  const trials = await runAll(tasks);
  const texts = soundTexts(words.length === 0);
  const nagged = texts.flatMap(([frame, text]) => sound(frame, text).map((one) => ({ frame, ...one })));
  const rules = [
    ...new Set([
      ...trials.map(({ rule }) => rule),
      ...trials.flatMap(({ strange }) => strange.map((s) => s.rule)),
      ...nagged.map(({ rule }) => rule),
    ]),
  ].sort();
  console.log("rule                 planted  found  recall  false alarms");
  for (const rule of rules) {
    const own = trials.filter((trial) => trial.rule === rule);
    const found = own.filter((trial) => trial.found && trial.trouble === undefined).length;
    const strange = trials.flatMap((trial) => trial.strange).filter((one) => one.rule === rule).length;
    const alarms = strange + nagged.filter((one) => one.rule === rule).length;
    const recall = own.length === 0 ? "" : `${((100 * found) / own.length).toFixed(0)} %`;
    console.log(
      `${rule.padEnd(20)} ${String(own.length).padStart(7)} ${String(found).padStart(6)} ${recall.padStart(7)} ${String(alarms).padStart(13)}`,
    );
  }
  const missed = trials.filter((trial) => !trial.found || trial.trouble !== undefined);
  for (const { fault, frame, size, trouble } of missed)
    console.log(`MISSED ${fault} in ${frame}, ${size}${trouble ? `: ${trouble}` : ""}`);
  for (const { fault, frame, size, strange } of trials)
    for (const { words: said } of strange) console.log(`ALARM ${fault} in ${frame}, ${size}: ${said}`);
  for (const { frame, words: said } of nagged) console.log(`ALARM ${frame} as it is: ${said}`);
  const alarms = trials.reduce((sum, { strange }) => sum + strange.length, nagged.length);
  console.log(
    `${trials.length} faults planted in ${SOUND_FRAMES.length} of ${texts.length} sound frames: ${trials.length - missed.length} found, ${alarms} false alarms; ${((Date.now() - start) / 1000).toFixed(0)} s`,
  );
  const bare =
    words.length > 0
      ? []
      : unplanted(
          builtInRules.map(({ id }) => id),
          faults,
        );
  for (const rule of bare) console.log(`NO FAULT of ${rule} is planted: add tests/defects/faults/${rule}.ts`);
  if (missed.length + alarms + bare.length > 0) process.exitCode = 1;
}

const [first, ...rest] = process.argv.slice(2);
await (first === "--work" ? work() : main([...(first === undefined ? [] : [first]), ...rest]));
