import { inspectFrame } from "../inspection/inspect-file.ts";
import { builtInRules } from "../rules/index.generated.ts";
import type { Engine } from "./engine.ts";

/** The engine with the built-in rules. */
export const builtInEngine: Engine = { rules: builtInRules, inspect: inspectFrame };
