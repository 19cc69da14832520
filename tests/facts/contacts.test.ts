import { describe, expect, it } from "vitest";
import { clashes } from "../../src/facts/clashes.ts";
import { contacts } from "../../src/facts/contacts.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, railFrom, tee } from "../rules/base-frames.ts";
import { known, near, one } from "./known.ts";

const seen = (edit: (file: FrameFile) => void) => known(contacts, edited(tee(), edit));

describe("contacts", () => {
  it("a butted end bears with its whole square, 40 x 40 mm", () => {
    const found = known(contacts, tee());
    const seat = one(found.ofEnd("rail", "from")[0]);
    expect(found.ofEnd("rail", "from")).toHaveLength(1);
    expect(seat.a).toEqual({ bar: "rail", side: "from" });
    expect(seat.b).toEqual({ bar: "post", side: "A" });
    expect(seat.gap).toBeCloseTo(0, 12);
    expect(seat.area).toBeCloseTo(0.0016, 12);
    expect(seat.normal).toEqual(near([-1000, 0, 0]));
    expect(seat.middle).toEqual(near([20, 0, 500]));
    expect(found.clashes).toEqual([]);
  });

  it("is the same contact seen from the other bar", () => {
    const [mine] = known(contacts, tee()).of("post");
    expect(mine).toMatchObject({ a: { bar: "post", side: "A" }, b: { bar: "rail", side: "from" } });
    expect(mine?.normal).toEqual(near([1000, 0, 0]));
  });

  it("measures the gap of an end drawn short, up to 20 mm", () => {
    expect(seen(railFrom(20.4)).ofEnd("rail", "from")[0]?.gap).toBeCloseTo(0.0004, 12);
    expect(seen(railFrom(39.9)).ofEnd("rail", "from")[0]?.gap).toBeCloseTo(0.0199, 12);
    expect(seen(railFrom(40.1)).ofEnd("rail", "from")).toEqual([]);
  });

  it("shares half the area where the rail stands half beside the post", () => {
    const [seat] = seen((file) => {
      barOf(file, "rail").from = [20, 20, 500];
      barOf(file, "rail").to = [600, 20, 500];
      barOf(file, "rail").ends = { from: { cut: "as-drawn" } };
    }).ofEnd("rail", "from");
    expect(seat?.area).toBeCloseTo(0.0008, 12);
    expect(seat?.middle).toEqual(near([20, 10, 500]));
  });

  it("an end cut out of square gapes by 20 tan 1°, its middle touching", () => {
    const [seat] = seen((file) => {
      barOf(file, "rail").from = [20, 0, 500];
      barOf(file, "rail").ends = { from: { angle: 1, about: "+y" } };
    }).ofEnd("rail", "from");
    expect(seat?.gap).toBeCloseTo(0, 6);
    expect(seat?.widestGap).toBeCloseTo(0.02 * Math.tan(Math.PI / 180), 6);
  });

  it("bars that run into each other clash by the depth; bars that touch do not", () => {
    const [clash] = seen(railFrom(15)).clashes;
    expect(clash?.bars).toEqual(["post", "rail"]);
    expect(clash?.depth).toBeCloseTo(0.005, 12);
    expect(seen(railFrom(20)).clashes).toEqual([]);
  });
});

describe("clashes", () => {
  const sill = (top: number) => (file: FrameFile) => {
    file.bars.push({ id: "sill", profile: "40x40-8", from: [50, -200, top - 20], to: [50, 200, top - 20] });
  };

  it("are none in a sound joint: a bracket lies on both faces", () => {
    expect(known(clashes, tee())).toEqual([]);
  });

  it("a bar that touches a bracket's underside, at 480 − 5 = 475 mm, touches; the least rise runs into it", () => {
    expect(known(clashes, edited(tee(), sill(475)))).toEqual([]);
    const found = known(clashes, edited(tee(), sill(476)));
    expect(found).toEqual([
      { a: { kind: "bar", id: "sill" }, b: { kind: "connector", id: "rail.from/1" }, depth: expect.closeTo(0.001, 12) },
    ]);
  });

  it("tells a pair once, with the deepest of its overlaps", () => {
    // Through the leg under the rail, 5 mm thick, and 2 mm into the leg on the post, which ends at x = 25.
    const found = known(
      clashes,
      edited(tee(), (file) => {
        file.bars.push({ id: "sill", profile: "40x40-8", from: [43, -200, 460], to: [43, 200, 460] });
      }),
    );
    expect(found.map(({ depth }) => depth)).toEqual([expect.closeTo(0.005, 12)]);
  });
});

it("stop at a limit, and say so, where bars are drawn over and over in one place", () => {
  const file = tee();
  const [post] = file.bars;
  file.bars = [post, ...Array.from({ length: 149 }, (_, i) => ({ ...post, id: `post-${i}` }))];
  delete file.joints;
  expect(() => known(contacts, file)).toThrow(
    "a limit was hit: more than 6500 pairs of the 150 bars lie over each other; are bars or copies drawn in one place?",
  );
});
