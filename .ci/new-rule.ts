// Starts a rule: `npm run new-rule -- bar.example` writes its module, test, planted fault, page and two frames from .ci/new-rule, then the lists and
// pages that name all rules. What it writes passes every check as it stands; the judgement in it is there to be replaced.
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";

/** Words of small letters with single hyphens: `<thing>.<condition>`. */
const ID = /^[a-z]+(?:-[a-z]+)*\.[a-z]+(?:-[a-z]+)*$/;

function filesOf(id: string): Readonly<Record<string, string>> {
  return {
    [`src/rules/${id}.ts`]: "rule.ts.txt",
    [`tests/rules/${id}.test.ts`]: "test.ts.txt",
    [`tests/defects/faults/${id}.ts`]: "planted.ts.txt",
    [`docs/rules/${id}.md`]: "page.md.txt",
    [`docs/rules/${id}.fault.frame.json`]: "fault.frame.json.txt",
    [`docs/rules/${id}.sound.frame.json`]: "sound.frame.json.txt",
  };
}

/** Why no rule can be started under these words; undefined when one can. */
async function refusal([id, ...more]: readonly string[]): Promise<string | undefined> {
  if (id === undefined || more.length > 0) return "say one id: npm run new-rule -- bar.example";
  if (!ID.test(id))
    return `"${id}" is no id: write <thing>.<condition> in small letters and hyphens, such as bar.example`;
  const taken = Object.keys(filesOf(id)).filter((path) => existsSync(path));
  if (taken.length > 0) return `${id} exists already: ${taken.join(", ")}`;
  const { builtInRules } = await import("../src/rules/index.generated.ts");
  const criterion = id.replace(".", "-");
  const holder = builtInRules.find((rule) => Object.values(rule.criteria).some(({ name }) => name === criterion));
  return holder
    ? `the criterion of ${id} would be called ${criterion}, as one of ${holder.id} is: choose another id`
    : undefined;
}

const words = process.argv.slice(2);
const why = await refusal(words);
if (why !== undefined) {
  console.error(why);
  process.exitCode = 2;
} else {
  const [id = ""] = words;
  const files = filesOf(id);
  for (const [path, template] of Object.entries(files)) {
    const text = readFileSync(`.ci/new-rule/${template}`, "utf8");
    writeFileSync(path, text.replaceAll("RULE_ID", id).replaceAll("CRITERION", id.replace(".", "-")));
  }
  for (const generator of ["generate-index", "generate-docs"])
    execFileSync(process.execPath, ["--import", "tsx", `.ci/${generator}.ts`], { stdio: "inherit" });
  console.log(`${id} is started:
${Object.keys(files)
  .map((path) => `  ${path}`)
  .join("\n")}
The lists and pages that name all rules are made anew. It passes as it stands; now make it yours:
  1. its facts, criterion and messages in src/rules/${id}.ts, an outside value first in its test
  2. its page, and the two frames beside it
  3. the slips it is there for in tests/defects/faults/${id}.ts: npm run bench:defects -- ${id}
  4. npm run generate && npx vitest run tests/rules/${id}.test.ts tests/docs`);
}
