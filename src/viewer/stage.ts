import type { ModelData } from "../drawing/model3d/model-data.ts";
import { barAt } from "./bar-at.ts";
import { type Eye, fitted, lookAt, nearer, seenAt, shifted, turned, VIEWS } from "./camera.ts";
import { coloursOf, inksOf, type Scheme } from "./colours.ts";
import type { Opened } from "./doors.ts";
import { element } from "./element.ts";
import { followGestures } from "./gestures.ts";
import { type Gliding, gliding } from "./gliding.ts";
import { followKeys, KEYS_SAID } from "./keys.ts";
import { fibre, type Meshes, meshesOf } from "./mesh.ts";
import { type Painter, painterFor } from "./painter.ts";
import { type Pins, pinsOf, type Shown } from "./pins.ts";
import { type Tags, tagsIn } from "./tags.ts";
import { add, mix, size, type Vec, vecAt } from "./vec.ts";

/** The frame on a canvas that can be turned, and what others may ask of it. */
export interface Stage {
  readonly root: HTMLElement;
  view(name: string): void;
  colour(scheme: Scheme): void;
  bend(shape: number, factor: number): void;
  spread(share: number): void;
  /** Opens the doors by shares of their ways. */
  open(shares: Opened): void;
  /** Shows how a set of loads runs through the frame; −1: none. */
  path(index: number): void;
  /** Shows the turn of a tool about its screw, and goes near it; −1: none. */
  tool(index: number): void;
  /** Shows a zone of danger with what lies open before it, from the side of the people there; −1: none. Takes the place of a tool. */
  guard(index: number): void;
  /** Shows a line the frame tips over with its centre of mass; −1: none. Takes the place of a tool. */
  tip(index: number): void;
  /** Turns to a pin and brings out its parts, with no less of the frame in the picture than this share; undefined lets go. */
  choose(pin: number | undefined, least?: number): void;
  /** Leaves these pins alone visible. */
  keep(pins: ReadonlySet<number>): void;
  onPin(tell: (pin: number) => void): void;
  onBar(tell: (bar: number) => void): void;
}

/** Canvases are drawn at no more than this many dots a pixel. */
const SHARPEST = 2;
/** Room round parts that are drawn apart, as a share of the frame. */
const ROOM_APART = 0.66;
/** How much of the frame a chosen part is seen with: on its own, with the loads that pass it, with all that moves. */
export const LEAST = { part: 0.3, path: 0.6, shape: 1 } as const;
/** A tool is seen in a picture so many times as high as its handle is long. */
const ROUND_TOOL = 5;
/** The picture is no lower than this share of the longest bar that is brought out. */
const OF_BAR = 0.85;
/** And, of one part of a large frame, no higher than so many of it. */
const AROUND_BAR = 3;

export function stageFor(model: ModelData): Stage | undefined {
  const said = `The frame, which can be turned: ${KEYS_SAID}`;
  const canvas = element("canvas", { tabindex: "0", role: "img", "aria-label": said });
  const meshes = meshesOf(model);
  const painter = painterFor(canvas, model, meshes);
  return painter && new Easel(model, meshes, painter, canvas);
}

class Easel implements Stage {
  readonly root: HTMLElement;
  private readonly model: ModelData;
  private readonly meshes: Meshes;
  private readonly painter: Painter;
  private readonly canvas: HTMLCanvasElement;
  private readonly pins: Pins;
  private readonly tags: Tags;
  private feet: readonly { readonly at: Vec; readonly words: string }[] = [];
  private readonly middle: Vec;
  private readonly across: number;
  private readonly eye: Gliding;
  private shown: Shown = { shape: -1, factor: 0, apart: 0, open: [] };
  private scheme: Scheme = { by: "plain" };
  private chosen: number | undefined;
  private asked = false;
  private pinTold: (pin: number) => void = () => {};
  private barTold: (bar: number) => void = () => {};

  constructor(model: ModelData, meshes: Meshes, painter: Painter, canvas: HTMLCanvasElement) {
    this.model = model;
    this.meshes = meshes;
    this.painter = painter;
    this.canvas = canvas;
    this.middle = mix(meshes.low, meshes.high, 0.5);
    this.across = size(add(meshes.high, meshes.low, -1));
    this.pins = pinsOf(model, meshes, (pin) => this.pinTold(pin));
    this.root = element("div", { class: "stage" }, canvas, ...this.pins.buttons);
    this.tags = tagsIn(this.root);
    this.eye = gliding(this.whole(VIEWS.isometric), () => this.ask());
    this.recolour();
    new ResizeObserver(() => this.ask()).observe(canvas);
    this.listen();
  }

  private whole(
    way: { readonly turn: number; readonly lift: number } = this.eye.now,
    beside: readonly Vec[] = [],
  ): Eye {
    const { clientWidth, clientHeight } = this.canvas;
    const grown = (p: Vec): Vec => add(this.middle, add(p, this.middle, -1), 1 + ROOM_APART * this.shown.apart);
    const aspect = clientHeight > 0 ? clientWidth / clientHeight : 1.35;
    const reach = (bound: Vec, most: typeof Math.min): Vec =>
      beside.reduce<Vec>((a, b) => [most(a[0], b[0]), most(a[1], b[1]), most(a[2], b[2])], bound);
    return fitted(way, reach(grown(this.meshes.low), Math.min), reach(grown(this.meshes.high), Math.max), aspect);
  }

  view(name: string): void {
    this.eye.to(this.whole(VIEWS[name]));
  }

  colour(scheme: Scheme): void {
    this.scheme = scheme;
    this.recolour();
  }

  bend(shape: number, factor: number): void {
    if (shape !== this.shown.shape) this.painter.bend(shape);
    this.show({ shape, factor });
  }

