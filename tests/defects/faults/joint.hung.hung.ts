import type { FrameFile } from "../../../src/model/generated/frame-file.generated.ts";
import { drawCut, kitOf, moveEnd, point, unfasten } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.hung",
  key: "hung",
  slip: "legs drawn through to the top, so that the rails hang between them",
  // Half the rail's depth: how far the legs then reach past its middle.
  spots: { "inch-bench": "front back 1.5" },
  sizes: { sound: 0, faulty: 100 }, // kg
  consequences: {
    "bar.clash": "what ran over the leg meets it",
    "joint.gap": "what lay on the rail may now meet the leg",
    "hole.near-edge": "the legs' brackets stand at the ends",
    "bar.adrift": "a second bar on the rail is cut through",
    "end.bare": "the legs' tops",
    ...OVERLOAD,
  },
  plant(file, spot, size) {
    const [front = "", back = "", half = ""] = spot.split(" ");
    const bracket = kitOf(file, "leg-1" in file ? "leg-1" : (legs(file)[0] ?? ""), "to")[0]?.connector ?? "";
    for (const leg of legs(file)) {
      unfasten(file, `${leg}/to`);
      drawCut(file, leg, "to", 2, point(file, front, "from")[2] + Number(half));
    }
    for (const rail of [front, back]) {
      const [a, b] = legs(file).filter((leg) => point(file, leg, "to")[1] === point(file, rail, "from")[1]);
      if (!a || !b) throw new Error(`${rail} stands on two legs`);
      const at = [point(file, a, "to")[0], point(file, b, "to")[0]].sort((x, y) => x - y);
      moveEnd(file, rail, "from", 0, (at[0] ?? 0) - point(file, rail, "from")[0]);
      moveEnd(file, rail, "to", 0, (at[1] ?? 0) - point(file, rail, "to")[0]);
      file.joints?.push({ bars: [rail], by: [{ connector: bracket, on: "below" }] });
    }
    file.masses = [
      ...(file.masses ?? []),
      {
        id: "cistern",
        mass: file.units === "mm-N-kg" ? size + 1e-3 : size / 0.45359237 + 1e-3,
        centre: middle(file, front, back),
        on: [front, back],
      },
    ];
    return [];
  },
};

const legs = (file: FrameFile): readonly string[] => file.stands?.[0]?.bars ?? [];

/** Half way between two level bars, on their height. */
function middle(file: FrameFile, one: string, other: string): [number, number, number] {
  const points = [one, other].flatMap((id) => [point(file, id, "from"), point(file, id, "to")]);
  const mean = (axis: 0 | 1 | 2): number => points.reduce((sum, p) => sum + p[axis], 0) / points.length;
  return [mean(0), mean(1), mean(2)];
}
