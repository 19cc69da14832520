import type { Failure, Report } from "../../inspection/report.ts";
import type { Problem } from "../../model/problem.ts";
import { changedWords } from "../changed-words.ts";
import { physicalLocation, relativeUri } from "./location.ts";
import { plainWords } from "./words.ts";

interface Kind {
  readonly id: string;
  readonly text: string;
}
const UNREAD: Kind = { id: "frame-unread", text: "A frame file could not be read, so it was not inspected." };
const DOUBTFUL: Kind = { id: "frame-doubtful", text: "A frame file was read, but something in it is doubtful." };
const CHANGED: Kind = {
  id: "limits-changed",
  text: "Limits or levels were set otherwise than usual by house or frame.",
};
const FAILED: Kind = { id: "rule-failed", text: "A rule or fact failed, so what it looks at was not judged." };
const FAULT: Kind = { id: "run-fault", text: "The run as a whole could not do what was asked." };

/** Descriptors of the notifications below, for the tool component. */
export const notificationDescriptors: readonly object[] = [UNREAD, DOUBTFUL, CHANGED, FAILED, FAULT].map(
  ({ id, text }) => ({
    id,
    shortDescription: { text },
    fullDescription: { text },
    help: { text },
  }),
);

function ofProblem({ weight, place, found, expected, mend }: Problem): object {
  const words = `found ${found}; expected ${expected}${mend === undefined ? "" : `; ${mend}`}`;
  return {
    descriptor: { id: (weight === "error" ? UNREAD : DOUBTFUL).id },
    level: weight,
    message: { text: plainWords(words) },
    locations: [{ physicalLocation: physicalLocation(place) }],
  };
}

const whole = (file: string): object => ({
  physicalLocation: { artifactLocation: { uri: relativeUri(file), uriBaseId: "%SRCROOT%" } },
});

function ofChanged({ file, changed }: Report): object[] {
  if (changed.length === 0) return [];
  const text = plainWords(changed.map(changedWords).join("; "));
  return [{ descriptor: { id: CHANGED.id }, level: "note", message: { text }, locations: [whole(file)] }];
}

function ofFailure(file: string, failure: Failure, indexOf: (rule: string) => number | undefined): object {
  const { rule, fact, at, message } = failure;
  const index = rule === undefined ? undefined : indexOf(rule);
  const place = at === undefined ? "" : ` at ${at.id}`;
  const what = rule ?? (fact === undefined ? "trysquare" : `fact ${fact}`);
  return {
    descriptor: { id: FAILED.id },
    ...(rule !== undefined && { associatedRule: { id: rule, ...(index !== undefined && { index }) } }),
    level: "error",
    message: { text: plainWords(`${what} failed${place}: ${message}`) },
    locations: [whole(file)],
  };
}

/** What kept a file from being judged whole, is doubtful in it, or was judged by other limits than usual. */
export function executionNotifications(
  report: Report,
  indexOf: (rule: string) => number | undefined,
): readonly object[] {
  return [
    ...report.problems.map(ofProblem),
    ...ofChanged(report),
    ...report.failures.map((failure) => ofFailure(report.file, failure, indexOf)),
  ];
}

export function faultNotification(fault: string): object {
  return { descriptor: { id: FAULT.id }, level: "error", message: { text: plainWords(fault) } };
}
