import { showHidden } from "../../model/text/quote.ts";

/** Plain words as a SARIF message: braces would start a placeholder and "](" a link (SARIF 2.1.0, 3.11.5 and 3.11.6). */
export function plainWords(words: string): string {
  return showHidden(words).replaceAll("{", "{{").replaceAll("}", "}}").replaceAll("](", "] (");
}

/** Text that stands in the square brackets of a link. */
export function linkText(words: string): string {
  return plainWords(words).replace(/[\\[\]]/g, "\\$&");
}

/** Words inside markdown, where every character that could begin markup or an element is written as itself. */
export function markdownWords(words: string): string {
  return showHidden(words).replace(/[\\`*_{}[\]<>()#+!|&~-]/g, "\\$&");
}
