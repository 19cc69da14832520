import type { Rgb } from "./colours.ts";
import type { Mesh } from "./mesh.ts";

type Field = "at" | "normal" | "away" | "bent" | "colour";
const FIELDS: readonly Field[] = ["at", "normal", "away", "bent", "colour"];

/** A mesh in the memory of the graphics card. */
export interface Batch {
  readonly mesh: Mesh;
  put(field: Field, data: Float32Array | Uint8Array): void;
  recolour(of: (part: number) => Rgb): void;
  /** `flat`: without light and shade; `near`: pulled towards the eye, so that lines show on what they bound. */
  draw(mode: number, look: { readonly flat: boolean; readonly alpha?: number; readonly near?: number }): void;
  drop(): void;
}

/** What batches of one program are made with. */
export interface Batches {
  of(mesh: Mesh): Batch;
  /** Place of a uniform of the program. */
  uniform(name: string): WebGLUniformLocation | null;
}

export function batchesFor(gl: WebGLRenderingContext, program: WebGLProgram): Batches {
  const places = new Map<string, WebGLUniformLocation | null>();
  const uniform = (name: string): WebGLUniformLocation | null => {
    if (!places.has(name)) places.set(name, gl.getUniformLocation(program, name));
    return places.get(name) ?? null;
  };
  const slots = FIELDS.map((field) => [field, gl.getAttribLocation(program, field)] as const);
  return {
    uniform,
    of(mesh) {
      const buffers = Object.fromEntries(FIELDS.map((field) => [field, gl.createBuffer()])) as Record<
        Field,
        WebGLBuffer
      >;
      const batch: Batch = {
        mesh,
        put(field, data) {
          gl.bindBuffer(gl.ARRAY_BUFFER, buffers[field]);
          gl.bufferData(gl.ARRAY_BUFFER, data, gl.STATIC_DRAW);
        },
        recolour(of) {
          const data = new Uint8Array(mesh.at.length);
          mesh.part.forEach((part, i) => {
            data.set(of(part), 3 * i);
          });
          batch.put("colour", data);
        },
        draw(mode, { flat, alpha = 1, near = 0 }) {
          for (const [field, slot] of slots) {
            if (slot < 0) continue;
            gl.bindBuffer(gl.ARRAY_BUFFER, buffers[field]);
            gl.enableVertexAttribArray(slot);
            if (field === "colour") gl.vertexAttribPointer(slot, 3, gl.UNSIGNED_BYTE, true, 0, 0);
            else gl.vertexAttribPointer(slot, 3, gl.FLOAT, false, 0, 0);
          }
          gl.uniform1f(uniform("flat_"), flat ? 1 : 0);
          gl.uniform1f(uniform("alpha"), alpha);
          gl.uniform1f(uniform("near_"), near);
          gl.drawArrays(mode, 0, mesh.part.length);
        },
        drop() {
          for (const buffer of Object.values(buffers)) gl.deleteBuffer(buffer);
        },
      };
      batch.put("at", mesh.at);
      batch.put("normal", mesh.normal);
      batch.put("away", mesh.away);
      batch.put("bent", new Float32Array(mesh.at.length));
      batch.put("colour", new Uint8Array(mesh.at.length));
      return batch;
    },
  };
}
