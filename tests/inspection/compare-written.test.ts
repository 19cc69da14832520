import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compareFiles } from "../../src/inspection/compare-written.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { partLines } from "../../src/report/compare/part-words.ts";

const guard = (): FrameFile => JSON.parse(readFileSync("docs/demo/mixer-guard.frame.json", "utf8"));
type Loose = Record<string, Record<string, unknown>[]>;

function changesOf(edit: (file: Loose) => void, renamed: readonly { from: string; to: string }[] = []) {
  const after = guard();
  edit(after as unknown as Loose);
  return compareFiles(guard(), after, renamed);
}

const nothing = { added: [], removed: [], changed: [] };

describe("what two files say otherwise beside their bars", () => {
  it("is nothing for the same file, its keys in another order, and other notes", () => {
    expect(changesOf(() => {})).toEqual(nothing);
    const turned = changesOf((file) => {
      file.masses = (file.masses ?? []).map((mass) => Object.fromEntries(Object.entries(mass).reverse()));
      Object.assign(file, { notes: "again", revision: "B" });
    });
    expect(turned).toEqual(nothing);
  });

  it("names the keys that changed of a panel, a door and a mass, as written", () => {
    const changes = changesOf((file) => {
      Object.assign(file.panels?.at(-1) ?? {}, { sheet: "polycarbonate-6" });
      Object.assign(file.doors?.[0] ?? {}, { swing: [0, 70] });
      Object.assign(file.masses?.[0] ?? {}, { mass: 40 });
    });
    expect(changes.changed).toEqual([
      { list: "panels", part: "roof", keys: [{ key: "sheet", from: "polycarbonate-5", to: "polycarbonate-6" }] },
      { list: "doors", part: "door", keys: [{ key: "swing", from: [0, 110], to: [0, 70] }] },
      { list: "masses", part: "switch-box", keys: [{ key: "mass", from: 4, to: 40 }] },
    ]);
    expect(partLines(changes, 12)).toEqual([
      "1 panel changed in sheet polycarbonate-5 → polycarbonate-6: roof",
      "1 door changed in swing [0, 110] → [0, 70]: door",
      "1 mass changed in mass 4 → 40: switch-box",
    ]);
  });

  it("pairs entries without an id by what they concern, and tells those that came and went", () => {
    const changes = changesOf((file) => {
      Object.assign(file.loads?.[0] ?? {}, { force: 300 });
      file.joints?.splice(1, 1);
      file.zones?.push({ id: "belt", box: [], risk: "low" });
    });
    expect(changes).toEqual({
      added: [{ list: "zones", part: "belt" }],
      removed: [{ list: "joints", part: "post-2 + post-3" }],
      changed: [{ list: "loads", part: "lean on mid-back + mid-front", keys: [{ key: "force", from: 250, to: 300 }] }],
    });
  });

  it("tells words about the whole frame, and a limit of one bar", () => {
    const changes = changesOf((file) => {
      Object.assign(file.site ?? {}, { vibration: "strong" });
      Object.assign(file.bars?.[0] ?? {}, { criteria: { "bar.sag": 8 } });
    });
    expect(partLines(changes, 12)).toEqual([
      "the frame changed in site.vibration light → strong",
      "1 bar changed in criteria.bar.sag not given → 8: post-1",
    ]);
  });

  it("does not take a bar's new name for a change of what holds it", () => {
    const renamed = JSON.parse(JSON.stringify(guard()).replaceAll('"mid-left"', '"left-rail"')) as FrameFile;
    expect(compareFiles(guard(), renamed, [{ from: "mid-left", to: "left-rail" }])).toEqual(nothing);
  });
});
