import { changeFrame, type Json } from "./walk-frame.ts";

type Fields = { [key: string]: Json };

/** Another way to write the same frame, and how the ids it then has read in the first. */
export interface Rewriting {
  readonly how: string;
  readonly rewrite: (file: Json) => Json;
  readonly idBefore: (id: string) => string;
}

const same = (id: string): string => id;
const fields = (value: Json): Fields => value as Fields;
const numbers = (value: Json): number[] =>
  (value as Json[]).map((item) => {
    if (typeof item !== "number")
      throw new Error(`the demo frames give coordinates as numbers, not ${JSON.stringify(item)}`);
    return item;
  });

// Inch, pound and pound-force are exact by definition (NIST SP 811:2008, B.8); 9.80665 m/s² is standard gravity.
const INCH = 25.4; // mm
const POUND = 0.45359237; // kg
const POUND_FORCE = POUND * 9.80665; // N
/** One of the metric unit in the inch unit, by kind of value. */
const IN_INCH_UNITS: Readonly<Record<string, number>> = {
  length: 1 / INCH,
  massValue: 1 / POUND,
  force: 1 / POUND_FORCE,
  moment: 1000 / INCH / POUND_FORCE, // N·m in lbf·in
  pressure: (1e-3 * INCH ** 2) / POUND_FORCE, // kPa in psi
  lineLoad: INCH / POUND_FORCE, // N/mm in lbf/in
};

/** The frame in the other unit system; values that carry their unit stay. */
function inOtherUnits(file: Json): Json {
  const toInch = fields(file).units === "mm-N-kg";
  const change = Object.fromEntries(
    Object.entries(IN_INCH_UNITS).map(([kind, factor]) => [
      kind,
      (value: Json) => (typeof value === "number" ? value * (toInch ? factor : 1 / factor) : value),
    ]),
  );
  const temperature = (value: Json): Json => {
    if (typeof value !== "number") return value;
    return toInch ? value * 1.8 + 32 : (value - 32) / 1.8;
  };
  return {
    ...fields(changeFrame(file, { ...change, temperature })),
    units: toInch ? "in-lbf-lb" : "mm-N-kg",
  };
}

/** A rigid motion of the drawing that keeps +z up: old x and y become these axes, with these signs; then a shift, mm or in. */
interface Motion {
  readonly axis: readonly [0 | 1, 0 | 1];
  readonly sign: readonly [1 | -1, 1 | -1];
  readonly shift: readonly [number, number, number];
}

const AXES = ["x", "y", "z"] as const;

function moved(motion: Motion): (file: Json) => Json {
  const axisOf = (old: number): number => motion.axis[old] ?? 2;
  const signOf = (old: number): number => motion.sign[old] ?? 1;
  const turned = (v: readonly number[]): number[] => {
    const to = [0, 0, 0];
    for (const [old, value] of v.entries()) to[axisOf(old)] = signOf(old) * value;
    return to;
  };
  const sized = (v: readonly number[]): number[] => turned(v).map(Math.abs);
  const word = (value: Json): Json => {
    const old = typeof value === "string" ? ["+x", "-x", "+y", "-y"].indexOf(value) : -1;
    if (old < 0) return value;
    const sign = (old % 2 === 0 ? 1 : -1) * signOf(old >> 1);
    return `${sign > 0 ? "+" : "-"}${AXES[axisOf(old >> 1)]}`;
  };
  const direction = (value: Json): Json => (Array.isArray(value) ? value : word(value));
  const [x, y] = motion.axis;
  const mirrors = (x === y ? 0 : motion.sign[0] * motion.sign[1] * (x === 0 ? 1 : -1)) < 0;
  const opposite = (value: Json): Json => {
    if (Array.isArray(value)) return numbers(value).map((part) => -part);
    return typeof value === "string" ? (value.startsWith("+") ? "-" : "+") + value.slice(1) : value;
  };
  const shifted = (v: readonly number[]): number[] => v.map((value, axis) => value + (motion.shift[axis] ?? 0));
  return (file) =>
    changeFrame(file, {
      point: (value) => shifted(turned(numbers(value))),
      vector: (value) => turned(numbers(value)),
      direction,
      face: word,
      choice: word,
      floor: (value) => ({ ...fields(value), z: ((fields(value).z as number | undefined) ?? 0) + motion.shift[2] }),
      mass: (value) => {
        const { box, ...rest } = fields(value);
        return { ...rest, ...(box === undefined ? {} : { box: sized(numbers(box)) }) };
      },
      panel: (value) => {
        const { overhang, ...rest } = fields(value);
        if (overhang === undefined) return rest;
        // Towards - and + of each in-plane axis; the demo frames lay panels on level bars only.
        const sides = numbers(overhang);
        const to = [0, 0, 0, 0];
        for (const [side, value] of sides.entries()) {
          const old = side >> 1;
          const far = (side % 2 === 1) === signOf(old) > 0;
          to[2 * axisOf(old) + (far ? 1 : 0)] = value;
        }
        return { ...rest, overhang: to };
      },
      door: (value) => {
        // A swing is right-handed about its axis, and a mirror turns hands.
        const { axis, ...rest } = fields(value);
        return { ...rest, axis: mirrors && axis !== undefined ? opposite(axis) : (axis ?? null) };
      },
      copy: (value) => {
        const { shift, mirror, turn, ...rest } = fields(value);
        if (mirror !== undefined || turn !== undefined) throw new Error("the demo frames repeat parts by shift only");
        // Moved as a point above; a shift is the way between two points.
        const [at, from] = [numbers(shift ?? []), motion.shift];
        return { ...rest, shift: at.map((coordinate, axis) => coordinate - (from[axis] ?? 0)) };
      },
    });
}

