import type { Ref } from "../../model/ref.ts";
import type { EndState } from "../ends.ts";
import type { PlacedScrew, ScrewedPart } from "../placed.ts";
import type { Standing } from "../standings.ts";
import type { Assembly, BuildStep, Item } from "./plan.ts";

/** What is put into steps beside bars and panels. */
export interface Loose {
  readonly connectors: readonly ScrewedPart[];
  readonly stands: readonly Standing[];
  /** Whether the frame hangs on walls or ceilings alone, so that its bars are put where their feet are anchored. */
  readonly hung: boolean;
  readonly caps: readonly EndState[];
  /** Equipment bolted down, and the assembly or part that it is lifted in with; none where it waits until the frame stands. */
  readonly equipment: readonly { readonly ref: Ref; readonly on: string | undefined }[];
  /** Ids of the feet, caps and equipment that come on a piece that arrives put together. */
  readonly arrive: (assembly: string) => readonly string[];
  readonly refOf: (part: string) => Ref;
  readonly covers: (screw: string) => readonly string[];
  /** Whether a part waits until the frame is square and on its feet. */
  readonly late: (part: string) => boolean;
}

/** A step, and what is there in the same piece once it is done. */
interface Made {
  readonly step: { -readonly [K in keyof BuildStep]: BuildStep[K] extends readonly (infer T)[] ? T[] : BuildStep[K] };
  readonly there: ReadonlySet<string>;
}

export interface Steps {
  readonly steps: readonly BuildStep[];
  readonly assemblies: readonly Assembly[];
  /** Bars and panels there once a step is done, by its number less one. */
  readonly there: readonly ReadonlySet<string>[];
  readonly placed: ReadonlyMap<string, number>;
  readonly tightened: ReadonlyMap<string, number>;
  /** Screws that something covers at every step they could be tightened at. */
  readonly unreached: readonly Unreached[];
}

/** A screw out of reach of its key. */
export interface Unreached {
  /** Bars that its connector holds. */
  readonly holds: readonly string[];
  /** The bar its nut, or its thread, sits in. */
  readonly bar: string;
  /** Bars and panels that cover it. */
  readonly covers: readonly string[];
}

/** Whether all that a part holds is there, with the sheet it goes on with. */
export function isHeld({ holds, sheet }: ScrewedPart, there: ReadonlySet<string>): boolean {
  return holds.every((hold) => there.has(hold.bar)) && (!sheet || there.has(sheet.id));
}

/** Whether a part keeps the frame square, so that it waits until the frame is squared: all but sheets, hinges and latches. */
export const squares = ({ part }: ScrewedPart): boolean =>
  part !== undefined && part.kind !== "hinge" && part.kind !== "pivot";

/** Turns the tree of assemblies into numbered steps: what is built on its own comes first. */
export class StepMaker {
  readonly #made: Made[] = [];
  readonly #assemblies: Assembly[] = [];
  readonly #placed = new Map<string, number>();
  readonly #tightened = new Map<string, number>();
  readonly #unreached: Unreached[] = [];
  readonly #loose: Loose;

  constructor(loose: Loose) {
    this.#loose = loose;
  }

  run(whole: Assembly): Steps {
    this.#assembly(whole);
    const all = new Set(whole.items.flatMap((item) => item.parts));
    this.#equip("", all, () => true);
    this.#finish(all);
    return {
      steps: this.#made.map(({ step }) => step),
      assemblies: this.#assemblies,
      there: this.#made.map(({ there }) => there),
      placed: this.#placed,
      tightened: this.#tightened,
      unreached: this.#unreached,
    };
  }

