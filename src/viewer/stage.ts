import type { ModelData } from "../drawing/model3d/model-data.ts";
import { movedAt } from "./bend.ts";
import { between, type Eye, fitted, lookAt, nearer, seenAt, shifted, turned, VIEWS } from "./camera.ts";
import { coloursOf, type Scheme } from "./colours.ts";
import { element } from "./element.ts";
import { fibre, type Meshes, meshesOf } from "./mesh.ts";
import { type Painter, painterFor } from "./painter.ts";
import { type Tags, tagsIn } from "./tags.ts";
import { add, mix, size, times, type Vec, vecAt } from "./vec.ts";

/** The frame on a canvas that can be turned, and what others may ask of it. */
export interface Stage {
  readonly root: HTMLElement;
  view(name: string): void;
  colour(scheme: Scheme): void;
  bend(shape: number, factor: number): void;
  spread(share: number): void;
  /** Opens the doors by a share of their way. */
  open(share: number): void;
  /** Shows how a set of loads runs through the frame; −1: none. */
  path(index: number): void;
  /** Turns to a pin and brings out its parts; undefined lets go. */
  choose(pin: number | undefined): void;
  dim(shown: ReadonlySet<number>): void;
  onPin(tell: (pin: number) => void): void;
  onBar(tell: (bar: number) => void): void;
}

const GLIDE = 320;
const STEP = Math.PI / 18;
const LEVELS = { reject: "strong", hold: "", note: "light", conceded: "light" } as const;

export function stageFor(model: ModelData): Stage | undefined {
  const canvas = element("canvas", {
    tabindex: "0",
    role: "img",
    "aria-label":
      "The frame, which can be turned: arrow keys turn it, with shift they move it; plus and minus zoom; i, f, r, b, l, t show it isometric, from the front, right, back, left and top; 0 shows the whole.",
  });
  const meshes = meshesOf(model);
  const painter = painterFor(canvas, model, meshes);
  if (!painter) return undefined;
  return new Easel(model, meshes, painter, canvas);
}

class Easel implements Stage {
  readonly root: HTMLElement;
  private readonly model: ModelData;
  private readonly meshes: Meshes;
  private readonly painter: Painter;
  private readonly canvas: HTMLCanvasElement;
  private readonly pins: readonly HTMLButtonElement[];
  private readonly middle: Vec;
  private eye: Eye;
  private scheme: Scheme = { by: "plain" };
  private chosen: number | undefined;
  private shape = -1;
  private factor = 0;
  private apart = 0;
  private asked = false;
  private glide = 0;
  private readonly tags: Tags;
  private pinTold: (pin: number) => void = () => {};
  private barTold: (bar: number) => void = () => {};

  constructor(model: ModelData, meshes: Meshes, painter: Painter, canvas: HTMLCanvasElement) {
    this.model = model;
    this.meshes = meshes;
    this.painter = painter;
    this.canvas = canvas;
    this.middle = mix(meshes.low, meshes.high, 0.5);
    this.pins = model.pins.map(({ number, level, where }, i) => {
      const pin = element(
        "button",
        {
          type: "button",
          tabindex: "-1",
          class: `pin ${LEVELS[level]}`,
          title: where,
          "aria-label": `${number}: findings of ${where}`,
        },
        String(number),
      );
      pin.addEventListener("click", () => this.pinTold(i));
      return pin;
    });
    this.root = element("div", { class: "stage" }, canvas, ...this.pins);
    this.tags = tagsIn(this.root);
    this.eye = this.whole("isometric");
    this.recolour();
    new ResizeObserver(() => this.ask()).observe(canvas);
    this.listen();
  }

  private aspect(): number {
    const { clientWidth, clientHeight } = this.canvas;
    return clientHeight > 0 ? clientWidth / clientHeight : 1.35;
  }

  private whole(name: string): Eye {
    const grown = (p: Vec): Vec => add(this.middle, add(p, this.middle, -1), 1 + 0.66 * this.apart);
    return fitted(VIEWS[name] ?? this.eye, grown(this.meshes.low), grown(this.meshes.high), this.aspect());
  }

  view(name: string): void {
    this.to(name === "whole" ? { ...this.whole("whole"), turn: this.eye.turn, lift: this.eye.lift } : this.whole(name));
  }

