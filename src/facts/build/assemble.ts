import type { Hindrance } from "../hindrances.ts";
import type { SubAssembly } from "../sub-assemblies.ts";
import type { WaysOut } from "../ways-out.ts";
import { type Path, walkedBack } from "./path.ts";
import type { Assembly, Item } from "./plan.ts";
import { takeApart, type Unit } from "./take-apart.ts";

/** What the plan needs to know of the frame. */
export interface Ground {
  readonly hindrances: readonly Hindrance[];
  readonly room: WaysOut;
  /** Parts held to each other. */
  readonly links: readonly (readonly [string, string])[];
  /** How late a part goes on, by id: what the numbers mean is said where they are made. */
  readonly stage: (part: string) => number;
  /** Whether a part waits until the frame is square and on its feet. */
  readonly late: (part: string) => boolean;
  /** Height of the middle of a set of parts, m, and its mass, kg. */
  readonly height: (parts: readonly string[]) => number;
  readonly mass: (parts: readonly string[]) => number;
  /** Whether a bar has a foot or caster. */
  readonly stands: (part: string) => boolean;
  /** Which of two like parts goes on first: the lesser. */
  readonly order: (part: string) => number;
}

export interface Built {
  readonly assembly: Assembly;
  /** Units that keep each other; they are built first, as if they could be. */
  readonly stuck: readonly Unit[];
}

type Piece = string | Assembly;

/** Heights are told apart by whole centimetres: level parts go by their place. */
const LEVEL = 0.01;

const partsOf = (piece: Piece): readonly string[] =>
  typeof piece === "string" ? [piece] : piece.items.flatMap((item) => item.parts);

/** Sub-assemblies first, those with feet before others, the heavier the earlier; then bars from the bottom up; then panels. */
function rankOf(piece: Piece, lying: boolean, ground: Ground): readonly number[] {
  const parts = partsOf(piece);
  const order = Math.min(...parts.map(ground.order));
  if (typeof piece !== "string") {
    const feet = parts.some(ground.stands) ? 0 : 1;
    return piece.sub?.from === "door" ? [DOOR, 0, 0, order] : [0, feet, -ground.mass(parts), order];
  }
  const height = lying ? 0 : Math.round(ground.height(parts) / LEVEL);
  return [ground.stage(piece), height, 0, order];
}

/** Later than any panel: a door is hung when the frame is square. */
const DOOR = 9;

const isLate = (piece: Piece, ground: Ground): boolean =>
  typeof piece === "string" ? ground.late(piece) : piece.sub?.from === "door";

/** Puts pieces together by taking them apart; sets that only move together become assemblies of their own. */
export function assemble(id: string, sub: SubAssembly | undefined, pieces: readonly Piece[], ground: Ground): Built {
  const pieceOf = new Map<string, Piece>();
  // Found frames and groups are built lying on the table.
  const units = pieces.map((piece): Unit => {
    const parts = partsOf(piece);
    pieceOf.set(parts[0] ?? "", piece);
    return {
      id: typeof piece === "string" ? piece : piece.id,
      parts,
      rank: rankOf(piece, sub !== undefined, ground),
      stands: sub === undefined && parts.some(ground.stands),
      late: isLate(piece, ground),
    };
  });
  const { hindrances, links, room } = ground;
  // What has no name is the whole frame: it is put together where it stands.
  const { removals, stuck } = takeApart(units, { hindrances, links, room, standing: id === "" });
  const caught: Unit[] = [...stuck];
  const items: Item[] = [];
  const put = (unit: Unit, path: Path | undefined, lying: boolean): void => {
    const part = pieceOf.get(unit.parts[0] ?? "");
    if (part !== undefined) items.push({ part, path, lying, parts: unit.parts });
  };
  for (const unit of [...stuck].reverse()) put(unit, undefined, removals.at(-1)?.lying ?? false);
  for (const { units: together, path, lying } of [...removals].reverse()) {
    const inwards = path && walkedBack(path);
    const [only] = together;
    if (only && together.length === 1) {
      put(only, inwards, lying);
      continue;
    }
    const inner = together.map((unit) => pieceOf.get(unit.parts[0] ?? "")).filter((piece) => piece !== undefined);
    const name = together.reduce((a, b) => (ground.order(b.parts[0] ?? "") < ground.order(a.parts[0] ?? "") ? b : a));
    const nested = assemble(`${name.id}+`, undefined, inner, ground);
    caught.push(...nested.stuck);
    items.push({ part: nested.assembly, path: inwards, lying, parts: partsOf(nested.assembly) });
  }
  return { assembly: { id, sub, items }, stuck: caught };
}
