/**
 * Fills the blocks of a page that are generated: everything between `<!-- name: argument -->` (or `<!-- name -->`) and
 * `<!-- /name -->`. `fill` gives the new content, without the line breaks around it.
 */
export function fillBlocks(page: string, name: string, fill: (argument: string) => string): string {
  const blocks = new RegExp(`(<!-- ${name}(?:: ([^\\n]*?))? -->\\n)[\\s\\S]*?(<!-- /${name} -->)`, "g");
  return page.replace(
    blocks,
    (_, open: string, argument: string | undefined, close: string) => `${open}\n${fill(argument ?? "")}\n\n${close}`,
  );
}
