export { type Analysis, analyse, type OrderingName } from "./analyse.ts";
export { assembleSymmetric, type ElementBlock } from "./assemble.ts";
export { type Factor, factorise } from "./factorise.ts";
export { nullVector, relativeStrain } from "./null-vector.ts";
export type { Pivots, SuspiciousPivot } from "./pivots.ts";
export { componentError, type Refined, residual, solveRefined } from "./refine.ts";
export { multiply, multiplyAbsolute, type SymmetricMatrix } from "./symmetric-matrix.ts";
export type { KernelName } from "./workspace.ts";
