/**
 * The tile kernel as a WebAssembly module, written out instruction by instruction (WebAssembly Core Specification 2.0,
 * chapter 5, gives the numbers). `run` takes byte addresses and strides of three rows of a, three rows of b and a tile of c,
 * the bytes of a row that count, and how many tiles follow each other down the rows of a and c.
 */
export function tileProgram(): Uint8Array<ArrayBuffer> {
  const body = [...LOCALS, ...eachTile(), END];
  const sections = [
    section(1, [1, 0x60, 8, ...Array<number>(8).fill(I32), 0]), // one type: eight addresses or counts, no result
    section(2, [1, ...name("tiles"), ...name("memory"), 2, 0, 1]), // the memory, of a page at least
    section(3, [1, 0]), // one function, of that type
    section(7, [1, ...name("run"), 0, 0]), // its name outside
    section(10, [1, ...unsigned(body.length), ...body]),
  ];
  return Uint8Array.from([0x00, 0x61, 0x73, 0x6d, 1, 0, 0, 0, ...sections.flat()]);
}

const I32 = 0x7f;
const V128 = 0x7b;
const BLOCK = [0x02, 0x40];
const LOOP = [0x03, 0x40];
const IF = [0x04, 0x40];
const END = 0x0b;
const ADD = 0x6a;
const SUBTRACT = 0x6b;
const AND = 0x71;
const LESS = 0x49;
const NOT_LESS = 0x4f;
const F64_ADD = 0xa0;
const F64_SUBTRACT = 0xa1;
const PAIR_ADD = [0xfd, 0xf0, 0x01];
const PAIR_MULTIPLY = [0xfd, 0xf2, 0x01];
const PAIR_ZERO = [0xfd, 0x0c, ...Array<number>(16).fill(0)];
const PAIR_LOAD = [0xfd, 0x00, 3, 0]; // two numbers, of which only the first need be aligned
const PAIR_LOAD_ONE = [0xfd, 0x5d, 3, 0]; // one number and a zero
const PAIR = 16; // bytes

// The locals: the eight arguments, then addresses, then pairs of numbers.
const [A, A_STRIDE, B, B_STRIDE, DEPTH, C, C_STRIDE, TILES] = [0, 1, 2, 3, 4, 5, 6, 7] as const;
const AT_A = [8, 9, 10] as const;
const AT_B = [11, 12, 13] as const;
const STOP = 14;
const sum = (i: number, j: number): number => 15 + 3 * i + j;
const X = [24, 25, 26] as const;
const Y = 27;
const LOCALS = [2, 7, I32, 13, V128];
const ROWS = [0, 1, 2] as const;

const get = (local: number): number[] => [0x20, local];
const set = (local: number): number[] => [0x21, local];
const constant = (value: number): number[] => [0x41, value]; // −64 … 63, negative ones given modulo 128
const branchIf = (depth: number): number[] => [0x0d, depth];
const advance = (local: number, by: number[]): number[] => [...get(local), ...by, ADD, ...set(local)];

function eachTile(): number[] {
  const whole = constant(0x70); // −16: whole pairs
  return [
    ...LOOP,
    ...startRows(A, A_STRIDE, AT_A),
    ...startRows(B, B_STRIDE, AT_B),
    ...ROWS.flatMap((i) => ROWS.flatMap((j) => [...PAIR_ZERO, ...set(sum(i, j))])),
    ...[...get(A), ...get(DEPTH), ...whole, AND, ADD, ...set(STOP)],
    ...BLOCK,
    ...[...get(AT_A[0]), ...get(STOP), NOT_LESS, ...branchIf(0)],
    ...LOOP,
    ...products(PAIR_LOAD),
    ...[...AT_A, ...AT_B].flatMap((at) => advance(at, constant(PAIR))),
    ...[...get(AT_A[0]), ...get(STOP), LESS, ...branchIf(0)],
    END,
    END,
    ...[...get(DEPTH), ...constant(8), AND, ...IF, ...products(PAIR_LOAD_ONE), END], // an odd number left
    ...ROWS.flatMap(subtractRow),
    ...ROWS.flatMap(() => [...advance(A, get(A_STRIDE)), ...advance(C, get(C_STRIDE))]),
    ...[...get(TILES), ...constant(1), SUBTRACT, 0x22, TILES, ...branchIf(0)],
    END,
  ];
}

function startRows(from: number, stride: number, at: readonly [number, number, number]): number[] {
  return [
    ...[...get(from), ...set(at[0])],
    ...[...get(at[0]), ...get(stride), ADD, ...set(at[1])],
    ...[...get(at[1]), ...get(stride), ADD, ...set(at[2])],
  ];
}

/** sum(i, j) += a(i)·b(j) for the numbers at the present places. */
function products(load: readonly number[]): number[] {
  return [
    ...ROWS.flatMap((i) => [...get(AT_A[i]), ...load, ...set(X[i])]),
    ...ROWS.flatMap((j) => [
      ...[...get(AT_B[j]), ...load, ...set(Y)],
      ...ROWS.flatMap((i) => [
        ...[...get(sum(i, j)), ...get(X[i]), ...get(Y), ...PAIR_MULTIPLY, ...PAIR_ADD],
        ...set(sum(i, j)),
      ]),
    ]),
  ];
}

/** Row i of the tile of c −= both halves of its sums. The row's address is C and i strides. */
function subtractRow(i: number): number[] {
  const address = [...get(C), ...ROWS.slice(0, i).flatMap(() => [...get(C_STRIDE), ADD])];
  return [
    ...[...address, ...set(STOP)],
    ...ROWS.flatMap((j) => [
      ...get(STOP),
      ...[...get(STOP), 0x2b, 3, 8 * j],
      ...[...get(sum(i, j)), 0xfd, 0x21, 0, ...get(sum(i, j)), 0xfd, 0x21, 1, F64_ADD],
      ...[F64_SUBTRACT, 0x39, 3, 8 * j],
    ]),
  ];
}

function section(id: number, content: readonly number[]): number[] {
  return [id, ...unsigned(content.length), ...content];
}

function name(text: string): number[] {
  return [text.length, ...Array.from(text, (letter) => letter.charCodeAt(0))];
}

/** LEB128. */
function unsigned(value: number): number[] {
  const bytes: number[] = [];
  let rest = value;
  for (; rest >= 128; rest = Math.floor(rest / 128)) bytes.push((rest % 128) + 128);
  return [...bytes, rest];
}
