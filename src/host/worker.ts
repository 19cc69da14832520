import { parentPort } from "node:worker_threads";
import { builtInEngine } from "./built-in-engine.ts";
import { serveRules } from "./rule-thread/serve.ts";

if (parentPort !== null) serveRules(builtInEngine, parentPort);
