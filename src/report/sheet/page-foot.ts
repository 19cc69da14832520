import { revisionHash } from "./hashes.ts";

/** So much of the hash tells revisions of one file apart on loose pages; the record has the whole of it. */
const DIGITS = 16;

/** The foot of printed pages: which revision of the file a loose page belongs to. Digits alone, nothing from the frame, stand in the style. */
export function pageFoot(bytes: Uint8Array): string {
  const hash = revisionHash(bytes).slice(0, DIGITS);
  return `@page{@bottom-left{content:"Inspection sheet · file SHA-256 ${hash}…"}}\n`;
}
