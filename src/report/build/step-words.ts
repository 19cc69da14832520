import type { BuildStep } from "../../facts/build-order.ts";
import type { PlannedPiece, PlannedStep, Tightening } from "../../facts/build-plan.ts";
import { showHidden } from "../../model/text/quote.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { count, listed } from "../count.ts";
import type { BuildSheet, Handling } from "./build-sheet.ts";

/** A unit vector. */
type Way = NonNullable<PlannedPiece["lyingOn"]>;
type Counted = { readonly name: string; readonly count: number };

export const named = (lines: readonly Counted[]): string =>
  listed(lines.map(({ name, count: many }) => `${many} × ${showHidden(name)}`));

/** So many names of parts that something is turned past: the rest are in the JSON. */
const MOST_PAST = 3;
/** A way goes this way too where so much of it does: 20° off the others. */
const GOES = Math.sin((20 * Math.PI) / 180);

/** "+x", and of a slanting way "+x and down"; "" of an upright one. */
function levelWords([x, y, z]: Way): string {
  const level = [
    { size: x, words: x > 0 ? "+x" : "-x" },
    { size: y, words: y > 0 ? "+y" : "-y" },
  ].filter(({ size }) => Math.abs(size) > GOES);
  const slope = level.length > 0 && Math.abs(z) > GOES ? [z < 0 ? "down" : "up"] : [];
  return listed([...level.map(({ words }) => words), ...slope]);
}

/** "its -x side": what the frame is begun on. */
export const sideWords = ({ lyingOn }: Pick<PlannedPiece, "lyingOn">): string =>
  lyingOn ? `its ${levelWords(lyingOn)} side` : "a side, turned as the pieces ask for";

/** "from above", "moving along +x", and of a slanting way "moving along +x and down"; of what lies on a side "from its top". */
function fromWords(leg: Way, lying: boolean): string {
  const level = levelWords(leg);
  if (level !== "") return `moving along ${level}`;
  const [above, below] = lying ? ["its top", "its underside"] : ["above", "below"];
  return `from ${leg[2] < 0 ? above : below}`;
}

/** "down", "along +x": how the last bit goes. */
function onWords(leg: Way, lying: boolean): string {
  const level = levelWords(leg);
  if (level !== "") return `along ${level}`;
  if (lying) return `towards its ${leg[2] < 0 ? "underside" : "top"}`;
  return leg[2] < 0 ? "down" : "up";
}

/** "from above", "moving along +x, then up", "past front and back, the last bit down": how something goes in. */
export function wayWords({ path, lying }: Pick<BuildStep, "path" | "lying">): string {
  const [first, ...others] = path?.legs ?? [];
  const last = path?.legs.at(-1);
  if (!path || !first || !last) return "";
  if (path.past.length > 0)
    return `turned past ${listed(path.past.map(showHidden), MOST_PAST)}, the last bit ${onWords(last, lying)}`;
  return [fromWords(first, lying), ...others.map((leg) => `then ${onWords(leg, lying)}`)].join(", ");
}

/** What a piece is called: the author's name, or that of its first bar. */
export function pieceName(piece: Pick<PlannedPiece, "id" | "from" | "bars">): string {
  if (piece.from === "group" || piece.from === "door") return `"${showHidden(piece.id)}"`;
  return `the piece with ${showHidden(piece.bars[0] ?? piece.id)}`;
}

export function torqueWords(lines: readonly Tightening[], sheet: BuildSheet): string {
  const torqueOf = ({ torque }: Tightening): string =>
    torque === undefined ? "until the sheet lies tight" : `to ${formatQuantity(torque, "moment", sheet.units)}`;
  const lock = { none: "", "thread-lock": ", with thread lock", washer: ", with lock washers" };
  return listed(lines.map((line) => `${line.count} × ${showHidden(line.screw)} ${torqueOf(line)}${lock[line.lock]}`));
}

/**
 * Screws, nuts and caps are left out of every mass, together below two parts in a hundred of an ordinary frame; so near below what one person may lift, as a share
 * of it, they may be what is too much.
 */
const NEARLY = 0.1;

/** "24.3 kg: 1 person", and so near to the limit "24.3 kg without screws and nuts: 1 person". */
export function handlingWords(handling: Handling, sheet: BuildSheet): string {
  const near = handling.people === 1 && handling.mass > (1 - NEARLY) * sheet.oneLifts;
  const mass = `${formatQuantity(handling.mass, "mass", sheet.units)}${near ? " without screws and nuts" : ""}`;
  if (handling.people === undefined) return `${mass}: use a hoist`;
  return `${mass}: ${count(handling.people, "person", "people")}`;
}

/** "Bolt on motor, 30 kg, more than one person lifts: 2 people." Empty where a step puts no equipment on. */
export function equipmentWords({ equipment, hangs, step }: PlannedStep, sheet: BuildSheet): readonly string[] {
  const done = hangs ? "Once it hangs, " : "Once it stands, ";
  const when = step.what === "place" ? "Before it goes in, " : step.assembly === "" ? done : "";
  const sentence = (things: PlannedStep["equipment"], verb: string): string[] => {
    const words = things.map((thing) => {
      const handling = sheet.handlingOf(thing);
      const alone = handling.people === 1;
      const mass = alone
        ? formatQuantity(handling.mass, "mass", sheet.units)
        : handlingWords(handling, sheet).replace(":", ", more than one person lifts:");
      return `${showHidden(thing.what)}, ${mass}`;
    });
    const line = `${when}${verb} ${words.join("; ")}.`;
    return things.length > 0 ? [`${line.charAt(0).toUpperCase()}${line.slice(1)}`] : [];
  };
  return [
    ...sentence(
      equipment.filter(({ slides }) => !slides),
      "bolt on",
    ),
    ...sentence(
      equipment.filter(({ slides }) => slides),
      "push in",
    ),
  ];
}

