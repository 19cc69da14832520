import type { FrameParts } from "./assembly/frame.ts";
import { frameParts } from "./assembly/frame.ts";
import type { System } from "./assembly/system.ts";
import { buildSystem } from "./assembly/system.ts";
import type { ContactLinks } from "./contact/links.ts";
import { contactLinks } from "./contact/links.ts";
import type { Mechanism } from "./mechanism/bodies.ts";
import type { FrameModel } from "./model.ts";

/** A frame ready to be loaded: assembled and factorised once, with every contact held at its base stiffness. */
export interface Frame {
  readonly model: FrameModel;
  readonly parts: FrameParts;
  readonly contacts: ContactLinks;
  readonly system: System;
  /** Motions that nothing resists even when every contact holds; a frame that has any cannot be solved. */
  readonly mechanisms: readonly Mechanism[];
}

/**
 * Checks, assembles, orders and factorises a frame (docs/method/mechanics.md). `like` is a frame prepared before: where it
 * has the very same nodes and members (the same arrays), what hangs on these alone is taken over.
 * Throws MechanicsInputError for a model that contradicts itself. A mechanism is no error: it is listed.
 */
export function prepareFrame(model: FrameModel, like?: Frame): Frame {
  const parts = frameParts(model, like?.parts);
  const contacts = contactLinks(parts);
  const system = buildSystem(
    parts,
    contacts.links.map(({ link, base }) => ({ link, stiffness: base })),
    like?.system,
  );
  return { model, parts, contacts, system, mechanisms: system.mechanisms };
}
