"""
A plain dense frame solver with numpy and scipy, written apart from src/mechanics and sharing nothing with it but the form of
its input: bars cut into equal pieces, cubic shapes, whole matrices, scipy.linalg.eigh. SI units.

Geometric stiffness is the work of the stresses N, Vy, Vz, T, My, Mz of a bar on the second-order part of Green's strain of
plane sections that turn and move linearly (Bathe, Finite Element Procedures, 6.3): what a solid element has too. `moments`
false leaves only the axial force with v'^2, w'^2 and, for twist, r^2 phi'^2 (Timoshenko and Gere, ch. 2 and 5).
"""

import numpy as np
from scipy.linalg import eigh

GAUSS = np.polynomial.legendre.leggauss(4)


def shapes(x, L, phi):
    """Deflection, its slope, turn of the section and its slope, by [v1, t1, v2, t2], of a beam with shear (x from 0 to 1)."""
    k = 1 / (1 + phi)
    v = [
        k * (2 * x**3 - 3 * x**2 - phi * x + 1 + phi),
        k * L * (x**3 - (2 + phi / 2) * x**2 + (1 + phi / 2) * x),
        k * (-2 * x**3 + 3 * x**2 + phi * x),
        k * L * (x**3 - (1 - phi / 2) * x**2 - phi / 2 * x),
    ]
    dv = [
        k / L * (6 * x**2 - 6 * x - phi),
        k * (3 * x**2 - (4 + phi) * x + 1 + phi / 2),
        k / L * (-6 * x**2 + 6 * x + phi),
        k * (3 * x**2 - (2 - phi) * x - phi / 2),
    ]
    t = [
        k * 6 / L * (x**2 - x),
        k * (3 * x**2 - (4 + phi) * x + 1 + phi),
        k * 6 / L * (x - x**2),
        k * (3 * x**2 - (2 - phi) * x),
    ]
    dt = [
        k * 6 / L**2 * (2 * x - 1),
        k / L * (6 * x - 4 - phi),
        k * 6 / L**2 * (1 - 2 * x),
        k / L * (6 * x - 2 + phi),
    ]
    return [np.array(row) for row in (v, dv, t, dt)]


def rows(bar, L, x):
    """Rows of twelve end motions: u', v, v', w, w', the turns a, b, c about x, y, z, and their slopes."""
    r = {name: np.zeros(12) for name in ("u", "du", "v", "dv", "w", "dw", "a", "da", "b", "db", "c", "dc")}
    r["u"][[0, 6]] = r["a"][[3, 9]] = 1 - x, x
    r["du"][[0, 6]] = r["da"][[3, 9]] = -1 / L, 1 / L
    phi = [0 if not bar.get(ga) else 12 * bar[ei] / bar[ga] / L**2 for ei, ga in (("EIz", "GAy"), ("EIy", "GAz"))]
    v, dv, t, dt = shapes(x, L, phi[0])
    at = [1, 5, 7, 11]
    r["v"][at], r["dv"][at], r["c"][at], r["dc"][at] = v, dv, t, dt
    # Along z the same with the turn about y the other way: w' = -b.
    v, dv, t, dt = shapes(x, L, phi[1])
    at, sign = [2, 4, 8, 10], np.array([1, -1, 1, -1])
    r["w"][at], r["dw"][at], r["b"][at], r["db"][at] = v * sign, dv * sign, -t * sign, -dt * sign
    return r


def integrate(L, integrand):
    return sum(weight / 2 * L * integrand((1 + at) / 2) for at, weight in zip(*GAUSS))


def outer(p, q):
    return (np.outer(p, q) + np.outer(q, p)) / 2


