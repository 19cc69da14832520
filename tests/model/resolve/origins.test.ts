import { expect, test } from "vitest";
import { bench } from "./bench-text.ts";
import { read } from "./read.ts";

const { origins } = read(bench);

test.each([
  ["leg-1", { pointer: "/bars/0" }],
  ["leg-1/to", { pointer: "/bars/0" }],
  ["arm/from", { pointer: "/bars/4/ends/from" }],
  ["rail-1.to", { pointer: "/joints/0" }],
  ["rail-1.to/1", { pointer: "/joints/0", kitPointer: "/kits/corner/0" }],
  ["rail-1.to/1/b1/nut", { pointer: "/joints/0", kitPointer: "/kits/corner/0" }],
  ["arm.from/1/s1", { pointer: "/joints/1/by/0" }],
  ["elbow/1/h2", { pointer: "/fastenings/0" }],
  ["leg-1.foot", { pointer: "/stands/0" }],
  ["top", { pointer: "/panels/0" }],
  ["door", { pointer: "/doors/0" }],
  ["vice", { pointer: "/masses/0" }],
  ["push.load-1", { pointer: "/loads/2" }],
  ["side", { pointer: "/groups/0" }],
  ["blade", { pointer: "/zones/0" }],
  ["rail-2-up2", { pointer: "/bars/3", copyPointer: "/copies/0" }],
  ["rail-2-up2/from", { pointer: "/bars/3", copyPointer: "/copies/0" }],
  ["rail-2-up1.to/1/a1", { pointer: "/joints/0", copyPointer: "/copies/0", kitPointer: "/kits/corner/0" }],
  ["nothing of the file", { pointer: "" }],
  ["frame", { pointer: "" }],
])("%s", (id, origin) => {
  expect(origins.originOf({ id })).toEqual(origin);
});

test("every part of a frame has a place of its own in the file", () => {
  const { frame, document } = read(bench);
  for (const list of [frame?.bars, frame?.joints, frame?.panels, frame?.stands, frame?.loads, frame?.masses]) {
    for (const part of list ?? []) {
      const { pointer } = origins.originOf(part.ref);
      expect(document?.place(pointer).pointer, part.ref.id).toBe(pointer);
      expect(pointer).not.toBe("");
    }
  }
});