/** What a part that is put in is called; of a sub-assembly its letter, with its name or its bars. */
export type NameOf = (step: PlannedStep, id: string) => string;

/** "Hold or clamp both until something joins them." Empty where nothing falls over. */
function holdWords(step: PlannedStep, nameOf: NameOf): readonly string[] {
  const { falls } = step;
  if (falls.length === 0 || (step.hangs && step.anchors.length > 0)) return [];
  const names = falls.length === step.step.places.length && falls.length === 2 ? "both" : undefined;
  const [only] = step.step.places.length === 1 ? step.step.places : [];
  // What has no way in is the first, and the only one.
  const joined = !only ? " until they are joined" : step.step.path ? " until it is joined" : "";
  return [
    `Hold or clamp ${names ?? listed(falls.map(({ id }) => nameOf(step, id)))}, so that nothing falls over${joined}.`,
  ];
}

/** "Hold A up until a.foot and b.foot are anchored to the wall; nobody stands under it." Empty where nothing is anchored here. */
function anchorWords({ anchors, hangs, step }: PlannedStep, names: readonly string[]): readonly string[] {
  if (anchors.length === 0) return [];
  const to = listed([...new Set(anchors.map((one) => one.to))].map((where) => `the ${where}`));
  const feet = listed(anchors.map(({ ref }) => showHidden(ref.id)));
  if (!hangs) return [`Anchor ${feet} to ${to}, once it stands where it stays.`];
  const [what, it] = step.what === "place" && names.length > 0 ? [listed(names), "what hangs"] : ["it", "it"];
  return [
    `Hold ${what} up until ${feet} ${anchors.length === 1 ? "is" : "are"} anchored to ${to}; nobody stands under ${it}.`,
  ];
}

/** "Block A up by 640 mm first: what is joined to it reaches so far below it." Empty of what needs no blocks. */
function blockWords({ blockedUp, step }: PlannedStep, names: readonly string[], sheet: BuildSheet): readonly string[] {
  const [first] = names;
  if (blockedUp === 0 || !first) return [];
  const others = step.connectors.length > 0 ? "what is joined to it" : "what goes on";
  return [
    `First block ${first} up by ${formatQuantity(blockedUp, "length", sheet.units)}, so that it cannot tip or slip: ${others} reaches so far below it.`,
  ];
}

/** Cautions that belong to a step. */
export function cautions(step: PlannedStep, sheet: BuildSheet, nameOf: NameOf): readonly string[] {
  const names = step.step.places.map(({ id }) => nameOf(step, id));
  const lines: string[] = [...blockWords(step, names, sheet)];
  if (step.step.what === "stand")
    return [
      "Its joints are hand-tight yet: keep it from racking; nobody where it could fall.",
      ...anchorWords(step, names),
    ];
  lines.push(...anchorWords(step, names));
  if (step.step.what !== "place") return lines;
  lines.push(...holdWords(step, nameOf));
  for (const one of step.lifts.filter(({ assembly }) => assembly !== undefined)) {
    const handling = sheet.handlingOf(one);
    if (one.assembly !== undefined && sheet.isLoose(one.assembly))
      lines.push(`Leave the strap round ${nameOf(step, one.ref.id)} until every end of it is joined.`);
    if (handling.people !== 1) lines.push(`${nameOf(step, one.ref.id)}: ${handlingWords(handling, sheet)}.`);
  }
  if (step.step.assembly === "" && !step.step.lying && (step.lowestScrew ?? 0) > sheet.overhead)
    lines.push("Support it before you screw it; nobody stands under it.");
  if (step.closesIn.length > 0)
    lines.push(`Ease ${listed(step.closesIn.map(showHidden))} into the slot; hands out of the closing corner.`);
  return lines;
}

/** "62 kg, 33 kg of it to lift at its top: 2 people": what stands up, or is tipped. */
export function raisedWords({ mass, lifted }: NonNullable<PlannedStep["raised"]>, sheet: BuildSheet): string {
  const whole = formatQuantity(mass, "mass", sheet.units);
  const people = sheet.peopleFor(lifted);
  const by = people === undefined ? "use a hoist" : count(people, "person", "people");
  return `${whole}, ${formatQuantity(lifted, "mass", sheet.units)} of it to lift at its top: ${by}`;
}

/** Balanced within this share of its length a piece balances in its middle. */
const MIDDLE = 0.02;

/** "balances 640 mm from its lower end", of a piece long enough for it to matter. */
export function balanceWords({ axis, at, length }: NonNullable<PlannedPiece["balance"]>, sheet: BuildSheet): string {
  if (Math.abs(at / length - 1 / 2) < MIDDLE) return "balances in its middle";
  const end = (["-x", "-y", "lower"] as const)[axis];
  return `balances ${roundLength(at, sheet)} from its ${end} end`;
}

/** To whole centimetres: nobody takes hold any nearer. */
const GRIP = 0.01;
const roundLength = (length: number, { units }: BuildSheet): string =>
  formatQuantity(Math.round(length / GRIP) * GRIP, "length", units);
