export { cutCsv } from "./csv.ts";
export { cutJson } from "./json.ts";
export { cutText } from "./text.ts";
