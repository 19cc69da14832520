import type { ModelData, PathData } from "../drawing/model3d/model-data.ts";
import { movedMesh } from "./bend.ts";
import { axesOf, type Eye, matrixOf } from "./camera.ts";
import type { Rgb } from "./colours.ts";
import { openedMesh } from "./doors.ts";
import type { Mesh, Meshes } from "./mesh.ts";
import { PATH_INKS, pathMesh } from "./path-mesh.ts";
import { mix } from "./vec.ts";

const VERTEX = `
attribute vec3 at; attribute vec3 normal; attribute vec3 away; attribute vec3 bent; attribute vec3 colour;
uniform mat4 eye; uniform vec3 light; uniform float bend; uniform float spread; uniform float flat_; uniform float near_;
varying vec3 paint;
void main(){
  vec4 p = eye * vec4(at + bend * bent + spread * away, 1.0);
  p.z -= near_;
  gl_Position = p;
  float lit = 0.66 + 0.34 * max(dot(normal, light), 0.0) - 0.1 * max(-dot(normal, light), 0.0);
  paint = colour * mix(lit, 1.0, flat_);
}`;
const FRAGMENT = `
precision mediump float; varying vec3 paint; uniform float alpha;
void main(){ gl_FragColor = vec4(paint, alpha); }`;

type Field = "at" | "normal" | "away" | "bent" | "colour";
const FIELDS: readonly Field[] = ["at", "normal", "away", "bent", "colour"];

interface Batch {
  readonly mesh: Mesh;
  readonly buffers: Readonly<Record<Field, WebGLBuffer>>;
}

export interface Painter {
  colour(parts: readonly Rgb[]): void;
  bend(shape: number): void;
  /** A load path within the bars, which then are seen through. */
  path(path: PathData | undefined): void;
  /** Doors opened by this share of their way. */
  open(share: number): void;
  paint(eye: Eye, bend: number, spread: number): void;
}

/** At this many mm a pixel and fewer, edges have their full ink. */
const FULL_INK = 0.9;
/** Ink of edges of bars that are seen through. */
const THROUGH = 0.5;
const INK: Rgb = [32, 38, 43];
const LOAD: Rgb = [31, 95, 139];

function program(gl: WebGLRenderingContext): WebGLProgram | undefined {
  const made = gl.createProgram();
  for (const [kind, text] of [
    [gl.VERTEX_SHADER, VERTEX],
    [gl.FRAGMENT_SHADER, FRAGMENT],
  ] as const) {
    const shader = gl.createShader(kind);
    if (!shader) return undefined;
    gl.shaderSource(shader, text);
    gl.compileShader(shader);
    gl.attachShader(made, shader);
  }
  gl.linkProgram(made);
  return gl.getProgramParameter(made, gl.LINK_STATUS) ? made : undefined;
}

/** Signs of loads and goods as lines that belong to no part. */
function signMesh({ arrows, boxes, doors }: ModelData): Mesh {
  const at: number[] = [];
  for (const arrow of arrows) {
    const [a, b] = [arrow.slice(0, 3), arrow.slice(3, 6)];
    at.push(...a, ...b);
    const run = b.map((c, i) => c - (a[i] ?? 0));
    const long = Math.hypot(...run) || 1;
    const along = run.map((c) => c / long);
    // Four barbs, so that a head shows from every side.
    const seed = Math.abs(along[2] ?? 0) > 0.9 ? [1, 0, 0] : [0, 0, 1];
    const u = [0, 1, 2].map(
      (i) =>
        (along[(i + 1) % 3] ?? 0) * (seed[(i + 2) % 3] ?? 0) - (along[(i + 2) % 3] ?? 0) * (seed[(i + 1) % 3] ?? 0),
    );
    const v = [0, 1, 2].map(
      (i) => (along[(i + 1) % 3] ?? 0) * (u[(i + 2) % 3] ?? 0) - (along[(i + 2) % 3] ?? 0) * (u[(i + 1) % 3] ?? 0),
    );
    for (const [way, side] of [
      [u, 1],
      [u, -1],
      [v, 1],
      [v, -1],
    ] as const)
      at.push(...b, ...b.map((c, i) => c - 0.26 * long * (along[i] ?? 0) + side * 0.09 * long * (way[i] ?? 0)));
  }
  for (const c of boxes) at.push(c);
  // Every other stretch of a door's arc, so that it shows as dashed.
  for (const { arc } of doors) for (let i = 0; i + 5 < arc.length; i += 6) at.push(...arc.slice(i, i + 6));
  const count = at.length / 3;
  return {
    at: Float32Array.from(at),
    normal: new Float32Array(at.length),
    away: new Float32Array(at.length),
    part: new Int32Array(count).fill(-1),
    rides: new Int32Array(count).fill(-1),
    station: new Float32Array(count),
  };
}

