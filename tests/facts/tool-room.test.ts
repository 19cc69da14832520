import { describe, expect, it } from "vitest";
import { toolRoom } from "../../src/facts/tool-room.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { referenceCheck } from "../references/load-reference.ts";
import { edited, kitItem, tee } from "../rules/base-frames.ts";
import { known, one } from "./known.ts";

const roomAt = (file: FrameFile, screw: string) =>
  one(known(toolRoom, file).find((room) => room.screw.ref.id === screw));
const reference = (id: string): Record<string, number> =>
  referenceCheck("bolts", id).expected.value as Record<string, number>;
const DEGREE = Math.PI / 180;

describe("room for tools", () => {
  it("holds a 5 mm key over an M6 head as bolts.access.key-above says", () => {
    const file = edited(tee(), (base) => {
      kitItem(base).screw = "M6x16";
    });
    const { best, socket } = roomAt(file, "rail.from/1/a1");
    const { insert, seated_outer: outer, seated_inner: inner } = reference("bolts.access.key-above");
    expect(one(best).asks * 1000).toBeCloseTo(one(insert), 9);
    expect((one(best).way.arm.to - socket.depth) * 1000).toBeCloseTo(one(outer), 9);
    expect((one(best).way.arm.from - socket.depth) * 1000).toBeCloseTo(one(inner), 9);
  });

  it("asks of every key the swing of bolts.swing", () => {
    const { hex_key: swing } = reference("bolts.swing");
    expect(one(roomAt(tee(), "rail.from/1/a1").best).way.tool.swing / DEGREE).toBeCloseTo(one(swing), 9);
  });

  /*
   * The key on the bracket under a rail stands 22 mm off a post 40 mm wide, its arm 41 to 51 mm under the rail. Of the post's near edges
   * the corners (-22, ±20) meet the side of the arm: at angle 180° ∓ (atan(20/22) + asin(3.464/√(22² + 20²))).
   */
  it("works the turn beside a post by hand", () => {
    const half = Math.atan(20 / 22) + Math.asin(6 / Math.sqrt(3) / Math.hypot(22, 20));
    expect(one(roomAt(tee(), "rail.from/1/a1").best).swing).toBeCloseTo(2 * Math.PI - 2 * half, 9);
  });

  it("reaches an end screw through its access hole with the long arm, and not with tools too thick for the hole", () => {
    const file = edited(tee(), (base) => {
      Object.assign(kitItem(base), { connector: "end-screw-8" });
      delete kitItem(base).on;
    });
    const { best, socket } = roomAt(file, "rail.from/1/a1");
    // From the far face: 40 - 4 mm of lip - 4.4 mm of head, and 2.6 mm of socket.
    expect(socket.depth * 1000).toBeCloseTo(40 - 4 - 4.4 + 2.6, 9);
    // M8 button heads take a 5 mm key: its short arm of 33 mm stays inside the bar, its long one stands out by 85 - 34.2.
    expect(one(best).way.tool.name).toBe("hex-key-5");
    expect(one(best).way.by).toBe("long arm");
    expect(one(best).swing).toBeCloseTo(2 * Math.PI, 9);
  });

  it("puts the key of an end fastener in from the face of its own bar", () => {
    const file = edited(tee(), (base) => {
      Object.assign(kitItem(base), { connector: "end-fastener-8" });
    });
    const { best, socket } = roomAt(file, "rail.from/1/a1");
    expect(socket.depth * 1000).toBeCloseTo(8, 9);
    // Under the rail at z = 480, 15 mm from the post's face at x = 20.
    expect(socket.mouth.map((c) => c * 1000)).toEqual([35, 0, 480].map((c) => expect.closeTo(c, 9)));
    const half = Math.atan(20 / 15) + Math.asin(6 / Math.sqrt(3) / Math.hypot(15, 20));
    expect(one(best).swing).toBeCloseTo(2 * Math.PI - 2 * half, 9);
  });

  it("knows no tool for a screw whose torque no key in the kit stands", () => {
    const file = edited(tee(), (base) => {
      kitItem(base).torque = 60;
    });
    expect(roomAt(file, "rail.from/1/a1").best).toBeUndefined();
  });

  it("turns the key between the side walls of a gusset bracket over them, and not lower", () => {
    const file = edited(tee(), (base) => {
      Object.assign(kitItem(base), { connector: "gusset-bracket-40" });
    });
    const { best } = roomAt(file, "rail.from/1/a1");
    // The walls rise to 40 mm over the face at the corner; the arm lies 13 + 28 = 41 mm over it.
    expect(one(best).blocked.map(({ by }) => by.id)).toEqual(["post"]);
  });
});
