import fc from "fast-check";
import { expect, test } from "vitest";
import { bench } from "./bench-text.ts";
import { read } from "./read.ts";

type Step = string | number;

/** Where every value of a file stands. */
function pathsOf(value: unknown): readonly (readonly Step[])[] {
  const found: Step[][] = [];
  const pending: { readonly at: Step[]; readonly value: unknown }[] = [{ at: [], value }];
  for (let one = pending.pop(); one !== undefined; one = pending.pop()) {
    found.push(one.at);
    if (typeof one.value !== "object" || one.value === null) continue;
    for (const [key, inner] of Object.entries(one.value)) {
      pending.push({ at: [...one.at, Array.isArray(one.value) ? Number(key) : key], value: inner });
    }
  }
  return found;
}

/** A copy of the file with the value at a path replaced, or taken out where the new one is undefined. */
function changed(value: unknown, path: readonly Step[], to: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return to;
  if (Array.isArray(value)) {
    const list: unknown[] = value.map((one, index) => (index === step ? changed(one, rest, to) : one));
    return list.filter((one) => one !== undefined);
  }
  return Object.fromEntries(
    Object.entries(value ?? {}).map(([key, one]) => [key, key === step ? changed(one, rest, to) : one]),
  );
}

const sound: unknown = JSON.parse(bench);
const paths = pathsOf(sound);
const ids = [
  "leg-1",
  "rail-2",
  "top",
  "door",
  "side",
  "vice",
  "rail-2-up1",
  "leg-1.foot",
  "none",
  "",
  "__proto__",
  "arm/to",
];
const strange = fc.oneof(
  fc.constantFrom(...ids, "+z", "below", "inner", "all", "free", "12 in", "1:100", "middle", "both", "1e400"),
  fc.constantFrom(0, -1, 1, 0.5, 1e-9, 1e9, 1e300, -1e300, 5e-324),
  fc.constantFrom(null, true, false, [], {}, [0, 0, 0], [1, 2], undefined),
  fc.jsonValue({ maxDepth: 2 }),
);

test("whatever is changed in a frame, reading it ends in a frame or in an error with a place, never in a throw", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(), strange), { minLength: 1, maxLength: 3 }), (changes) => {
      let value = sound;
      for (const [at, to] of changes) value = changed(value, paths[at % paths.length] ?? [], to);
      const text = JSON.stringify(value ?? null, null, 1);
      const { frame, problems } = read(text);
      // A name that stands in the file is quoted as it is, also where it is one of the words that no message may make up.
      const made = (words: string): string =>
        words.replace(/"[^"]*"/g, (quoted) => (text.includes(quoted) ? "" : quoted));
      const refused = problems.some((problem) => problem.weight === "error");
      expect(frame === undefined).toBe(refused);
      for (const { place, found, expected } of problems) {
        expect(place.line).toBeGreaterThan(0);
        expect(made(`${found}${expected}`)).not.toMatch(/undefined|NaN|\[object|\{line\}/);
      }
    }),
    { numRuns: 1000 },
  );
});

test("a part that is taken out is missed wherever it is referred to", () => {
  const missed = (path: readonly Step[]) =>
    read(changed(sound, path, undefined) as object).problems.map(({ place }) => place.pointer);
  expect(missed(["bars", 1])).toEqual(["/pivots/0/bars/0", "/stands/1/bars/0"]);
  expect(missed(["panels", 0])).toEqual(["/masses/0/on/0", "/loads/0/on"]);
  expect(missed(["stands", 0])).toEqual(["/groups/0/parts/1"]);
  expect(missed(["copies", 0])).toEqual([]);
});
