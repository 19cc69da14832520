import { main } from "../../src/cli/main.ts";
import { fakeEngine } from "./fake-engine.ts";

/** Beside the bundle that the tests make of this file. */
const worker = new URL("./worker.js", import.meta.url);
const tool = { engine: async () => fakeEngine, worker, version: "0.0.0-test" };
process.exitCode = await main(process.argv.slice(2), tool, process);
