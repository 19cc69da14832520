/** "1 bar", "22 bars", "no bars". */
export function count(number: number, one: string, many = `${one}s`): string {
  if (number === 0) return `no ${many}`;
  return `${number} ${number === 1 ? one : many}`;
}

/** "a", "a and b", "a, b and c"; past `most`, "a, b and 7 more". */
export function listed(names: readonly string[], most = Number.POSITIVE_INFINITY): string {
  if (names.length > most) return `${names.slice(0, most).join(", ")} and ${names.length - most} more`;
  if (names.length < 2) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** From here on a share reads better as a multiple. */
const MANY_TIMES = 10;

/** And beyond here how many times says no more. */
const COUNTLESS = 100;

/** How much of its limit a value is: of what is allowed, or of what is needed; from the utilisation, which is demand over capacity. */
export function shareOfLimit(utilisation: number, sense: "at most" | "at least"): string {
  if (sense === "at most") return percent(utilisation);
  if (utilisation === 0) return "beyond any share";
  const share = percent(1 / utilisation);
  return share.endsWith("%") ? `${share} of it` : share;
}

/** A share as a percentage, or as a multiple where it is large; never rounded onto 100 % from the other side, so that what fails does not read as met. */
export function percent(share: number): string {
  const scaled = share * 100;
  if (!Number.isFinite(scaled)) return "beyond any share";
  // As it prints, so that one ratio never reads in two ways.
  if (Math.round(share) > COUNTLESS) return `more than ${COUNTLESS}-fold`;
  if (Math.round(scaled) >= 100 * MANY_TIMES) return `${Math.round(share)}-fold`;
  for (const digits of [0, 1, 2, 3]) {
    const text = scaled.toFixed(digits);
    if (Number(text) !== 100 || share === 1) return `${text} %`;
  }
  return share < 1 ? "just under 100 %" : "just over 100 %";
}
