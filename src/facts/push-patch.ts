/** Side of the patch on which a force presses a panel, a hand's breadth, m (common practice). */
export const PUSH_PATCH = 0.1;
