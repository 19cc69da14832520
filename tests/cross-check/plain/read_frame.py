"""
A plain reading of a frame file, written apart from src: bars between points, brackets as springs with the stiffness that
docs/method/response.md states, laid sheets by the lever, masses by hand. It knows what three demo frames are made of and
refuses the rest. SI units.
"""

import json

import numpy as np

G = 9.80665
# As `trysquare section` prints them: m2, m4, m4, m2; half the width, m. Young's and shear modulus, density.
PROFILES = {
    "40x40-8": {"A": 663e-6, "I": 9.65e-8, "J": 1.51e-8, "Av": 198e-6, "half": 0.02, "E": 70e9, "G": 27e9, "rho": 2700},
    "1.5x1.5-5/16": {
        "A": 614e-6, "I": 8.31e-8, "J": 1.16e-8, "Av": 174e-6, "half": 0.01905, "E": 10100 * 6.894757e6, "G": 3800 * 6.894757e6, "rho": 2700,
    },
}
# How often a plain bracket of 40 mm pitch its turning counts (gusset 3; pitch to the power 3.3), its shifting, and its mass in kg.
BRACKETS = {
    "inside-bracket-40": (1, 1, 0.0365),
    "gusset-bracket-40": (3, 1, 0.0464),
    "inside-bracket-1.5": ((38.1 / 40) ** 3.3, 38.1 / 40, 0.0737 * 0.45359237),
}
TURN, WEAK, SHIFT, SEAT = 8e3, 0.3, 20e6, 5e7
SHEETS = {"plywood-18": (680, 0.018), "plywood-12": (680, 0.012), "plywood-0.5in": (680, 0.0127)}
FEET = {"foot-40-M8": 0.09, "foot-1.5-5/16-18": 0.2 * 0.45359237}
# A foot sideways, and upward where the floor is rigid.
FOOT, FLOOR = 1e8, 1e11
DIRECTIONS = {"above": (0, 0, 1), "below": (0, 0, -1)}
for i, letter in enumerate("xyz"):
    for sign, s in (("+", 1), ("-", -1)):
        DIRECTIONS[sign + letter] = tuple(s if i == j else 0 for j in range(3))


class Bar:
    def __init__(self, entry, unit, shift=(0, 0, 0)):
        self.profile = PROFILES[entry["profile"]]
        move = np.array(shift, float)
        self.ends = [(np.array(entry[name], float) + move) * unit for name in ("from", "to")]
        self.x = (self.ends[1] - self.ends[0]) / np.linalg.norm(self.ends[1] - self.ends[0])
        self.cut = [0.0, float(np.linalg.norm(self.ends[1] - self.ends[0]))]
        self.stations = set()
        upright = abs(self.x[2]) > 0.99
        self.y = np.array([0.0, 1, 0]) if upright else np.array([0.0, 0, 1])
        self.z = np.cross(self.x, self.y)

    def at(self, s):
        return self.ends[0] + s * self.x

    def station(self, point):
        return float(np.dot(point - self.ends[0], self.x))

    def beside(self, point):
        return float(np.linalg.norm(point - self.at(min(max(self.station(point), 0), self.cut[1]))))


