import { createHash } from "node:crypto";

/** SHA-256 of a file, in hexadecimal: names one revision of it beyond doubt. */
export const revisionHash = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

/** The source of a Content-Security-Policy that lets exactly this text in (CSP Level 3, 2.3.1 hash-source). */
export const policyHash = (text: string): string => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
