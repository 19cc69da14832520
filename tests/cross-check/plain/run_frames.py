"""
Reads questions about frame files as JSON from standard input and prints what a plain reading and a plain solver say:
what the feet bear and how far bars sag under the weight and some cases, sway under a push both ways, the lowest frequency.
"""

import json
import sys

import numpy as np

from build_model import Model
from plain_frame import Frame

PUSH = 150


def together(*loads):
    return {key: [one for load in loads for one in load.get(key, [])] for key in ("members", "nodes")}


def bent(frame, model, u, name, ends):
    """Largest distance of a bar's bent axis from the line between two stations of it, at the ends of the pieces."""
    bar = model.read.bars[name]
    low, high = ends or bar.cut
    rows = {}
    for m, _, L, dofs, _ in frame.pieces:
        n, a, b = model.stretch[m]
        if n != name:
            continue
        for k, at in ((0, dofs[0] // 6), (1, dofs[6] // 6)):
            s = bar.station(np.array(frame.place[at]))
            rows[round(s, 6)] = u[6 * at : 6 * at + 3]
    inside = {s: v for s, v in rows.items() if low - 1e-6 <= s <= high + 1e-6}
    first, last = inside[min(inside)], inside[max(inside)]
    worst = 0
    for s, v in inside.items():
        t = (s - min(inside)) / (max(inside) - min(inside))
        off = v - (1 - t) * first - t * last
        worst = max(worst, float(np.linalg.norm(off - np.dot(off, bar.x) * bar.x)))
    return worst


def answers(question):
    model = Model(question["text"])
    sliding, held = (Frame(model.standing(way), question["pieces"]) for way in (True, False))
    out = {"pushes": {}, "sags": {}, "sways": []}
    for name, bars in question["cases"].items():
        u, _, _ = sliding.static(together(model.weight(), model.case(name)))
        feet = sliding.springs[-len(model.feet) :]
        out["pushes"][name] = [float((k * (A @ u[dofs]))[2]) for dofs, A, k in feet]
        for bar, ends in bars.items():
            out["sags"][f"{bar} under {name}"] = bent(sliding, model, u, bar, ends)
    nodes = [model.node(bar, model.read.bars[bar].station(np.array(at))) for bar, at in question["pushed"]]
    for axis in (0, 1):
        force = [PUSH / len(nodes) if i == axis else 0 for i in range(3)]
        u, _, _ = held.static({"nodes": [{"node": n, "force": force} for n in nodes]})
        out["sways"].append(max(abs(float(u[6 * n + axis])) for n in nodes))
    if question["frequency"]:
        out["frequency"] = Frame(model.massed(), question["pieces"]).frequencies(1)[0]
    return out


json.dump({question["id"]: answers(question) for question in json.load(sys.stdin)}, sys.stdout)
