import { mkdirSync, symlinkSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { stockOfFrame } from "../../src/host/frame-stock.ts";
import { findHouse, HouseUnusable, loadHouse } from "../../src/host/house-files.ts";
import { namedFile } from "../../src/host/named-file.ts";
import { type Folder, temporaryFolder } from "./temporary-folder.ts";

let outer: Folder;
let cwd: string;
beforeEach(() => {
  outer = temporaryFolder();
  cwd = process.cwd();
  mkdirSync(outer.at("work/benches/old"), { recursive: true });
});
afterEach(() => outer.remove());

/** Vitest's workers cannot change folder, so the root of what may be read is given where a function takes one. */
const roots = (): readonly string[] => [outer.at("work")];

describe("a file named by another file", () => {
  it("is found relative to it, with links followed", async () => {
    const path = outer.write("work/a.stock.json", "{}");
    expect(await namedFile(outer.at("work/benches/b.json"), "../a.stock.json", roots())).toMatchObject({ path });
  });

  it.each([
    ["an absolute path", "/etc/passwd", "it is not a relative path"],
    ["a drive", "C:\\stock.json", "it is not a relative path"],
    ["a share", "\\\\host\\stock.json", "it is not a relative path"],
    ["an address", "https://example.invalid/stock.json", "it is not a relative path"],
    ["a file address", "file:///etc/passwd", "it is not a relative path"],
    ["a way out", "../secret.json", "it lies outside the folders of the frame and of the run"],
    ["a link that leads out", "link.json", "it lies outside the folders of the frame and of the run"],
    ["nothing", "nothing.json", "it does not exist"],
    ["a zero character", "a\0b", "its name holds a zero character"],
  ])("is refused when it is %s", async (_, written, refused) => {
    outer.write("secret.json", "{}");
    symlinkSync(outer.at("secret.json"), outer.at("work/link.json"));
    expect(await namedFile(outer.at("work/a.json"), written, roots())).toEqual({ refused });
  });
});

describe("the stock files of a frame", () => {
  it("are read in their order, and one that cannot be is a problem at its place", async () => {
    outer.write("work/a.stock.json", '{"a":1}');
    const text = '{"stock":["a.stock.json","../secret.json","./a.stock.json"]}';
    outer.write("secret.json", "top secret");
    const bytes = new TextEncoder().encode(text);
    const { stock, problems } = await stockOfFrame(outer.at("work/f.frame.json"), "f.frame.json", bytes);
    expect(stock).toHaveLength(2);
    expect(problems.map(({ place, found }) => [place.pointer, found.includes("secret")])).toEqual([
      ["/stock/1", false],
    ]);
  });

  it("are seen also when the key is spelled with escapes", async () => {
    const bytes = new TextEncoder().encode('{"\\u0073tock":["nothing.json"]}');
    expect((await stockOfFrame(outer.at("work/f.frame.json"), "f", bytes)).problems).toHaveLength(1);
  });
});

describe("a house file", () => {
  it("is looked for only in the frame's own folder when that lies outside the working folder", async () => {
    outer.write("work/trysquare.house.json", '{"format":1}');
    expect(await findHouse(outer.at("work"))).toBe(outer.at("work/trysquare.house.json"));
    expect(await findHouse(outer.at("work/benches"))).toBeUndefined();
    expect(await findHouse(`${cwd}/tests/host`)).toBeUndefined();
  });

  it("comes after what it is based on, each file once, with stock and modules in order", async () => {
    outer.write("base.json", '{"format":1,"stock":["base.stock.json"],"rules":["rules/a.mjs"]}');
    outer.write("base.stock.json", "{}");
    outer.write("rules/a.mjs", "throw new Error('never run')");
    outer.write("left.json", '{"format":1,"basedOn":["base.json"]}');
    outer.write("right.json", '{"format":1,"basedOn":["base.json"],"rules":["rules/a.mjs"]}');
    const top = outer.write("top.json", '{"format":1,"basedOn":["left.json","right.json"]}');
    const { sources, modules, stock } = await loadHouse(top, true);
    expect(sources.map(({ path }) => path.slice(outer.path.length))).toEqual([
      "/base.json",
      "/left.json",
      "/right.json",
      "/top.json",
    ]);
    expect(modules).toEqual([outer.at("rules/a.mjs")]);
    expect(stock).toHaveLength(1);
  });

  it.each([
    ["is based on itself", '{"format":1,"basedOn":["top.json"]}', "it is based on this very file"],
    ["is based on nothing", '{"format":1,"basedOn":["no.json"]}', "it does not exist"],
    ["names concessions that are not there", '{"format":1,"concessions":"no.json"}', "it does not exist"],
    ["names a folder as stock", '{"format":1,"stock":["work"]}', "it is a folder"],
  ])("is refused when it %s", async (_, text, why) => {
    const top = outer.write("top.json", text);
    const refusal = await loadHouse(top, true).catch((error: unknown) => error);
    expect(refusal).toBeInstanceOf(HouseUnusable);
    expect((refusal as HouseUnusable).problems[0]?.found).toContain(why);
  });

  it("may stand on sixteen files one on another, and not on seventeen", async () => {
    const chain = (length: number): string => {
      for (let i = 1; i < length; i++)
        outer.write(`${length}-${i}.json`, `{"format":1,"basedOn":["${length}-${i + 1}.json"]}`);
      outer.write(`${length}-${length}.json`, '{"format":1}');
      return outer.at(`${length}-1.json`);
    };
    expect((await loadHouse(chain(16), true)).sources).toHaveLength(16);
    await expect(loadHouse(chain(17), true)).rejects.toMatchObject({
      problems: [{ found: expect.stringContaining("16 deep") as string }],
    });
  });

  it("that was merely found may not name files outside its folder", async () => {
    outer.write("secret.stock.json", "{}");
    const path = outer.write("work/trysquare.house.json", '{"format":1,"stock":["../secret.stock.json"]}');
    await expect(loadHouse(path, false)).rejects.toThrow(HouseUnusable);
    expect((await loadHouse(path, true)).stock).toHaveLength(1);
  });
});
