/** Kinds of parts that are left out of every mass, for readers of JSON: together below two parts in a hundred of an ordinary frame. */
export const LEFT_OUT = ["screw", "nut", "cap"] as const;
