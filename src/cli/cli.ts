import manifest from "../../package.json" with { type: "json" };
import { EXIT } from "./exit-code.ts";
import { main } from "./main.ts";

// Until the run says otherwise it has failed: nothing that ends the process early may look like success.
process.exitCode = EXIT.undelivered;
process.on("uncaughtException", (error) => {
  process.exitCode = EXIT.undelivered;
  process.stderr.write(`trysquare: trysquare ${manifest.version} itself failed: ${error.message}\n`);
  process.exit();
});

/** Beside this file once bundled; in the sources elsewhere. */
const worker = new URL(import.meta.url.endsWith(".ts") ? "../host/worker.ts" : "./worker.js", import.meta.url);
const engine = async () => (await import("../host/built-in-engine.ts")).builtInEngine;
process.exitCode = await main(process.argv.slice(2), { engine, worker, version: manifest.version }, process);