def stiffness(bar, L):
    """Strains integrated: EA u'^2 + GJ a'^2 + EI b'^2 + EI c'^2 + GA (v' - c)^2 + GA (w' + b)^2."""

    def density(x):
        r = rows(bar, L, x)
        k = bar["EA"] * outer(r["du"], r["du"]) + bar["GJ"] * outer(r["da"], r["da"])
        k += bar["EIy"] * outer(r["db"], r["db"]) + bar["EIz"] * outer(r["dc"], r["dc"])
        for ga, shear in (("GAy", r["dv"] - r["c"]), ("GAz", r["dw"] + r["b"])):
            if bar.get(ga):
                k += bar[ga] * outer(shear, shear)
        return k

    return integrate(L, density)


def radii(bar):
    return bar["EIy"] / bar["EA"], bar["EIz"] / bar["EA"]


def mass(bar, L):
    m, (ry, rz) = bar["massPerLength"], radii(bar)

    def density(x):
        r = rows(bar, L, x)
        return m * (sum(outer(r[i], r[i]) for i in "uvw") + (ry + rz) * outer(r["a"], r["a"]))

    return integrate(L, density)


def geometric(bar, L, start, q, moments):
    """`start`: N, Vy, Vz, T, My, Mz on the face that looks along +x at the start of the piece; `q`: even load, local."""
    ry, rz = radii(bar)

    def density(x):
        r = rows(bar, L, x)
        du, dv, dw, a, da = r["du"], r["dv"], r["dw"], r["a"], r["da"]
        b, db, c, dc = r["b"], r["db"], r["c"], r["dc"]
        N, Vy, Vz = start[:3] - q * x * L
        T, My, Mz = start[3:] + np.array([0, 1, -1]) * np.array([0, start[2] + Vz, start[1] + Vy]) / 2 * x * L
        k = N * (outer(dv, dv) + outer(dw, dw) + (ry + rz) * outer(da, da))
        if not moments:
            return k
        k += N * (outer(du, du) + ry * outer(db, db) + rz * outer(dc, dc))
        k += 2 * Mz * (outer(du, dc) - outer(dw, da)) + 2 * My * (outer(du, db) - outer(dv, da))
        k += 2 * Vy * (outer(dw, a) - outer(du, c)) + 2 * Vz * (outer(du, b) - outer(dv, a))
        # A torque is carried half by each shear: integral of y txz = -integral of z txy = T/2 (bars as wide as tall).
        k += T * (outer(db, c) - outer(dc, b))
        return k

    return integrate(L, density)


def cross(r):
    return np.array([[0, -r[2], r[1]], [r[2], 0, -r[0]], [-r[1], r[0], 0]])


def carried(r):
    """Motion of a point at `r` from the node it is fixed to."""
    return np.block([[np.eye(3), -cross(r)], [np.zeros((3, 3)), np.eye(3)]])


def turned(axes):
    R = np.array([axes["x"], axes["y"], axes["z"]], float)
    return np.kron(np.eye(2), R)


