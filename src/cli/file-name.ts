import { Unusable } from "./unusable.ts";

/** Reads the argument of an option that names a file to write. @throws Unusable */
export function fileName(option: string): (written: string) => string {
  return (written) => {
    if (written.trim() === "") throw new Unusable(`${option} is empty: name a file after it`);
    return written;
  };
}
