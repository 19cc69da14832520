import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type RuleThread, startRuleThread } from "../../src/host/rule-thread/rule-thread.ts";
import { noSettings } from "../../src/house/settings.ts";
import type { Report } from "../../src/inspection/report.ts";
import { temporaryFolder } from "./temporary-folder.ts";

const folder = temporaryFolder();
const settings = noSettings("2027-03-31");
const SHORT = 2000; // ms; a busy machine takes long over starting a thread
let entry: URL;

beforeAll(async () => {
  await build({
    entryPoints: ["tests/cli/fake-worker.ts"],
    outfile: folder.at("worker.mjs"),
    bundle: true,
    format: "esm",
    platform: "node",
    logLevel: "error",
  });
  entry = pathToFileURL(folder.at("worker.mjs"));
});
afterAll(() => folder.remove());

function ruleModule(name: string, inspect: string, change = ""): { readonly path: string; readonly name: string } {
  const text = `export const rule = { api: 1, id: "acme:joint.${name}", title: "t", group: "joints", level: "hold", basis: ["own"],
    needs: {}, criteria: {}, messages: { m: { text: "x" } }, ${change}
    *inspect() { ${inspect} } };`;
  return { path: folder.write(`${name}.mjs`, text), name: `${name}.mjs` };
}

const good = (): ReturnType<typeof ruleModule> =>
  ruleModule("gap", 'yield { kind: "stated", at: { kind: "joint", id: "rail-1.from" } };');

async function inspectWith(
  modules: readonly { path: string; name: string }[],
  bytes = "{}",
): Promise<{ report: Report; again: Report }> {
  let thread: RuleThread | undefined;
  try {
    thread = await startRuleThread(entry, modules, SHORT);
    const frame = { file: "a.frame.json", bytes: new TextEncoder().encode(bytes), stock: [], settings };
    const report = await thread.inspect(frame);
    return { report, again: await thread.inspect({ ...frame, file: "b.frame.json" }) };
  } finally {
    await thread?.end();
  }
}

describe("rules of a team", () => {
  it("run after the built-in ones and are listed with them", async () => {
    const thread = await startRuleThread(entry, [good()], SHORT);
    expect(thread.cards.map((card) => card.id)).toEqual(["bar.sags", "acme:joint.gap"]);
    await thread.end();
    const { report } = await inspectWith([good()]);
    expect(report.findings.map((finding) => finding.rule)).toEqual(["acme:joint.gap"]);
    expect(report.complete).toBe(true);
  });

  it.each([
    ["throws", "throw new Error('no such bar');", "no such bar"],
    ["never returns", "for (;;) {}", "it did not come to an end within 2 s"],
    ["ends the process", "process.exit(0);", "it ended the thread it ran in"],
  ])("that %s become failures by name; all else is as without them", async (_, inspect, message) => {
    const alone = await inspectWith([good()], '{"findings":2}');
    const beside = await inspectWith([ruleModule("bad", inspect), good()], '{"findings":2}');
    for (const [one, other] of [
      [alone.report, beside.report],
      [alone.again, beside.again],
    ] as const) {
      expect(other.findings).toEqual(one.findings);
      expect(other.complete).toBe(false);
      expect(other.failures).toEqual([{ rule: "acme:joint.bad", message }]);
    }
  });

  it("that print are failures, and what they print goes nowhere", async () => {
    const { report, again } = await inspectWith([
      ruleModule("loud", 'console.log("##[error]"); process.stderr.write("x");'),
      good(),
    ]);
    expect(report.failures).toEqual([
      { rule: "acme:joint.loud", message: "it printed; a rule may only say judgements" },
    ]);
    expect(again.failures).toHaveLength(1);
  });

  it("stop an overrun within a second of its budget", async () => {
    const begun = performance.now();
    const thread = await startRuleThread(entry, [ruleModule("slow", "for (;;) {}")], SHORT);
    const started = performance.now();
    await thread.inspect({ file: "a", bytes: new TextEncoder().encode("{}"), stock: [], settings });
    // A second thread has to start for the inspection without the rule.
    expect(performance.now() - started).toBeLessThan(SHORT + 1000 + (started - begun));
    await thread.end();
  });

  it("leave a crash of the engine to the frame it happened on", async () => {
    const { report } = await inspectWith([good()], '{"crash":"out of steel"}');
    expect(report).toMatchObject({ verdict: "unread", complete: false, failures: [{ message: "out of steel" }] });
  });
});

describe("a module that holds no proper rules", () => {
  it.each([
    [
      "has another interface version",
      () => ruleModule("v2", "", "api: 2,"),
      "made for version 2 of the rule interface",
    ],
    ["has an id without a prefix", () => ruleModule("x", "", 'id: "bar.sags",'), "like acme:joint.gusset-gap"],
    ["has an unknown level", () => ruleModule("x", "", 'level: "error",'), "levels are note, hold and reject"],
    ["has no messages", () => ruleModule("x", "", "messages: {},"), "has no messages"],
    ["needs what is no fact", () => ruleModule("x", "", "needs: { a: 1 },"), "needs something that is no fact"],
    [
      "exports no rule",
      () => ({ path: folder.write("none.mjs", "export const a = 1;"), name: "none.mjs" }),
      "exports no rule",
    ],
    [
      "throws",
      () => ({ path: folder.write("throws.mjs", "throw new Error('broken')"), name: "throws.mjs" }),
      "throws.mjs cannot be loaded: broken",
    ],
    [
      "never finishes loading",
      () => ({ path: folder.write("hangs.mjs", "for (;;) {}"), name: "hangs.mjs" }),
      "mjs cannot be loaded: it did not come to an end",
    ],
    [
      "is not there",
      () => ({ path: folder.at("gone.mjs"), name: "gone.mjs" }),
      "gone.mjs cannot be loaded: it, or a module it imports, does not exist",
    ],
  ])("is refused when it %s", async (_, make, words) => {
    await expect(startRuleThread(entry, [make()], SHORT)).rejects.toThrow(words);
  });

  it("is refused when two rules have one id", async () => {
    const twin = {
      path: folder.write(
        "twin.mjs",
        'export * from "./gap.mjs"; export const other = { ...(await import("./gap.mjs")).rule };',
      ),
      name: "twin.mjs",
    };
    good();
    await expect(startRuleThread(entry, [twin], SHORT)).rejects.toThrow("two rules have the id acme:joint.gap");
  });
});
