import type { Tipping } from "./tipping.ts";

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join() : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;

/** How a frame stands where it is nearest to tipping: "laden with trays and pots, drawer-1 pulled out, door-1 open". */
export function howItStands({
  permanent,
  equipped,
  laden,
  out,
  open,
}: Pick<Tipping, "permanent" | "equipped" | "laden" | "out" | "open">): string {
  // Goods that are pulled out are told once; what always stands on it is no less a load.
  const on = [...permanent, ...laden.filter((name) => !out.includes(name))];
  const bare = laden.length > 0 ? [] : [equipped ? "with nothing on it but what is bolted down" : "empty"];
  return [
    ...(on.length > 0 ? [`laden with ${listed(on)}`] : bare),
    ...(out.length > 0 ? [`${listed(out)} pulled out`] : []),
    ...(open.length > 0 ? [`${listed(open)} open`] : []),
  ].join(", ");
}
