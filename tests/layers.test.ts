import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const SOURCE = fileURLToPath(new URL("../src", import.meta.url));

/** What each layer may import besides itself. Arrows go one way; nothing may import what is not named here. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  geometry: [],
  section: ["geometry"],
  mechanics: ["geometry"],
  model: [],
  facts: ["model", "geometry", "section", "mechanics"],
  criteria: ["facts", "model"],
  rules: ["criteria", "facts", "model"],
  cures: ["criteria", "facts", "model"],
  drawing: ["facts", "model", "geometry"],
  house: ["rules", "criteria", "model"],
  inspection: ["cures", "drawing", "rules", "criteria", "house", "facts", "model"],
  // Runs in the reader's browser; the shape of what it is given is all it knows.
  viewer: ["drawing"],
  report: ["inspection", "drawing", "house", "rules", "criteria", "facts", "model"],
  host: ["report", "inspection", "house", "rules", "criteria", "model"],
  cli: ["host", "report", "inspection", "house", "rules", "cures", "criteria", "drawing", "facts", "model"],
  // The library's entry points: what a team writes rules with.
  "": ["model", "criteria", "facts", "rules", "inspection"],
};

/** Layers that may import no module of the platform. */
const PURE = [
  "geometry",
  "section",
  "mechanics",
  "model",
  "facts",
  "criteria",
  "rules",
  "cures",
  "drawing",
  "viewer",
  "house",
  "inspection",
  "report",
];
/** Modules of the platform that single files of pure layers may import all the same: functions of their arguments alone. */
const GRANTED: Readonly<Record<string, string>> = {
  // Hashes for marks that outlive a run.
  "inspection/fingerprint.ts": "node:crypto",
  "report/sarif/fingerprints.ts": "node:crypto",
  "report/sheet/hashes.ts": "node:crypto",
  // Arithmetic of paths with forward slashes.
  "house/settings.ts": "node:path",
};
/** Single files outside the layers named above: arithmetic of points is everybody's; schemas and the package are data. */
const SHARED: Readonly<Record<string, readonly string[]>> = {
  "geometry/vector.ts": ["cures"],
  "../package.json": ["cli"],
  "../schema/frame.schema.json": ["model"],
  "../schema/stock.schema.json": ["model"],
  "../schema/report.schema.json": ["model"],
  "../schema/house.schema.json": ["house"],
  "../schema/concessions.schema.json": ["house"],
};
/** Only the layer that touches files, threads and streams may import these. */
const ONLY_HOST = ["node:fs", "node:fs/promises", "node:worker_threads", "node:child_process", "node:stream"];

