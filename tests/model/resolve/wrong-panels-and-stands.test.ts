import { tells } from "./tells.ts";

tells([
  [
    "a panel in slots without edges",
    '"held": "laid"',
    '"held": "in-slot"',
    [
      '20:50 panel-lacks: "held": "in-slot" without edges; expected edges with it',
      "20:61 panel-key-idle: bars of a panel held in-slot; expected edges (leave out bars)",
      "20:88 panel-key-idle: overhang of a panel held in-slot; expected edges (leave out overhang)",
    ],
  ],
  [
    "a laid panel with edges",
    '"held": "in-slot", "edges"',
    '"held": "laid", "edges"',
    [
      '21:51 panel-lacks: "held": "laid" without bars; expected bars with it',
      "21:59 panel-key-idle: edges of a panel held laid; expected bars (leave out edges)",
      "21:119 panel-key-idle: gasket of a panel held laid; expected bars (leave out gasket)",
    ],
  ],
  [
    "a panel on a face without its side",
    '"held": "laid", "bars": ["rail-1", "arm"], "overhang"',
    '"held": "on-face", "bars": ["rail-1", "arm"], "overhang"',
    ['20:50 panel-lacks: "held": "on-face" without on; expected bars and on with it'],
  ],
  [
    "only free edges",
    '[{"bar": "rail-1", "slot": 1}, {"bar": "rail-2"}]',
    '["free", "free"]',
    ["21:71 edges-all-free: only free edges; expected edges in the slots of bars"],
  ],
  [
    "a gasket that stock does not have",
    '"strip-8"',
    '"strip-9"',
    ['21:132 unknown-stock: gasket "strip-9"; expected a gasket of the stock (did you mean "strip-8"?)'],
  ],
  [
    "a hinge with its bars the wrong way round",
    '"bars": ["wing", "leg-1"]',
    '"bars": ["leg-1", "wing"]',
    [
      '23:118 wrong-order: "leg-1" first and "wing" second; expected a bar of the door first, then a bar that is not (write ["wing", "leg-1"])',
    ],
  ],
  [
    "a door that does not swing",
    '"swing": [0, 110]',
    '"swing": [90, "90 deg"]',
    ['23:69 door-does-not-swing: [90,"90 deg"]; expected two different angles'],
  ],
  [
    "a foot that stock does not have",
    '"part": "foot-40-M8"',
    '"part": "foot-40-M10"',
    [
      '24:23 unknown-stock: foot or caster "foot-40-M10"; expected a foot or caster of the stock (did you mean "foot-40-M8"?)',
    ],
  ],
  [
    "a brake on a foot",
    '"bars": ["leg-1"]}, {',
    '"bars": ["leg-1"], "brake": true}, {',
    [
      '24:65 no-brake: a brake set on "foot-40-M8", which has none; expected a caster with a brake (name one, or leave out brake)',
    ],
  ],
  [
    "a rolling foot",
    '"bars": ["leg-1"]}, {',
    '"bars": ["leg-1"], "hold": "rolling"}, {',
    ['24:64 foot-rolls: "hold": "rolling" of "foot-40-M8", a foot; expected rest or anchored, or a caster'],
  ],
  [
    "two feet of one name",
    '"bars": ["leg-1"]}, {',
    '"bars": ["leg-1", "leg-1"]}, {',
    ['24:55 duplicate-id: id "leg-1.foot"; expected an id of its own: a stand in line 24 has this one'],
  ],
  ["a mass of nothing", '"mass": 20', '"mass": 0', ["25:37 not-positive: 0; expected more than 0"]],
  [
    "a mass on a foot",
    '"on": ["top"]',
    '"on": ["leg-1.foot"]',
    ['25:75 unknown-part: "leg-1.foot", a stand; expected the id of a bar or panel'],
  ],
  [
    "a hidden sign in a name",
    '"part": "foot-40-M8"',
    '"part": "foot-40\u202e-M8"',
    [
      '24:23 unknown-stock: foot or caster "foot-40\\u202e-M8"; expected a foot or caster of the stock (did you mean "foot-40-M8"?)',
    ],
  ],
  [
    "a foot sunk",
    '"bars": ["leg-1"]}, {',
    '"bars": ["leg-1"], "raise": -50}, {',
    ["24:65 not-positive: -50; expected more than 0"],
  ],
]);
