export { type Analysis, analyse, type OrderingName } from "./analyse.ts";
export { assembleSymmetric, type ElementBlock } from "./assemble.ts";
export { type Factor, factorise, type Pivots, type SuspiciousPivot } from "./factorise.ts";
export { nullVector } from "./null-vector.ts";
export { componentError, type Refined, residual, solveRefined } from "./refine.ts";
export { multiply, multiplyAbsolute, type SymmetricMatrix } from "./symmetric-matrix.ts";
