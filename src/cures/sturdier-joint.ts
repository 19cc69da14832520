import type { Bracket, Connector } from "../model/stock/stock.ts";
import { type ConnectorList, connectorsOf, inKit } from "./connectors-of-joint.ts";
import type { Cure, Proposal } from "./cure.ts";

const opposite: Readonly<Record<string, string>> = {
  above: "below",
  below: "above",
  inner: "outer",
  outer: "inner",
  "+x": "-x",
  "-x": "+x",
  "+y": "-y",
  "-y": "+y",
  "+z": "-z",
  "-z": "+z",
  A: "C",
  B: "D",
  C: "A",
  D: "B",
};

function sturdier(now: Bracket, other: Connector): other is Bracket {
  if (
    other.kind !== "bracket" ||
    other.slotSize !== now.slotSize ||
    other.screw.split("x")[0] !== now.screw.split("x")[0]
  )
    return false;
  const holes = (part: Bracket): number => Math.min(part.legs.a.holes.length, part.legs.b.holes.length);
  return (
    other.gussets >= now.gussets &&
    holes(other) >= holes(now) &&
    holes(other) + other.gussets > holes(now) + now.gussets &&
    Math.abs(other.width - now.width) < 0.012
  );
}

/** A second connector across the bar, or a bracket with more screws or gussets. */
export const sturdierJoint: Cure = {
  id: "sturdier-joint",
  turn: 2,
  mends: [
    "joint.turns",
    "joint.slips",
    "joint.hung",
    "joint.loosens",
    "frame.sways",
    "frame.unbraced",
    "frame.buckles",
  ],
  *propose(ailment, patient): Iterable<Proposal> {
    const parts = [ailment.at, ...ailment.related].filter((part) => part.kind === "joint").map((part) => part.id);
    const joints =
      parts.length > 0
        ? parts
        : patient.frame.joints
            .filter((joint) => joint.bar === ailment.at.id || ailment.at.kind === "frame")
            .map((joint) => joint.ref.id);
    const lists = new Map<string, ConnectorList>();
    for (const joint of joints) {
      const list = connectorsOf(joint, patient);
      if (list) lists.set(list.pointer, list);
    }
    for (const list of lists.values()) {
      const used = new Set(list.items.map((item) => item.on));
      for (const item of list.items) {
        const across = item.on === undefined ? undefined : opposite[item.on];
        if (across === undefined || used.has(across as never)) continue;
        yield {
          words: `a second ${item.connector} on "${across}"${inKit(list)}`,
          edits: [{ pointer: `${list.pointer}/-`, to: { ...item, on: across } }],
        };
      }
    }
    for (const list of lists.values()) {
      for (const [i, item] of list.items.entries()) {
        const now = patient.frame.stock.connectors.get(item.connector);
        if (now?.kind !== "bracket") continue;
        for (const other of patient.frame.stock.connectors.values()) {
          if (!sturdier(now, other)) continue;
          // All brackets of the list together: a joint of unlike brackets is no neater.
          const edits = list.items.flatMap((each, k) =>
            each.connector === item.connector ? [{ pointer: `${list.pointer}/${k}/connector`, to: other.name }] : [],
          );
          if (list.items.findIndex((each) => each.connector === item.connector) === i)
            yield { words: `${other.name} instead of ${item.connector}${inKit(list)}`, edits };
        }
      }
    }
  },
};
