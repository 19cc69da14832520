import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

export interface Folder {
  readonly path: string;
  at(name: string): string;
  write(name: string, text: string | Uint8Array): string;
  remove(): void;
}

/** An empty folder of its own, with links in its path followed. */
export function temporaryFolder(): Folder {
  const path = realpathSync(mkdtempSync(join(tmpdir(), "trysquare-")));
  return {
    path,
    at: (name) => join(path, name),
    write(name, text) {
      const file = join(path, name);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, text);
      return file;
    },
    remove: () => rmSync(path, { recursive: true, force: true }),
  };
}
