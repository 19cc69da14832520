import { tells } from "./tells.ts";

tells([
  [
    "a later format",
    '"format": 1',
    '"format": 2, "style": 7',
    ["2:13 unknown-format: format 2; expected format 1, the one read here"],
  ],
  [
    "several faults of form at once",
    '"units": "mm-N-kg"',
    '"units": "mm"',
    ['2:51 value-not-allowed: "mm"; expected one of mm-N-kg, in-lbf-lb (write "mm-N-kg")'],
  ],
  [
    "a key that is not there",
    '"tall": "+z"',
    '"tal": "+z"',
    [
      '7:90 unknown-key: the key "tal"; expected one of id, profile, from, to, tall, roll, ends, holes, criteria (write "tall")',
    ],
  ],
  [
    "a bar that is no bar",
    '{"id": "wing", "profile": "40x40-8", "from": [60, 20, 1000], "to": [60, 20, 1400]}',
    '{"id": "wing", "profile": "40x40-8", "from": [60, 20], "to": [60, 20, 1400], "roll": true}',
    [
      "10:50 wrong-count: a list of 2; expected a list of exactly 3; a point [x, y, z] of the drawing; +z is up",
      "10:90 wrong-type: true; expected a number or text; an angle: a number in degrees, or a string with its unit",
    ],
  ],
  [
    "a profile that stock does not have",
    '"rail-2", "profile": "40x40-8"',
    '"rail-2", "profile": "40x40"',
    ['8:33 unknown-stock: profile "40x40"; expected a profile of the stock (did you mean "40x40-8"?)'],
  ],
  [
    "an id given to two bars",
    '"id": "leg-2"',
    '"id": "leg-1"',
    [
      '6:12 duplicate-id: id "leg-1"; expected an id of its own: a bar in line 5 has this one',
      '18:38 unknown-part: "leg-2"; expected the id of a bar (did you mean "leg-1"?)',
      '24:88 unknown-part: "leg-2"; expected the id of a bar (did you mean "leg-1"?)',
    ],
  ],
  [
    "an id given to parts of two kinds",
    '"id": "vice"',
    '"id": "arm"',
    ['25:21 duplicate-id: id "arm"; expected an id of its own: a bar in line 9 has this one'],
  ],
  [
    "a bar of no length",
    '"to": [20, 400, 840]',
    '"to": [20, 20, 840]',
    ["9:70 zero-length: from and to both [20,20,840]; expected two points apart"],
  ],
  [
    "a length in no unit",
    '"to": [20, 400, 840]',
    '"to": [20, "400 mn", 840]',
    [
      '9:75 wrong-quantity: the unit mn in "400 mn"; expected a length: a number in mm, or text with a number and one of mm, in, m, cm, µm, ft',
    ],
  ],
  [
    "a length of another quantity",
    '"to": [20, 400, 840]',
    '"to": [20, "400 kg", 840]',
    [
      '9:75 wrong-quantity: "400 kg", which is a mass; expected a length: a number in mm, or text with a number and one of mm, in, m, cm, µm, ft',
    ],
  ],
  [
    "a bar drawn in the wrong unit",
    '"to": [20, 400, 840]',
    '"to": [20, "4000 in", 840]',
    [
      "9:5 warning doubtful-value: bar length 101580 mm; expected a length from 5 mm to 12000 mm (perhaps mm and m were mixed up: then it is 101.6 mm)",
      "9:75 warning doubtful-value: coordinate 101600 mm; expected a length up to 30000 mm (perhaps mm and in were mixed up: then it is 4000 mm)",
    ],
  ],
  [
    "tall and roll",
    '"tall": "+z"',
    '"tall": "+z", "roll": 90',
    ["7:104 two-stances: tall and roll of one bar; expected one of them (leave out roll)"],
  ],
  [
    "tall along the bar",
    '"tall": "+z"',
    '"tall": "-x"',
    ['7:98 tall-along-bar: "tall": "-x", along the bar; expected a direction across the bar'],
  ],
  [
    "a direction without length",
    '"tall": "+z"',
    '"tall": [0, 0, 0]',
    ["7:98 zero-vector: [0, 0, 0]; expected a direction with a length"],
  ],
  [
    "two cuts of one end",
    '{"from": {"butt": "leg-1"}}',
    '{"from": {"butt": "leg-1", "mitre": "leg-2"}}',
    [
      "9:121 two-cuts: butt and mitre of one end; expected one of cut, butt, mitre, angle, plane (leave out butt or mitre)",
    ],
  ],
  [
    "a cut at the bar itself",
    '{"butt": "leg-1"}',
    '{"butt": "arm"}',
    ['9:112 names-itself: "arm", the bar itself; expected the id of another bar'],
  ],
  [
    "a cut at no bar",
    '{"butt": "leg-1"}',
    '{"butt": "leg1"}',
    ['9:112 unknown-part: "leg1"; expected the id of a bar (did you mean "leg-1"?)'],
  ],
  [
    "a cut at a panel",
    '{"butt": "leg-1"}',
    '{"butt": "top"}',
    ['9:112 unknown-part: "top", a panel; expected the id of a bar'],
  ],
  [
    "a turned cut without its axis",
    '{"butt": "leg-1"}',
    '{"angle": 30}',
    [
      '9:104 axis-missing: angle without about; expected angle and about together (add "about", the axis the cut is turned about, for example "+y")',
    ],
  ],
  [
    "an axis without a turned cut",
    '{"butt": "leg-1"}',
    '{"about": "+x"}',
    [
      '9:104 axis-without-angle: about without angle; expected angle and about together (add "angle", or leave out "about")',
    ],
  ],
  [
    "a cut along the bar",
    '{"butt": "leg-1"}',
    '{"angle": 90, "about": "+x"}',
    ['9:113 cut-too-steep: "angle": 90; expected less than 90° out of square'],
  ],
  [
    "a cap that stock does not have",
    '{"butt": "leg-1"}',
    '{"cap": "cap40"}',
    ['9:111 unknown-stock: cap "cap40"; expected a cap of the stock (did you mean "cap-40"?)'],
  ],
  [
    "no bars",
    '"bars": [\n    {"id": "leg-1", "profile": "40x40-8", "from": [20, 20, 50], "to": [20, 20, 860]},',
    '"bars": [], "parts": [',
    [
      "4:11 wrong-count: an empty list; expected a list of at least 1; the bars",
      '4:15 unknown-key: the key "parts"; expected one of $schema, format, title, revision, notes, units, stock, defaults, site, floor, method, criteria, kits, bars, joints, fastenings, ties, pivots, panels, doors, stands, masses, loads, cases, groups, zones, copies',
    ],
  ],
  [
    "a cap for another profile",
    '"tall": "+z"',
    '"tall": "+z", "ends": {"both": {"cap": "cap-40"}}',
    ['7:129 part-does-not-fit: cap "cap-40" on a 40x80-8; expected a cap that closes the profile'],
  ],
  [
    "an id with a sign that does not show",
    '"id": "vice"',
    '"id": "vi\u200bce"',
    ['25:21 hidden-sign: id "vi\\u200bce" with a sign that does not show; expected an id of signs that show'],
  ],
]);
