import { spawn } from "node:child_process";
import { chmodSync, mkdirSync, readdirSync, readFileSync, statSync } from "node:fs";
import { resolve } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { atomicFile } from "../../src/host/atomic-file.ts";
import { type Folder, temporaryFolder } from "./temporary-folder.ts";

let folder: Folder;
beforeEach(() => {
  folder = temporaryFolder();
});
afterEach(() => folder.remove());

const MEGABYTE = "x".repeat(1 << 20);

describe("a file written whole or not at all", () => {
  it("shows nothing under its name until it is finished, however long it is", async () => {
    const path = folder.write("report", "old");
    const sink = atomicFile(path);
    for (let i = 0; i < 3; i++) await sink.write(MEGABYTE);
    expect(readFileSync(path, "utf8")).toBe("old");
    await sink.finish();
    expect(statSync(path).size).toBe(3 * MEGABYTE.length);
    expect(readdirSync(folder.path)).toEqual(["report"]);
  });

  it("leaves the old file and no trace when abandoned", async () => {
    const path = folder.write("report", "old");
    const sink = atomicFile(path);
    await sink.write(MEGABYTE);
    await sink.abandon();
    expect(readFileSync(path, "utf8")).toBe("old");
    expect(readdirSync(folder.path)).toEqual(["report"]);
  });

  it("can be empty, and new", async () => {
    await atomicFile(folder.at("new")).finish();
    expect(readFileSync(folder.at("new"), "utf8")).toBe("");
  });

  it("keeps the mode of the file it replaces", async () => {
    const path = folder.write("report", "old");
    chmodSync(path, 0o604);
    const sink = atomicFile(path);
    await sink.write("new");
    await sink.finish();
    expect(statSync(path).mode & 0o777).toBe(0o604);
  });

  it("refuses folders and devices and a name in no folder, without a trace", async () => {
    mkdirSync(folder.at("sub"));
    for (const target of ["sub", "no/where"]) {
      const sink = atomicFile(folder.at(target));
      await expect(sink.finish()).rejects.toThrow("the report could not be written to");
    }
    await expect(atomicFile("/dev/null").finish()).rejects.toThrow("it is not a regular file");
    expect(readdirSync(folder.path)).toEqual(["sub"]);
  });

  it("is one whole result when four write it at once", async () => {
    const path = folder.at("report");
    const sinks = ["a", "b", "c", "d"].map((letter) => ({ letter, sink: atomicFile(path) }));
    await Promise.all(
      sinks.map(async ({ letter, sink }) => {
        for (let i = 0; i < 3; i++) await sink.write(letter.repeat(1 << 20));
        await sink.finish();
      }),
    );
    const text = readFileSync(path, "utf8");
    expect(text).toBe((text[0] ?? "").repeat(3 << 20));
    expect(readdirSync(folder.path)).toEqual(["report"]);
  });
});

describe.each(["SIGINT", "SIGTERM", "SIGHUP"] as const)("a process that ends by %s while it writes", (signal) => {
  it("dies of the signal, keeps the old file and leaves no temporary one", async () => {
    const path = folder.write("report", "old");
    const script = folder.write(
      "write.ts",
      `import { atomicFile } from ${JSON.stringify(resolve("src/host/atomic-file.ts"))};
       const sink = atomicFile(${JSON.stringify(path)});
       void sink.write("x".repeat(2 ** 21)).then(() => { console.log("half"); setInterval(() => {}, 1000); });`,
    );
    const child = spawn(process.execPath, ["--import", resolve("node_modules/tsx/dist/loader.mjs"), script]);
    await new Promise((half) => child.stdout.once("data", half));
    expect(readdirSync(folder.path)).toHaveLength(3);
    child.kill(signal);
    const [code, by] = await new Promise<unknown[]>((ended) => child.once("close", (...how) => ended(how)));
    expect([code, by]).toEqual([null, signal]);
    expect(readFileSync(path, "utf8")).toBe("old");
    expect(readdirSync(folder.path).sort()).toEqual(["report", "write.ts"]);
  });
});
