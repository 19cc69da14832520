import type { Vec3 } from "../../src/mechanics/model.ts";

/** One term of a linear equation between freedoms of nodes; freedoms are 1, 2, 3. */
export type Term = readonly [node: number, freedom: number, coefficient: number];

/** A node of the deck that moves rigidly: `shift` carries its translations, `turn` its rotations, both as freedoms 1 to 3. */
export interface RigidPoint {
  readonly at: Vec3;
  readonly shift: number;
  readonly turn: number;
}

/**
 * What bars and springs are made of. The buckling step of CalculiX needs elements of its own: a row of C3D20R has zigzags
 * across the bar that strain no integration point and load none, so every number is a factor of theirs and it returns its
 * own shift of 1; and SPRING1 holds twice there (2.20).
 */
export interface DeckElements {
  readonly bar: "C3D20R" | "C3D20";
  readonly spring: "SPRING1" | "C3D8";
}

/** Collects the lines of a CalculiX deck. Nodes and elements are numbered as they come. */
export interface Deck {
  readonly elements: DeckElements;
  node(at: Vec3): number;
  element(): number;
  equation(terms: readonly Term[]): void;
  write(...lines: readonly string[]): void;
  text(): string;
}

/** CalculiX reads sixteen items a line. */
const TERMS_PER_LINE = 4;
const IDS_PER_LINE = 12;

/** A number as the deck carries it: enough digits, and no noise of rounding in a zero. */
export function num(value: number): string {
  const text = Number(value.toPrecision(12)).toString();
  return Math.abs(value) < 1e-15 ? "0." : text.includes(".") || text.includes("e") ? text : `${text}.`;
}

export function lines<T>(items: readonly T[], perLine: number = IDS_PER_LINE): string[] {
  const made: string[] = [];
  for (let i = 0; i < items.length; i += perLine) {
    made.push(items.slice(i, i + perLine).join(",") + (i + perLine < items.length ? "," : ""));
  }
  return made;
}

export function newDeck(title: string, elements: DeckElements): Deck {
  const nodes: string[] = [];
  const rest: string[] = [];
  let count = 0;
  return {
    elements,
    node(at) {
      nodes.push(`${nodes.length + 1},${at.map(num).join(",")}`);
      return nodes.length;
    },
    element() {
      count++;
      return count;
    },
    equation(terms) {
      const kept = terms.filter(([, , coefficient], i) => i === 0 || Math.abs(coefficient) > 1e-15);
      const items = kept.map(([node, freedom, coefficient]) => `${node},${freedom},${num(coefficient)}`);
      rest.push("*EQUATION", String(kept.length), ...lines(items, TERMS_PER_LINE));
    },
    write(...more) {
      for (const line of more) rest.push(line);
    },
    text: () => `${["*HEADING", title, "*NODE", ...nodes, ...rest].join("\n")}\n`,
  };
}

const AXES = [0, 1, 2] as const;

/** Terms of `factor` × the motion, along `direction`, of what is fixed to `point` at place `at`: (u + θ × r) · d. */
export function motionTerms(point: RigidPoint, at: Vec3, direction: Vec3, factor: number): Term[] {
  const r: Vec3 = [at[0] - point.at[0], at[1] - point.at[1], at[2] - point.at[2]];
  const [a, b, c] = direction;
  // (θ × r) · d = θ · (r × d)
  const lever: Vec3 = [r[1] * c - r[2] * b, r[2] * a - r[0] * c, r[0] * b - r[1] * a];
  return AXES.flatMap((i): Term[] => [
    [point.shift, i + 1, factor * direction[i]],
    [point.turn, i + 1, factor * lever[i]],
  ]);
}

/** Terms of `factor` × the rotation about `direction`. */
export function turnTerms(point: RigidPoint, direction: Vec3, factor: number): Term[] {
  return AXES.map((i): Term => [point.turn, i + 1, factor * direction[i]]);
}
