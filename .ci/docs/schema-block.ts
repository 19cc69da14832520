import { readFileSync } from "node:fs";

interface Node {
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly $ref?: string;
  readonly anyOf?: readonly Node[];
  readonly items?: Node | false;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly $defs?: Readonly<Record<string, Node>>;
  readonly examples?: readonly unknown[];
}

const cell = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");
const code = (value: unknown): string => `\`${cell(JSON.stringify(value))}\``;

/** What a value may be, in few words: a named form, one of some words, a list. */
function form(node: Node): string {
  if (node.$ref !== undefined) return node.$ref.replace("#/$defs/", "");
  if (node.const !== undefined) return code(node.const);
  if (node.enum) return node.enum.map(code).join(", ");
  if (node.anyOf) return node.anyOf.map(form).join(" or ");
  if (node.type === "array" && node.items) return `list of ${form(node.items)}`;
  return typeof node.type === "string" ? node.type : (node.type ?? ["any"]).join(" or ");
}

/** The object whose keys belong under a key: written in place, as the items of a list, or one of several forms. */
function nested(node: Node, root: Node): { readonly within: Node; readonly mark: string } | undefined {
  if (node.properties) return { within: node, mark: "." };
  if (node.type !== "array" || !node.items) return undefined;
  const { $ref } = node.items;
  const item = $ref === undefined ? node.items : root.$defs?.[$ref.replace("#/$defs/", "")];
  // What has keys of its own in the definitions has a table of its own.
  const within = $ref === undefined && item?.properties ? item : item?.anyOf?.find(({ properties }) => properties);
  return within && { within, mark: "[]." };
}

function rows(node: Node, root: Node, under = ""): string[] {
  return Object.entries(node.properties ?? {}).flatMap(([key, own]) => {
    const target = own.$ref === undefined ? undefined : root.$defs?.[own.$ref.replace("#/$defs/", "")];
    const needed = node.required?.includes(key) ? "**yes**" : "";
    const row = `| \`${under}${key}\` | ${form(own)} | ${needed} | ${cell(own.description ?? target?.description ?? "")} |`;
    const inner = nested(own, root);
    return inner ? [row, ...rows(inner.within, root, `${under}${key}${inner.mark}`)] : [row];
  });
}

/** A table of the keys of one definition of a schema ("frame bar", "frame #"), or of its simple forms ("frame forms"). */
export function schemaBlock(words: string): string {
  const [file = "", name = "#"] = words.split(" ");
  const root = JSON.parse(readFileSync(`schema/${file}.schema.json`, "utf8")) as Node;
  if (name === "forms") {
    const simple = Object.entries(root.$defs ?? {}).filter(([, node]) => !node.properties);
    return [
      "| form | is | example |",
      "| --- | --- | --- |",
      ...simple.map(
        ([key, node]) =>
          `| ${key} | ${cell(node.description ?? form(node))} | ${(node.examples ?? []).slice(0, 2).map(code).join(", ")} |`,
      ),
    ].join("\n");
  }
  const node = name === "#" ? root : root.$defs?.[name];
  if (!node) throw new Error(`${file}.schema.json has no ${name}`);
  return ["| key | is | needed | what it says |", "| --- | --- | --- | --- |", ...rows(node, root)].join("\n");
}
