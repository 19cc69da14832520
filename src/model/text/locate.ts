import type { Span } from "./lines.ts";
import { keysOf } from "./pointer.ts";
import { keyText } from "./scan.ts";
import { newToken, readToken, type Token } from "./tokens.ts";

/** Where a value stands, and its key when it is a member of an object. */
export interface Located {
  readonly value: Span;
  readonly key?: Span;
}

/** A tree of the wanted pointers; a node per key on the way to any of them. */
interface Wish {
  readonly inside: Map<string, Wish>;
  value?: Span;
  key?: Span;
}

interface Level {
  readonly wish: Wish;
  readonly list: boolean;
  index: number;
}

const silent = (): void => {};

function wishFor(pointers: Iterable<string>): Wish {
  const root: Wish = { inside: new Map() };
  for (const pointer of pointers) {
    let wish = root;
    for (const key of keysOf(pointer)) {
      const next: Wish = wish.inside.get(key) ?? { inside: new Map() };
      wish.inside.set(key, next);
      wish = next;
    }
  }
  return root;
}

/** Offset behind the value whose opening bracket was read last. */
function skipValue(text: string, token: Token): number {
  let open = 1;
  while (open > 0 && token.kind !== "end") {
    readToken(text, token.end, token, silent);
    if (token.kind === "{" || token.kind === "[") open++;
    else if (token.kind === "}" || token.kind === "]") open--;
  }
  return token.end;
}

/** One pass over a sound JSON text that finds the wanted values; without a stack. */
function fillIn(text: string, root: Wish): void {
  const token: Token = newToken();
  const levels: Level[] = [];
  let wish: Wish | undefined = root;
  let key: Span | undefined;
  let keyNext = false;
  for (;;) {
    readToken(text, token.end, token, silent);
    const level = levels.at(-1);
    if (token.kind === "end") return;
    if (token.kind === "," && level !== undefined) {
      level.index++;
      keyNext = !level.list;
      wish = level.list ? level.wish.inside.get(String(level.index)) : undefined;
      key = undefined;
    } else if (token.kind === ":") {
    } else if (token.kind === "}" || token.kind === "]") {
      if (level !== undefined) level.wish.value = { start: level.wish.value?.start ?? 0, end: token.end };
      levels.pop();
      if (levels.length === 0) return;
    } else if (keyNext && level !== undefined) {
      key = { start: token.start, end: token.end };
      wish = level.wish.inside.get(keyText(text, token.start, token.end, token.escaped));
      keyNext = false;
    } else {
      const start = token.start;
      const bracket = token.kind === "{" || token.kind === "[";
      const list = token.kind === "[";
      const enter = bracket && wish !== undefined && wish.inside.size > 0;
      const end = bracket && !enter ? skipValue(text, token) : token.end;
      if (wish !== undefined) {
        wish.value = { start, end };
        if (key !== undefined) wish.key = key;
      }
      if (enter && wish !== undefined) {
        levels.push({ wish, list, index: 0 });
        keyNext = !list;
        wish = list ? wish.inside.get("0") : undefined;
        key = undefined;
      } else if (levels.length === 0) return;
    }
  }
}

/**
 * Finds values in a sound JSON text by their pointers, in one pass; a pointer to nothing gets its nearest existing ancestor.
 * Where a key stands twice the later one counts, as with JSON.parse.
 */
export function locate(text: string, pointers: Iterable<string>): ReadonlyMap<string, Located> {
  const wanted = [...new Set(pointers)];
  const root = wishFor(wanted);
  fillIn(text, root);
  const found = new Map<string, Located>();
  for (const pointer of wanted) {
    let wish: Wish | undefined = root;
    let last: Wish = root;
    for (const key of keysOf(pointer)) {
      wish = wish.inside.get(key);
      if (wish?.value === undefined) break;
      last = wish;
    }
    const value = last.value ?? { start: 0, end: text.length };
    found.set(pointer, last.key === undefined ? { value } : { value, key: last.key });
  }
  return found;
}
