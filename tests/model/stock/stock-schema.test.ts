import { expect, test } from "vitest";
import schema from "../../../schema/stock.schema.json" with { type: "json" };
import { whole } from "../../../src/model/generated/stock-check.generated.js";

interface Node {
  readonly description?: string;
  readonly $ref?: string;
  readonly const?: unknown;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly examples?: readonly unknown[];
}

const definitions = schema.$defs as Readonly<Record<string, unknown>> as Readonly<Record<string, Node>>;

function described(node: Node): boolean {
  if (node.description !== undefined || node.const !== undefined) return true;
  return node.$ref !== undefined && definitions[node.$ref.replace("#/$defs/", "")]?.description !== undefined;
}

function undescribed(at: string, node: Node): readonly string[] {
  return Object.entries(node.properties ?? {}).flatMap(([key, child]) => [
    ...(described(child) ? [] : [`${at}/${key}`]),
    ...undescribed(`${at}/${key}`, child),
  ]);
}

test("every key and definition says what it is, for an editor to show", () => {
  expect(undescribed("", schema as Node)).toEqual([]);
  expect(Object.entries(definitions).flatMap(([name, node]) => undescribed(name, node))).toEqual([]);
  expect(Object.keys(definitions).filter((name) => definitions[name]?.description === undefined)).toEqual([]);
});

/** The list of a file that holds what a definition describes. */
const LISTS: Readonly<Record<string, string>> = {
  material: "materials",
  generatedProfile: "profiles",
  nut: "nuts",
  cap: "caps",
};

test("the examples of whole parts are valid", () => {
  for (const [name, list] of Object.entries(LISTS)) {
    const examples = definitions[name]?.examples ?? [];
    expect(examples.length, name).toBeGreaterThan(0);
    expect(whole({ format: 1, units: "mm-N-kg", title: "t", [list]: examples }), JSON.stringify(whole.errors)).toBe(
      true,
    );
  }
});

test.each([
  ["an unknown key", { profils: [] }],
  ["another format", { format: 2 }],
  ["other units", { units: "cm-kgf" }],
  ["a screw family without a place for the length", { screws: [{ name: "M8" }] }],
  ["a profile of no kind", { profiles: [{ name: "a", series: "40-8", columns: 1, rows: 1 }] }],
  ["nine columns", { profiles: [{ kind: "generated", name: "a", series: "40-8", columns: 9, rows: 1 }] }],
  [
    "a polygon of two corners",
    {
      profiles: [
        {
          kind: "drawn",
          outline: [
            [0, 0],
            [1, 1],
          ],
        },
      ],
    },
  ],
])("%s is refused", (_what, change) => {
  const sound = { format: 1, units: "mm-N-kg", title: "t" };
  expect(whole(sound)).toBe(true);
  expect(whole({ ...sound, ...change })).toBe(false);
});