class Frame:
    def __init__(self, model, pieces):
        self.model = model
        self.nodes = [np.array(p, float) for p in model["nodes"]]
        self.size = 6 * len(self.nodes)
        self.pieces = []
        self.place = {n: at for n, at in enumerate(self.nodes)}
        for m, bar in enumerate(model["members"]):
            self.cut(m, bar, pieces)
        self.K = np.zeros((self.size, self.size))
        for _, bar, L, dofs, A in self.pieces:
            self.K[np.ix_(dofs, dofs)] += A.T @ stiffness(bar, L) @ A
        self.springs = [self.spring(s) for s in model.get("springs", [])]
        for dofs, A, k in self.springs:
            self.K[np.ix_(dofs, dofs)] += A.T @ np.diag(k) @ A
        held = set()
        for support in model.get("supports", []):
            for i, hold in enumerate(support["holds"]):
                f = 6 * support["node"] + i
                if hold == "fixed":
                    held.add(f)
                elif hold != "free":
                    self.K[f, f] += hold
        self.free = [f for f in range(self.size) if f not in held]

    def cut(self, m, bar, pieces):
        zero = np.zeros(3)
        arms = [np.array(bar.get(name) or zero, float) for name in ("fromOffset", "toOffset")]
        ends = [self.nodes[bar[name]] + arm for name, arm in zip(("from", "to"), arms)]
        L = np.linalg.norm(ends[1] - ends[0]) / pieces
        R = turned(bar["axes"])
        at = [bar["from"]] + [self.size // 6 + i for i in range(pieces - 1)] + [bar["to"]]
        for i in range(1, pieces):
            self.place[at[i]] = ends[0] + (ends[1] - ends[0]) * i / pieces
        self.size += 6 * (pieces - 1)
        for i in range(pieces):
            first = carried(arms[0] if i == 0 else zero)
            last = carried(arms[1] if i == pieces - 1 else zero)
            A = np.block([[R @ first, np.zeros((6, 6))], [np.zeros((6, 6)), R @ last]])
            dofs = [6 * n + j for n in (at[i], at[i + 1]) for j in range(6)]
            self.pieces.append((m, bar, L, dofs, A))

    def spring(self, s):
        at = np.array(s.get("at") or self.model["nodes"][s["from"]], float)
        R = turned(s["axes"])
        dofs = [6 * s["from"] + j for j in range(6)]
        A = -R @ carried(at - self.nodes[s["from"]])
        if s["to"] != "ground":
            dofs += [6 * s["to"] + j for j in range(6)]
            A = np.hstack([A, R @ carried(at - self.nodes[s["to"]])])
        return dofs, A, np.array(s["stiffness"], float)

    def spread(self, load):
        """Even load of each piece, N/m along its own axes."""
        by_bar = {}
        for own in load.get("members", []):
            by_bar[own["member"]] = by_bar.get(own["member"], 0) + np.array(own["force"][0], float)
        return [turned(bar["axes"])[:3, :3] @ by_bar.get(m, np.zeros(3)) for m, bar, *_ in self.pieces]

    def static(self, load):
        """Motions, the forces that supports put in, and the end forces of the pieces."""
        f = np.zeros(self.size)
        for own in load.get("nodes", []):
            for key, start in (("force", 0), ("moment", 3)):
                f[6 * own["node"] + start : 6 * own["node"] + start + 3] += np.array(own.get(key) or [0, 0, 0], float)
        held = []
        for (_, bar, L, dofs, A), q in zip(self.pieces, self.spread(load)):
            # What the load does on the shapes of the piece.
            work = integrate(L, lambda x: sum(own * rows(bar, L, x)[name] for own, name in zip(q, "uvw")))
            held.append(work)
            f[dofs] += A.T @ work
        u = np.zeros(self.size)
        u[self.free] = np.linalg.solve(self.K[np.ix_(self.free, self.free)], f[self.free])
        ends = [stiffness(bar, L) @ A @ u[dofs] - work for (_, bar, L, dofs, A), work in zip(self.pieces, held)]
        return u, self.K @ u - f, ends

    def lowest(self, B, count):
        """Lowest positive values l of K x = l B x."""
        free = np.ix_(self.free, self.free)
        n = len(self.free)
        values = eigh(B[free], self.K[free], eigvals_only=True, subset_by_index=[n - count, n - 1])
        return [1 / value for value in values[::-1] if value > 0]

    def buckling(self, load, count, moments):
        _, _, ends = self.static(load)
        B = np.zeros((self.size, self.size))
        for (_, bar, L, dofs, A), own, q in zip(self.pieces, ends, self.spread(load)):
            # On the face that looks along +x at the start: what the piece before puts on this one, the other way.
            B[np.ix_(dofs, dofs)] -= A.T @ geometric(bar, L, -own[:6], q, moments) @ A
        return self.lowest(B, count)

    def frequencies(self, count):
        M = np.zeros((self.size, self.size))
        for _, bar, L, dofs, A in self.pieces:
            M[np.ix_(dofs, dofs)] += A.T @ mass(bar, L) @ A
        for own in self.model.get("masses", []):
            for i in range(3):
                M[6 * own["node"] + i, 6 * own["node"] + i] += own["mass"]
        return [float(np.sqrt(value)) / 2 / np.pi for value in self.lowest(M, count)]
