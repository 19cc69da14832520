import type { Profile } from "../model/stock/stock.ts";
import { type SectionProperties, sectionProperties } from "../section/section-properties.ts";
import table from "./sections.generated.json" with { type: "json" };

export type { SectionProperties };

const known = table as Readonly<Record<string, SectionProperties & { readonly of: string }>>;
const remembered = new WeakMap<Profile, SectionProperties>();

/** What tells one polygon from another: its points to a nanometre. */
export function regionKey(profile: Profile): string {
  const rings = [profile.region.outer, ...profile.region.holes];
  let hash = 0xcbf29ce484222325n;
  for (const ring of rings) {
    for (const [y, z] of ring) {
      for (const value of [y, z]) {
        hash ^= BigInt.asUintN(64, BigInt(Math.round(value * 1e9)));
        hash = BigInt.asUintN(64, hash * 0x100000001b3n);
      }
    }
    hash = BigInt.asUintN(64, (hash ^ 0xffn) * 0x100000001b3n);
  }
  return hash.toString(16).padStart(16, "0");
}

/**
 * Section properties of a profile, about the middle of its envelope (docs/method/section.md). Those of the built-in stock
 * were computed when the tool was built; a team's own profile is computed when first used, and once.
 */
export function sectionOf(profile: Profile): SectionProperties {
  const held = remembered.get(profile);
  if (held) return held;
  const stored = known[profile.name];
  const made = stored && stored.of === regionKey(profile) ? stored : sectionProperties(profile.region);
  remembered.set(profile, made);
  return made;
}
