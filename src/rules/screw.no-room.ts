import { fingerRoom, fistRoom } from "../criteria/hand-widths.ts";
import { ballEndAt } from "../facts/ball-end.ts";
import { comesBuilt } from "../facts/comes-built.ts";
import { handRoomOf } from "../facts/hand-room.ts";
import { headRoom } from "../facts/head-room.ts";
import { towards } from "../facts/slot-slides.ts";
import { toolRoom } from "../facts/tool-room.ts";
import { type ToolShifts, toolShifts } from "../facts/tool-shifts.ts";
import { goesIn, mostInTheWay, serves } from "../facts/tool-trial.ts";
import type { Way } from "../facts/tool-ways.ts";
import type { Ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const MOVED =
  "move {moves:part} {shift:length} towards {towards:end}: there a tool goes in and turns, with room for the hand";

/** What the exact advice says of the least move that helps, where one is found. */
function movedBy(found: ReturnType<ToolShifts["shiftOf"]>) {
  if (!found) return {};
  const { slide, move } = found;
  return { moves: slide.moves as Ref, shift: si(Math.abs(move), "length"), towards: towards(slide, move) };
}

const wayWords = ({ tool, by }: Way): string => `${tool.name} by its ${by}`;

export const rule = defineRule({
  id: "screw.no-room",
  title: "A tool reaches every screw and turns, with room for the hand",
  group: "access and build",
  level: "hold",
  basis: [
    "ISO 2936:2014: arms of hexagon socket screw keys",
    "ISO 4762, ISO 7380-1, ISO 10642: heads and sockets",
    "geometry: a hexagon comes round every 60°",
    "ISO 15534-3: breadths of hand and finger, from memory",
  ],
  needs: { toolRoom, headRoom, toolShifts, comesBuilt },
  criteria: { fingers: fingerRoom, fist: fistRoom },
  messages: {
    entry: {
      text: "{room:length} is free in front of the screw before {part:part}: {tool:word} does not go in",
      advice: "move it along its slot, or put it on another face",
      exact: MOVED,
      measures: "length",
      sense: "at least",
    },
    swing: {
      text: "{tool:word} turns {arc:angle} in the screw, no further for {part:part}",
      advice: "move it along its slot, or put it on another face",
      exact: MOVED,
      measures: "angle",
      sense: "at least",
    },
    ball: {
      text: "{tool:word} gets to the screw {tilt:angle} off its axis: its ball end runs the screw in and bears {torque:moment} at most, but the last turn needs a key put on straight",
      advice: "run it in with the ball end, and tighten it before what is in the way of a straight key is in place",
      level: "note",
    },
    hand: {
      text: "{tool:word} turns in the screw, but {part:part} leaves the hand that holds it {room:length} across",
      advice: "move it along its slot, put it on another face, or tighten it before {part:part} is in place",
      exact: MOVED,
      measures: "length",
      sense: "at least",
    },
  },
  *inspect({ toolRoom: rooms, headRoom: near, toolShifts: shifts, comesBuilt: came }, { fingers, fist }, say) {
    const heads = new Set(near.filter(({ keyToHead }) => keyToHead < 0).map(({ screw }) => screw.ref.id));
    for (const room of rooms) {
      const { connector, screw, best } = room;
      const { ref } = screw;
      const piece = came.around(connector);
      if (piece) {
        yield notApplicable(ref, `comes tightened in ${piece.ref.id}`);
        continue;
      }
      if (heads.has(ref.id)) {
        yield notApplicable(ref, "screw.crowded says which head is in the way");
        continue;
      }
      if (!best) {
        yield undecided(ref, "a tool in the kit of this size, strong and long enough");
        continue;
      }
      const { tool } = best.way;
      const words = wayWords(best.way);
      const limits = { fingers: fingers.at(ref), fist: fist.at(ref) };
      const asked = { fingers: limits.fingers.value, fist: limits.fist.value };
      const moved = serves(best) ? {} : movedBy(shifts.shiftOf(connector, asked));
      const basis = `tool ${tool.name}: ${tool.source}`;
      if (Number.isFinite(best.straight)) {
        const free = si(best.straight, "length");
        const limit = { value: si(best.asks, "length"), from: "stock" as const, basis };
        yield say.entry(
          ref,
          { room: free, part: best.stopper ?? ref, tool: words, ...moved },
          { measured: free, limit },
        );
      }
      const ball = serves(best) ? undefined : ballEndAt(room);
      if (ball) {
        const tilt = si(ball.tilt, "angle");
        const torque = si(ball.tool.torque, "moment");
        yield say.ball(ref, { tool: ball.tool.name, tilt, torque }, false);
      }
      if (!goesIn(best)) continue;
      const arc = si(best.swing, "angle");
      const limit = { value: tool.swing, from: "stock" as const, basis };
      const part = mostInTheWay(best) ?? ref;
      yield say.swing(ref, { tool: words, arc, part, ...moved }, { measured: arc, limit });
      const hand = handRoomOf(room, asked);
      if (!hand) continue;
      const { way } = hand.trial;
      const width = si(hand.width, "length");
      const roomier = hand.by ? movedBy(shifts.shiftOf(connector, asked)) : {};
      yield say.hand(
        ref,
        { tool: wayWords(way), part: hand.by ?? ref, room: width, ...roomier },
        { measured: width, limit: limits[way.grip] },
      );
    }
  },
});
