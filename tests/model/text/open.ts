import { type Opened, openDocument } from "../../../src/model/text/document.ts";

/** Opens a text as if it came from a file. */
export function open(text: string, file = "a.json"): Opened {
  return openDocument(file, new TextEncoder().encode(text));
}

export function codesOf({ problems }: Opened): readonly string[] {
  return problems.map((problem) => problem.code);
}

/** What JSON.parse thinks of a text. */
export function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
