import concessionsSchema from "../../schema/concessions.schema.json" with { type: "json" };
import houseSchema from "../../schema/house.schema.json" with { type: "json" };
import { whole as checkConcessions } from "../model/generated/concessions-check.generated.js";
import { whole as explainConcessions } from "../model/generated/concessions-explain.generated.js";
import type { ConcessionsFile } from "../model/generated/concessions-file.generated.ts";
import { whole as checkHouse } from "../model/generated/house-check.generated.js";
import { whole as explainHouse } from "../model/generated/house-explain.generated.js";
import type { HouseFile } from "../model/generated/house-file.generated.ts";
import type { Place, Problem } from "../model/problem.ts";
import { type Document, openDocument } from "../model/text/document.ts";
import { explainErrors } from "../model/validation-message.ts";
import type { FiledConcession } from "./concession.ts";

export interface Refused {
  readonly problems: readonly Problem[];
}

function errorsOf(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter((problem) => problem.weight === "error");
}

function isHouse(value: unknown): value is HouseFile {
  return checkHouse(value);
}

function isConcessions(value: unknown): value is ConcessionsFile {
  return checkConcessions(value);
}

function opened(name: string, bytes: Uint8Array): Document | Refused {
  const { document, problems } = openDocument(name, bytes);
  return document ?? { problems: errorsOf(problems) };
}

/** A house file from its bytes, or everything that is wrong with it. */
export function readHouse(
  name: string,
  bytes: Uint8Array,
): { readonly file: HouseFile; readonly place: (pointer: string) => Place } | Refused {
  const document = opened(name, bytes);
  if ("problems" in document) return document;
  if (isHouse(document.value)) return { file: document.value, place: document.keyPlace };
  explainHouse(document.value);
  return { problems: explainErrors(explainHouse.errors ?? [], document, houseSchema) };
}

/** A concessions file from its bytes, or everything that is wrong with it. */
export function readConcessions(
  name: string,
  bytes: Uint8Array,
): { readonly concessions: readonly FiledConcession[] } | Refused {
  const document = opened(name, bytes);
  if ("problems" in document) return document;
  if (!isConcessions(document.value)) {
    explainConcessions(document.value);
    return { problems: explainErrors(explainConcessions.errors ?? [], document, concessionsSchema) };
  }
  const entries = document.value.concessions;
  document.places(entries.map((_, i) => `/concessions/${i}`));
  const concessions = entries.map(({ frames, message, ...rest }, i): FiledConcession => {
    const place = document.place(`/concessions/${i}`);
    const concession = { ...rest, place, ...(message === undefined ? {} : { key: message }) };
    return frames === undefined ? { concession } : { concession, frames };
  });
  return { concessions };
}
