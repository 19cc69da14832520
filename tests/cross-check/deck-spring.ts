import type { Vec3 } from "../../src/mechanics/model.ts";
import { type Deck, num } from "./deck-writer.ts";

/** So long, m, that a brick of 1 m² strains by a millionth at most and its own axial force does not soften it. */
const LENGTH = 1000;
const FACE: readonly (readonly [number, number])[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** A brick that is guided along, and whose far face moves with this freedom: E A/L is the stiffness. */
function brickTo(deck: Deck, node: number, freedom: number, stiffness: number): void {
  const face = (x: number): number[] => FACE.map(([y, z]): number => deck.node([x, y, z] satisfies Vec3));
  const [held, moving] = [face(0), face(LENGTH)];
  const id = deck.element();
  deck.write(
    `*ELEMENT,TYPE=C3D8,ELSET=S${id}`,
    [id, ...held, ...moving].join(","),
    `*MATERIAL,NAME=S${id}`,
    "*ELASTIC",
    `${num(stiffness * LENGTH)},0.`,
    `*SOLID SECTION,ELSET=S${id},MATERIAL=S${id}`,
    "*BOUNDARY",
    ...held.map((corner) => `${corner},1,3`),
    ...moving.map((corner) => `${corner},2,3`),
  );
  for (const corner of moving) {
    deck.equation([
      [corner, 1, -1],
      [node, freedom, 1],
    ]);
  }
}

/** A spring from one freedom of a node to the ground. */
export function springTo(deck: Deck, node: number, freedom: number, stiffness: number): void {
  if (deck.elements.spring === "C3D8") {
    brickTo(deck, node, freedom, stiffness);
    return;
  }
  const id = deck.element();
  deck.write(`*ELEMENT,TYPE=SPRING1,ELSET=S${id}`, `${id},${node}`);
  deck.write(`*SPRING,ELSET=S${id}`, String(freedom), num(stiffness));
}
