import type { SectionProperties } from "../facts/sections.ts";
import type { Pair, Profile, Slot } from "../model/stock/stock.ts";
import { escaped, tidy } from "./svg.ts";

/** Longest side of the metal, space round it for names and sizes, and the strip under it for its key; in picture units. */
const SIDE = 360;
const ROOM = 84;
const KEY = 46;
const METAL = "#b4b4b4";
const LINE = "#1c1c1c";
const FAINT = "#6e6e6e";
/** Shear centre and centroid nearer than this are drawn as one, m. */
const ONE_POINT = 1e-4;

interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Where a point [y, z] of the section lies: y up, z to the left, as seen against the bar's x axis. */
  place(point: Pair): Pair;
}

function sheetFor(profile: Profile): Sheet {
  const scale = SIDE / Math.max(profile.height, profile.width);
  const [across, upright] = [profile.width * scale, profile.height * scale];
  return {
    width: across + 2 * ROOM,
    height: upright + 2 * ROOM + KEY,
    place: ([y, z]) => [ROOM + across / 2 - z * scale, ROOM + upright / 2 - y * scale],
  };
}

function text([x, y]: Pair, words: string, size: number, colour = LINE, anchor = "middle"): string {
  return `<text x="${tidy(x)}" y="${tidy(y)}" font-family="sans-serif" font-size="${size}" fill="${colour}" text-anchor="${anchor}">${escaped(words)}</text>\n`;
}

function line([x1, y1]: Pair, [x2, y2]: Pair, colour: string, dashes = ""): string {
  const dashed = dashes === "" ? "" : ` stroke-dasharray="${dashes}"`;
  return `<line x1="${tidy(x1)}" y1="${tidy(y1)}" x2="${tidy(x2)}" y2="${tidy(y2)}" stroke="${colour}" stroke-width="1"${dashed}/>\n`;
}

function metal(profile: Profile, sheet: Sheet): string {
  const rings = [profile.region.outer, ...profile.region.holes].map(
    (ring) => `M${ring.map((point) => sheet.place(point).map(tidy).join(" ")).join("L")}Z`,
  );
  return `<path d="${rings.join("")}" fill="${METAL}" fill-rule="evenodd" stroke="${LINE}" stroke-width="1.2" stroke-linejoin="round"/>\n`;
}

/** Where the name of a slot stands: outside its face, beside the line of the slot, so that no axis crosses it. */
function slotName(profile: Profile, slot: Slot, sheet: Sheet): string {
  const [h, w] = [profile.height / 2, profile.width / 2];
  const at: Readonly<Record<Slot["face"], Pair>> = {
    A: [h, slot.across],
    B: [-slot.across, w],
    C: [-h, -slot.across],
    D: [slot.across, -w],
  };
  const out: Readonly<Record<Slot["face"], Pair>> = { A: [16, -10], B: [-22, -8], C: [16, 22], D: [22, -8] };
  const [x, y] = sheet.place(at[slot.face]);
  const [dx, dy] = out[slot.face];
  return text([x + dx, y + dy], `${slot.face}${slot.number}`, 15, slot.closed ? FAINT : LINE);
}

/** An arrow from the middle of the section past its edge, with the name of the axis. */
function axis(from: Pair, to: Pair, name: string): string {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const size = Math.hypot(dx, dy);
  const [ux, uy] = [dx / size, dy / size];
  const wing = (side: number): string =>
    `${tidy(to[0] - 9 * ux + side * 4 * uy)} ${tidy(to[1] - 9 * uy - side * 4 * ux)}`;
  const head = `<path d="M${tidy(to[0])} ${tidy(to[1])}L${wing(1)}L${wing(-1)}Z" fill="${LINE}"/>\n`;
  return `${line(from, to, LINE, "9 3 2 3")}${head}${text([to[0] + 14 * ux, to[1] + 14 * uy + 5], name, 16)}`;
}

function points(section: SectionProperties, sheet: Sheet): string {
  const [x, y] = sheet.place([section.centroid.y, section.centroid.z]);
  const disc = `<circle cx="${tidy(x)}" cy="${tidy(y)}" r="5" fill="#ffffff" stroke="${LINE}" stroke-width="1.5"/>\n`;
  const cross = line([x - 5, y], [x + 5, y], LINE) + line([x, y - 5], [x, y + 5], LINE);
  const { shearCentre, centroid } = section;
  if (Math.hypot(shearCentre.y - centroid.y, shearCentre.z - centroid.z) < ONE_POINT) return disc + cross;
  const [sx, sy] = sheet.place([shearCentre.y, shearCentre.z]);
  return `${disc}${cross}<path d="M${tidy(sx)} ${tidy(sy - 7)}L${tidy(sx + 7)} ${tidy(sy)}L${tidy(sx)} ${tidy(sy + 7)}L${tidy(sx - 7)} ${tidy(sy)}Z" fill="#ffffff" stroke="${LINE}" stroke-width="1.5"/>\n`;
}

/**
 * A cross-section as an SVG document: metal in grey, slots named by face and number, the axes through the centroid (a crossed
 * disc) and the shear centre (a diamond, where it is another point). Seen against the bar's x axis: y up, z to the left. `size` words
 * the outer size. Attributes only: no script, no style sheet, nothing fetched.
 */
export function sectionPicture(profile: Profile, section: SectionProperties, size: string): string {
  const sheet = sheetFor(profile);
  const { width, height } = sheet;
  const middle = sheet.place([section.centroid.y, section.centroid.z]);
  const [, top] = sheet.place([profile.height / 2, 0]);
  const [left] = sheet.place([0, profile.width / 2]);
  const same =
    Math.hypot(section.shearCentre.y - section.centroid.y, section.shearCentre.z - section.centroid.z) < ONE_POINT;
  const parts = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${tidy(width)}" height="${tidy(height)}" viewBox="0 0 ${tidy(width)} ${tidy(height)}" role="img">\n`,
    `<title>${escaped(`cross-section of ${profile.name}`)}</title>\n`,
    `<rect x="0" y="0" width="${tidy(width)}" height="${tidy(height)}" fill="#ffffff"/>\n`,
    metal(profile, sheet),
    axis(middle, [middle[0], top - 44], "y"),
    axis(middle, [left - 50, middle[1]], "z"),
    ...profile.slots.map((slot) => slotName(profile, slot, sheet)),
    points(section, sheet),
    text([width / 2, height - 34], `${profile.name}, ${size}`, 16),
    text(
      [width / 2, height - 14],
      same ? "disc: centroid and shear centre" : "disc: centroid; diamond: shear centre",
      12,
      FAINT,
    ),
    "</svg>\n",
  ];
  return parts.join("");
}