/** Draws with WebGL; undefined where the browser has none. */
export function painterFor(canvas: HTMLCanvasElement, model: ModelData, meshes: Meshes): Painter | undefined {
  const gl = canvas.getContext("webgl", { antialias: true, alpha: false, preserveDrawingBuffer: true });
  const made = gl && program(gl);
  if (!gl || !made) return undefined;
  gl.useProgram(made);
  const place = new Map<string, WebGLUniformLocation | null>();
  const set = (name: string): WebGLUniformLocation | null => {
    if (!place.has(name)) place.set(name, gl.getUniformLocation(made, name));
    return place.get(name) ?? null;
  };
  const slots = FIELDS.map((field) => gl.getAttribLocation(made, field));
  const fill = (buffer: WebGLBuffer, data: Float32Array | Uint8Array): void => {
    gl.bindBuffer(gl.ARRAY_BUFFER, buffer);
    gl.bufferData(gl.ARRAY_BUFFER, data, gl.STATIC_DRAW);
  };
  const batch = (mesh: Mesh): Batch => {
    const buffers = Object.fromEntries(FIELDS.map((field) => [field, gl.createBuffer()])) as Batch["buffers"];
    fill(buffers.at, mesh.at);
    fill(buffers.normal, mesh.normal);
    fill(buffers.away, mesh.away);
    fill(buffers.bent, new Float32Array(mesh.at.length));
    fill(buffers.colour, new Uint8Array(mesh.at.length));
    return { mesh, buffers };
  };
  const [solid, panels, edges, signs] = [meshes.solid, meshes.panels, meshes.edges, signMesh(model)].map(batch);
  const recolour = ({ mesh, buffers }: Batch, of: (part: number) => Rgb): void => {
    const data = new Uint8Array(mesh.at.length);
    mesh.part.forEach((part, i) => {
      data.set(of(part), 3 * i);
    });
    fill(buffers.colour, data);
  };
  if (edges) recolour(edges, () => INK);
  if (signs) recolour(signs, () => LOAD);
  const draw = ({ mesh, buffers }: Batch, mode: number, flat: number, alpha: number, near: number): void => {
    FIELDS.forEach((field, i) => {
      const slot = slots[i] ?? -1;
      if (slot < 0) return;
      gl.bindBuffer(gl.ARRAY_BUFFER, buffers[field]);
      gl.enableVertexAttribArray(slot);
      if (field === "colour") gl.vertexAttribPointer(slot, 3, gl.UNSIGNED_BYTE, true, 0, 0);
      else gl.vertexAttribPointer(slot, 3, gl.FLOAT, false, 0, 0);
    });
    gl.uniform1f(set("flat_"), flat);
    gl.uniform1f(set("alpha"), alpha);
    gl.uniform1f(set("near_"), near);
    gl.drawArrays(mode, 0, mesh.part.length);
  };
  const [low, high] = [meshes.low, meshes.high];
  const reach = 4 * Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]) || 1;
  gl.enable(gl.DEPTH_TEST);
  gl.blendFunc(gl.SRC_ALPHA, gl.ONE_MINUS_SRC_ALPHA);
  gl.clearColor(1, 1, 1, 1);
  let inner: Batch | undefined;
  let shapeNow = -1;
  const across = Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
  return {
    path(path) {
      if (inner) for (const buffer of Object.values(inner.buffers)) gl.deleteBuffer(buffer);
      inner = path && batch(pathMesh(model, meshes.axes, path, mix(low, high, 0.5), across));
      if (!inner) return;
      recolour(inner, (ink) => PATH_INKS[ink]?.colour ?? INK);
      fill(inner.buffers.bent, movedMesh(model, inner.mesh, meshes.axes, shapeNow));
    },
    open(share) {
      for (const one of [solid, panels, edges]) {
        if (!one) continue;
        const { at, normal } = openedMesh(model, one.mesh, share);
        fill(one.buffers.at, at);
        fill(one.buffers.normal, normal);
      }
    },
    colour(parts) {
      for (const one of [solid, panels]) if (one) recolour(one, (part) => parts[part] ?? INK);
    },
    bend(shape) {
      shapeNow = shape;
      for (const one of [solid, panels, edges, inner])
        if (one) fill(one.buffers.bent, movedMesh(model, one.mesh, meshes.axes, shape));
    },
    paint(eye, bend, spread) {
      gl.viewport(0, 0, canvas.width, canvas.height);
      gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
      const { right, up, toward } = axesOf(eye);
      gl.uniformMatrix4fv(set("eye"), false, matrixOf(eye, canvas.width / canvas.height, reach));
      const light = [0, 1, 2].map((i) => 0.55 * (toward[i] ?? 0) + 0.7 * (up[i] ?? 0) - 0.45 * (right[i] ?? 0));
      gl.uniform3f(set("light"), light[0] ?? 0, light[1] ?? 0, light[2] ?? 0);
      gl.uniform1f(set("bend"), bend);
      gl.uniform1f(set("spread"), spread);
      const seenThrough = inner !== undefined && spread === 0;
      if (inner && seenThrough) draw(inner, gl.TRIANGLES, 0, 1, 0);
      if (solid && !seenThrough) draw(solid, gl.TRIANGLES, 0, 1, 0);
      // Seen from far, lines a pixel wide would blacken a bar.
      gl.enable(gl.BLEND);
      const thin = Math.min(1, Math.max(0.22, (FULL_INK * canvas.height) / eye.height));
      if (edges) draw(edges, gl.LINES, 1, seenThrough ? THROUGH * thin : thin, 0.0004);
      gl.disable(gl.BLEND);
      if (signs && spread === 0) draw(signs, gl.LINES, 1, 1, 0.0004);
      if (panels && !seenThrough) {
        gl.enable(gl.BLEND);
        gl.depthMask(false);
        draw(panels, gl.TRIANGLES, 0, 0.24, 0);
        gl.depthMask(true);
        gl.disable(gl.BLEND);
      }
    },
  };
}
