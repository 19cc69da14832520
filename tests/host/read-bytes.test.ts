import { execFileSync } from "node:child_process";
import { symlinkSync, truncateSync } from "node:fs";
import { afterAll, expect, it } from "vitest";
import { readBytes } from "../../src/host/read-bytes.ts";
import { temporaryFolder } from "./temporary-folder.ts";

const folder = temporaryFolder();
afterAll(() => folder.remove());

it("reads a regular file, also through a link, and an empty one", async () => {
  const path = folder.write("a.json", "{}");
  symlinkSync(path, folder.at("link.json"));
  for (const name of ["a.json", "link.json"])
    expect(await readBytes(folder.at(name))).toEqual({ bytes: new TextEncoder().encode("{}") });
  expect(await readBytes(folder.write("empty", ""))).toEqual({ bytes: new Uint8Array() });
});

it("reads a file at the size limit and refuses one byte more", async () => {
  expect(await readBytes(folder.write("ten", "0123456789"), 10)).toHaveProperty("bytes");
  expect(await readBytes(folder.write("eleven", "0123456789x"), 10)).toEqual({ refused: "it is larger than 10 bytes" });
});

it("refuses a huge sparse file without reading it", async () => {
  const path = folder.write("sparse", "");
  truncateSync(path, 3 * 2 ** 30);
  const begun = performance.now();
  expect(await readBytes(path)).toHaveProperty("refused");
  expect(performance.now() - begun).toBeLessThan(1000);
});

it("refuses files that tell no size, like those of /proc, only when they hold too much", async () => {
  expect(await readBytes("/proc/self/status")).toHaveProperty("bytes");
  expect(await readBytes("/proc/self/status", 10)).toEqual({ refused: "it is larger than 10 bytes" });
});

it("refuses what is no regular file at once, in words without a path", async () => {
  execFileSync("mkfifo", [folder.at("pipe")]);
  symlinkSync("circle", folder.at("circle"));
  expect(await readBytes(folder.at("pipe"))).toEqual({ refused: "it is not a regular file" });
  expect(await readBytes("/dev/zero")).toEqual({ refused: "it is not a regular file" });
  expect(await readBytes(folder.path)).toEqual({ refused: "it is a folder" });
  expect(await readBytes(folder.at("nothing"))).toEqual({ refused: "it does not exist" });
  expect(await readBytes(folder.at("circle"))).toEqual({ refused: "its links go round in a circle" });
  expect(await readBytes(folder.at("x".repeat(6000)))).toEqual({ refused: "its name is too long" });
  expect(await readBytes(`${folder.at("a.json")}/b`)).toEqual({ refused: "a part of its path is not a folder" });
});
