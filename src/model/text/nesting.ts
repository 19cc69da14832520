import { pointerTo } from "./pointer.ts";

/** One open object or list. */
export interface Level {
  list: boolean;
  /** Offset of the opening bracket. */
  opened: number;
  /** Number of the present entry of a list. */
  index: number;
  /** Key of the present member of an object. */
  key: string | undefined;
  /** Keys so far, each with the offset where it first stands. */
  readonly keys: Map<string, number>;
}

/** The objects and lists that are open where a text is being read. Levels are used again, because a large file opens millions. */
export interface Nesting {
  depth(): number;
  top(): Level | undefined;
  open(list: boolean, offset: number): void;
  close(): void;
  /** Closes what lies inside the innermost level of the kind; nothing when there is none. */
  closeInside(list: boolean): void;
  /** The bracket that would close the innermost level. */
  closer(): "]" | "}";
  pointer(): string;
}

export function nesting(): Nesting {
  const levels: Level[] = [];
  let depth = 0;
  const top = (): Level | undefined => (depth === 0 ? undefined : levels[depth - 1]);
  return {
    depth: () => depth,
    top,
    open(list, opened) {
      const level = levels[depth] ?? { list, opened, index: 0, key: undefined, keys: new Map<string, number>() };
      levels[depth] = level;
      level.list = list;
      level.opened = opened;
      level.index = 0;
      level.key = undefined;
      if (level.keys.size > 0) level.keys.clear();
      depth++;
    },
    close() {
      depth = Math.max(0, depth - 1);
    },
    closeInside(list) {
      for (let i = depth - 1; i >= 0; i--) {
        if (levels[i]?.list !== list) continue;
        depth = i + 1;
        return;
      }
    },
    closer: () => (top()?.list === true ? "]" : "}"),
    pointer() {
      let path = "";
      for (let i = 0; i < depth; i++) {
        const level = levels[i];
        if (level?.list === true) path = pointerTo(path, level.index);
        else if (level?.key !== undefined) path = pointerTo(path, level.key);
      }
      return path;
    },
  };
}
