import type { GuardData, ModelData, PathData, TipData, ToolData } from "../drawing/model3d/model-data.ts";
import { type Batch, batchesFor } from "./batch.ts";
import { movedMesh } from "./bend.ts";
import { axesOf, type Eye, matrixOf } from "./camera.ts";
import { INK, type Rgb } from "./colours.ts";
import { type Opened, swungList, swungParts } from "./doors.ts";
import { programOf } from "./gl-program.ts";
import { GUARD_INKS, guardMeshes } from "./guard-mesh.ts";
import { type Mesh, type Meshes, meshesOf } from "./mesh.ts";
import { PATH_INKS, pathMesh } from "./path-mesh.ts";
import { LOAD_SIGN, signMesh } from "./sign-mesh.ts";
import { TIP_INKS, tipMeshes } from "./tip-mesh.ts";
import { toolMeshes } from "./tool-mesh.ts";
import { add, mix, size, times } from "./vec.ts";

export interface Painter {
  /** Faces and edges of each part, bars first. */
  colour(faces: readonly Rgb[], edges: readonly Rgb[]): void;
  bend(shape: number): void;
  /** A load path within the bars, which then are seen through. */
  path(path: PathData | undefined): void;
  /** The turn of a tool about its screw, over the parts. */
  tool(tool: ToolData | undefined): void;
  /** A zone of danger, what lies open before it and the shortest way there, over the parts. */
  guard(guard: GuardData | undefined): void;
  /** A line the frame tips over and its centre of mass, over the parts. */
  tip(tip: TipData | undefined): void;
  /** Doors opened by these shares of their ways. */
  open(shares: Opened): void;
  paint(eye: Eye, bend: number, spread: number): void;
}

/** At this many mm a pixel and fewer, edges have their full ink, and from afar no less than a share of it. */
const FULL_INK = 0.9;
const LEAST_INK = 0.22;
/** Ink of edges of bars that are seen through, and of panels. */
const THROUGH = 0.5;
const GLASS = 0.24;
/** Signs of loads and supports behind parts. */
const HIDDEN = 0.6;
/** Lines are drawn this much nearer than the faces they bound, as a share of the depth shown. */
const NEARER = 0.0004;
/** A turn that is free is filled with this. */
const FREE: Rgb = [46, 125, 94];
const FREE_ALPHA = 0.5;
const BLOCKED: Rgb = [150, 39, 15];
const LOAD: Rgb = [31, 95, 139];

interface Drawn {
  readonly solid: Batch;
  readonly panels: Batch;
  readonly edges: Batch;
}

