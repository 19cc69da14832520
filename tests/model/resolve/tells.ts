import { expect, test } from "vitest";
import { edited } from "./bench-text.ts";
import { read, told } from "./read.ts";

/** What is wrong, the piece of the bench it replaces, what stands there instead, and all that is told of it. */
export type Row = readonly [title: string, piece: string, by: string, problems: readonly string[]];

/** Each spoilt bench is told exactly as its row says, and is refused unless all of it are warnings. */
export function tells(rows: readonly Row[]): void {
  test.each(rows)("%s", (_title, piece, by, problems) => {
    const file = edited(piece, by);
    expect(told(file)).toEqual(problems);
    const refused = problems.some((problem) => !/^\d+:\d+ warning /.test(problem));
    expect(read(file).frame === undefined).toBe(refused);
  });
}
