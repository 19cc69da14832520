import { describe, expect, test } from "vitest";
import type { ReferenceCheck } from "../references/load-reference.ts";
import { loadReference, referenceCheck } from "../references/load-reference.ts";

export type Answer = number | Readonly<Record<string, number | string>>;

/** Reads the numeric inputs of a check by name. */
export const input =
  (check: ReferenceCheck) =>
  (name: string): number => {
    const value = check.inputs[name]?.value;
    if (typeof value !== "number") throw new Error(`${check.id} has no number ${name}`);
    return value;
  };

export type Runner = (check: ReferenceCheck, get: (name: string) => number) => Answer;

function close(name: string, actual: number | string | undefined, expected: unknown, check: ReferenceCheck): void {
  if (typeof expected !== "number") {
    expect(actual, name).toBe(expected);
    return;
  }
  const { kind, value } = check.tolerance;
  const allowed = kind === "rel" ? value * Math.abs(expected) : kind === "abs" ? value : 0;
  expect(typeof actual, name).toBe("number");
  expect(Math.abs(Number(actual) - expected), `${name}: ${actual} against ${expected}`).toBeLessThanOrEqual(allowed);
}

/** Says in the title where a value comes from, and warns of one that nobody has seen or worked out again. */
function title(check: ReferenceCheck): string {
  const doubt =
    check.provenance === "published-from-memory" && check.rederived !== true ? " [UNVERIFIED, from memory]" : "";
  return `${check.id}: ${check.quantity} [${check.source}; ${check.provenance}]${doubt}`;
}

/**
 * One test for every check of a family: by its runner, or listed with a reason why it is not run here.
 * A check that is neither fails, so none is dropped silently. `partly` names, by check, expected values that nothing in the tool
 * answers to; at least one value of such a check is still compared.
 */
export function runFamily(
  family: string,
  runners: Readonly<Record<string, Runner>>,
  elsewhere: Readonly<Record<string, string>>,
  partly: Readonly<Record<string, readonly string[]>> = {},
): void {
  describe(`reference values: ${family}`, () => {
    for (const check of loadReference(family).checks) {
      const runner = runners[check.id];
      if (!runner) {
        test(`${check.id} is listed with a reason why it is not run here`, () => {
          expect(elsewhere[check.id], `${check.id} has neither a test nor a reason`).toBeTruthy();
        });
        continue;
      }
      test(title(check), () => {
        const answer = runner(check, input(check));
        const expected = check.expected.value;
        if (typeof expected === "object" && expected !== null) {
          if (typeof answer !== "object") throw new Error(`${check.id} expects several values`);
          const left = partly[check.id] ?? [];
          const asked = Object.entries(expected).filter(([name]) => !left.includes(name));
          expect(asked.length, "values left to compare").toBeGreaterThan(0);
          for (const [name, value] of asked) close(name, answer[name], value, check);
        } else {
          if (typeof answer === "object") throw new Error(`${check.id} expects one value`);
          close(check.id, answer, expected, check);
        }
      });
    }
    test("no runner or reason is left over from a check that is gone", () => {
      const known = new Set(loadReference(family).checks.map(({ id }) => id));
      for (const id of [...Object.keys(runners), ...Object.keys(elsewhere)]) expect(known.has(id), id).toBe(true);
    });
    test("no check is both run and listed, and only values of checks that are run are left out", () => {
      for (const id of Object.keys(elsewhere)) expect(runners[id], id).toBeUndefined();
      for (const [id, names] of Object.entries(partly)) {
        expect(runners[id], id).toBeDefined();
        const { value } = referenceCheck(family, id).expected;
        for (const name of names) expect(value, id).toHaveProperty(name);
      }
    });
  });
}
