import type { ToolRoom } from "../facts/tool-room.ts";
import type { SeenPart, ToolScene } from "../facts/tool-scene.ts";
import type { Trial } from "../facts/tool-trial.ts";
import type { Pair } from "../model/stock/stock.ts";
import { escaped, tidy } from "./svg.ts";

/** Side of each view and the space round and between them, in picture units. */
const VIEW = 340;
const EDGE = 30;
const HEAD = 56;
const KEY = 74;
const LINE = "#1c1c1c";
const FAINT = "#6e6e6e";
const METAL = "#b4b4b4";
const BELOW = "#ececec";
const FREE = "#cfe3d4";
const TOOL = "#2f5d8a";
const DRIVE = "#ffffff";
const HAND = "#8a4b08";

/** One view: where a point [m] comes to lie, and how large a metre is. */
interface View {
  readonly left: number;
  readonly scale: number;
  place(point: Pair): Pair;
}

function viewOf(left: number, low: Pair, size: number): View {
  const scale = VIEW / size;
  return { left, scale, place: ([x, y]) => [left + (x - low[0]) * scale, HEAD + VIEW - (y - low[1]) * scale] };
}

const ring = (view: View, points: readonly Pair[]): string =>
  `M${points.map((point) => view.place(point).map(tidy).join(" ")).join("L")}Z`;

function shapes(view: View, parts: readonly SeenPart[], fill: string): string {
  return parts
    .map(
      ({ of, ring: points }) =>
        `<path d="${ring(view, points)}" fill="${fill}" stroke="${FAINT}" stroke-width="0.8"><title>${escaped(`${of.kind} ${of.id}`)}</title></path>\n`,
    )
    .join("");
}

function rectangle(view: View, from: Pair, to: Pair, fill: string, dashes = ""): string {
  const points: Pair[] = [from, [to[0], from[1]], to, [from[0], to[1]]];
  const dashed = dashes === "" ? "" : ` stroke-dasharray="${dashes}"`;
  return `<path d="${ring(view, points)}" fill="${fill}" stroke="${TOOL}" stroke-width="1.2"${dashed}/>\n`;
}

const words = (x: number, y: number, text: string, size = 13, colour = LINE): string =>
  `<text x="${tidy(x)}" y="${tidy(y)}" font-family="sans-serif" font-size="${size}" fill="${colour}">${escaped(text)}</text>\n`;

/** The part of a circle between two angles, from its middle. */
function sector(view: View, reach: number, from: number, to: number): string {
  const steps = Math.max(2, Math.ceil((to - from) / (Math.PI / 90)));
  const points: Pair[] = [[0, 0]];
  for (let i = 0; i <= steps; i += 1) {
    const angle = from + ((to - from) * i) / steps;
    points.push([reach * Math.cos(angle), reach * Math.sin(angle)]);
  }
  return `<path d="${ring(view, points)}" fill="${FREE}" stroke="none"/>\n`;
}

/** Room for the hand, in outline over what stands there. */
const dotted = (view: View, points: readonly Pair[]): string =>
  `<path d="${ring(view, points)}" fill="none" stroke="${HAND}" stroke-width="1.4" stroke-dasharray="1.5 3" stroke-linecap="round"/>\n`;

function turnView(view: View, scene: ToolScene, { way }: Trial, head: number): string {
  const { arm, stem, bothWays } = way;
  const [cos, sin] = [Math.cos(scene.angle), Math.sin(scene.angle)];
  const corner = (x: number, y: number): Pair => [x * cos - y * sin, x * sin + y * cos];
  const start = bothWays ? -arm.reach : 0;
  const { hand } = scene;
  const fingers = hand && [
    corner(bothWays ? -hand.radius : (hand.inner ?? 0), -hand.halfWidth),
    corner(hand.radius, -hand.halfWidth),
    corner(hand.radius, hand.halfWidth),
    corner(bothWays ? -hand.radius : (hand.inner ?? 0), hand.halfWidth),
  ];
  const handle = [
    corner(start, -arm.halfWidth),
    corner(arm.reach, -arm.halfWidth),
    corner(arm.reach, arm.halfWidth),
    corner(start, arm.halfWidth),
  ];
  const [x, y] = view.place([0, 0]);
  const round = (radius: number, fill: string, line: string): string =>
    `<circle cx="${tidy(x)}" cy="${tidy(y)}" r="${tidy(radius * view.scale)}" fill="${fill}" stroke="${line}" stroke-width="1"/>\n`;
  const reach = Math.hypot(arm.reach, arm.halfWidth);
  return [
    shapes(view, scene.turn.below, BELOW),
    ...scene.free.map((arc) => sector(view, reach, arc.from, arc.to)),
    shapes(view, scene.turn.inTheWay, METAL),
    `<circle cx="${tidy(x)}" cy="${tidy(y)}" r="${tidy(reach * view.scale)}" fill="none" stroke="${TOOL}" stroke-width="0.8" stroke-dasharray="4 3"/>\n`,
    round(head, DRIVE, LINE),
    `<path d="${ring(view, handle)}" fill="${scene.serves ? TOOL : "none"}" fill-opacity="0.35" stroke="${TOOL}" stroke-width="1.2"/>\n`,
    round(Math.max(...stem.map((rung) => rung.radius)), "none", TOOL),
    fingers ? dotted(view, fingers) : "",
  ].join("");
}

