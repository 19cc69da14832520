import { factOf } from "../facts/fact.ts";
import { handRoomOn } from "../facts/hand-room.ts";
import { WIDEST } from "../facts/hands.ts";
import { servesAtEnd, type ToolRoom, toolRoom } from "../facts/tool-room.ts";
import { mostInTheWay, serves, type Trial, tryWay } from "../facts/tool-trial.ts";
import type { Frame } from "../model/frame.ts";
import type { ReachLine, ReachScrew, ReachSheet } from "../report/reach/reach-sheet.ts";

const lineOf = (trial: Trial, { socket, near }: ToolRoom): ReachLine => ({
  trial,
  serves: serves(trial),
  inTheWay: mostInTheWay(trial)?.id,
  hand: serves(trial) ? handRoomOn(trial, socket, near, WIDEST).width : undefined,
});

function screwOf(room: ToolRoom, all: boolean): ReachScrew {
  const tried = all ? room.ways.map((way) => tryWay(way, room.socket, room.near)) : room.best ? [room.best] : [];
  return { room, lines: tried.map((trial) => lineOf(trial, room)), atEnd: servesAtEnd(room) };
}

/** The tools on every screw of a frame, or all ways on one; the names of its screws where there is none of that name. */
export function reachSheetOf(
  file: string,
  frame: Frame,
  screw: string | undefined,
): ReachSheet | { readonly screws: readonly string[] } {
  const rooms = factOf(toolRoom, frame);
  const named = screw === undefined ? rooms : rooms.filter((room) => room.screw.ref.id === screw);
  if (screw !== undefined && named.length === 0) return { screws: rooms.map((room) => room.screw.ref.id) };
  const one = screw !== undefined;
  return { file, units: frame.units, one, list: named.map((room) => screwOf(room, one)) };
}
