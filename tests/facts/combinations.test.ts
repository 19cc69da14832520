import { describe, expect, it } from "vitest";
import { acting } from "../../src/facts/acting.ts";
import { combinations, opposed, resultantOf } from "../../src/facts/combinations.ts";
import { factOf } from "../../src/facts/fact.ts";
import { response } from "../../src/facts/response.ts";
import { governedSag, sags } from "../../src/facts/sag.ts";
import { spans } from "../../src/facts/spans.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { gantry } from "../rules/gantry.ts";
import { portal } from "../rules/portal.ts";
import { frameOf, known, one } from "./known.ts";

function loaded(cases: NonNullable<FrameFile["cases"]>, ...names: readonly string[]): FrameFile {
  const file = gantry();
  file.loads = names.map((name) => ({ case: name, on: "front", force: 100 }));
  file.cases = cases;
  return file;
}

function loadedRoaming(): FrameFile {
  const file = loaded([], "goods");
  file.loads = [{ case: "goods", on: "front", force: 100, at: "worst" }];
  return file;
}

const namesOf = (file: FrameFile, kind: string): readonly string[] =>
  known(combinations, file)
    .all.filter((c) => c.kind === kind)
    .map((c) => c.name);

describe("combinations", () => {
  it("take one case as it is, with the factors of EN 1990, out of plumb four ways, and with a person leaning", () => {
    const file = loaded([], "goods");
    expect(namesOf(file, "service")).toEqual(["self-weight + goods"]);
    const strong = "1.35 self-weight + 1.5 goods";
    expect(namesOf(file, "strength")).toEqual([
      strong,
      ...["+x", "-x", "+y", "-y"].map((side) => `${strong}, out of plumb along ${side}`),
      "self-weight + 1.5 goods",
      ...["+x", "-x", "+y", "-y"].map((side) => `1.35 self-weight + 1.05 goods + 1.5 a person leaning along ${side}`),
    ]);
    const { all } = known(combinations, file);
    // Cases: weight, goods, both laid over along x, both along y, a unit push along x and along y.
    expect(all[1]?.factors).toEqual([1.35, 1.5, 0, 0, 0, 0, 0, 0]);
    expect(all[2]?.factors).toEqual([1.35, 1.5, 1.35 / 200, 1.5 / 200, 0, 0, 0, 0]);
    expect(all[5]?.factors).toEqual([1.35, 1.5, 0, 0, -1.35 / 200, -1.5 / 200, 0, 0]);
    expect(all[6]?.factors).toEqual([1, 1.5, 0, 0, 0, 0, 0, 0]);
    expect(all.find((c) => c.name.endsWith("leaning along -y"))?.factors).toEqual([1.35, 1.05, 0, 0, 0, 0, 0, -375]);
  });

  it("name a push in the units of the frame", () => {
    const metric = loaded([], "goods");
    const inches = { ...metric, units: "in-lbf-lb" } as FrameFile;
    const inch = (at: readonly unknown[]) => at.map((c) => Number(c) / 25.4) as [number, number, number];
    inches.bars = metric.bars.map((bar) => ({ ...bar, from: inch(bar.from), to: inch(bar.to) })) as FrameFile["bars"];
    expect(namesOf(metric, "sway").at(-1)).toMatch(/ a push of \d+ N along -y$/);
    expect(namesOf(inches, "sway").at(-1)).toMatch(/ a push of [\d.]+ lbf along -y$/);
  });

  it("of cases that exclude each other cover every fullest set, and none with both", () => {
    const file = loaded(
      [{ id: "snow" }, { id: "summer", excludes: ["snow"] }, { id: "goods" }],
      "snow",
      "summer",
      "goods",
    );
    expect(namesOf(file, "service")).toEqual([
      "self-weight + goods",
      "self-weight + snow",
      "self-weight + summer",
      "self-weight + goods + snow",
      "self-weight + goods + summer",
    ]);
  });

  it("of three cases and more also leave out one of each fullest set, for a beam that the third span would hold down", () => {
    const file = loaded([], "left", "middle", "right");
    expect(namesOf(file, "service")).toEqual([
      "self-weight + left",
      "self-weight + middle",
      "self-weight + right",
      "self-weight + left + middle + right",
      "self-weight + middle + right",
      "self-weight + left + right",
      "self-weight + left + middle",
    ]);
    expect(namesOf(file, "strength")).toContain("1.35 self-weight + 1.5 left + 1.5 middle");
    expect(namesOf(file, "strength")).toContain("self-weight + 1.5 left + 1.5 right");
  });

  it("try a roaming load at five places, one at a time", () => {
    const file = loaded([], "goods");
    file.loads = [{ case: "goods", on: "front", force: 100, at: "worst" }];
    expect(known(acting, file).cases.filter((c) => c.name === "goods")).toHaveLength(5);
    const service = known(combinations, file).all.filter((c) => c.kind === "service");
    expect(service.map((c) => c.factors.slice(0, 6))).toEqual(
      [0, 1, 2, 3, 4].map((place) => [1, ...[0, 1, 2, 3, 4].map((i) => (i === place ? 1 : 0))]),
    );
  });

  it("try a roaming load in the middle of every span besides, where the quarters lie on posts", () => {
    const props = (count: number): FrameFile => {
      const file = loaded([], "goods");
      const front = file.bars.find(({ id }) => id === "front");
      const [from = 0, y = 0, z = 0] = (front?.from ?? []) as number[];
      const to = Number(front?.to[0]);
      const bars = Array.from({ length: count }, (_, i) => {
        const x = from + ((i + 1) * (to - from)) / (count + 1);
        return { id: `prop-${i}`, profile: "40x40-8", from: [x, y, z], to: [x, y, z - 300] } as const;
      });
      file.bars.push(...(bars as unknown as typeof file.bars));
      file.joints?.push({
        bars: bars.map(({ id }) => `${id}/from`) as unknown as [string],
        by: [{ connector: "inside-bracket-40", on: "+x" }],
      });
      file.loads = [{ case: "goods", on: "front", force: 100, at: "worst" }];
      return file;
    };
    const placesOf = (file: FrameFile) =>
      known(acting, file).cases.flatMap(({ roams }) => (roams ? [Math.round(roams.at[0] * 1e3)] : []));
    const usual = placesOf(loadedRoaming());
    const [low = 0, , , , high = 0] = usual;
    // What the bar is joined to: its legs near its ends, and the props.
    const found = placesOf(props(3));
    expect(found.slice(0, 5)).toEqual(usual);
    for (const share of [0.375, 0.625]) expect(found.slice(5)).toContain(Math.round(low + share * (high - low)));
    // Of many spans every sixteenth.
    const many = placesOf(props(11)).slice(5);
    expect(many).toEqual(
      [1, 2, 3, 5, 6, 7, 9, 10, 11, 13, 14, 15].map((i) => Math.round(low + (i / 16) * (high - low))),
    );
    expect(namesOf(props(3), "service")).toContain("self-weight + goods 38 % along");
  });

  it("name every case that is always there, with the factor of what is permanent", () => {
    const file = loaded([{ id: "tank", kind: "permanent" }], "tank", "goods");
    expect(namesOf(file, "service")).toEqual(["self-weight + tank + goods"]);
    expect(namesOf(file, "strength")).toContain("1.35 self-weight + 1.35 tank + 1.5 goods");
  });

  it("ask what bears down besides without what pushes sideways, for friction then lends thrust to it", () => {
    const file = loaded([], "goods");
    file.loads = [
      { case: "goods", on: "front", force: 100 },
      { case: "goods", on: "front", force: 60, direction: "+y" },
    ];
    const { all, cases } = known(combinations, file);
    const left = all.filter(({ name }) => name.endsWith("its push sideways left out"));
    expect(left.map(({ kind, sideways }) => `${kind} ${sideways}`)).toEqual(["service false", "strength false"]);
    const [service] = left;
    const whole = all.find(({ name }) => name === "self-weight + goods");
    expect(whole?.sideways).toBe(true);
    const [x, y, z] = resultantOf(cases, service?.factors ?? []);
    const [, pushed, down] = resultantOf(cases, whole?.factors ?? []);
    expect([x, y, pushed]).toEqual([0, 0, 60]);
    expect(z).toBeCloseTo(down, 9);
    // Of loads that only bear down nothing is left out.
    expect(namesOf(loaded([], "goods"), "service").some((name) => name.includes("left out"))).toBe(false);
  });

  it("give a bench no less sag for a push beside its goods: feet of two portals lend no thrust (within the drift of its ends)", () => {
    const sagUnder = (push: number): number => {
      const file = portal();
      if (push > 0) file.loads?.push({ case: "goods", on: "top-2", force: push, direction: "+y" });
      const frame = frameOf(file);
      const found = factOf(response, frame);
      const [span] = factOf(spans, frame).get("top-1") ?? [];
      const views = found.kind === "solved" ? found.views : [];
      return one(governedSag(factOf(sags, frame), views, "top-1", one(span, "span")), "sag").measured;
    };
    expect(sagUnder(120) / sagUnder(0)).toBeGreaterThan(0.97);
  });

  it("take accidents for strength alone, at their own size beside 0.8 of what else may stand there (EN 1990, 6.4.3.3)", () => {
    const file = loaded([{ id: "goods" }, { id: "bump", kind: "accidental" }], "goods", "bump");
    expect(namesOf(file, "service")).toEqual(["self-weight + goods"]);
    const found = known(combinations, file).all.find((c) => c.name.includes("bump"));
    expect(found?.name).toBe("self-weight + 0.8 goods + bump by accident");
    expect(found?.factors.slice(0, 3)).toEqual([1, 1, 0.8]);
  });

  it("act beside every fullest set, whichever cases exclude which", () => {
    const pairs = [
      { id: "a", excludes: ["b"] },
      { id: "b", excludes: ["a"] },
      { id: "c", excludes: ["d"] },
      { id: "d", excludes: ["c"] },
    ];
    const file = loaded([...pairs, { id: "hit", kind: "accidental" }], "a", "b", "c", "d", "hit");
    const sets = ["a + c", "a + d", "b + c", "b + d"];
    expect(namesOf(file, "service")).toEqual(expect.arrayContaining(sets.map((set) => `self-weight + ${set}`)));
    const factored = sets.map((set) => set.replace(/[a-d]/g, (id) => `0.8 ${id}`));
    expect(namesOf(file, "strength")).toEqual(
      expect.arrayContaining(factored.map((set) => `self-weight + ${set} + hit by accident`)),
    );
    const pushed = namesOf(file, "sway").filter((name) => name.endsWith("along +x"));
    for (const set of sets)
      expect(pushed.filter((name) => name.includes(`self-weight + ${set} + a push`))).toHaveLength(1);
  });

  it("are two sets for each case where there are too many, filled up both ways", () => {
    // Five pairs: 32 fullest sets.
    const ids = [1, 2, 3, 4, 5].flatMap((i) => [`in-${i}`, `out-${i}`]);
    const other = (id: string) => (id.startsWith("in") ? id.replace("in", "out") : id.replace("out", "in"));
    const file = loaded(
      ids.map((id) => ({ id, excludes: [other(id)] })),
      ...ids,
    );
    const full = namesOf(file, "service").filter((name) => name.split(" + ").length === 6);
    expect(full).toContain("self-weight + in-1 + in-2 + in-3 + in-4 + in-5");
    expect(full).toContain("self-weight + out-1 + out-2 + out-3 + out-4 + out-5");
    for (const id of ids) expect(full.some((name) => name.includes(id))).toBe(true);
    expect(full.length).toBeLessThanOrEqual(20);
  });

  it("are named apart where a load roams, so that leaning one way is compared with leaning the other from one place", () => {
    const file = loaded([], "goods");
    file.loads = [{ case: "goods", on: "front", force: 100, at: "worst" }];
    const { all } = known(combinations, file);
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
    expect(namesOf(file, "service")[2]).toBe("self-weight + goods half way along");
    for (const one of all.filter(({ side, kind }) => side && kind === "strength"))
      expect(all.filter((two) => opposed(one, two))).toHaveLength(1);
  });

  it("move loads that roam apart from each other, however their bars are drawn", () => {
    const places = (flipped: readonly string[], loads: FrameFile["loads"]): readonly string[] => {
      const file = loaded([], "goods");
      file.loads = loads ?? [];
      for (const bar of file.bars) if (flipped.includes(bar.id)) [bar.from, bar.to] = [bar.to, bar.from];
      const frame = frameOf(file);
      const { cases } = factOf(acting, frame);
      return factOf(combinations, frame)
        .all.filter(({ kind }) => kind === "service")
        .map(({ factors }) =>
          cases
            .flatMap(({ name, roams }, i) =>
              factors[i] && roams ? [`${name} ${roams.bar} ${Math.round(roams.at[0] * 1e3)}`] : [],
            )
            .sort()
            .join(", "),
        );
    };
    const roams = { force: 100, at: "worst" } as const;
    const two = [
      { case: "goods", on: "front", ...roams },
      { case: "tools", on: "back", ...roams },
    ] as NonNullable<FrameFile["loads"]>;
    const drawn = places([], two);
    expect(places(["front"], two).toSorted()).toEqual(drawn.toSorted());
    // Beside each bending most in its middle the other stands elsewhere: no longer at like places at a time.
    const together = drawn.filter((one) => one.includes(", "));
    expect(together).toContain("goods front 500, tools back 500");
    expect(together.filter((one) => one.includes("front 500")).length).toBeGreaterThan(1);
    expect(together.filter((one) => one.includes("back 500")).length).toBeGreaterThan(1);
    expect(together.length).toBeLessThanOrEqual(10);
    // One load on two bars roams on each by itself as well.
    const one = [{ case: "goods", on: ["front", "back"], ...roams }] as NonNullable<FrameFile["loads"]>;
    expect(places(["back"], one).toSorted()).toEqual(places([], one).toSorted());
  });

  it("say where each of several roaming loads of a case is", () => {
    const file = loaded([], "goods");
    file.loads = [{ case: "goods", on: ["front", "back"], force: 100, at: "worst" }];
    expect(namesOf(file, "service")[0]).toBe("self-weight + goods (half way along front, half way along back)");
  });
});