  colour(scheme: Scheme): void {
    this.scheme = scheme;
    this.recolour();
  }

  bend(shape: number, factor: number): void {
    if (shape !== this.shape) this.painter.bend(shape);
    this.shape = shape;
    this.factor = factor;
    this.ask();
  }

  spread(share: number): void {
    this.apart = share;
    this.eye = { ...this.whole("whole"), turn: this.eye.turn, lift: this.eye.lift };
    this.ask();
  }

  open(share: number): void {
    this.painter.open(share);
    this.canvas.dataset.open = share.toFixed(3);
    this.ask();
  }

  path(index: number): void {
    const path = this.model.paths[index];
    this.painter.path(path);
    this.tags.set((path?.feet ?? []).map(({ at, words }) => ({ at: vecAt(at, 0), words })));
    this.canvas.dataset.path = path?.name ?? "";
    this.ask();
  }

  choose(pin: number | undefined): void {
    this.chosen = pin;
    this.pins.forEach((button, i) => {
      button.classList.toggle("chosen", i === pin);
    });
    this.recolour();
    const one = pin === undefined ? undefined : this.model.pins[pin];
    if (!one) return;
    const lengths = this.model.bars
      .filter(({ id }) => one.bars.includes(id))
      .map((bar) => {
        const { from, to } = fibre(bar, 0, 0);
        return size(add(to, from, -1));
      });
    const all = size(add(this.meshes.high, this.meshes.low, -1));
    const height = Math.min(all, Math.max(0.3 * all, ...lengths.map((long) => 0.85 * long)));
    this.to(lookAt(this.eye, vecAt(one.at, 0), this.middle, height));
  }

  dim(shown: ReadonlySet<number>): void {
    this.pins.forEach((button, i) => {
      button.hidden = !shown.has(i);
    });
  }

  onPin(tell: (pin: number) => void): void {
    this.pinTold = tell;
  }

  onBar(tell: (bar: number) => void): void {
    this.barTold = tell;
  }

  private recolour(): void {
    const bars = this.chosen === undefined ? [] : (this.model.pins[this.chosen]?.bars ?? []);
    this.painter.colour(coloursOf(this.model, this.scheme, new Set(bars)));
    this.ask();
  }

  /** Glides to another eye; at once for those who asked for less motion. */
  private to(eye: Eye): void {
    const from = this.eye;
    const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
    const mine = ++this.glide;
    const start = performance.now();
    const step = (now: number): void => {
      if (mine !== this.glide) return;
      const t = still ? 1 : Math.min(1, Math.max(0, (now - start) / GLIDE));
      this.eye = between(from, eye, t);
      this.ask();
      if (t < 1) requestAnimationFrame(step);
    };
    step(still ? start : performance.now());
  }

  private ask(): void {
    if (this.asked) return;
    this.asked = true;
    requestAnimationFrame(() => {
      this.asked = false;
      this.draw();
    });
  }

  private draw(): void {
    const { canvas } = this;
    const sharp = Math.min(devicePixelRatio || 1, 2);
    const [width, height] = [Math.round(canvas.clientWidth * sharp), Math.round(canvas.clientHeight * sharp)];
    if (width === 0 || height === 0) return;
    if (canvas.width !== width || canvas.height !== height) {
      canvas.width = width;
      canvas.height = height;
    }
    this.painter.paint(this.eye, this.factor, this.apart);
    this.placePins();
    this.tags.place(this.eye, canvas.clientWidth, canvas.clientHeight);
    canvas.dataset.bend = this.factor.toFixed(4);
    canvas.dataset.turn = `${this.eye.turn.toFixed(3)} ${this.eye.lift.toFixed(3)}`;
  }

