import type { StiffLink } from "../mechanism/find.ts";
import type { Contact } from "../model.ts";
import type { ContactStatus } from "../statics/state.ts";
import type { ContactLinks } from "./links.ts";

/** A rigid contact is this much stiffer than the frame is there: error 1e-4 of the contact's share, no loss of digits. */
const RIGID = 1e4;

/** Closed contacts as springs, for questions about the frame as it stands; slipping ones keep their normal only. */
export function closedLinks(
  { links, normal }: ContactLinks,
  contacts: readonly Contact[],
  status: readonly ContactStatus[],
): StiffLink[] {
  const springs: StiffLink[] = [];
  links.forEach(({ contact, link, base }, i) => {
    const own = status[contact] ?? "open";
    const isNormal = normal[contact] === i;
    if (own === "open" || (own !== "holds" && !isNormal)) return;
    const given = isNormal ? contacts[contact]?.stiffness : contacts[contact]?.hold;
    springs.push({ link, stiffness: given ?? RIGID * base });
  });
  return springs;
}