function sideView(view: View, scene: ToolScene, { way }: Trial, room: ToolRoom): string {
  const { depth, screw, hole } = room.socket;
  const { arm, stem, bothWays } = way;
  const head = screw.screw.headDiameter / 2;
  const top = hole < Infinity ? depth - room.socket.bite : 0;
  const start = bothWays ? -arm.reach : -arm.halfWidth;
  const { hand } = scene;
  const from = bothWays ? start : (hand?.inner ?? 0);
  const tool = (lift: number, fill: string, dashes: string): string =>
    [
      ...stem.map((rung) =>
        rectangle(view, [-rung.radius, rung.from + lift], [rung.radius, rung.to + lift], fill, dashes),
      ),
      rectangle(view, [start, arm.from + lift], [arm.reach, arm.to + lift], fill, dashes),
    ].join("");
  return [
    shapes(view, scene.side, METAL),
    `<path d="${ring(view, [
      [-head, -top - screw.screw.headHeight],
      [head, -top - screw.screw.headHeight],
      [head, -top],
      [-head, -top],
    ])}" fill="${DRIVE}" stroke="${LINE}" stroke-width="1"/>\n`,
    tool(0, "none", "4 3"),
    scene.goesIn ? `<g fill-opacity="0.35">\n${tool(-depth, TOOL, "")}</g>\n` : "",
    hand
      ? dotted(view, [
          [from, hand.zMin],
          [hand.radius, hand.zMin],
          [hand.radius, hand.zMax],
          [from, hand.zMax],
        ])
      : "",
  ].join("");
}

/** What stands under the two views, worded by the caller: values print in the frame's units. */
export interface SweepCaption {
  readonly title: string;
  readonly lines: readonly string[];
}

/**
 * A tool on a screw as an SVG document: left the turn of its handle seen along the screw, free arcs tinted, what lies in its way in
 * grey and what lies lower in pale grey; right a slice through handle and screw, the tool at work filled and put in dashed.
 * Attributes only: no script, no style sheet, nothing fetched.
 */
export function toolSweepPicture(room: ToolRoom, trial: Trial, scene: ToolScene, caption: SweepCaption): string {
  const { arm, stem } = trial.way;
  const reach = 1.12 * Math.hypot(arm.reach, arm.halfWidth, ...stem.map((rung) => rung.radius));
  const turn = viewOf(EDGE, [-reach, -reach], 2 * reach);
  const low = -room.socket.depth - room.screw.screw.headHeight - 0.012;
  const high = Math.max(...stem.map((rung) => rung.to), arm.to) + 0.03;
  const size = Math.max(2 * reach, high - low);
  const side = viewOf(2 * EDGE + VIEW, [-size / 2, (high + low - size) / 2], size);
  const [width, height] = [3 * EDGE + 2 * VIEW, HEAD + VIEW + KEY];
  // A picture within the picture cuts off what runs out of its view.
  const cut = (view: View, drawn: string): string =>
    `<svg x="${tidy(view.left)}" y="${HEAD}" width="${VIEW}" height="${VIEW}" viewBox="${tidy(view.left)} ${HEAD} ${VIEW} ${VIEW}" overflow="hidden">\n${drawn}</svg>\n`;
  const frame = (view: View): string =>
    `<rect x="${tidy(view.left)}" y="${HEAD}" width="${VIEW}" height="${VIEW}" fill="none" stroke="${LINE}" stroke-width="1"/>\n`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img">\n`,
    `<title>${escaped(caption.title)}</title>\n`,
    `<rect x="0" y="0" width="${width}" height="${height}" fill="#ffffff"/>\n`,
    words(EDGE, 24, caption.title, 16),
    words(EDGE, HEAD - 8, "along the screw", 12, FAINT),
    words(2 * EDGE + VIEW, HEAD - 8, "from the side, through the handle", 12, FAINT),
    `${cut(turn, turnView(turn, scene, trial, room.screw.screw.headDiameter / 2))}${frame(turn)}`,
    `${cut(side, sideView(side, scene, trial, room))}${frame(side)}`,
    ...caption.lines.map((line, i) => words(EDGE, HEAD + VIEW + 24 + 18 * i, line, 13)),
    "</svg>\n",
  ].join("");
}
