export { buildJson } from "./json.ts";
export { buildText } from "./text.ts";
