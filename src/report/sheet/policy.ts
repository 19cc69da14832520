import { policyHash } from "./hashes.ts";

/** Nothing is fetched, nothing is sent, no base or form can lead elsewhere; only the style and the script written here count. */
export function policyOf(style: string, script?: string): string {
  return [
    "default-src 'none'",
    `style-src ${policyHash(style)}`,
    ...(script === undefined ? [] : [`script-src ${policyHash(script)}`]),
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}
