import { gapPicture } from "../../drawing/gap-picture.ts";
import type { Scene } from "../../drawing/scene.ts";
import { type Contact, contacts } from "../../facts/contacts.ts";
import { factOf } from "../../facts/fact.ts";
import { placements } from "../../facts/placements.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { drawn, html, type Markup } from "./html.ts";

/** The faces between which a finding on a joint or tie measured a gap. */
function contactOf(frame: Frame, { key, at, measure }: Finding): Contact | undefined {
  if (key === "gap") return factOf(placements, frame).met.find(({ joint }) => joint.ref.id === at.id)?.contact;
  const tie = [...frame.ties, ...frame.pivots].find(({ ref }) => ref.id === at.id);
  if (key !== "tied" || !tie) return undefined;
  const [a, b] = tie.bars;
  const off = (contact: Contact): number => Math.abs(contact.widestGap - (measure?.measured ?? 0));
  return factOf(contacts, frame)
    .of(a)
    .filter((contact) => contact.b.bar === b)
    .reduce<Contact | undefined>((x, y) => (x && off(x) <= off(y) ? x : y), undefined);
}

/** The gap between two bars from its side, for findings on joints and ties that do not close. */
export function gapFindingPicture(frame: Frame, scene: Scene, finding: Finding): Markup | undefined {
  const { rule, measure } = finding;
  const contact = rule === "joint.gap" && measure ? contactOf(frame, finding) : undefined;
  const { measured, limit } = measure?.shown ?? { measured: "", limit: "" };
  const svg = contact && gapPicture(frame, scene, contact, `${measured}, ${limit} allowed`);
  if (!contact || svg === undefined) return undefined;
  return html`<figure class="check near">${drawn(svg)}<figcaption>The gap between ${contact.a.bar} and ${contact.b.bar}, without what fastens them.</figcaption></figure>
`;
}
