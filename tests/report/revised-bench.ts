import { textOf } from "../demo/inspect-demo.ts";

interface Bench {
  revision: string;
  bars: { id: string; profile: string; from: number[]; to: number[] }[];
  joints: { bars: string[] }[];
  panels: { bars: string[] }[];
}

/** The sound potting bench as its next revision: an upright more, a shelf bar less, a cross bar moved by 150 mm, a side bar of another profile. */
export function revisedBench(): string {
  const bench = JSON.parse(textOf("potting-bench")) as Bench;
  const bar = (id: string): Bench["bars"][number] => {
    const found = bench.bars.find((one) => one.id === id);
    if (!found) throw new Error(`the bench has no ${id}`);
    return found;
  };
  bench.revision = "D";
  for (const point of [bar("cross-3").from, bar("cross-3").to]) point[0] = 1250;
  bar("side-2").profile = "40x80-8";
  bench.bars.push({ ...bar("upright-1"), id: "upright-3", from: [900, 680, 840], to: [900, 680, 1400] });
  bench.bars = bench.bars.filter(({ id }) => id !== "shelf-2");
  for (const user of [...bench.joints, ...bench.panels]) user.bars = user.bars.filter((id) => id !== "shelf-2");
  for (const joint of bench.joints) if (joint.bars.includes("upright-1")) joint.bars.push("upright-3");
  return JSON.stringify(bench);
}
