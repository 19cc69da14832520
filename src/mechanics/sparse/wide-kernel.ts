import type { SubtractTiles } from "./front-kernel.ts";
import { tileProgram } from "./wide-program.ts";

/** The parts of the platform's WebAssembly that are used here. */
declare const WebAssembly:
  | {
      readonly Memory: new (size: { initial: number }) => { readonly buffer: ArrayBuffer };
      readonly Module: new (bytes: Uint8Array<ArrayBuffer>) => object;
      readonly Instance: new (
        module: object,
        imports: object,
      ) => { readonly exports: Readonly<Record<string, unknown>> };
      readonly validate: (bytes: Uint8Array<ArrayBuffer>) => boolean;
    }
  | undefined;

/** Numbers in a memory of their own, and the tile kernel for arrays that lie there. */
export interface WideKernel {
  /** `count` zeros of the memory, in the order asked for; together no more than the kernel was made for. */
  readonly take: (count: number) => Float64Array;
  readonly subtractTiles: SubtractTiles;
}

const BYTES = 8; // of a number
const PAGE = 65536; // bytes, by the WebAssembly specification
const MOST_PAGES = 65536;

/**
 * The kernel of front-kernel.ts on two numbers at a time, which the platform offers to WebAssembly only: about twice as
 * fast. Sums are formed in two halves, so results differ in their last digits from those of the plain kernel.
 * Undefined where the platform has no such instructions or the memory cannot be had; the plain kernel then does.
 */
export function wideKernel(numbers: number): WideKernel | undefined {
  const pages = Math.ceil((numbers * BYTES) / PAGE);
  if (typeof WebAssembly === "undefined" || pages > MOST_PAGES) return undefined;
  const bytes = tileProgram();
  if (!WebAssembly.validate(bytes)) return undefined;
  let memory: { readonly buffer: ArrayBuffer };
  try {
    memory = new WebAssembly.Memory({ initial: pages });
  } catch {
    return undefined;
  }
  const { exports } = new WebAssembly.Instance(new WebAssembly.Module(bytes), { tiles: { memory } });
  const run = exports.run as (...places: number[]) => void;
  let taken = 0;
  return {
    take(count) {
      const part = new Float64Array(memory.buffer, taken * BYTES, count);
      taken += count;
      return part;
    },
    subtractTiles(a, aAt, aStride, b, bAt, bStride, depth, c, cAt, cStride, tiles) {
      if (tiles <= 0) return;
      run(
        a.byteOffset + aAt * BYTES,
        aStride * BYTES,
        b.byteOffset + bAt * BYTES,
        bStride * BYTES,
        depth * BYTES,
        c.byteOffset + cAt * BYTES,
        cStride * BYTES,
        tiles,
      );
    },
  };
}