class Reading:
    def __init__(self, text):
        file = json.loads(text)
        self.unit, self.force, self.kilo = {"mm-N-kg": (1e-3, 1, 1), "in-lbf-lb": (0.0254, 4.4482216, 0.45359237)}[file["units"]]
        self.pressure_unit = 1e3 if self.unit == 1e-3 else self.force / self.unit**2
        self.file = file
        self.bars = {entry["id"]: Bar(entry, self.unit) for entry in file["bars"]}
        self.panels = {entry["id"]: entry for entry in file.get("panels", [])}
        self.copied = {}
        for copy in file.get("copies", []):
            self.copied |= self.copy(copy)
        self.links = []
        for joint in file["joints"]:
            by = file["kits"][joint["by"]] if isinstance(joint["by"], str) else joint["by"]
            for name in joint["bars"]:
                bar, _, end = name.partition("/")
                for own in [bar] + self.copied.get(bar, []):
                    for side in [end] if end else {"both": ["from", "to"]}.get(joint.get("ends", "both"), [joint.get("ends")]):
                        self.join(own, 0 if side == "from" else 1, by)
        for _, _, onto, point, _ in self.links:
            self.bars[onto].stations.add(round(self.bars[onto].station(point), 9))

    def copy(self, copy):
        """Parts moved on; what loads them is moved on with them."""
        made = {}
        of = {entry["id"]: entry for entry in self.file["bars"]}
        for time in range(1, copy["times"] + 1):
            tail = f"{copy['suffix']}{time}"
            for name in copy["of"]:
                if name in of:
                    self.bars[name + tail] = Bar(of[name], self.unit, np.array(copy["shift"], float) * time)
                else:
                    entry = self.panels[name]
                    self.panels[name + tail] = {**entry, "bars": [bar + tail for bar in entry["bars"]]}
                made.setdefault(name, []).append(name + tail)
        return made

    def join(self, name, end, by):
        """The end meets the bar whose axis it was drawn to; where two do, the one that runs past rather than ends there."""
        bar = self.bars[name]
        point = bar.ends[end].copy()
        near = {n: other for n, other in self.bars.items() if n != name and other.beside(point) < 0.6 * bar.profile["half"]}
        past = lambda other: min(other.station(point), np.linalg.norm(other.ends[1] - other.ends[0]) - other.station(point))
        onto = max(near, key=lambda n: past(near[n]))
        half = self.bars[onto].profile["half"]
        bar.cut[end] += half if end == 0 else -half
        self.links.append((name, end, onto, point, by))

    def sheet(self, name):
        """Stretches of bars that bear a sheet: bar, from, to (coordinates along it), metres of sheet across; and its area."""
        entry = self.panels[name]
        bars = [(n, self.bars[n]) for n in entry["bars"]]
        over = [o * self.unit for o in entry.get("overhang", [0, 0, 0, 0])]
        corners = np.array([bar.at(s) for _, bar in bars for s in bar.cut])
        across = [bar.profile["half"] * np.abs(bar.y + bar.z) for _, bar in bars for _ in bar.cut]
        low = (corners - across).min(axis=0)[:2] - [over[0], over[2]]
        high = (corners + across).max(axis=0)[:2] + [over[1], over[3]]
        ways = [[(n, bar) for n, bar in bars if abs(bar.x[axis]) > 0.99] for axis in (0, 1)]
        rows = [sorted((float(bar.ends[0][1 - axis]), n) for n, bar in ways[axis]) for axis in (0, 1)]
        gaps = [min((b[0] - a[0] for a, b in zip(row, row[1:])), default=np.inf) for row in rows]
        # Strips span between the bars that lie nearer to each other; a lone bar the other way is left out.
        main = int(np.argmin(gaps))
        row, other = rows[main], rows[1 - main]
        at = [p for p, _ in row]
        out = []
        inner = (at[0], at[-1])
        between = (other[0][0], other[-1][0]) if len(other) == 2 and len(row) == 2 else None
        share = 0
        if between:
            # Both ways two bars: strips that cross sag alike, as the fourth powers of the other's span.
            spans = inner[1] - inner[0], between[1] - between[0]
            share = spans[0] ** 4 / (spans[0] ** 4 + spans[1] ** 4)
            out += [(n, *inner, share * spans[1] / 2) for _, n in other]
        for k, (_, n) in enumerate(row):
            half = sum(abs(at[j] - at[k]) / 2 for j in (k - 1, k + 1) if 0 <= j < len(at))
            out.append((n, low[main], high[main], half))
            if between:
                out.append((n, *between, -share * half))
        for last, next_one, edge in ((0, 1, low[1 - main]), (-1, -2, high[1 - main])):
            past, span = abs(edge - at[last]), abs(at[last] - at[next_one])
            out.append((row[last][1], low[main], high[main], past * (1 + past / span / 2)))
            out.append((row[next_one][1], low[main], high[main], -past * past / span / 2))
        return out, float(np.prod(high - low))

    def stretches(self, name):
        """The same as stations of the bars, all of it put on what the cuts leave of them."""
        for n, a, b, width in self.sheet(name)[0]:
            bar = self.bars[n]
            axis = int(np.argmax(np.abs(bar.x)))
            ends = sorted((v - bar.ends[0][axis]) * bar.x[axis] for v in (a, b))
            left = max(ends[0], bar.cut[0]), min(ends[1], bar.cut[1])
            yield n, *left, width * (ends[1] - ends[0]) / (left[1] - left[0])
