/** A sound frame with one of most things; the tests spoil it line by line. */
export const bench = `{
  "format": 1, "title": "Potting bench", "units": "mm-N-kg",
  "kits": {"corner": [{"connector": "inside-bracket-40", "on": "below"}]},
  "bars": [
    {"id": "leg-1", "profile": "40x40-8", "from": [20, 20, 50], "to": [20, 20, 860]},
    {"id": "leg-2", "profile": "40x40-8", "from": [1480, 20, 50], "to": [1480, 20, 860]},
    {"id": "rail-1", "profile": "40x80-8", "from": [20, 20, 800], "to": [1480, 20, 800], "tall": "+z"},
    {"id": "rail-2", "profile": "40x40-8", "from": [20, 20, 300], "to": [1480, 20, 300]},
    {"id": "arm", "profile": "40x40-8", "from": [20, 20, 840], "to": [20, 400, 840], "ends": {"from": {"butt": "leg-1"}}},
    {"id": "wing", "profile": "40x40-8", "from": [60, 20, 1000], "to": [60, 20, 1400]}
  ],
  "joints": [
    {"bars": ["rail-1", "rail-2"], "by": "corner"},
    {"bars": ["arm/from"], "onto": "leg-1", "by": [{"connector": "end-screw-M8"}]}
  ],
  "fastenings": [{"id": "elbow", "part": "plate-L-40", "on": "-y", "at": [20, 0, 800], "holds": ["leg-1", "rail-1"], "omit": ["h3"]}],
  "ties": [{"id": "tie", "bars": ["leg-1", "wing"], "part": "side-tie-8", "at": [700]}],
  "pivots": [{"id": "knee", "bars": ["leg-2", "arm"], "part": "hinge-8", "at": [0, 0, 0], "axis": "+x"}],
  "panels": [
    {"id": "top", "sheet": "plywood-18", "held": "laid", "bars": ["rail-1", "arm"], "overhang": [10, 20, 0, 0]},
    {"id": "back", "sheet": "plywood-18", "held": "in-slot", "edges": [{"bar": "rail-1", "slot": 1}, {"bar": "rail-2"}], "gasket": "strip-8"}
  ],
  "doors": [{"id": "door", "bars": ["wing"], "axis": "+z", "swing": [0, 110], "hinges": [{"part": "hinge-8", "bars": ["wing", "leg-1"], "at": [40, 20, 1100]}]}],
  "stands": [{"part": "foot-40-M8", "bars": ["leg-1"]}, {"part": "caster-40", "bars": ["leg-2"], "brake": true}],
  "masses": [{"id": "vice", "mass": 20, "centre": [200, 200, 900], "on": ["top"]}],
  "loads": [
    {"case": "trays", "on": "top", "pressure": 1.5},
    {"case": "trays", "on": ["rail-1", "rail-2"], "force": 100, "at": 700},
    {"case": "push", "on": "arm", "line": 0.5, "part": [0, 300], "direction": "+y"}
  ],
  "cases": [{"id": "trays"}, {"id": "push", "kind": "accidental", "excludes": ["trays"]}],
  "groups": [{"id": "side", "parts": ["leg-1", "leg-1.foot", "arm"]}],
  "zones": [{"id": "blade", "box": [[0, 0, 0], [100, 100, 100]], "risk": "high"}],
  "copies": [{"of": ["rail-2"], "shift": [0, 0, 200], "suffix": "-up", "times": 2}]
}
`;

/** The bench with one piece of its text replaced; the piece must stand in it once. */
export function edited(piece: string, by: string): string {
  if (bench.split(piece).length !== 2) throw new Error(`not once in the bench: ${piece}`);
  return bench.replace(piece, () => by);
}
