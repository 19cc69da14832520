import type { Problem } from "../problem.ts";
import { NESTING_DEPTH, PROBLEM_COUNT } from "./limits.ts";
import type { Lines } from "./lines.ts";
import { nesting } from "./nesting.ts";
import { mendedNumber, numberFault } from "./numbers.ts";
import { quote } from "./quote.ts";
import { newToken, readToken, type Token, type TokenKind } from "./tokens.ts";

export interface Scan {
  readonly problems: readonly Problem[];
  /** Offsets of the signs of "-0" and its like. */
  readonly minusZeros: readonly number[];
}

/** What the grammar lets come next; "or end" only straight behind an opening bracket. */
type Wanted = "value" | "value or end" | "key" | "key or end" | "colon" | "comma" | "nothing";

const WORDS_FOR: Readonly<Record<string, string>> = {
  True: "true",
  TRUE: "true",
  False: "false",
  FALSE: "false",
  None: "null",
  NULL: "null",
  nil: "null",
  undefined: "null",
};
const NOT_FINITE = /^[+-]?(?:nan|inf|infinity)$/i;

/** The text of a key between its quotes; a key with a faulty escape keeps its spelling. */
export function keyText(text: string, start: number, end: number, escaped: boolean): string {
  if (!escaped) return text.slice(start + 1, end - 1);
  try {
    return String(JSON.parse(text.slice(start, end)));
  } catch {
    return text.slice(start + 1, end - 1);
  }
}

/**
 * Reads a text strictly after RFC 8259 and tells of everything wrong with it: syntax, nesting, repeated keys, numbers that change when read.
 * Goes on after a syntax error as if the author had meant what is most likely. Needs no stack, whatever the nesting.
 */
