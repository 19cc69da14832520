import type { Place } from "../../model/problem.ts";
import { plainWords } from "./words.ts";

/** A file's name as a relative URI reference: each piece between slashes percent-encoded (RFC 3986). */
export function relativeUri(file: string): string {
  const wellFormed = file.replace(/\p{Cs}/gu, "\ufffd");
  return wellFormed.split("/").map(encodeURIComponent).join("/");
}

/** Where in which file. The place's numbers are those of SARIF with columnKind utf16CodeUnits. */
export function physicalLocation({ file, line, column, endLine, endColumn }: Place): object {
  return {
    artifactLocation: { uri: relativeUri(file), uriBaseId: "%SRCROOT%" },
    region: { startLine: line, startColumn: column, endLine, endColumn },
  };
}

/** The part by its name, and where it stands in the document. */
export function logicalLocation(name: string, pointer?: string): object {
  return {
    name: plainWords(name),
    ...(pointer === undefined ? {} : { fullyQualifiedName: plainWords(pointer) }),
    kind: "object",
  };
}
