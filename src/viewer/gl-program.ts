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

/** The one program that draws all; undefined where the browser does not take it. */
export function programOf(gl: WebGLRenderingContext): WebGLProgram | undefined {
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