/** a to z, b to y and so on: its own inverse, and it turns the order of names round. */
function swapLetters(text: string): string {
  return text.replace(/[a-z]/g, (letter) => String.fromCharCode(97 + 122 - letter.charCodeAt(0)));
}

/** What findings on no single part are pinned on. */
const WHOLE = "frame";

/** Of "rail-1/to" and "rail-1.from/2" only the part's own name. */
function renamedRef(ref: string): string {
  const [name = ""] = ref.split(/[./]/);
  if (name === WHOLE) return ref;
  return swapLetters(name) + ref.slice(name.length);
}

function renamed(file: Json): Json {
  const name = (value: Json): Json => renamedRef(value as string);
  const changed = fields(
    changeFrame(file, {
      id: name,
      ref: name,
      joint: (value) => {
        const { by } = fields(value);
        return { ...fields(value), ...(typeof by === "string" ? { by: swapLetters(by) } : {}) };
      },
      copy: (value) => ({ ...fields(value), suffix: swapLetters(fields(value).suffix as string) }),
    }),
  );
  const kits = Object.entries(fields(changed.kits ?? {})).map(([kit, items]) => [swapLetters(kit), items]);
  return { ...changed, kits: Object.fromEntries(kits) };
}

/** Lists whose order says nothing; that of a kit, of panel edges and of a hinge's two bars does. */
const UNORDERED = ["bars", "joints", "fastenings", "panels", "doors", "stands", "masses", "loads", "cases", "zones"];

function reversedKeys(value: Json): Json {
  if (Array.isArray(value)) return value.map(reversedKeys);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, item]) => [key, reversedKeys(item)]),
  );
}

function reordered(file: Json): Json {
  const backwards = (key: string) => (value: Json) => {
    const list = fields(value)[key];
    return Array.isArray(list) ? { ...fields(value), [key]: list.toReversed() } : value;
  };
  const changed = fields(
    changeFrame(file, {
      joint: backwards("bars"),
      stand: backwards("bars"),
      panel: backwards("bars"),
      door: backwards("hinges"),
      load: backwards("on"),
      copy: backwards("of"),
    }),
  );
  const lists = UNORDERED.flatMap((key) => {
    const list = changed[key];
    return Array.isArray(list) ? [[key, list.toReversed()] as const] : [];
  });
  return reversedKeys({ ...changed, ...Object.fromEntries(lists) });
}

/** mm or in; in inches nearly as far off as a coordinate goes without a warning. */
const SHIFT = [1100, -1050, 0] as const;

export const REWRITINGS: readonly Rewriting[] = [
  { how: "in the other units", rewrite: inOtherUnits, idBefore: same },
  {
    how: "turned by 90° about the vertical",
    rewrite: moved({ axis: [1, 0], sign: [1, -1], shift: [0, 0, 0] }),
    idBefore: same,
  },
  {
    how: "turned by 180° about the vertical",
    rewrite: moved({ axis: [0, 1], sign: [-1, -1], shift: [0, 0, 0] }),
    idBefore: same,
  },
  { how: "moved elsewhere", rewrite: moved({ axis: [0, 1], sign: [1, 1], shift: SHIFT }), idBefore: same },
  {
    how: "mirrored left to right",
    rewrite: moved({ axis: [0, 1], sign: [-1, 1], shift: [0, 0, 0] }),
    idBefore: same,
  },
  {
    how: "mirrored front to back",
    rewrite: moved({ axis: [0, 1], sign: [1, -1], shift: [0, 0, 0] }),
    idBefore: same,
  },
  { how: "with other names", rewrite: renamed, idBefore: renamedRef },
  { how: "with its lists and keys in another order", rewrite: reordered, idBefore: same },
];