  spread(apart: number): void {
    this.shown = { ...this.shown, apart };
    this.eye.at(this.whole());
  }

  open(open: Opened): void {
    this.painter.open(open);
    this.canvas.dataset.open = open.map((share) => share.toFixed(3)).join(" ");
    this.show({ open });
  }

  path(index: number): void {
    const path = this.model.paths[index];
    this.painter.path(path);
    this.feet = (path?.feet ?? []).map(({ at, words }) => ({ at: vecAt(at, 0), words }));
    this.tags.set(this.feet);
    this.canvas.dataset.path = path?.name ?? "";
    this.ask();
  }

  tool(index: number): void {
    const tool = this.model.tools[index];
    this.painter.tool(tool);
    this.canvas.dataset.tool = tool?.words ?? "";
    this.tags.set(this.feet);
    this.ask();
    if (!tool) return;
    const centre = vecAt(tool.at, 0);
    const said = tool.free.length > 0 ? "free where it is filled" : "free nowhere";
    this.tags.set([...this.feet, { at: centre, words: `${tool.words}: ${said}` }]);
    this.eye.to(lookAt(this.eye.now, centre, this.middle, ROUND_TOOL * tool.reach));
  }

  guard(index: number): void {
    const guard = this.model.guards[index];
    this.canvas.dataset.guard = guard?.words ?? "";
    if (!guard) return;
    this.painter.guard(guard);
    const at = vecAt(guard.at, 0);
    this.tags.set([...this.feet, { at, words: guard.words }]);
    this.ask();
    const outside = add(this.middle, vecAt(guard.out, 0), this.across);
    this.eye.to(this.whole(lookAt(this.eye.now, outside, this.middle, this.across)));
  }

  tip(index: number): void {
    const tip = this.model.tips[index];
    this.canvas.dataset.tip = tip?.words ?? "";
    if (!tip) return;
    this.painter.tip(tip);
    const middle = mix(vecAt(tip.line, 0), vecAt(tip.line, 3), 0.5);
    const centre = tip.centre.length > 0 ? [{ at: vecAt(tip.centre, 0), words: "centre of mass" }] : [];
    this.tags.set([...this.feet, { at: middle, words: tip.words }, ...centre]);
    this.ask();
    // From the side it falls to, and a little along the line, so that how far inside it stands is seen.
    const inward = vecAt(tip.inward, 0);
    const [x, y] = [-inward[0] - 0.8 * inward[1], -inward[1] + 0.8 * inward[0]];
    const way = lookAt(this.eye.now, add(this.middle, [x, y, 0.5], this.across), this.middle, this.across);
    this.eye.to(
      this.whole(
        way,
        centre.map(({ at }) => at),
      ),
    );
  }

  choose(pin: number | undefined, least: number = LEAST.part): void {
    this.chosen = pin;
    this.pins.choose(pin);
    this.recolour();
    if (pin === undefined) return;
    const longest = this.model.bars
      .filter(({ id }) => this.model.pins[pin]?.bars.includes(id))
      .reduce((most, bar) => {
        const { from, to } = fibre(bar, 0, 0);
        return Math.max(most, size(add(to, from, -1)));
      }, 0);
    const round = least * this.across;
    const seen = least === LEAST.part && longest > 0 ? Math.min(round, AROUND_BAR * longest) : round;
    const height = Math.min(this.across, Math.max(seen, OF_BAR * longest));
    this.eye.to(lookAt(this.eye.now, this.pins.at(pin, { ...this.shown, factor: 0 }), this.middle, height));
  }

  keep(pins: ReadonlySet<number>): void {
    this.pins.keep(pins);
  }

  onPin(tell: (pin: number) => void): void {
    this.pinTold = tell;
  }

  onBar(tell: (bar: number) => void): void {
    this.barTold = tell;
  }

  private show(part: Partial<Shown>): void {
    this.shown = { ...this.shown, ...part };
    this.ask();
  }

  private recolour(): void {
    const bars = this.chosen === undefined ? [] : (this.model.pins[this.chosen]?.bars ?? []);
    const chosen = new Set(bars);
    this.painter.colour(coloursOf(this.model, this.scheme, chosen), inksOf(this.model, chosen));
    this.ask();
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
    const { canvas, shown } = this;
    const eye = this.eye.now;
    const sharp = Math.min(devicePixelRatio || 1, SHARPEST);
    const [width, height] = [Math.round(canvas.clientWidth * sharp), Math.round(canvas.clientHeight * sharp)];
    if (width === 0 || height === 0) return;
    if (canvas.width !== width || canvas.height !== height) {
      canvas.width = width;
      canvas.height = height;
    }
    this.painter.paint(eye, shown.factor, shown.apart);
    this.pins.place(eye, shown, canvas.clientWidth, canvas.clientHeight);
    this.tags.place(eye, canvas.clientWidth, canvas.clientHeight);
    canvas.dataset.bend = shown.factor.toFixed(4);
    canvas.dataset.turn = `${eye.turn.toFixed(3)} ${eye.lift.toFixed(3)}`;
  }

  private listen(): void {
    const { canvas, model, eye } = this;
    const hands = {
      turn: (about: number, over: number) => eye.at(turned(eye.now, about, over)),
      shift: (across: number, down: number) => eye.at(shifted(eye.now, across, down)),
      zoom: (factor: number) => eye.at(nearer(eye.now, factor, this.across / 60, this.across * 4)),
    };
    followGestures(canvas, {
      ...hands,
      touch: (x, y) => {
        const bar = barAt(model, [x, y], (p) => seenAt(eye.now, p, canvas.clientWidth, canvas.clientHeight));
        if (bar >= 0) this.barTold(bar);
      },
    });
    followKeys(canvas, { ...hands, view: (name) => this.view(name) });
  }
}
