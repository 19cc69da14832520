import type { Body } from "../facts/bodies.ts";
import type { EndState } from "../facts/ends.ts";
import { bounds, type Region } from "../geometry/polygon.ts";
import { add, scale, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { escaped, tidy } from "./svg.ts";
import { projected, viewFrom } from "./view.ts";

const SIDE = 150;
const MARGIN = 6;
const INK = "#20262b";
/** Of metal that lies open: darker than what is covered, so that it tells in grey too. */
const OPEN = "#d08a14";
const COVERED = "#eceeed";

/** A cut end square on as it is seen from outside, what is up in the frame up: the metal that lies open brought out from what is covered. */
export function endFacePicture({ axes, bar }: Body, { ref, normal, openRegions }: EndState): string {
  const view = viewFrom("square on", normal, Math.abs(normal[2]) > 0.9 ? [0, 1, 0] : [0, 0, 1]);
  const { min, max } = bounds(bar.profile.region);
  const scaled = (SIDE - 2 * MARGIN) / Math.hypot(max[0] - min[0], max[1] - min[1]);
  const place = ([y, z]: Vec2): string => {
    const point: Vec3 = add(scale(axes.y, y), scale(axes.z, z));
    const [right, up] = projected(view, point);
    return `${tidy(SIDE / 2 + right * scaled)} ${tidy(SIDE / 2 - up * scaled)}`;
  };
  const path = (region: Region): string =>
    [region.outer, ...region.holes].map((ring) => `M${ring.map(place).join("L")}Z`).join("");
  const open = openRegions().map(path).join("");
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${SIDE} ${SIDE}" role="img">
<title>the end ${escaped(ref.id)} square on</title>
<g fill-rule="evenodd" stroke="${INK}" stroke-linejoin="round"><path d="${path(bar.profile.region)}" fill="${COVERED}" stroke-width="0.7"/><path data-open="${escaped(ref.id)}" d="${open}" fill="${OPEN}" stroke-width="1.1"/></g>
</svg>
`;
}
