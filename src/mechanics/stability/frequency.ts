import type { Block } from "../assembly/blocks.ts";
import { memberBlock } from "../assembly/blocks.ts";
import type { FrameParts } from "../assembly/frame.ts";
import { frameParts } from "../assembly/frame.ts";
import { buildSystem } from "../assembly/system.ts";
import { closedLinks } from "../contact/closed.ts";
import { contactLinks } from "../contact/links.ts";
import type { Frame } from "../frame.ts";
import type { Mechanism } from "../mechanism/bodies.ts";
import type { NodeMass } from "../model.ts";
import type { ContactStatus } from "../statics/state.ts";
import { massMatrix } from "./element-matrices.ts";
import type { Mode } from "./pencil.ts";
import { lowestModes, nearestModes, roughLambdas } from "./pencil.ts";
import { subdivide } from "./subdivide.ts";

/** A natural mode. `displacements`: six a node, scaled to a largest translation of 1. */
export interface NaturalMode {
  /** Hz. */
  readonly frequency: number;
  readonly displacements: Float64Array;
  /** Relative residual of the pair in the energy norm. */
  readonly residual: number;
}

export type NaturalModes =
  | { readonly kind: "modes"; readonly modes: readonly NaturalMode[] }
  | { readonly kind: "mechanism"; readonly mechanisms: readonly Mechanism[] };

/** A cubic piece of length h raises ω² by (βh)⁴/720, β⁴ = µω²/EI: this βh leaves 5e-5 in the frequency. */
const BENDING_PHASE = 0.5;
/** A linear piece raises ω of twisting and stretching by (kh)²/24, k² = ω² mass/stiffness: this leaves 1e-3. */
const BAR_PHASE = 0.15;
const MOST_PIECES = 32;
const FIRST_PIECES = 2;

function nodeBlocks({ node, mass, inertia }: NodeMass): Block[] {
  const diagonal = [mass, mass, mass, ...(inertia ?? [0, 0, 0])];
  return diagonal.flatMap((value, i) =>
    value > 0 ? [{ freedoms: Int32Array.of(6 * node + i), values: Float64Array.of(value) }] : [],
  );
}

function massBlocks({ table, model }: FrameParts): Block[] {
  const blocks: Block[] = [];
  model.members.forEach((member, m) => {
    if (member.massPerLength > 0) blocks.push(memberBlock(table, m, massMatrix(member, table.length[m] as number)));
  });
  for (const mass of model.masses ?? []) blocks.push(...nodeBlocks(mass));
  return blocks;
}

/** Pieces for member m so that modes up to ω (rad/s) come out right. */
function piecesFor(frame: Frame, m: number, omega: number): number {
  const member = frame.model.members[m];
  if (!member || !(member.massPerLength > 0)) return 1;
  const { massPerLength, EA, EIy, EIz, GJ } = member;
  const L = frame.parts.table.length[m] as number;
  const bending = ((massPerLength * omega * omega) / Math.min(EIy, EIz)) ** 0.25 * L;
  const stretching = Math.sqrt(massPerLength / EA) * omega * L;
  const twisting = Math.sqrt((massPerLength * (EIy + EIz)) / (EA * GJ)) * omega * L;
  const pieces = Math.max(bending / BENDING_PHASE, stretching / BAR_PHASE, twisting / BAR_PHASE);
  return Math.min(Math.max(Math.ceil(pieces), 1), MOST_PIECES);
}

/** The frame cut into pieces, with its masses, contacts closed as given. */
function cutInto(frame: Frame, pieces: Int32Array, contacts: readonly ContactStatus[] | undefined) {
  const { model } = frame;
  const status = contacts ?? (model.contacts ?? []).map(({ friction = 0 }) => (friction > 0 ? "holds" : "closed"));
  const parts = frameParts(subdivide(model, frame.parts.table.length, pieces).model, frame.parts);
  const links = closedLinks(contactLinks(parts), model.contacts ?? [], status);
  return { system: buildSystem(parts, links, frame.system), masses: massBlocks(parts) };
}

const piecesUpTo = (frame: Frame, omega: number): Int32Array =>
  Int32Array.from(frame.model.members, (_, m) => piecesFor(frame, m, omega));

function naturalMode(frame: Frame, { lambda, displacements, residual }: Mode): NaturalMode {
  const own = 6 * frame.model.nodes.length;
  return { frequency: Math.sqrt(lambda) / (2 * Math.PI), displacements: displacements.slice(0, own), residual };
}

/**
 * The lowest natural frequencies with consistent member masses and the masses at nodes; rigid arms carry none.
 * `contacts` says which contacts are closed (default: all). Members are cut finely enough for 1e-3.
 */
export function naturalModes(frame: Frame, count: number, contacts?: readonly ContactStatus[]): NaturalModes {
  const { members } = frame.model;
  const first = Int32Array.from(members, ({ massPerLength }) => (massPerLength > 0 ? FIRST_PIECES : 1));
  const coarse = cutInto(frame, first, contacts);
  const rough = roughLambdas(coarse.system, coarse.masses, count);
  const { system, masses } = cutInto(frame, piecesUpTo(frame, Math.sqrt(rough.at(-1) ?? 0)), contacts);
  const fine = lowestModes(system, masses, count, rough[0]);
  if (fine.kind === "mechanism") return fine;
  return { kind: "modes", modes: fine.modes.map((mode) => naturalMode(frame, mode)) };
}

export interface ModesNear {
  readonly kind: "near";
  /** In ascending order. */
  readonly modes: readonly NaturalMode[];
  /** How many lower ones there are besides. */
  readonly skipped: number;
}

/** Modes up to this multiple of the frequency asked for come out as exactly as the lowest ones do. */
const FINE_UP_TO = 2;

/**
 * The natural frequencies nearest to one that is given, Hz, nearest by their squares; as `naturalModes` otherwise. Costs about as much
 * as the lowest ones, however many lie below.
 */
export function naturalModesNear(
  frame: Frame,
  frequency: number,
  count: number,
): ModesNear | Extract<NaturalModes, { kind: "mechanism" }> {
  const omega = 2 * Math.PI * frequency;
  const { system, masses } = cutInto(frame, piecesUpTo(frame, FINE_UP_TO * omega), undefined);
  const found = nearestModes(system, masses, omega ** 2, count);
  if (found.kind === "mechanism") return found;
  return { ...found, modes: found.modes.map((mode) => naturalMode(frame, mode)) };
}
