/** RFC 6901: "~" and "/" inside a key are written "~0" and "~1". */
export function escapeKey(key: string): string {
  return key.replaceAll("~", "~0").replaceAll("/", "~1");
}

export function unescapeKey(token: string): string {
  return token.replaceAll("~1", "/").replaceAll("~0", "~");
}

/** The pointer to a member or list entry of what another pointer points at. */
export function pointerTo(parent: string, ...keys: readonly (string | number)[]): string {
  let pointer = parent;
  for (const key of keys) pointer += `/${escapeKey(String(key))}`;
  return pointer;
}

/** The keys of a pointer, unescaped; what lacks the leading "/" counts as the whole file. */
export function keysOf(pointer: string): readonly string[] {
  return pointer.startsWith("/") ? pointer.slice(1).split("/").map(unescapeKey) : [];
}
