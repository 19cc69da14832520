import type { Ref } from "../model/ref.ts";
import type { Cure, Proposal } from "./cure.ts";

/** A screw of the same thread and head in another length, nearest first. */
export const otherScrew: Cure = {
  id: "other-screw",
  turn: 1,
  mends: ["screw.misfit"],
  *propose(ailment, patient): Iterable<Proposal> {
    const connector = ailment.at.id.split("/").slice(0, 2).join("/");
    const [jointId = "", number = "1"] = connector.split("/");
    const joint = patient.frame.joints.find((j) => j.ref.id === jointId);
    const fastening = patient.frame.fastenings.find((f) => f.ref.id === jointId);
    const choice = joint?.connectors[Number(number.split("-")[0]) - 1] ?? fastening?.connector;
    if (!choice) return;
    const at: Ref = { kind: "joint", id: jointId };
    const pointer = patient.pointerOf(at);
    const index = /^\/joints\/(\d+)$/.exec(pointer)?.[1];
    const by = index === undefined ? undefined : patient.file.joints?.[Number(index)]?.by;
    const list = typeof by === "string" ? `/kits/${by}` : `${pointer}/by`;
    const target = fastening ? `${pointer}/screw` : `${list}/${Number(number.split("-")[0]) - 1}/screw`;
    const now = choice.screw;
    const others = [...patient.frame.stock.screws.values()].filter(
      (screw) => screw.thread === now.thread && screw.head === now.head && screw.name !== now.name,
    );
    others.sort((a, b) => Math.abs(a.length - now.length) - Math.abs(b.length - now.length) || a.length - b.length);
    for (const screw of others) yield { words: `screw ${screw.name}`, edits: [{ pointer: target, to: screw.name }] };
  },
};