  /** Pins over the canvas, moved off one another down a column. */
  private placePins(): void {
    const { clientWidth, clientHeight } = this.canvas;
    const put: (readonly [number, number])[] = [];
    this.pins.forEach((button, i) => {
      if (button.hidden) return;
      let [x, y] = seenAt(this.eye, this.movedPin(i), clientWidth, clientHeight);
      for (let tries = 0; tries < 40 && put.some(([a, b]) => Math.abs(a - x) < 24 && Math.abs(b - y) < 22); tries++) {
        const angle = tries * 0.9;
        [x, y] = [x + (14 + tries) * Math.cos(angle) * 0.5, y - (14 + tries) * Math.sin(angle) * 0.5];
      }
      put.push([x, y]);
      const outside = x < -20 || y < -20 || x > clientWidth + 20 || y > clientHeight + 20;
      button.style.visibility = outside ? "hidden" : "visible";
      button.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px) translate(-50%,-50%)`;
    });
  }

  private movedPin(i: number): Vec {
    const pin = this.model.pins[i];
    if (!pin) return [0, 0, 0];
    const at = vecAt(pin.at, 0);
    const bar = this.model.bars.findIndex(({ id }) => id === pin.bars[0]);
    if (bar < 0) return at;
    const away = times(add(this.meshes.middles[bar] ?? at, this.middle, -1), 0.6 * this.apart);
    return add(add(at, away), movedAt(this.model, bar, this.shape, 0.5), this.factor);
  }

  /** The bar nearest to a point of the picture, within a finger's breadth. */
  private barAt(x: number, y: number): number {
    const { clientWidth, clientHeight } = this.canvas;
    let [best, nearest] = [-1, 16];
    this.model.bars.forEach((bar, i) => {
      const { from, to } = fibre(bar, 0, 0);
      const [a, b] = [
        seenAt(this.eye, from, clientWidth, clientHeight),
        seenAt(this.eye, to, clientWidth, clientHeight),
      ];
      const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
      const t = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy || 1)));
      const distance = Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy);
      if (distance < nearest) [best, nearest] = [i, distance];
    });
    return best;
  }

  private zoom(factor: number): void {
    const all = size(add(this.meshes.high, this.meshes.low, -1));
    this.eye = nearer(this.eye, factor, all / 60, all * 4);
  }

  private move(change: (eye: Eye) => Eye): void {
    this.glide++;
    this.eye = change(this.eye);
    this.ask();
  }

  private listen(): void {
    const { canvas } = this;
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
        if (gap > 0 && wide > 0) this.zoom(wide / gap);
        gap = wide;
        this.move((eye) => shifted(eye, dx / high / 2, dy / high / 2));
      } else if (event.shiftKey || (event.buttons & 6) !== 0) this.move((eye) => shifted(eye, dx / high, dy / high));
      else this.move((eye) => turned(eye, -dx * 0.008, dy * 0.008));
    });
    const up = (event: PointerEvent): void => {
      if (down.delete(event.pointerId) && travelled < 5 && event.type === "pointerup") {
        const bar = this.barAt(event.offsetX, event.offsetY);
        if (bar >= 0) this.barTold(bar);
      }
    };
    canvas.addEventListener("pointerup", up);
    canvas.addEventListener("pointercancel", up);
    canvas.addEventListener("contextmenu", (event) => event.preventDefault());
    canvas.addEventListener(
      "wheel",
      (event) => {
        event.preventDefault();
        this.zoom(Math.exp(-event.deltaY * 0.0015));
        this.move((eye) => eye);
      },
      { passive: false },
    );
    canvas.addEventListener("keydown", (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (this.key(event.key, event.shiftKey)) event.preventDefault();
    });
  }

  private key(key: string, shift: boolean): boolean {
    const arrows: Readonly<Record<string, readonly [number, number]>> = {
      ArrowLeft: [-1, 0],
      ArrowRight: [1, 0],
      ArrowUp: [0, 1],
      ArrowDown: [0, -1],
    };
    const arrow = arrows[key];
    const name = Object.keys(VIEWS).find((view) => view[0] === key.toLowerCase());
    if (arrow && shift) this.move((eye) => shifted(eye, 0.08 * arrow[0], -0.08 * arrow[1]));
    else if (arrow) this.move((eye) => turned(eye, STEP * arrow[0], STEP * arrow[1]));
    else if (key === "+" || key === "=") {
      this.zoom(1.2);
      this.move((eye) => eye);
    } else if (key === "-") {
      this.zoom(1 / 1.2);
      this.move((eye) => eye);
    } else if (key === "0") this.view("whole");
    else if (name) this.view(name);
    else return false;
    return true;
  }
}