/** Draws with WebGL; undefined where the browser has none. */
export function painterFor(canvas: HTMLCanvasElement, model: ModelData, meshes: Meshes): Painter | undefined {
  const gl = canvas.getContext("webgl", { antialias: true, alpha: false, preserveDrawingBuffer: true });
  const program = gl && programOf(gl);
  if (!gl || !program) return undefined;
  gl.useProgram(program);
  const batches = batchesFor(gl, program);
  const drawnOf = ({ solid, panels, edges }: Meshes): Drawn => ({
    solid: batches.of(solid),
    panels: batches.of(panels),
    edges: batches.of(edges),
  });
  let drawn = drawnOf(meshes);
  /** Meshes that can bend are made when a shape is first shown: they are many times as large. */
  let bends = false;
  const { low, high, axes } = meshes;
  const across = size(add(high, low, -1));
  const bar = axes.reduce((sum, { from, to }) => sum + size(add(to, from, -1)), 0) / Math.max(1, axes.length);
  const signs = batches.of(signMesh(model, across, bar));
  signs.recolour((part) => (part === LOAD_SIGN ? LOAD : INK));
  gl.enable(gl.DEPTH_TEST);
  gl.blendFunc(gl.SRC_ALPHA, gl.ONE_MINUS_SRC_ALPHA);
  gl.clearColor(1, 1, 1, 1);
  let inner: Batch | undefined;
  let over: { readonly filled: Batch; readonly lines: Batch } | undefined;
  let shape = -1;
  let opened: Opened = [];
  let [faceInks, edgeInks]: [readonly Rgb[], readonly Rgb[]] = [[], []];
  const recolour = (): void => {
    for (const batch of [drawn.solid, drawn.panels]) batch.recolour((part) => faceInks[part] ?? INK);
    drawn.edges.recolour((part) => edgeInks[part] ?? INK);
  };
  /** Puts a batch where bent shape and open doors have it. */
  const pose = (batch: Batch): void => {
    const { mesh } = batch;
    const swung = swungParts(model, opened);
    // The rods of a load path belong to inks; they swing with the bars they lie in.
    const belongs = batch === inner ? mesh.rides : mesh.part;
    batch.put("at", swungList(mesh.at, belongs, swung, "point"));
    batch.put("normal", swungList(mesh.normal, belongs, swung, "direction"));
    batch.put("bent", swungList(movedMesh(model, mesh, axes, shape), belongs, swung, "direction"));
  };
  const poseAll = (): void => {
    for (const batch of [drawn.solid, drawn.panels, drawn.edges, inner]) if (batch) pose(batch);
  };
  const seenThrough = (draw: () => void): void => {
    gl.enable(gl.BLEND);
    draw();
    gl.disable(gl.BLEND);
  };
  const layOver = (
    meshes: { readonly filled: Mesh; readonly lines: Mesh } | undefined,
    fill: Rgb,
    inkOf: (part: number) => Rgb,
  ): void => {
    over?.filled.drop();
    over?.lines.drop();
    over = meshes && { filled: batches.of(meshes.filled), lines: batches.of(meshes.lines) };
    over?.filled.recolour(() => fill);
    over?.lines.recolour(inkOf);
  };
  return {
    path(path) {
      inner?.drop();
      inner = path && batches.of(pathMesh(model, axes, path, mix(low, high, 0.5), across));
      if (!inner) return;
      inner.recolour((ink) => PATH_INKS[ink]?.colour ?? INK);
      pose(inner);
    },
    tool(tool) {
      layOver(tool && toolMeshes(tool), FREE, () => BLOCKED);
    },
    guard(guard) {
      layOver(guard && guardMeshes(guard), GUARD_INKS.filled, (part) => GUARD_INKS.lines[part] ?? INK);
    },
    tip(tip) {
      layOver(tip && tipMeshes(tip, across), INK, (part) => TIP_INKS[part] ?? INK);
    },
    open(shares) {
      opened = shares;
      poseAll();
    },
    bend(index) {
      shape = index;
      if (shape >= 0 && !bends) {
        for (const batch of Object.values(drawn)) batch.drop();
        drawn = drawnOf(meshesOf(model, true));
        bends = true;
        recolour();
      }
      poseAll();
    },
    colour(faces, inks) {
      [faceInks, edgeInks] = [faces, inks];
      recolour();
    },
    paint(eye, bend, spread) {
      gl.viewport(0, 0, canvas.width, canvas.height);
      gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
      const { right, up, toward } = axesOf(eye);
      gl.uniformMatrix4fv(batches.uniform("eye"), false, matrixOf(eye, canvas.width / canvas.height, 4 * across || 1));
      const light = add(add(times(toward, 0.55), up, 0.7), right, -0.45);
      gl.uniform3f(batches.uniform("light"), light[0], light[1], light[2]);
      gl.uniform1f(batches.uniform("bend"), bend);
      gl.uniform1f(batches.uniform("spread"), spread);
      const path = spread === 0 ? inner : undefined;
      path?.draw(gl.TRIANGLES, { flat: false });
      if (!path) drawn.solid.draw(gl.TRIANGLES, { flat: false });
      // Seen from far, lines a pixel wide would blacken a bar.
      const thin = Math.min(1, Math.max(LEAST_INK, (FULL_INK * canvas.height) / eye.height));
      seenThrough(() => drawn.edges.draw(gl.LINES, { flat: true, alpha: path ? THROUGH * thin : thin, near: NEARER }));
      if (spread === 0) {
        // A moment about a bar's own axis lies inside it: what is hidden shows through.
        gl.disable(gl.DEPTH_TEST);
        seenThrough(() => signs.draw(gl.LINES, { flat: true, alpha: HIDDEN }));
        gl.enable(gl.DEPTH_TEST);
        signs.draw(gl.LINES, { flat: true, near: NEARER });
      }
      if (!path) {
        gl.depthMask(false);
        seenThrough(() => drawn.panels.draw(gl.TRIANGLES, { flat: false, alpha: GLASS }));
        gl.depthMask(true);
      }
      if (spread > 0 || !over) return;
      // Over all: what stands in the way would hide where it stops the tool, or what lies open behind it.
      gl.disable(gl.DEPTH_TEST);
      seenThrough(() => over?.filled.draw(gl.TRIANGLES, { flat: true, alpha: FREE_ALPHA }));
      over.lines.draw(gl.LINES, { flat: true });
      gl.enable(gl.DEPTH_TEST);
    },
  };
}
