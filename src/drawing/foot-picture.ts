import type { Standing } from "../facts/standings.ts";
import type { Vec3 } from "../geometry/vector.ts";
import type { Dimension } from "./dimensions.ts";
import { measuredPicture } from "./measured-picture.ts";
import type { Scene } from "./scene.ts";

const INK = "#20262b";
/** Where the dimensions stand off the middle of the foot, picture units, and half the stretch of floor, m. */
const OFFS = [62, 88] as const;
const FLOOR = 0.09;

/** A height over the floor, m, of which the other end is where the bar ends or this height, and what is said of it. */
export interface Height {
  readonly from: number;
  /** The end of the bar where absent. */
  readonly to?: number;
  readonly words: string;
}

/** A foot from the front, down to the floor at this height, m, with heights written beside it, those that are wanted last. */
export function footPicture(
  scene: Scene,
  { top, stand, body }: Standing,
  floor: number,
  heights: readonly Height[],
): string {
  const over = (height: number): Vec3 => [top[0], top[1], floor + height];
  const own = new Set([stand.ref.id, body.bar.ref.id]);
  return measuredPicture(
    scene,
    {
      from: over(0),
      to: top,
      eye: [0, -1, 0],
      over: [0, 0, 1],
      dimensions: heights.map(
        ({ from, to, words }, i): Dimension => ({
          from: over(from),
          to: to === undefined ? top : over(to),
          aside: [1, 0, 0],
          off: OFFS[i] ?? OFFS[1],
          words,
          wanted: to !== undefined,
        }),
      ),
      look: ({ of }) => (own.has(of.id) ? (of.id === stand.ref.id ? "marked" : "plain") : undefined),
      bands: [
        {
          points: [-FLOOR, FLOOR].map((x): Vec3 => [top[0] + x, top[1], floor]),
          ink: INK,
          wide: { units: 1.6 },
          name: "floor",
        },
      ],
    },
    `${stand.ref.id} from the front, with its height`,
  );
}
