import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";

/** Takes plain brackets for those with side walls, throughout. */
export function softer(file: FrameFile): void {
  for (const kit of Object.values(file.kits ?? {}))
    for (const item of kit ?? []) item.connector = item.connector.replace("gusset-", "inside-");
}
