"""From a plain reading (read_frame.py) to the nodes, bars, springs and loads that plain_frame.py solves."""

import numpy as np

from read_frame import BRACKETS, DIRECTIONS, FEET, FLOOR, FOOT, G, SEAT, SHEETS, SHIFT, TURN, WEAK, Reading


class Model:
    def __init__(self, text):
        self.read = read = Reading(text)
        for name in read.panels:
            for n, a, b, _ in read.stretches(name):
                read.bars[n].stations |= {round(a, 9), round(b, 9)}
        for load in read.file.get("loads", []):
            if load.get("at") == "middle":
                bar = read.bars[load["on"]]
                bar.stations.add(round(sum(bar.cut) / 2, 9))
        self.points = [p for mass in read.file.get("masses", []) if mass.get("fixed", True) for p in self.rests(mass)]
        for n, s, _, _ in self.points:
            read.bars[n].stations.add(s)
        self.nodes, self.place, self.members, self.stretch = [], {}, [], []
        for name, bar in read.bars.items():
            self.lay(name, bar)
        self.springs = [self.joint(*link) for link in read.links]
        self.feet = [n for stand in read.file["stands"] for n in stand["bars"]]
        self.anchored = read.file["stands"][0].get("hold") == "anchored"

    def rests(self, mass):
        """Equipment on one level bar along x: a quarter of it in the middle of each quarter of its box, and its place beside the axis."""
        (n,) = mass["on"]
        bar, unit = self.read.bars[n], self.read.unit
        for side in (-0.75, -0.25, 0.25, 0.75):
            x = (mass["centre"][0] + side * mass["box"][0] / 2) * unit
            beside = mass["centre"][1] * unit - float(bar.ends[0][1])
            yield n, round(float((x - bar.ends[0][0]) * bar.x[0]), 9), mass["mass"] * self.read.kilo / 4, beside

    def lay(self, name, bar):
        own = sorted({round(s, 9) for s in bar.cut} | {s for s in bar.stations if bar.cut[0] < s < bar.cut[1]})
        for s in own:
            self.place[name, s] = len(self.nodes)
            self.nodes.append(bar.at(s).tolist())
        p = bar.profile
        for a, b in zip(own, own[1:]):
            self.stretch.append((name, a, b))
            self.members.append(
                {
                    "from": self.place[name, a],
                    "to": self.place[name, b],
                    "axes": {"x": bar.x.tolist(), "y": bar.y.tolist(), "z": bar.z.tolist()},
                    **{"EA": p["E"] * p["A"], "EIy": p["E"] * p["I"], "EIz": p["E"] * p["I"], "GJ": p["G"] * p["J"]},
                    **{"GAy": p["G"] * p["Av"], "GAz": p["G"] * p["Av"], "massPerLength": p["rho"] * p["A"]},
                }
            )

    def node(self, name, s):
        own = [key for key in self.place if key[0] == name]
        return self.place[min(own, key=lambda key: abs(key[1] - s))]

    def joint(self, name, end, onto, point, by):
        bar = self.read.bars[name]
        turn, shift = np.zeros(3), 0
        for piece in by:
            times, size, _ = BRACKETS[piece["connector"]]
            # Its legs lie along the bar and along the face it is on.
            strong = np.cross(bar.x, DIRECTIONS[piece["on"]])
            about = np.array([np.dot(axis, strong) ** 2 for axis in (bar.x, bar.y, bar.z)])
            turn += TURN * times * (about + WEAK * (1 - about))
            shift += SHIFT * size
        return {
            "from": self.node(name, bar.cut[end]),
            "to": self.node(onto, self.read.bars[onto].station(point)),
            "at": bar.at(bar.cut[end]).tolist(),
            "axes": {"x": bar.x.tolist(), "y": bar.y.tolist(), "z": bar.z.tolist()},
            "stiffness": [max(shift, SEAT), shift, shift, *turn],
        }

    def foot(self, name):
        bar = self.read.bars[name]
        return self.node(name, bar.cut[0])

    def standing(self, sliding):
        """The model on its feet: all held sideways, or only so that the frame cannot slide as a whole."""
        springs = list(self.springs)
        for i, name in enumerate(self.feet):
            at = self.nodes[self.foot(name)]
            aside = [FOOT, FOOT]
            if sliding and not self.anchored and i > 0:
                # The first holds both ways, the one beside it across the line between them (feet in rows along x).
                aside = [0, FOOT if i == 1 else 0]
            stiffness = [*aside, FOOT if self.anchored else FLOOR, 0, 0, 0]
            axes = {"x": [1, 0, 0], "y": [0, 1, 0], "z": [0, 0, 1]}
            springs.append({"from": self.foot(name), "to": "ground", "at": [at[0], at[1], 0], "axes": axes, "stiffness": stiffness})
        return {"nodes": self.nodes, "members": self.members, "springs": springs}

    def along(self, name, a, b, force):
        """Even N/m on a stretch of a bar."""
        for m, (n, s, t) in enumerate(self.stretch):
            if n == name and a - 1e-9 <= s and t <= b + 1e-9:
                yield {"member": m, "force": [force, force]}

    def sheet_load(self, name, pressure):
        for n, a, b, width in self.read.stretches(name):
            yield from self.along(n, a, b, [0, 0, -pressure * width])

    def weight(self):
        members, nodes = [], []
        for name, bar in self.read.bars.items():
            members += self.along(name, *bar.cut, [0, 0, -bar.profile["rho"] * bar.profile["A"] * G])
        for name, entry in self.read.panels.items():
            density, thickness = SHEETS[entry["sheet"]]
            members += self.sheet_load(name, density * thickness * G)
        for n, s, mass, beside in self.points:
            nodes.append({"node": self.node(n, s), "force": [0, 0, -mass * G], "moment": [-beside * mass * G, 0, 0]})
        for _, _, onto, point, by in self.read.links:
            mass = sum(BRACKETS[piece["connector"]][2] for piece in by)
            nodes.append({"node": self.node(onto, self.read.bars[onto].station(point)), "force": [0, 0, -mass * G]})
        return {"members": members, "nodes": nodes}

    def case(self, name):
        members = []
        for load in self.read.file["loads"]:
            if load["case"] != name:
                continue
            named = [load["on"]] if isinstance(load["on"], str) else load["on"]
            for on in named + [copy for one in named for copy in self.read.copied.get(one, [])]:
                if "line" in load:
                    per_metre = load["line"] * self.read.force / self.read.unit
                    members += self.along(on, *self.read.bars[on].cut, [0, 0, -per_metre])
                elif isinstance(load["pressure"], str):
                    pounds, of = load["pressure"].split()
                    if of != "lbf/ft2":
                        raise ValueError(of)
                    members += self.sheet_load(on, float(pounds) * 4.4482216 / 0.3048**2)
                else:
                    members += self.sheet_load(on, load["pressure"] * self.read.pressure_unit)
        return {"members": members, "nodes": []}

    def massed(self):
        model = self.standing(False)
        members = [dict(member) for member in model["members"]]
        for name, entry in self.read.panels.items():
            density, thickness = SHEETS[entry["sheet"]]
            for load in self.sheet_load(name, density * thickness):
                members[load["member"]]["massPerLength"] -= load["force"][0][2]
        masses = [{"node": self.node(n, s), "mass": mass} for n, s, mass, _ in self.points]
        for _, _, onto, point, by in self.read.links:
            masses.append(
                {
                    "node": self.node(onto, self.read.bars[onto].station(point)),
                    "mass": sum(BRACKETS[piece["connector"]][2] for piece in by),
                }
            )
        masses += [{"node": self.foot(n), "mass": FEET[self.read.file["stands"][0]["part"]]} for n in self.feet]
        return {**model, "members": members, "masses": masses}
