import { main } from "../../src/cli/main.ts";
import { fakeEngine } from "./fake-engine.ts";

const worker = new URL("./fake-worker.ts", import.meta.url);
const tool = { engine: async () => fakeEngine, worker, version: "0.0.0-test" };
process.exitCode = await main(process.argv.slice(2), tool, process);
