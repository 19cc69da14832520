import type { ModelData } from "../drawing/model3d/model-data.ts";
import { movedAt } from "./bend.ts";
import { type Eye, seenAt } from "./camera.ts";
import { type Opened, swungParts } from "./doors.ts";
import { element } from "./element.ts";
import type { Meshes } from "./mesh.ts";
import { add, type Vec, vecAt } from "./vec.ts";

/** How the frame is shown: what pins follow. */
export interface Shown {
  /** Index of a shape, −1 for none, and by how much it is enlarged. */
  readonly shape: number;
  readonly factor: number;
  /** Share by which parts are drawn apart. */
  readonly apart: number;
  readonly open: Opened;
}

/** Numbered buttons over the drawing, at the parts that have findings. */
export interface Pins {
  readonly buttons: readonly HTMLButtonElement[];
  choose(pin: number | undefined): void;
  /** Leaves these alone visible. */
  keep(pins: ReadonlySet<number>): void;
  place(eye: Eye, shown: Shown, width: number, height: number): void;
  /** Where a pin points to. */
  at(pin: number, shown: Shown): Vec;
}

const LOOKS = { reject: "strong", hold: "", note: "light", conceded: "light" } as const;
/** Room a pin takes, pixels, and how far outside the picture it still shows. */
const WIDE = 24;
const WIDE_OF_MANY = 44;
const HIGH = 22;
const OUTSIDE = 20;
/** Pins shown at once, those of the worst parts in the picture; where there are more, one is left out that finds no free place. */
const SHOWN = 120;
/** Places tried on a spiral until a pin is clear of the others. */
const TRIES = 40;
const FEW_TRIES = 6;

const within = (value: number, room: number, size: number): number => Math.max(room, Math.min(size - room, value));

export function pinsOf(model: ModelData, meshes: Meshes, told: (pin: number) => void): Pins {
  const buttons = model.pins.map(({ number, level, where }, i) => {
    const attributes = {
      type: "button",
      tabindex: "-1",
      class: `pin ${LOOKS[level]}`,
      title: where,
      "aria-label": `${number}: findings of ${where}`,
    };
    const button = element("button", attributes, String(number));
    button.addEventListener("click", () => told(i));
    return button;
  });
  /** The part each pin goes with, bars first, −1 for none. */
  const parts = model.pins.map((pin) => {
    const bar = model.bars.findIndex(({ id }) => id === pin.bars[0]);
    if (bar >= 0) return bar;
    const piece = model.pieces.findIndex(({ id }) => id === pin.part);
    return piece < 0 ? -1 : model.bars.length + piece;
  });
  const at = (i: number, { shape, factor, apart, open }: Shown): Vec => {
    const point = vecAt(model.pins[i]?.at ?? [], 0);
    const part = parts[i] ?? -1;
    const bent = add([0, 0, 0], movedAt(model, part, shape, 0.5), factor);
    const swung = swungParts(model, open).get(part);
    const posed = swung ? add(swung.point(point), swung.direction(bent)) : add(point, bent);
    return add(posed, meshes.away[part] ?? [0, 0, 0], apart);
  };
  let chosen: number | undefined;
  return {
    buttons,
    at,
    choose(pin) {
      chosen = pin;
      buttons.forEach((button, i) => {
        button.classList.toggle("chosen", i === pin);
      });
    },
    keep(pins) {
      buttons.forEach((button, i) => {
        button.hidden = !pins.has(i);
      });
    },
    place(eye, shown, width, height) {
      const put: (readonly [number, number])[] = [];
      const outside = (x: number, y: number): boolean =>
        x < -OUTSIDE || y < -OUTSIDE || x > width + OUTSIDE || y > height + OUTSIDE;
      const crowded = buttons.length > SHOWN;
      const wide = crowded ? WIDE_OF_MANY : WIDE;
      const hide = (button: HTMLButtonElement): void => {
        button.style.display = "none";
      };
      buttons.forEach((button, i) => {
        if (button.hidden) return;
        const must = i === chosen;
        if (put.length >= SHOWN && !must) {
          hide(button);
          return;
        }
        let [x, y] = seenAt(eye, at(i, shown), width, height);
        const taken = (): boolean => put.some(([a, b]) => Math.abs(a - x) < wide && Math.abs(b - y) < HIGH);
        if (crowded && outside(x, y)) {
          hide(button);
          return;
        }
        const tries = crowded ? FEW_TRIES : TRIES;
        for (let k = 0; k < tries && taken(); k++) {
          const [angle, step] = [k * 0.9, (14 + k) / 2];
          [x, y] = [x + step * Math.cos(angle), y - step * Math.sin(angle)];
        }
        if (crowded && !must && taken()) {
          hide(button);
          return;
        }
        const hidden = outside(x, y);
        // The edge of the picture cuts none of those in it.
        if (!hidden) [x, y] = [within(x, WIDE / 2, width), within(y, HIGH / 2, height)];
        put.push([x, y]);
        button.style.display = "";
        button.style.visibility = hidden ? "hidden" : "visible";
        button.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px) translate(-50%,-50%)`;
      });
    },
  };
}
