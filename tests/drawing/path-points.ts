/** Where a path of M, l, h, v and z goes, ring by ring. */
export function pathPoints(path: string): readonly (readonly (readonly [number, number])[])[] {
  const rings: [number, number][][] = [];
  let [x, y] = [0, 0];
  for (const [, step = "", rest = ""] of path.matchAll(/([Mlhvz])([^Mlhvz]*)/g)) {
    const [a = 0, b = 0] = [...rest.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(Number);
    if (step === "z") continue;
    if (step === "M") {
      [x, y] = [a, b];
      rings.push([]);
    } else if (step === "h") x += a;
    else if (step === "v") y += a;
    else [x, y] = [x + a, y + b];
    rings.at(-1)?.push([x, y]);
  }
  return rings;
}
