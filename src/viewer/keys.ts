import { VIEWS } from "./camera.ts";
import type { Gestures } from "./gestures.ts";

/** What keys do to the drawing. */
export interface Keyed extends Omit<Gestures, "touch"> {
  /** A view by its name, or the whole frame as the eye stands. */
  view(name: string): void;
}

/** Said to those who cannot see that it turns. */
export const KEYS_SAID =
  "arrow keys turn it, with shift they move it; plus and minus zoom; i, f, r, b, l, t show it isometric, from the front, right, back, left and top; 0 shows the whole.";

const TURN = Math.PI / 18;
const SHIFT = 0.08;
const ZOOM = 1.2;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** Follows keys while the canvas has the focus. */
export function followKeys(canvas: HTMLCanvasElement, { turn, shift, zoom, view }: Keyed): void {
  const pressed = (key: string, shifted: boolean): boolean => {
    const arrow = ARROWS[key];
    const name = Object.keys(VIEWS).find((one) => one[0] === key.toLowerCase());
    if (arrow && shifted) shift(SHIFT * arrow[0], -SHIFT * arrow[1]);
    else if (arrow) turn(TURN * arrow[0], TURN * arrow[1]);
    else if (key === "+" || key === "=") zoom(ZOOM);
    else if (key === "-") zoom(1 / ZOOM);
    else if (key === "0") view("whole");
    else if (name) view(name);
    else return false;
    return true;
  };
  canvas.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (pressed(event.key, event.shiftKey)) event.preventDefault();
  });
}
