export { buildJson } from "./json.ts";
export { buildSvg } from "./svg.ts";
export { buildText } from "./text.ts";
