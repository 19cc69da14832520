import type { Finding, Report, RuleCard } from "../../src/inspection/report.ts";
import type { Place } from "../../src/model/problem.ts";
import { ref } from "../../src/model/ref.ts";

/** Reports written by hand: what an engine could say of an invented potting bench. */
const file = "frames/potting-bench.frame.json";

function placeAt(line: number, pointer: string, inFile = file): Place {
  return { file: inFile, pointer, line, column: 5, endLine: line, endColumn: 60 };
}

export const sagging: Finding = {
  rule: "bar.sags",
  key: "sag",
  level: "hold",
  at: ref("bar", "rail-3"),
  where: "rail-3, between leg-1 and leg-4",
  text: 'sags 8.1 mm under "trays"',
  shown: { sag: "8.1 mm", case: "trays" },
  amounts: {},
  related: [{ at: ref("bar", "leg-1"), place: placeAt(12, "/bars/0") }],
  measure: {
    quantity: "length",
    measured: 0.0081,
    limit: 0.0049,
    sense: "at most",
    shown: { measured: "8.1 mm", limit: "4.9 mm" },
    from: "frame",
    basis: "span / 300",
    utilisation: 1.653,
    under: { combination: "G + trays", bound: "typical" },
    otherBounds: { stiff: "7.2 mm" },
    hangsOnStiffness: false,
  },
  place: placeAt(41, "/bars/7"),
  print: "bar.sags|sag|rail-3",
  cures: [
    { words: "profile 40x80-8, tall +z", edits: [{ pointer: "/bars/7/profile", to: "40x80-8" }], after: "1.4 mm" },
  ],
};

export const openEnd: Finding = {
  rule: "end.bare",
  key: "bare",
  level: "note",
  at: ref("end", "rail-3/to"),
  where: "rail-3, between leg-1 and leg-4",
  text: "the far end is open: 610 mm² of sawn metal",
  shown: { area: "610 mm²" },
  amounts: {},
  related: [],
  advice: "close it with a cap",
  place: placeAt(41, "/bars/7"),
  print: "end.bare|bare|rail-3/to",
  conceded: { reason: "behind the wall", who: "M. Sand", until: "2027-03-31" },
  cures: [],
};

export const loose: Finding = {
  rule: "frame.loose",
  key: "turns",
  level: "reject",
  at: ref("bar", "brace-1"),
  where: "brace-1",
  text: "turns freely about its own axis",
  shown: {},
  amounts: {},
  related: [],
  place: placeAt(58, "/bars/11"),
  print: "frame.loose|turns|brace-1",
  cures: [],
};

export const rejected: Report = {
  file,
  title: "Potting bench",
  units: "mm-N-kg",
  verdict: "reject",
  complete: true,
  counts: { bars: 22, joints: 34, cases: 3, parts: 61 },
  problems: [],
  findings: [loose, sagging, openEnd],
  undecided: [
    {
      why: "because of frame.loose",
      rules: ["frame.sways", "frame.buckles"],
      at: [ref("frame", "frame")],
      holds: true,
    },
  ],
  tallies: [
    { rule: "bar.sags", met: 21, notMet: 1, notApplicable: 0, undecided: 0 },
    {
      rule: "joint.slips",
      met: 34,
      notMet: 0,
      notApplicable: 0,
      undecided: 0,
      closest: {
        at: ref("joint", "rail-1.from"),
        quantity: "length",
        utilisation: 0.92,
        sense: "at most",
        measured: "1.10 kN",
        limit: "1.20 kN",
      },
    },
    { rule: "end.bare", met: 40, notMet: 1, notApplicable: 3, undecided: 0 },
    { rule: "frame.loose", met: 0, notMet: 1, notApplicable: 0, undecided: 0 },
    { rule: "frame.sways", met: 0, notMet: 0, notApplicable: 0, undecided: 1 },
  ],
  failures: [],
  assumed: ["torque as rated", "end-load nuts"],
  changed: [],
  concessionRemarks: ["bar.twists on rail-9 matches nothing"],
  cureTrials: { tried: 0, untried: 0 },
};

export const accepted: Report = {
  ...rejected,
  file: "frames/a-shelf.frame.json",
  verdict: "accept",
  findings: [],
  undecided: [],
  assumed: [],
  changed: [],
  concessionRemarks: [],
  cureTrials: { tried: 0, untried: 0 },
  tallies: rejected.tallies.filter((tally) => tally.rule === "joint.slips"),
};

export const unread: Report = {
  ...accepted,
  file: "frames/torn.frame.json",
  title: "",
  verdict: "unread",
  complete: false,
  counts: { bars: 0, joints: 0, cases: 0, parts: 0 },
  tallies: [],
  problems: [
    {
      code: "not-a-length",
      weight: "error",
      place: {
        file: "frames/torn.frame.json",
        pointer: "/bars/0/from/0",
        line: 3,
        column: 14,
        endLine: 3,
        endColumn: 21,
      },
      found: '"20 mn"',
      expected: 'a length, such as 20 or "20 mm"',
      mend: 'write "20 mm"',
    },
  ],
};

export const cards: readonly RuleCard[] = ["bar.sags", "end.bare", "frame.loose", "frame.sways", "joint.slips"].map(
  (id) => ({
    id,
    title: `What ${id} looks for holds`,
    group: "bars",
    level: id === "frame.loose" ? "reject" : "hold",
    basis: ["common practice"],
    messages: {
      sag: { text: "sags {sag:length} under {case:word}" },
      bare: { text: "the far end is open: {area:area} of sawn metal", advice: "close it with a cap" },
      turns: { text: "turns freely about its own axis" },
    },
    criteria: [
      {
        name: "sag",
        quantity: "length",
        standard: "span / 300",
        about: "how far a bar may sag",
        basis: "common practice",
      },
    ],
  }),
);