export function scan(text: string, lines: Lines): Scan {
  const problems: Problem[] = [];
  const minusZeros: number[] = [];
  const open = nesting();
  const token: Token = newToken();
  let wanted: Wanted = "value";
  let stopped = false;

  const add = (weight: Problem["weight"], code: string, start: number, end: number, texts: readonly string[]): void => {
    if (problems.length >= PROBLEM_COUNT) return;
    const place = lines.place(open.pointer(), { start, end });
    if (problems.length === PROBLEM_COUNT - 1) {
      const found = `${PROBLEM_COUNT - 1} problems up to here`;
      const mend = "mend these first; the rest of the file was not read";
      problems.push({ code: "too-many-problems", weight: "error", place, found, expected: "fewer", mend });
      stopped = true;
      return;
    }
    const [found = "", expected = "", mend] = texts;
    problems.push({ code, weight, place, found, expected, ...(mend === undefined ? {} : { mend }) });
  };
  const tell = (code: string, start: number, end: number, found: string, expected: string, mend?: string): void =>
    add("error", code, start, end, mend === undefined ? [found, expected] : [found, expected, mend]);
  const tellToken = (code: string, expected: string, mend?: string): void =>
    tell(code, token.start, token.end, tokenText(), expected, mend);
  const word = (): string => text.slice(token.start, token.end);
  const tokenText = (): string => (token.kind === "end" ? "the end of the file" : quote(word()));

  const afterValue = (): void => {
    wanted = open.depth() === 0 ? "nothing" : "comma";
  };

  const enter = (list: boolean): void => {
    if (open.depth() >= NESTING_DEPTH) {
      const mend = "take levels away; the file was read up to here";
      tellToken("nested-too-deep", `at most ${NESTING_DEPTH} levels of objects and lists`, mend);
      stopped = true;
      return;
    }
    open.open(list, token.start);
    wanted = list ? "value or end" : "key or end";
  };

  const takeKey = (key: string): void => {
    const level = open.top();
    if (level === undefined) return;
    level.key = key;
    wanted = "colon";
    const first = level.keys.get(key);
    if (first === undefined) {
      level.keys.set(key, token.start);
      return;
    }
    const { line, column } = lines.place("", { start: first, end: first });
    const expected = `each key once; it first stands at line ${line}, column ${column}`;
    tell(
      "duplicate-key",
      token.start,
      token.end,
      `the key "${quote(key)}" again`,
      expected,
      "remove or rename one of the two",
    );
  };

  /** Called where a value stands in the right place. */
  const takeScalar = (): void => {
    if (token.kind === "word") tellWord();
    else if (token.kind === "malformed number") {
      const mended = mendedNumber(word());
      tellToken("malformed-number", "a number as JSON writes it", mended === undefined ? undefined : `write ${mended}`);
    } else if (token.kind === "number" && !token.short) checkNumber();
    afterValue();
  };

  const tellWord = (): void => {
    const meant = Object.hasOwn(WORDS_FOR, word()) ? WORDS_FOR[word()] : undefined;
    if (NOT_FINITE.test(word())) tellToken("not-a-number", "a finite number");
    else if (meant !== undefined) tellToken("unknown-word", "a value", `write ${meant}`);
    else tellToken("unknown-word", "a value; text stands in double quotes", `write "${tokenText()}"`);
  };

  const checkNumber = (): void => {
    const fault = numberFault(word());
    if (fault === undefined) return;
    if (fault.code === "minus-zero") minusZeros.push(token.start);
    const texts = fault.mend === undefined ? [tokenText(), fault.expected] : [tokenText(), fault.expected, fault.mend];
    add(fault.weight, fault.code, token.start, token.end, texts);
  };

  /** A value, or what opens one, where the grammar wants something else; afterwards it may be read as if all were well. */
  const tellMisplaced = (): void => {
    if (wanted === "nothing") {
      tellToken("text-after-end", "nothing after the one value of the file", "remove it; one file holds one frame");
      stopped = true;
    } else if (wanted === "comma") {
      tellToken("missing-comma", `a comma or ${open.closer()}`, "put a comma between the two");
      if (open.top()?.list === true) nextEntry();
    } else if (wanted === "colon") {
      tellToken("missing-colon", "a colon after the key");
    } else if (wanted === "key" || wanted === "key or end") {
      const level = open.top();
      if (level !== undefined) level.key = undefined;
      tellToken("key-without-quotes", "a key in double quotes");
    }
  };

  const nextEntry = (): void => {
    const level = open.top();
    if (level?.list === true) {
      level.index++;
      wanted = "value";
    } else {
      if (level !== undefined) level.key = undefined;
      wanted = "key";
    }
  };

  const onScalar = (): void => {
    if (wanted === "value" || wanted === "value or end") {
      takeScalar();
      return;
    }
    const keyLike = token.kind === "word" || token.kind === "string" || token.kind === "literal";
    if ((wanted === "key" || wanted === "key or end") && token.kind !== "string") {
      tellToken("key-without-quotes", "a key in double quotes", `write "${quote(word())}"`);
      takeKey(word());
    } else if (wanted === "key" || wanted === "key or end") {
      takeKey(keyText(text, token.start, token.end, token.escaped));
    } else {
      const missingComma = wanted === "comma";
      tellMisplaced();
      if (stopped) return;
      if (missingComma && open.top()?.list !== true && keyLike) {
        takeKey(token.kind === "string" ? keyText(text, token.start, token.end, token.escaped) : word());
      } else takeScalar();
    }
  };
  const onOpen = (list: boolean): void => {
    if (wanted !== "value" && wanted !== "value or end") tellMisplaced();
    if (!stopped) enter(list);
  };

  const onClose = (list: boolean): void => {
    const level = open.top();
    if (level === undefined) {
      tellToken("stray-bracket", wanted === "value" ? "a value" : "nothing after the one value of the file");
      stopped = true;
      return;
    }
    if (level.list !== list) closeOther(list);
    else if (wanted === "key" || (wanted === "value" && list)) {
      tellToken(
        "trailing-comma",
        list ? "a value after the comma" : "a key after the comma",
        "remove the comma before it",
      );
    } else if (wanted === "value") tellToken("missing-value", "a value after the colon");
    else if (wanted === "colon") tellToken("missing-colon", "a colon and a value after the key");
    open.close();
    afterValue();
  };

  /** The bracket closes something further out, or is the wrong one of the two. */
  const closeOther = (list: boolean): void => {
    const level = open.top();
    const { line, column } = lines.place("", { start: level?.opened ?? 0, end: level?.opened ?? 0 });
    tellToken("wrong-bracket", `${open.closer()} to close what opens at line ${line}, column ${column}`);
    open.closeInside(list);
  };

  const onComma = (): void => {
    if (open.depth() === 0) {
      tellToken("stray-comma", wanted === "value" ? "a value" : "nothing after the one value of the file");
      stopped = true;
    } else if (wanted === "comma") nextEntry();
    else if (wanted === "colon") {
      tellToken("missing-colon", "a colon and a value after the key");
      nextEntry();
    } else {
      const expected = wanted === "key" || wanted === "key or end" ? "a key" : "a value";
      tellToken(
        wanted === "value" && open.top()?.list !== true ? "missing-value" : "stray-comma",
        expected,
        "remove it, or put in what is missing",
      );
      const list = open.top()?.list === true;
      nextEntry();
      // A bracket right behind is no second fault.
      wanted = list ? "value or end" : "key or end";
    }
  };

  const onColon = (): void => {
    if (open.depth() === 0) {
      tellToken("stray-colon", wanted === "value" ? "a value" : "nothing after the one value of the file");
      stopped = true;
      return;
    }
    if (wanted === "colon") {
      wanted = "value";
      return;
    }
    const expected = {
      comma: `a comma or ${open.closer()}`,
      key: "a key before the colon",
      "key or end": "a key before the colon",
    };
    tellToken(
      "stray-colon",
      wanted === "comma" || wanted === "key" || wanted === "key or end" ? expected[wanted] : "a value",
    );
    wanted = "value";
  };

  const onEnd = (): void => {
    const level = open.top();
    if (level !== undefined) {
      const { line, column } = lines.place("", { start: level.opened, end: level.opened });
      const more = open.depth() > 1 ? `; ${open.depth()} brackets are open` : "";
      tellToken("file-ends-early", `${open.closer()} to close what opens at line ${line}, column ${column}${more}`);
    } else if (wanted === "value" && problems.length === 0) {
      tellToken("empty-file", "one JSON value");
    }
  };

  const handlers: Readonly<Record<Exclude<TokenKind, "end">, () => void>> = {
    "{": () => onOpen(false),
    "[": () => onOpen(true),
    "}": () => onClose(false),
    "]": () => onClose(true),
    ",": onComma,
    ":": onColon,
    string: onScalar,
    number: onScalar,
    "malformed number": onScalar,
    literal: onScalar,
    word: onScalar,
  };
  while (!stopped) {
    readToken(text, token.end, token, tell);
    if (token.kind === "end") {
      onEnd();
      break;
    }
    handlers[token.kind]();
  }
  return { problems, minusZeros };
}
