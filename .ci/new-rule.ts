// Starts a page for a rule: `npm run new-rule -- bar.example` writes docs/rules/bar.example.md with its sections, to be filled in.
import { existsSync, writeFileSync } from "node:fs";

const [id = ""] = process.argv.slice(2);
const path = `docs/rules/${id}.md`;
if (!/^[a-z]+\.[a-z-]+$/.test(id) || existsSync(path)) {
  console.error(`needs the id of a rule that has no page, such as bar.example; got "${id}"`);
  process.exitCode = 2;
} else {
  const sections = ["Why it matters on the floor", "How it is computed", "Limits of validity", "Frames"];
  const body = sections.map((section) => `## ${section}\n`).join("\n");
  writeFileSync(path, `# ${id}\n\n<!-- generated -->\n<!-- /generated -->\n\n${body}`);
  console.log(`${path} is started; next to it go ${id}.fault.frame.json and ${id}.sound.frame.json`);
}