const IMPORT =
  /(?:^|[;\s])(?:import|export)\s+(?:[^"'`;]*?\sfrom\s+)?["']([^"']+)["']|\bimport\(\s*["']([^"']+)["']\s*\)/g;

interface Import {
  readonly file: string;
  readonly from: string;
}

function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => relative(SOURCE, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

/** Comments hold examples of imports; blank them, strings are left alone. */
function withoutComments(text: string): string {
  return text.replace(
    /("(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`)|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g,
    (_, kept: string) => kept ?? " ",
  );
}

function importsOf(file: string): readonly Import[] {
  const text = withoutComments(readFileSync(join(SOURCE, file), "utf8"));
  return [...text.matchAll(IMPORT)].map((match) => ({ file, from: match[1] ?? match[2] ?? "" }));
}

const layerOf = (file: string): string => (file.includes("/") ? (file.split("/")[0] ?? "") : "");

/** The own file an import means, or undefined for one from outside. */
function ownFile({ file, from }: Import): string | undefined {
  return from.startsWith(".")
    ? relative(SOURCE, join(SOURCE, dirname(file), from))
        .split(sep)
        .join("/")
    : undefined;
}

const files = filesUnder(SOURCE);
const imports = files.flatMap(importsOf);

function offences(wrong: (one: Import) => string | undefined): readonly string[] {
  return imports.flatMap((one) => {
    const why = wrong(one);
    return why === undefined ? [] : [`src/${one.file} imports "${one.from}": ${why}`];
  });
}

describe("the layers of the source", () => {
  it("are all known, and every file lies in one", () => {
    expect(files.length).toBeGreaterThan(200);
    const strange = files.filter((file) => MAY_IMPORT[layerOf(file)] === undefined);
    expect(strange.map((file) => `src/${file} lies in no known layer`)).toEqual([]);
  });

  it("import one way only", () => {
    const wrong = offences((one) => {
      const target = ownFile(one);
      if (target === undefined) return undefined;
      const [from, to] = [layerOf(one.file), layerOf(target)];
      if (SHARED[target]?.includes(from)) return undefined;
      if (target.startsWith("..")) return "leaves the source";
      if (from === to || MAY_IMPORT[from]?.includes(to)) return undefined;
      return `${from || "the entry"} may import ${MAY_IMPORT[from]?.join(", ") || "only itself"}, not ${to || "the entry"}`;
    });
    expect(wrong).toEqual([]);
  });

  it("have no two that import each other, straight or by way of others", () => {
    const reached = (layer: string, seen: Set<string>): Set<string> => {
      for (const next of MAY_IMPORT[layer] ?? []) {
        if (!seen.has(next)) reached(next, seen.add(next));
      }
      return seen;
    };
    for (const layer of Object.keys(MAY_IMPORT)) expect(reached(layer, new Set()).has(layer), layer).toBe(false);
  });

  it("hold no files that import each other in a ring, types included", () => {
    const targets = new Map<string, string[]>();
    for (const one of imports) {
      const target = ownFile(one);
      if (target !== undefined) targets.set(one.file, [...(targets.get(one.file) ?? []), target]);
    }
    const [done, open]: [Set<string>, string[]] = [new Set(), []];
    const rings: string[] = [];
    const follow = (file: string): void => {
      if (open.includes(file)) rings.push([...open.slice(open.indexOf(file)), file].join(" -> "));
      if (done.has(file) || open.includes(file)) return;
      open.push(file);
      for (const next of targets.get(file) ?? []) follow(next);
      open.pop();
      done.add(file);
    };
    files.forEach(follow);
    expect(rings).toEqual([]);
  });

  it("leave files, threads and streams to the host", () => {
    const wrong = offences(({ file, from }) =>
      ONLY_HOST.includes(from) && layerOf(file) !== "host" ? "only src/host may" : undefined,
    );
    expect(wrong).toEqual([]);
  });

  it("are pure below the host: no module of the platform but what is granted to single files", () => {
    const wrong = offences(({ file, from }) =>
      from.startsWith("node:") && PURE.includes(layerOf(file)) && GRANTED[file] !== from
        ? `${layerOf(file)} is pure`
        : undefined,
    );
    expect(wrong).toEqual([]);
  });

  it("hash in the named files only", () => {
    const wrong = offences(({ file, from }) =>
      from === "node:crypto" && GRANTED[file] !== from ? "no file but those named here may" : undefined,
    );
    expect(wrong).toEqual([]);
  });

  it("use every grant", () => {
    const unused = Object.entries(GRANTED).filter(
      ([file, module]) => !imports.some((one) => one.file === file && one.from === module),
    );
    expect(unused).toEqual([]);
  });

  it("name modules of the platform in full, and own files with their extension", () => {
    const bare = ["fs", "path", "crypto", "os", "url", "worker_threads", "stream", "child_process", "process"];
    const wrong = offences(({ from }) => {
      if (bare.includes(from.split("/")[0] ?? "")) return `write "node:${from}"`;
      if (from.startsWith(".") && !/\.(?:ts|js|json)$/.test(from)) return "name the file with its extension";
      return undefined;
    });
    expect(wrong).toEqual([]);
  });
});
