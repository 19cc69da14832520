import { fingerRoom, fistRoom } from "../criteria/hand-widths.ts";
import { factOf } from "../facts/fact.ts";
import { type HandWidths, handRoomOf, handRoomOn } from "../facts/hand-room.ts";
import { WIDEST } from "../facts/hands.ts";
import { towards } from "../facts/slot-slides.ts";
import { servesAtEnd, type ToolRoom, toolRoom } from "../facts/tool-room.ts";
import { toolShifts } from "../facts/tool-shifts.ts";
import { mostInTheWay, serves, type Trial, tryWay } from "../facts/tool-trial.ts";
import type { HouseSettings } from "../house/house-in-force.ts";
import { Limits } from "../inspection/limits.ts";
import type { Frame } from "../model/frame.ts";
import type { ReachLine, ReachScrew, ReachSheet } from "../report/reach/reach-sheet.ts";

const lineOf = (trial: Trial, { socket, near }: ToolRoom): ReachLine => ({
  trial,
  serves: serves(trial),
  inTheWay: mostInTheWay(trial)?.id,
  hand: serves(trial) ? handRoomOn(trial, socket, near, WIDEST).width : undefined,
});

/** The least move along the slot that frees a screw for a tool and for these hands. */
function moveOf(room: ToolRoom, frame: Frame, asked: HandWidths): ReachScrew["move"] {
  if (!room.best || (serves(room.best) && handRoomOf(room, asked)?.by === undefined)) return undefined;
  const found = factOf(toolShifts, frame).shiftOf(room.connector, asked);
  if (!found) return "none";
  const { slide, move } = found;
  return { moves: slide.moves.id, by: Math.abs(move), towards: towards(slide, move).id };
}

function screwOf(room: ToolRoom, all: boolean, frame: Frame, asked: HandWidths): ReachScrew {
  const tried = all ? room.ways.map((way) => tryWay(way, room.socket, room.near)) : room.best ? [room.best] : [];
  return {
    room,
    lines: tried.map((trial) => lineOf(trial, room)),
    atEnd: servesAtEnd(room),
    move: moveOf(room, frame, asked),
  };
}

/** The tools on every screw of a frame, or all ways on one; the names of its screws where there is none of that name. */
export function reachSheetOf(
  file: string,
  frame: Frame,
  screw: string | undefined,
  house: HouseSettings,
): ReachSheet | { readonly screws: readonly string[] } {
  const rooms = factOf(toolRoom, frame);
  const named = screw === undefined ? rooms : rooms.filter((room) => room.screw.ref.id === screw);
  if (screw !== undefined && named.length === 0) return { screws: rooms.map((room) => room.screw.ref.id) };
  const one = screw !== undefined;
  const limits = new Limits(frame, { ...house, rules: [] });
  const [fingers, fist] = [limits.given(fingerRoom), limits.given(fistRoom)];
  const asked = ({ screw: { ref } }: ToolRoom): HandWidths => ({
    fingers: fingers.at(ref).value,
    fist: fist.at(ref).value,
  });
  return { file, units: frame.units, one, list: named.map((room) => screwOf(room, one, frame, asked(room))) };
}
