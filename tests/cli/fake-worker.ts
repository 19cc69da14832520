import { parentPort } from "node:worker_threads";
import { serveRules } from "../../src/host/rule-thread/serve.ts";
import { fakeEngine } from "./fake-engine.ts";

if (parentPort !== null) serveRules(fakeEngine, parentPort);
