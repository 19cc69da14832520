import type { UnitSystem } from "../../model/units/unit-system.ts";
import type { Drawing } from "./drawing.ts";

/** JSON with a space after every comma and colon, as people write it on one line. */
function oneLine(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(oneLine).join(", ")}]`;
  if (typeof value === "object" && value !== null) {
    const fields = Object.entries(value).map(([key, held]) => `${JSON.stringify(key)}: ${oneLine(held)}`);
    return `{ ${fields.join(", ")} }`;
  }
  return JSON.stringify(value);
}

function block(key: string, open: string, lines: readonly string[], close: string): string {
  return `  ${JSON.stringify(key)}: ${open}\n${lines.map((line) => `    ${line}`).join(",\n")}\n  ${close}`;
}

/** The text of a frame file: one part a line. */
export function frameText(units: UnitSystem, drawing: Drawing): string {
  const { title, notes, kits, ...lists } = drawing;
  const head = Object.entries({ format: 1, title, units, notes }).map(
    ([key, value]) => `  ${JSON.stringify(key)}: ${oneLine(value)}`,
  );
  const kitLines = Object.entries(kits).map(([name, kit]) => `${JSON.stringify(name)}: ${oneLine(kit)}`);
  const order = ["bars", "joints", "panels", "doors", "copies", "stands", "loads", "cases"] as const;
  const blocks = order.flatMap((key) => {
    const parts = lists[key];
    return parts === undefined ? [] : [block(key, "[", parts.map(oneLine), "]")];
  });
  return `{\n${[...head, block("kits", "{", kitLines, "}"), ...blocks].join(",\n")}\n}\n`;
}
