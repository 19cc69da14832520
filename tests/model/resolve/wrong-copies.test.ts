import { tells } from "./tells.ts";

tells([
  [
    "a copy that is not moved",
    '"shift": [0, 0, 200], ',
    "",
    ["34:14 copy-without-way: a copy that is not moved; expected exactly one of shift, mirror, turn"],
  ],
  [
    "a copy on its original",
    "[0, 0, 200]",
    "[0, 0, 0]",
    ["34:42 copy-in-place: a shift of nothing; expected a shift away from the original"],
  ],
  [
    "a copy moved in two ways",
    '"shift": [0, 0, 200]',
    '"shift": [0, 0, 200], "mirror": {"across": "x", "at": 0}',
    ["34:55 two-ways: shift and mirror of one copy; expected exactly one of shift, mirror, turn (write two entries)"],
  ],
  [
    "a mirror many times",
    '"shift": [0, 0, 200]',
    '"mirror": {"across": "z", "at": 0}',
    ["34:86 mirror-times: 2 times with mirror; expected times only with shift or turn (leave out times)"],
  ],
  [
    "a copy with an id that is taken",
    '"suffix": "-up", "times": 2',
    '"suffix": "-up"}, {"of": ["rail-2"], "shift": [0, 0, 100], "suffix": "-up"',
    ['34:124 duplicate-id: id "rail-2-up"; expected an id of its own: a bar in line 34 has this one'],
  ],
  [
    "a copy of nothing",
    '"of": ["rail-2"]',
    '"of": ["rail-3"]',
    [
      '34:22 unknown-part: "rail-3"; expected the id of a bar, panel, mass, door, group or zone (did you mean "rail-1" or "rail-2"?)',
    ],
  ],
  [
    "a copy of a load",
    '"of": ["rail-2"]',
    '"of": ["trays.load-1"]',
    ['34:22 unknown-part: "trays.load-1"; expected the id of a bar, panel, mass, door, group or zone'],
  ],
  [
    "a copied end jointed by hand too",
    '["arm/from"], "onto"',
    '["rail-2-up1/to"], "onto"',
    [
      "34:14 jointed-twice: a second joint on rail-2-up1/to; expected one joint for each end; line 14 has the first (a copy brings the joints of its bars: leave out one of the two)",
    ],
  ],
]);
