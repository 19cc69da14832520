/** "hole 2", or "the access hole": what numbers itself takes no article. */
export function holeWords(what: string): string {
  return /\d$/.test(what) ? what : `the ${what}`;
}
