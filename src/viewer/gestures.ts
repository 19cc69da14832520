/** What a reader does to the drawing by hand. */
export interface Gestures {
  /** Dragged: turn by these angles, rad. */
  turn(about: number, over: number): void;
  /** Dragged with two fingers, shift or another button: move by these parts of the height. */
  shift(across: number, down: number): void;
  zoom(factor: number): void;
  /** Touched without being dragged, pixels from the top left. */
  touch(x: number, y: number): void;
}

/** Turn of a drag, rad a pixel; zoom of a wheel, a pixel. */
const TURN = 0.008;
const WHEEL = 0.0015;
/** What travels less than this many pixels was not dragged. */
const STILL = 5;
/** Buttons of a mouse that move: the right and the middle one. */
const OTHER_BUTTONS = 6;

/** Follows mouse, pen and fingers on the canvas. */
export function followGestures(canvas: HTMLCanvasElement, { turn, shift, zoom, touch }: Gestures): void {
  const down = new Map<number, readonly [number, number]>();
  let [travelled, gap] = [0, 0];
  canvas.addEventListener("pointerdown", (event) => {
    canvas.setPointerCapture(event.pointerId);
    down.set(event.pointerId, [event.offsetX, event.offsetY]);
    travelled = 0;
    gap = 0;
  });
  canvas.addEventListener("pointermove", (event) => {
    const before = down.get(event.pointerId);
    if (!before) return;
    const [dx, dy] = [event.offsetX - before[0], event.offsetY - before[1]];
    travelled += Math.hypot(dx, dy);
    down.set(event.pointerId, [event.offsetX, event.offsetY]);
    const high = canvas.clientHeight || 1;
    if (down.size === 2) {
      const [a, b] = [...down.values()];
      const wide = a && b ? Math.hypot(a[0] - b[0], a[1] - b[1]) : 0;
      if (gap > 0 && wide > 0) zoom(wide / gap);
      gap = wide;
      // Each finger moves it by its half.
      shift(dx / high / 2, dy / high / 2);
    } else if (event.shiftKey || (event.buttons & OTHER_BUTTONS) !== 0) shift(dx / high, dy / high);
    else turn(-dx * TURN, dy * TURN);
  });
  const up = (event: PointerEvent): void => {
    if (down.delete(event.pointerId) && travelled < STILL && event.type === "pointerup")
      touch(event.offsetX, event.offsetY);
  };
  canvas.addEventListener("pointerup", up);
  canvas.addEventListener("pointercancel", up);
  canvas.addEventListener("contextmenu", (event) => event.preventDefault());
  canvas.addEventListener(
    "wheel",
    (event) => {
      event.preventDefault();
      zoom(Math.exp(-event.deltaY * WHEEL));
    },
    { passive: false },
  );
}
