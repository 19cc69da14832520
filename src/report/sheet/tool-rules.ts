/** Rules about the way of a tool to a screw. */
export const TOOL_RULES: ReadonlySet<string> = new Set(["screw.no-room", "screw.crowded"]);
