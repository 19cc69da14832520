import type { Kind } from "../ref.ts";

/** Where a part was written, and the entry of `copies` that made it when it is a copy. */
export interface Origin {
  readonly pointer: string;
  readonly copyPointer?: string;
  /** The entry of a kit that a connector was taken from, when its joint names the kit. */
  readonly kitPointer?: string;
}

export interface Named extends Origin {
  readonly kind: Kind;
  /** For a joint: the list its connectors were written in, its own or a kit's. */
  readonly connectors?: string;
}

/** Every id of a file in the order of registration: one namespace over all kinds. Load cases and kits have their own. */
export type Names = Map<string, Named>;

/** Where every part of a frame was written. */
export interface Origins {
  /** Place of a reference by id; of the nearest part that contains it ("rail-1/to" → "rail-1"); the whole file for what is unknown. */
  originOf(ref: { readonly id: string }): Origin;
}

function containing(id: string): string | undefined {
  const slash = id.lastIndexOf("/");
  if (slash > 0) return id.slice(0, slash);
  const dot = id.lastIndexOf(".");
  return dot > 0 ? id.slice(0, dot) : undefined;
}

const CONNECTOR = /^(.*)\/(\d+)$/;

function exact(names: ReadonlyMap<string, Named>, id: string): Origin | undefined {
  const named = names.get(id);
  if (named !== undefined) return named;
  const connector = CONNECTOR.exec(id);
  const joint = connector === null ? undefined : names.get(connector[1] ?? "");
  if (joint?.connectors === undefined) return undefined;
  const item = `${joint.connectors}/${Number(connector?.[2]) - 1}`;
  const own = joint.connectors.startsWith(`${joint.pointer}/`);
  return own ? { ...joint, pointer: item } : { ...joint, kitPointer: item };
}

export function originsOf(names: ReadonlyMap<string, Named>): Origins {
  return {
    originOf(ref) {
      for (let id: string | undefined = ref.id; id !== undefined; id = containing(id)) {
        const origin = exact(names, id);
        if (origin === undefined) continue;
        const { pointer, copyPointer, kitPointer } = origin;
        return {
          pointer,
          ...(copyPointer === undefined ? {} : { copyPointer }),
          ...(kitPointer === undefined ? {} : { kitPointer }),
        };
      }
      return { pointer: "" };
    },
  };
}
