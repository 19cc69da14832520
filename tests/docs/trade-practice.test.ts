import { existsSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const page = readFileSync("docs/trade-practice.md", "utf8");
const rows = page
  .split("\n")
  .filter((line) => line.startsWith("| ") && !/^\| (practice|---) /.test(line))
  .map((line) => line.split(" | ").map((cell) => cell.replace(/^\| | \|$/g, "")));

/** Practices of building by subject, as many as the trade lists: how load goes down, cut ends, fasteners, room, panels, order, feet, cost. */
const PRACTICES = [10, 4, 10, 5, 5, 6, 5, 3];

it("the page of trade practice answers every practice, subject by subject", () => {
  const sections = page.split("\n## ").slice(1);
  const counts = sections.map(
    (section) => section.split("\n").filter((line) => /^\| (?!practice|---)/.test(line)).length,
  );
  expect(counts).toEqual(PRACTICES);
});

it.each(rows)("%s", (_, answer = "") => {
  const rules = [...answer.matchAll(/\(rules\/([a-z.-]+)\.md\)/g)].map(([, id = ""]) => id);
  for (const id of rules) expect(existsSync(`src/rules/${id}.ts`), id).toBe(true);
  const said = /`trysquare [a-z]+`|`"[a-z]+"`|out of scope|for the workshop/.test(answer);
  expect(rules.length > 0 || said, answer).toBe(true);
});