  #add(what: BuildStep["what"], assembly: string, there: ReadonlySet<string>, item?: Item): Made {
    const number = this.#made.length + 1;
    const { path, lying = false } = item ?? {};
    const none = { places: [], bolts: [], connectors: [], tightens: [] };
    const step: Made["step"] = { number, what, assembly, ...none, path, lying };
    const made = { step, there };
    this.#made.push(made);
    return made;
  }

  #assembly(assembly: Assembly): void {
    for (const { part } of assembly.items) if (typeof part !== "string") this.#assembly(part);
    this.#assemblies.push(assembly);
    if (assembly.sub?.built) {
      this.#arrive(assembly);
      return;
    }
    const id = assembly.id;
    const there = new Set<string>();
    const pending: ScrewedPart[] = [];
    let squared = false;
    let lies = assembly.items[0]?.lying ?? false;
    const stand = (): void => {
      if (!lies) return;
      // While it lies its feet are at hand.
      this.#feet(assembly, there, true);
      lies = false;
      this.#add("stand", id, new Set(there));
    };
    const settle = (): void => {
      if (squared) return;
      squared = true;
      stand();
      this.#square(id, there, pending);
      this.#feet(assembly, there, false);
    };
    let made: Made | undefined;
    for (const [i, item] of assembly.items.entries()) {
      const late = typeof item.part === "string" ? this.#loose.late(item.part) : item.part.sub?.from === "door";
      if (late && i > 1) settle();
      if (!item.lying) stand();
      for (const part of item.parts) there.add(part);
      // The first piece alone is no step: it is what the second is put on.
      if (i !== 1 || !made) made = this.#add("place", id, new Set(there), item);
      else {
        made.step.path = item.path;
        this.#made[this.#made.length - 1] = { step: made.step, there: new Set(there) };
      }
      const { step } = made;
      if (typeof item.part === "string") {
        step.places.push(this.#loose.refOf(item.part));
        this.#placed.set(item.part, step.number);
        for (const { ref, on } of this.#loose.equipment) if (on === item.part) this.#put(ref, step.bolts, step.number);
        if (id === "" && this.#loose.hung && !lies) this.#hang(item.part, step);
      } else {
        step.places.push(item.part.sub?.ref ?? this.#loose.refOf(item.parts[0] ?? ""));
      }
      for (const connector of this.#loose.connectors) {
        if (this.#placed.has(connector.ref.id) || !isHeld(connector, there)) continue;
        this.#placed.set(connector.ref.id, step.number);
        step.connectors.push(connector.ref);
        // What is hung or screwed on the square frame is tightened there and then.
        if (squared && !squares(connector)) this.#atOnce(connector, made);
        else pending.push(connector);
      }
    }
    settle();
    if (pending.length > 0) this.#square(id, there, pending);
    this.#equip(id, there, (on) => on === id);
  }

  /** The feet of a single bar that hangs are screwed on before it is put where they are anchored. */
  #hang(bar: string, { number, bolts }: Made["step"]): void {
    const own = this.#loose.stands.filter(({ body }) => body.bar.ref.id === bar);
    for (const { stand } of own) this.#put(stand.ref, bolts, number);
  }

  /** All of it is there from the next step on, and no screw of it is turned; feet that do not come with it go on first. */
  #arrive(assembly: Assembly): void {
    const there = new Set(assembly.items.flatMap((item) => item.parts));
    const number = this.#made.length + 1;
    const inside = this.#loose.connectors.filter((connector) => isHeld(connector, there)).map(({ ref }) => ref.id);
    for (const id of [...there, ...inside, ...this.#loose.arrive(assembly.id)]) this.#placed.set(id, number);
    this.#feet(assembly, there, false);
  }

  /** What is bolted on here and was not before. */
  #equip(id: string, there: ReadonlySet<string>, isHere: (on: string | undefined) => boolean): void {
    const here = this.#loose.equipment.filter(({ ref, on }) => isHere(on) && !this.#placed.has(ref.id));
    if (here.length === 0) return;
    const { step } = this.#add("equipment", id, new Set(there));
    for (const { ref } of here) this.#put(ref, step.places, step.number);
  }

  #put(ref: Ref, into: Ref[], number: number): void {
    into.push(ref);
    this.#placed.set(ref.id, number);
  }

  /** Everything is squared and tightened that can still be reached; what is covered by then was tightened before. */
  #square(id: string, there: ReadonlySet<string>, pending: ScrewedPart[]): void {
    if (pending.length === 0) return;
    const made = this.#add("square", id, new Set(there));
    for (const connector of pending) {
      for (const screw of connector.screws) this.#tighten(screw, connector, made);
    }
    pending.length = 0;
  }

  #atOnce({ screws }: ScrewedPart, { step }: Made): void {
    for (const { ref } of screws) {
      step.tightens.push(ref);
      this.#tightened.set(ref.id, step.number);
    }
  }

  #tighten(screw: PlacedScrew, connector: ScrewedPart, square: Made): void {
    const covers = this.#loose.covers(screw.ref.id);
    const joined = this.#placed.get(connector.ref.id) ?? square.step.number;
    const open = ({ there }: Made): boolean => covers.every((cover) => !there.has(cover));
    const bar = connector.sheet?.id ?? (screw.into.kind === "nut" ? screw.into.landing.bar : screw.into.bar);
    let at = open(square) ? square : undefined;
    // Where something has covered it by then: as it is joined, or beforehand on the one bar its nut sits in.
    at ??= this.#made.findLast((one) => one.step.number <= joined && one.there.has(bar) && open(one));
    if (!at) this.#unreached.push({ holds: connector.holds.map((hold) => hold.bar), bar, covers });
    at ??= this.#made[joined - 1] ?? square;
    at.step.tightens.push(screw.ref);
    this.#tightened.set(screw.ref.id, at.step.number);
  }

  #feet(assembly: Assembly, there: ReadonlySet<string>, lying: boolean): void {
    const own = new Set(assembly.items.flatMap(({ part }) => (typeof part === "string" ? [part] : [])));
    const stands = this.#loose.stands.filter(
      ({ stand, body }) => own.has(body.bar.ref.id) && there.has(body.bar.ref.id) && !this.#placed.has(stand.ref.id),
    );
    if (stands.length === 0) return;
    const { step } = this.#add("feet", assembly.id, new Set(there));
    step.lying = lying || assembly.id !== "";
    for (const { stand } of stands) {
      step.places.push(stand.ref);
      this.#placed.set(stand.ref.id, step.number);
    }
  }

  #finish(there: ReadonlySet<string>): void {
    const caps = this.#loose.caps.filter(({ ref }) => !this.#placed.has(ref.id));
    if (caps.length === 0) return;
    const { step } = this.#add("finish", "", there);
    for (const { ref } of caps) this.#put(ref, step.places, step.number);
  }
}
