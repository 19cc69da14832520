"""Reads frames as JSON from standard input and prints what plain_frame.py says of them: buckling with moments and without."""

import json
import sys

from plain_frame import Frame

# Pieces a bar: a cubic piece overestimates a factor by (beta h)^4 / 720.
PIECES = 12


def answers(job):
    frame = Frame(job["model"], PIECES)
    count = job["analysis"]["count"]
    return {
        "axial": frame.buckling(job["load"], count, False),
        "moments": frame.buckling(job["load"], count, True),
    }


json.dump({job["id"]: answers(job) for job in json.load(sys.stdin)}, sys.stdout)
