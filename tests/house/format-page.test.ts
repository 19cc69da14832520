import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { readConcessions, readHouse } from "../../src/house/read-house.ts";

const page = readFileSync("docs/house-format.md", "utf8");

function block(kind: string): Uint8Array {
  const [, text = ""] = new RegExp(`^\`\`\`json ${kind}\\n([\\s\\S]*?)^\`\`\`$`, "m").exec(page) ?? [];
  return new TextEncoder().encode(text);
}

it("shows a house file that is read without a problem", () => {
  expect(readHouse("page", block("house"))).not.toHaveProperty("problems");
});

it("shows a concessions file that is read without a problem", () => {
  expect(readConcessions("page", block("concessions"))).toMatchObject({
    concessions: [{ concession: { rule: "joint.gap", until: "2027-03-31" } }],
  });
});
