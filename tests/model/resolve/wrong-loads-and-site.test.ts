import { tells } from "./tells.ts";

tells([
  [
    "a drawer that is pulled out nowhere",
    '"on": ["top"]}],',
    '"on": ["top"], "slides": {"by": [0, 0, 0]}}],',
    [
      '25:100 slides-nowhere: a way out of length 0; expected how far and which way it is pulled out (leave out "slides" where nothing is pulled out)',
    ],
  ],
  [
    "a load without an amount",
    '"pressure": 1.5',
    '"direction": "-z"',
    ["27:5 load-without-amount: a load without an amount; expected exactly one of force, line, pressure, moment"],
  ],
  [
    "two amounts",
    '"pressure": 1.5',
    '"pressure": 1.5, "force": 10',
    [
      "27:36 two-amounts: force and pressure of one load; expected exactly one of force, line, pressure, moment (write two loads)",
    ],
  ],
  [
    "a pressure on a bar",
    '"on": "top", "pressure"',
    '"on": "arm", "pressure"',
    ['27:29 load-does-not-fit: pressure on "arm", a bar; expected pressure on a panel'],
  ],
  [
    "a line load on a panel",
    '"on": "arm", "line"',
    '"on": "top", "line"',
    ['29:28 load-does-not-fit: line on "top", a panel; expected line on a bar'],
  ],
  [
    "a place on a panel",
    '"pressure": 1.5',
    '"force": 15, "at": 30',
    [
      "27:49 load-key-idle: at of a load that is not a force or moment on a bar; expected at only with a force or moment on a bar (leave out at)",
    ],
  ],
  [
    "a place past the end",
    '"at": 700',
    '"at": 1700',
    [
      '28:71 load-off-bar: a place past the end of "rail-1"; expected a distance from its from point, at most its drawn length',
    ],
  ],
  [
    "a face that no face of the bar is",
    '"line": 0.5,',
    '"line": 0.5, "face": "+y",',
    [
      '29:56 load-off-face: face "+y" of "arm", none of whose faces looks that way; expected a face across the bar: a direction square to it, or a letter from A to D',
    ],
  ],
  [
    "a face above on an upright bar",
    '"on": ["rail-1", "rail-2"], "force": 100,',
    '"on": ["rail-1", "leg-1"], "force": 100, "face": "above",',
    [
      '28:72 load-off-face: face "above" of "leg-1", none of whose faces looks that way; expected a face across the bar: a direction square to it, or a letter from A to D',
    ],
  ],
  [
    "a floor that leans to no end",
    '"units": "mm-N-kg",',
    '"units": "mm-N-kg", "floor": {"slope": "1:0"},',
    ['2:81 wrong-quantity: "1:0"; expected a finite number'],
  ],
  [
    "a floor like a wall",
    '"units": "mm-N-kg",',
    '"units": "mm-N-kg", "floor": {"slope": 89},',
    ['2:81 floor-too-steep: a slope of 89; expected at most 30°; a slope like "1:50", or a number in degrees'],
  ],
  [
    "a part of a bar that is none",
    '"part": [0, 300]',
    '"part": [300, 0]',
    ["29:56 part-empty: [300,0]; expected two distances, the smaller first"],
  ],
  [
    "a part of the bar past its end",
    '"part": [0, 300]',
    '"part": [0, 500]',
    [
      '29:60 load-off-bar: a place past the end of "arm"; expected a distance from its from point, at most its drawn length',
    ],
  ],
  [
    "a pressure in the wrong unit",
    '"pressure": 1.5',
    '"pressure": 1500',
    [
      "27:48 warning doubtful-value: pressure 1.5 MPa; expected a pressure from 0.02 kPa to 50 kPa (perhaps Pa and kPa were mixed up: then it is 1.5 kPa)",
    ],
  ],
  [
    "a force in kilograms",
    '"force": 100',
    '"force": "100 kg"',
    [
      '28:60 wrong-quantity: "100 kg", which is a mass; expected a force: a number in N, or text with a number and one of N, kN, lbf, kgf, kip, daN (write its weight: "981 N")',
    ],
  ],
  [
    "a load on nothing",
    '"on": "top", "pressure"',
    '"on": "topp", "pressure"',
    ['27:29 unknown-part: "topp"; expected the id of a bar, panel or mass (did you mean "top"?)'],
  ],
  [
    "a case spelt two ways",
    '"case": "push"',
    '"case": "pushh"',
    [
      '29:14 warning case-not-listed: case "pushh", which cases does not list; expected a listed case (did you mean "push"?)',
    ],
  ],
  [
    "a case that excludes nothing known",
    '"excludes": ["trays"]',
    '"excludes": ["tray"]',
    ['31:80 unknown-case: case "tray"; expected a case of this file (did you mean "trays"?)'],
  ],
  [
    "a case that excludes itself",
    '"excludes": ["trays"]',
    '"excludes": ["push"]',
    ['31:80 names-itself: case "push" excludes itself; expected another case'],
  ],
  [
    "a case listed twice",
    '"cases": [{"id": "trays"}',
    '"cases": [{"id": "trays"}, {"id": "trays"}',
    ['31:37 duplicate-id: case "trays"; expected each case once: line 31 lists this one'],
  ],
  [
    "a case named like the weight of the frame",
    '"case": "push"',
    '"case": "self-weight"',
    [
      '29:14 name-taken: a case named "self-weight"; expected another name: this one is the weight of the frame itself',
      '31:37 warning unused-case: case "push", which no load is in; expected a case some load names',
    ],
  ],
  [
    "a case named like equipment that comes and goes",
    '"masses": [{"id": "vice", "mass": 20,',
    '"masses": [{"id": "push", "fixed": false, "mass": 20,',
    [
      '31:37 name-taken: case "push"; expected another name: line 25 has equipment of this name, which is a case of its own where it comes and goes',
    ],
  ],
  [
    "a permanent load that roams",
    '"at": 700},\n    {"case": "push", "on": "arm", "line": 0.5, "part": [0, 300], "direction": "+y"}\n  ],\n  "cases": [{"id": "trays"}',
    '"at": "worst"},\n    {"case": "push", "on": "arm", "line": 0.5, "part": [0, 300], "direction": "+y"}\n  ],\n  "cases": [{"id": "trays", "kind": "permanent"}',
    [
      '28:71 permanent-roams: a load of the permanent case "trays" at its worst place; expected one place: what always acts does not move (give its distance, or make the case variable)',
    ],
  ],
  [
    "a part in two groups",
    '"groups": [',
    '"groups": [{"id": "other", "parts": ["arm"]}, ',
    ['32:97 grouped-twice: "arm" in a second group; expected one group for each part; line 32 has the first'],
  ],
  [
    "a group in a group",
    '"arm"]}],\n  "zones"',
    '"arm", "side"]}],\n  "zones"',
    ['32:69 unknown-part: "side", a group; expected the id of a bar, panel, door, stand or mass'],
  ],
  [
    "a zone without volume",
    "[100, 100, 100]",
    "[100, 0, 100]",
    ["33:36 zone-flat: a box without volume; expected two opposite corners"],
  ],
  [
    "temperatures the wrong way round",
    '"kits": {',
    '"site": {"temperature": [35, 5]}, "kits": {',
    ["3:27 wrong-order: [35, 5]; expected the coldest first (write [5, 35])"],
  ],
  [
    "a floor below even",
    '"kits": {',
    '"floor": {"uneven": -3, "slope": "1/100"}, "kits": {',
    [
      "3:23 negative: -3; expected 0 or more",
      '3:36 wrong-quantity: "1/100" without a unit; expected an angle: a number in °, or text with a number and one of °, rad, mrad (write 0.01, or "1/100 °")',
    ],
  ],
  [
    "a load of nothing",
    '"pressure": 1.5',
    '"pressure": 0',
    ["27:48 warning load-of-nothing: pressure 0; expected an amount (leave out the load)"],
  ],
]);
