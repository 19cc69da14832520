import { describe, expect, it } from "vitest";
import { type Body, bodies } from "../../src/facts/bodies.ts";
import { chooseBores } from "../../src/facts/bore-choice.ts";
import { chooseFace, chooseSlots } from "../../src/facts/face-choice.ts";
import type { Choice, FaceChoice } from "../../src/model/frame.ts";
import type { Bar } from "../../src/model/generated/frame-file.generated.ts";
import { known, one } from "./known.ts";

type Point = [number, number, number];
/** The only bar of a frame, as cut. Along +x at roll 0 face A looks up, B to −y, C down, D to +y (right-handed about +x). */
function bar(to: Point, more: Partial<Bar> = {}): Body {
  const only: Bar = { id: "a", profile: "40x40-8", from: [0, 0, 0], to, ...more };
  const file = { format: 1, title: "faces", units: "mm-N-kg", bars: [only] } as const;
  return one(known(bodies, { ...file, bars: [only] }).get("a"));
}
const towards = (direction: Point, written: string) => ({ by: "direction", direction, written }) as const;
const word = (w: "above" | "below" | "inner" | "outer"): FaceChoice => ({ by: "word", word: w });
const face = (body: Body, choice: FaceChoice, middle: Point = [0, 0, 0]): string => {
  const answer = chooseFace(body, choice, middle);
  return "is" in answer ? answer.is : answer.expected;
};
const rad = (degrees: number): number => (degrees * Math.PI) / 180;
const NONE = "a face that looks that way";

describe("a face chosen by a word", () => {
  const level = bar([500, 0, 0]);

  it("above and below on a level bar", () => {
    expect(face(level, word("above"))).toBe("A");
    expect(face(level, word("below"))).toBe("C");
  });

  it.each([
    [44, "A"],
    [46, NONE],
  ])("a bar that rises %i° has a face above while that looks up more than sideways: 45°", (rise, expected) => {
    expect(face(bar([500 * Math.cos(rad(rise)), 0, 500 * Math.sin(rad(rise))]), word("above"))).toBe(expected);
  });

  it("asks on a plumb bar, with what would do", () => {
    expect(chooseFace(bar([0, 0, 500]), word("above"), [0, 0, 0])).toEqual({
      found: 'face "above" of a',
      expected: NONE,
      mend:
        "name the face by a direction or by letter: A looks 1.00 0.00 0.00, B looks 0.00 1.00 0.00, " +
        "C looks -1.00 0.00 0.00, D looks 0.00 -1.00 0.00",
    });
  });

  it.each([0, 17, 45, 123, 180, 261])("asks on a bar rolled 45°, whichever way it runs (%i°)", (heading) => {
    const rolled = bar([500 * Math.cos(rad(heading)), 500 * Math.sin(rad(heading)), 0], { roll: 45 });
    // Rolled from up towards the left: A and D share the top, B and C the underside.
    expect(face(rolled, word("above"))).toBe("one face; A and D look that way alike");
    expect(face(rolled, word("below"))).toBe("one face; B and C look that way alike");
  });

  it("inner looks to the middle of the frame, outer away; on a level bar only its two sides count", () => {
    expect(face(level, word("inner"), [0.25, 0.3, 2])).toBe("D");
    expect(face(level, word("outer"), [0.25, 0.3, 2])).toBe("B");
    expect(face(level, word("inner"), [0.25, -0.3, -2])).toBe("B");
  });

  it("asks where the middle is neither this side nor that", () => {
    // Over the bar, and along it.
    expect(face(level, word("inner"), [0.25, 0, 2])).toBe(NONE);
    expect(face(level, word("inner"), [3, 0, 0])).toBe(NONE);
  });

  it("asks where two faces of a post look to the middle alike: within a hundredth of their cosines", () => {
    const post = bar([0, 0, 500]);
    expect(face(post, word("inner"), [1, 1, 0.25])).toBe("one face; A and B look that way alike");
    expect(face(post, word("outer"), [1, 1, 0.25])).toBe("one face; C and D look that way alike");
    // cos 44° − sin 44° = 0.0247.
    expect(face(post, word("inner"), [Math.cos(rad(44)), Math.sin(rad(44)), 0])).toBe("A");
  });
});

describe("a face chosen by a direction or its letter", () => {
  it.each([
    [4.9, "D"],
    [5.1, NONE],
  ])("+y on a bar that runs %f° off x: within 5°", (off, expected) => {
    const body = bar([500 * Math.cos(rad(off)), 500 * Math.sin(rad(off)), 0]);
    expect(face(body, towards([0, 1, 0], "+y"))).toBe(expected);
  });

  it("never along the bar", () => {
    expect(face(bar([500, 0, 0]), towards([1, 0, 0], "+x"))).toBe(NONE);
  });

  it("a letter is taken at its word", () => {
    for (const name of ["A", "B", "C", "D"] as const) expect(face(bar([0, 0, 500]), { by: "name", name })).toBe(name);
  });
});

describe("slots of a face", () => {
  // Tall side up: A looks up, D to +y; across D is counted towards A, so slot 2 is the upper.
  const tall = bar([500, 0, 0], { profile: "40x80-8", tall: "+z" });
  const slots = (choice: Choice | undefined, body = tall, on: "A" | "D" = "D") => {
    const answer = chooseSlots(body, on, choice);
    return "is" in answer ? answer.is.map((slot) => slot.number) : answer.expected;
  };

  it.each<[string, Choice | undefined, unknown]>([
    ["furthest up", towards([0, 0, 1], "+z"), [2]],
    ["furthest down", towards([0, 0, -1], "-z"), [1]],
    ["by number", { by: "number", number: 2 }, [2]],
    ["all", { by: "all" }, [1, 2]],
    ["a number too many", { by: "number", number: 3 }, "a number from 1 to 2"],
    ["a direction along the bar", towards([1, 0, 0], "+x"), "a direction across the face"],
    ["a direction out of the face", towards([0, 1, 0], "+y"), "a direction across the face"],
    ["no choice", undefined, "one slot named"],
  ])("%s", (_, choice, expected) => {
    expect(slots(choice)).toEqual(expected);
  });

  it("the only slot needs no choice", () => {
    expect(slots(undefined, tall, "A")).toEqual([1]);
  });
});

describe("core bores of an end", () => {
  // Bores 1 and 2 of the tall bar lie 20 mm below and above its middle; those of 80x80 at the corners of a square of 40 mm.
  const tall = bar([500, 0, 0], { profile: "40x80-8", tall: "+z" });
  const square = bar([500, 0, 0], { profile: "80x80-8" });
  const bores = (body: Body, choice?: Choice) => {
    const answer = chooseBores(body, choice);
    return "is" in answer ? answer.is.map((bore) => bore.number) : answer.expected;
  };

  it.each<[string, Body, Choice | undefined, unknown]>([
    ["the only one", bar([500, 0, 0]), undefined, [1]],
    ["no choice of two", tall, undefined, "one bore named"],
    ["all", square, { by: "all" }, [1, 2, 3, 4]],
    ["furthest up", tall, towards([0, 0, 1], "+z"), [2]],
    ["by number", tall, { by: "number", number: 1 }, [1]],
    ["a number too many", tall, { by: "number", number: 5 }, "a number from 1 to 2"],
    ["a direction they share", tall, towards([0, 1, 0], "+y"), "one bore; 1 and 2 lie that way alike"],
    ["two of four furthest up", square, towards([0, 0, 1], "+z"), "one bore; 3 and 4 lie that way alike"],
  ])("%s", (_, body, choice, expected) => {
    expect(bores(body, choice)).toEqual(expected);
  });
});
