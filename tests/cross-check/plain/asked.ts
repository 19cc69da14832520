/** What is asked of a demo frame; lengths in m. */
export interface Asked {
  readonly id: string;
  /** Pieces into which the plain solver cuts each stretch of a bar between two things that meet it. */
  readonly pieces: number;
  /** Cases, each with the weight of the frame, and the bars whose sag is read; between these places, or from end to end. */
  readonly cases: Readonly<Record<string, Readonly<Record<string, readonly [number, number] | null>>>>;
  /** Where 150 N push, in equal parts: bars and places on them. */
  readonly pushed: readonly (readonly [bar: string, at: readonly [number, number, number]])[];
  /** Whether the lowest frequency is read. */
  readonly frequency: boolean;
}

const INCH = 0.0254;

/** Legs numbered along x, then along y, pushed at this height. */
function legs(name: string, xs: readonly number[], ys: readonly number[], z: number): Asked["pushed"] {
  return ys.flatMap((y, j) => xs.map((x, i) => [`${name}-${1 + i + j * xs.length}`, [x, y, z]] as const));
}

export const asked: readonly Asked[] = [
  {
    id: "first-bench",
    pieces: 4,
    cases: { trays: { front: [0.1, 1.4], "cross-1": null } },
    pushed: [
      ["leg-1", [0.1, 0.02, 0.82]],
      ["leg-2", [1.4, 0.02, 0.82]],
      ["leg-3", [1.4, 0.73, 0.82]],
      ["leg-4", [0.1, 0.73, 0.82]],
    ],
    frequency: true,
  },
  {
    id: "potting-bench",
    pieces: 4,
    cases: { sacks: { "shelf-1": null }, tools: { "tool-rail": [0.12, 1.68] } },
    pushed: [
      ...legs("leg", [0.12, 0.9, 1.68], [0.02, 0.68], 0.82),
      ["upright-1", [0.12, 0.68, 0.86]],
      ["upright-2", [1.68, 0.68, 0.86]],
    ],
    frequency: false,
  },
  {
    id: "tray-rack",
    pieces: 2,
    cases: { trays: { "slat-1": null, "front-a": null }, boxes: { "top-slat-2": null } },
    pushed: legs("post", [4 * INCH, 36 * INCH, 68 * INCH], [0.75 * INCH, 23.25 * INCH], 42 * INCH),
    frequency: true,
  },
];
