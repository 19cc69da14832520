import { tells } from "./tells.ts";

tells([
  [
    "a kit that is not there",
    '"rail-2"], "by": "corner"',
    '"rail-2"], "by": "corners"',
    ['13:42 unknown-kit: kit "corners"; expected the name of a kit of this file (did you mean "corner"?)'],
  ],
  [
    "a bar that is not there in a joint",
    '["rail-1", "rail-2"], "by"',
    '["rail-1", "rail-22"], "by"',
    ['13:25 unknown-part: "rail-22"; expected the id of a bar (did you mean "rail-2"?)'],
  ],
  [
    "an end jointed twice",
    '["arm/from"], "onto"',
    '["rail-2/to"], "onto"',
    [
      "14:15 jointed-twice: a second joint on rail-2/to; expected one joint for each end; line 13 has the first (put all its connectors into one joint)",
    ],
  ],
  [
    "a joint onto itself",
    '"onto": "leg-1"',
    '"onto": "arm"',
    ['14:36 names-itself: "arm" fastened onto itself; expected the id of another bar'],
  ],
  [
    "one id for two joints",
    '{"bars": ["rail-1", "rail-2"], "by"',
    '{"id": "j", "bars": ["rail-1", "rail-2"], "by"',
    [
      '13:12 id-of-several: one id for 4 joints; expected a joint of one end (leave out "id": the joints are named after bar and end)',
    ],
  ],
  [
    "a bracket without its face",
    '"inside-bracket-40", "on": "below"',
    '"inside-bracket-40"',
    [
      '3:23 face-missing: "inside-bracket-40" without on; expected the face of the bar it sits on (add "on", for example "below")',
    ],
  ],
  [
    "a plate on an end",
    '[{"connector": "end-screw-M8"}]',
    '[{"connector": "plate-L-40", "on": "+y"}]',
    [
      '14:66 not-for-an-end: connector "plate-L-40", a plate; expected a connector for one end of a bar (write it under fastenings)',
    ],
  ],
  [
    "a connector and a screw that stock does not have",
    '[{"connector": "end-screw-M8"}]',
    '[{"connector": "end-screw-M8", "screw": "M8x3"}, {"connector": "end-screw-M6"}]',
    [
      '14:91 unknown-stock: screw "M8x3"; expected a screw of the stock (did you mean "M8x30"?)',
      '14:114 unknown-stock: connector "end-screw-M6"; expected a connector of the stock (did you mean "end-screw-M8"?)',
    ],
  ],
  [
    "a hole that the bracket does not have",
    '"on": "below"}]',
    '"on": "below", "omit": ["a2"]}]',
    ['3:82 unknown-hole: hole "a2"; expected one of a1, b1 (did you mean "a1"?)'],
  ],
  [
    "a torque in the wrong unit",
    '{"connector": "end-screw-M8"}',
    '{"connector": "end-screw-M8", "torque": "12 Nm/s"}',
    [
      '14:92 wrong-quantity: the unit Nm/s in "12 Nm/s"; expected a moment: a number in N·m, or text with a number and one of N·m, N·mm, N·cm, kN·m, lbf·in, lbf·ft',
    ],
  ],
  [
    "a torque nobody gives",
    '{"connector": "end-screw-M8"}',
    '{"connector": "end-screw-M8", "torque": 12000}',
    [
      "14:92 warning doubtful-value: torque 12 kN·m; expected a moment from 0.3 N·m to 250 N·m (perhaps N·mm and N·m were mixed up: then it is 12 N·m)",
    ],
  ],
  [
    "a hole that the plate does not have",
    '"omit": ["h3"]',
    '"omit": ["h4"]',
    ['16:127 unknown-hole: hole "h4"; expected one of h1, h2, h3'],
  ],
  [
    "a part of another kind",
    '"part": "side-tie-8"',
    '"part": "plate-L-40"',
    ['17:61 part-does-not-fit: "plate-L-40", a plate; expected a side-tie'],
  ],
  [
    "a bar tied to itself",
    '["leg-1", "wing"], "part"',
    '["leg-1", "leg-1"], "part"',
    ['17:44 named-twice: "leg-1" a second time; expected each part once'],
  ],
  [
    "a default torque in no unit",
    '"kits": {',
    '"defaults": {"torque": "hand-tight"}, "kits": {',
    [
      '3:26 wrong-quantity: "hand-tight"; expected a moment: a number in N·m, or text with a number and one of N·m, N·mm, N·cm, kN·m, lbf·in, lbf·ft',
    ],
  ],
  [
    "a kit nobody uses",
    '"kits": {',
    '"kits": {"spare": [{"connector": "end-screw-M8"}], ',
    ['3:12 warning unused-kit: kit "spare", which no joint uses; expected a kit some joint uses'],
  ],
  [
    "a torque below nothing",
    '{"connector": "end-screw-M8"}',
    '{"connector": "end-screw-M8", "torque": -12}',
    ["14:92 not-positive: -12; expected more than 0"],
  ],
  ["a tie before the bar begins", '"at": [700]', '"at": [-0.5]', ["17:82 negative: -0.5; expected 0 or more"]],
]);
