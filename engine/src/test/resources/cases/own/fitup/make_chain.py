"""Writes chain-three-bonds.json. The expected values are worked by hand (see handCheck); only the joint chance is counted,
by plain random draws of this program, which shares nothing with the one under test."""
import json
import math
import random


def stops(std, bench):
    points = [("J1", -200, -200, 0, -1), ("J2", 200, -200, 0, -1), ("J3", -300, 0, -1, 0)]
    rows = []
    for name, x, y, nx, ny in points:
        if bench:  # bench axes are turned 90 degrees: final = (-benchY, benchX)
            x, y, nx, ny = y, -x, ny, -nx
        rows.append({"id": name, "x": x, "y": y, "nx": nx, "ny": ny, "distribution": "normal", "std": std})
    return rows


def room(dx):
    return {"dx": [-dx, dx], "dy": [-1, 1], "thetaDeg": [-0.1, 0.1]}


stations = [
    ("A", 500, 0, 1, 0, 3.6, 0.8, "pane", "opening"),
    ("F", -500, 0, -1, 0, 2.4, 0.8, "pane", "opening"),
    ("T", 0, 300, 0, 1, 3.0, 0.6, "pane", "opening"),
    ("C", 200, 300, 0, 1, 3.0, 0.8, "pane", "opening"),
    ("P", 250, 0, 1, 0, 3.0, 1.0, "pane", "frame"),
]
inputs = {
    "links": [
        {
            "name": "pane to frame", "part": "pane", "carrier": "frame", "pivot": [0, 0], "open": True,
            "moveLimits": {"dx": [-1, 1], "dy": [-1, 1], "thetaDeg": [-0.1, 0.1]},
            "indexPoints": stops(0.1, True),
            "datumMarks": [
                {"id": "M1", "bench": [-400, 0], "inPlace": [0, -400], "stdBench": 0.1, "stdInPlace": 0.1},
                {"id": "M2", "bench": [400, 0], "inPlace": [0, 400], "stdBench": 0.1, "stdInPlace": 0.1},
            ],
        },
        {
            "name": "frame to door", "part": "frame", "carrier": "door", "pivot": [0, 0], "open": True,
            "moveLimits": room(0.4), "indexPoints": stops(0.2, False),
        },
        {
            "name": "door to opening", "part": "door", "carrier": "opening", "pivot": [0, 0], "open": False,
            "moveLimits": room(0), "indexPoints": stops(0.3, False),
        },
    ],
    "stations": [
        {"id": i, "x": x, "y": y, "nx": nx, "ny": ny, "gap": g, "lower": 3 - t, "nominal": 3, "upper": 3 + t,
         "on": on, "against": against, "uReading": 0.1}
        for i, x, y, nx, ny, g, t, on, against in stations
    ],
    "uCommonReading": 0,
    "remedies": [
        {"name": "trim forward", "kind": "trim", "cost": 1, "most": {"F": 1}},
        {"name": "hang again", "kind": "rehang", "cost": 4, "moveLimits": room(0.6)},
        {"name": "new pane", "kind": "remake", "cost": 40, "expectedOff": 0.5},
    ],
}


def joint(n, seed):
    r = random.Random(seed)
    inside = 0
    for _ in range(n):
        e = [[r.gauss(0, s) for _ in range(3)] for s in (0.1, 0.2, 0.3)]
        # A positive error holds the part farther from its stop: forward stop pushes aft, lower stops push up.
        dx = [j[2] for j in e]
        dy = [(j[0] + j[1]) / 2 for j in e]
        turn = [(j[1] - j[0]) / 400 for j in e]
        mark = (r.gauss(0, 0.1), r.gauss(0, 0.1), r.gauss(0, math.sqrt(6.25e-8)))
        ok = True
        for i, x, y, nx, ny, g, t, on, against in stations:
            links = range(3) if against == "opening" else range(1)
            mx = sum(dx[k] for k in links) + mark[0]
            my = sum(dy[k] for k in links) + mark[1]
            mt = sum(turn[k] for k in links) + mark[2]
            gap = g - nx * mx - ny * my - (x * ny - y * nx) * mt + r.gauss(0, 0.1)
            if abs(gap - 3) > t:
                ok = False
                break
        inside += ok
    return inside / n


def phi(z):
    return math.erfc(-z / math.sqrt(2)) / 2


def chance(i, std):
    g, t = stations[i][5], stations[i][6]
    return phi((3 + t - g) / std) - phi((3 - t - g) / std)


std = [0.4, 0.4, 0.3, math.sqrt(0.1625), math.sqrt(0.03)]
shares = [
    [0.125, 0.25, 0.5625], [0.125, 0.25, 0.5625], [1 / 6, 2 / 9, 1 / 2],
    [0.0225 / 0.1625, 0.04 / 0.1625, 0.09 / 0.1625], [2 / 3, 0, 0],
]
case = {
    "id": "chain-three-bonds",
    "title": "Pane to frame on the bench, frame to door, door to opening; the bench is turned by 90 degrees",
    "kind": "chain",
    "inputs": inputs,
    "expected": {
        "stdGap": std,
        "perStationNormal": [chance(i, s) for i, s in enumerate(std)],
        "worstStation": "A",
        "jointProbability": joint(2_000_000, 12),
        "linkShares": shares,
        "spender": "door to opening",
        "chosen": "frame to door",
        "worstDeviations": {"frame to door": 0.2, "pane to frame": 0.3, "frame to door and pane to frame": 0.1},
        "gaps": {"frame to door": [3.2, 2.8, 3, 3, 3], "pane to frame": [3.3, 2.7, 3, 3, 2.7]},
        "remedies": ["trim forward", "hang again", "new pane"],
    },
    "tolerance": {"stdGap": 1e-9, "perStationNormal": 1e-9, "linkShares": 1e-9, "jointProbability": 0.004,
                  "worstDeviations": 1e-6, "gaps": 1e-6},
    "basis": "by hand, small rigid motions; joint chance by 2 million random draws of make_chain.py",
    "handCheck": [
        "Station A at the height of the forward stops feels those alone: 0.1^2 + 0.2^2 + 0.3^2 = 0.14.",
        "Two marks of 0.1 and 0.1: variance 0.02 each, their middle 0.01, their turn 0.02 / (2 x 400^2) = 6.25e-8.",
        "A with marks and reading: 0.14 + 0.01 + 0.01 = 0.16, so 0.4; shares 0.02, 0.04, 0.09 and 0.01 of 0.16.",
        "T above the middle of the lower stops feels their mean: half of 0.14, 0.07 + 0.01 + 0.01 = 0.09, so 0.3.",
        "C above the second lower stop feels that stop alone and the marks' turn: 0.14 + 0.01 + 0.0025 + 0.01 = 0.1625.",
        "P between pane and frame feels the first bond alone: 0.01 + 0.01 + 0.01 = 0.03.",
        "Correction: frame to door goes 0.4 aft, all its room: A 3.2, F 2.8. Pane to frame alone closes P as well: 0.3"
        " leaves 0.3 at A, F and P. Both: 0.4 and 0.1 leave 0.1.",
    ],
}
with open("chain-three-bonds.json", "w") as f:
    json.dump(case, f, indent=1)
    f.write("\n")
