"""Writes O01 to O06. Plain arithmetic only: the numbers are worked by hand (see each basis), the small
sums of O06 by elimination in this program, which shares nothing with the one under test."""
import json
import math
import os

HERE = os.path.dirname(os.path.abspath(__file__))


def write(name, **case):
    with open(os.path.join(HERE, name + ".json"), "w", encoding="utf-8") as f:
        json.dump({"id": name, **case}, f, indent=1)
        f.write("\n")


def st(name, x, y, nx, ny, **more):
    return {"id": name, "x": x, "y": y, "nx": nx, "ny": ny, **more}


MM = {"length": "mm", "angle": "deg in fields named *Deg"}

# O01: at both heights gap fore + gap aft = 4.2 whatever the move; 5.0 is needed, so 0.8 comes off at each height.
limits = {"lower": 2.5, "upper": 3.5}
fore = {"gap": 2.1, "edge": "fwd", "tributary": 100, "trimMax": 2, **limits}
aft = {"gap": 2.1, "edge": "aft", "tributary": 50, "trimMax": 0.6, **limits}
rest = {"gap": 3.0, "tributary": 600, "trimMax": 0, **limits}
stations = [
    st("F1", -300, 100, -1, 0, **fore), st("F2", -300, -100, -1, 0, **fore),
    st("A1", 300, 100, 1, 0, **aft), st("A2", 300, -100, 1, 0, **aft),
    st("T", 0, 200, 0, 1, edge="top", **rest), st("B", 0, -200, 0, -1, edge="bottom", **rest),
]
common = {
    "pivot": [0, 0], "moveLimits": {"dx": [-5, 5], "dy": [-5, 5], "thetaDeg": [-1, 1]}, "stations": stations,
    "trimmableEdges": ["aft", "fwd"], "maxTrimSlope": 0.004, "adjacent": [["F1", "F2", 200], ["A1", "A2", 200]],
}
write(
    "O01-fewest-edges", title="0.8 mm too long: one edge cut deeper, or two edges and less area", kind="trim", units=MM,
    inputs={**common, "goal": "fewestEdges"},
    expected={"status": "OK", "trimArea": 160.0, "trimUnique": True, "edges": ["fwd"], "trim": [0.8, 0.8, 0, 0, 0, 0],
              "move": {"dx": -0.4, "dy": 0.0, "thetaDeg": 0.0}},
    # The length of the move is least to 1e-7; square to it that leaves sqrt(2 x 0.4 x 1e-7) = 3e-4.
    tolerance={"trimArea": 1e-4, "trim": 1e-5, "dx": 1e-5, "dy": 5e-4, "thetaDeg": 5e-4},
    basis="by hand: each height needs 5.0 - 4.2 = 0.8 mm; aft may lose 0.6 only, so fwd alone: 0.8 x (100 + 100) = 160 mm2,"
          " moved 0.4 forward")
write(
    "O02-least-area", title="The same part, least area first", kind="trim", units=MM, inputs={**common, "goal": "leastArea"},
    expected={"status": "OK", "trimArea": 100.0, "trimUnique": True, "edges": ["fwd", "aft"],
              "trim": [0.2, 0.2, 0.6, 0.6, 0, 0]},
    tolerance={"trimArea": 1e-4, "trim": 1e-5},
    basis="by hand: 0.6 mm aft at 50 mm each, the other 0.2 mm fore at 100 mm each: 2 x (30 + 20) = 100 mm2")

# O03: product of two even spreads over 0..1 has density -ln z, largest at 0, and the share z (1 - ln z) below z.
z, wide = 0.5, 0.25
while wide > 1e-15:
    z += wide if z * (1 - math.log(z)) < 0.95 else -wide
    wide /= 2
write(
    "O03-shortest-interval", title="Product of two even spreads: the shortest interval begins at its peak at zero",
    kind="montecarlo", units={},
    inputs={"model": "A*B", "inputs": [{"name": n, "distribution": "rectangular", "mean": 0.5, "halfWidth": 0.5} for n in "AB"],
            "coverage": 0.95, "interval": "shortest", "significantDigits": 2},
    expected={"estimate": 0.25, "standardUncertainty": math.sqrt(1 / 9 - 1 / 16), "low": 0.0, "high": z},
    tolerance={"estimate": 0.005, "standardUncertainty": 0.005, "low": 0.002, "high": 0.01},
    basis="by hand: density -ln z falls from 0 on, so the shortest interval is 0 to z with z (1 - ln z) = 0.95; by halving")

# O04: stops below 8 mm apart: turn = (e2 - e1)/8, rise = (e1 + e2)/2, shift = e3.
s, u = 0.06, 0.1
top = math.sqrt(s * s / 2 + 300 ** 2 * 2 * s * s / 64 + u * u)
end = math.sqrt(s * s + u * u)
inside = [math.erf(0.5 / d / math.sqrt(2)) for d in (top, end)]
write(
    "O04-poor-locating", title="Two stops below only 8 mm apart: the far corner swings", kind="index.uncertainty", units=MM,
    inputs={
        "pivot": [0, 0], "uCommonReading": 0,
        "stations": [st("T", 300, 200, 0, 1, predicted=3.0, lower=2.5, upper=3.5, uReading=u),
                     st("A", 300, 0, 1, 0, predicted=3.0, lower=2.5, upper=3.5, uReading=u)],
        "indexPoints": [st("J1", -4, -200, 0, -1), st("J2", 4, -200, 0, -1), st("J3", -300, 0, -1, 0)],
        "schemes": {"close spacers": {"distribution": "normal", "stdPerIndexPoint": [s, s, s]}}},
    expected={"close spacers": {"stdGap": [top, end], "perStationNormal": inside, "jointProbability": inside[0] * inside[1],
                                "covariance12": 0.0, "worstStation": "T", "flags": ["POOR_INDEXING"]}},
    tolerance={"stdGap": 1e-9, "perStationNormal": 1e-9, "jointProbability": 0.004, "covariance12": 1e-12},
    basis="by hand: var T = s2/2 + 300^2 x 2 s2/8^2 + u2, var A = s2 + u2, no part in common, so the joint chance is the"
          " product; error function of the C library")

# O05: an L with every corner rounded by 10 mm; corner 4 at (50, 40) is reflex, its centre (60, 50) outside the part.
q, h = 5 * math.pi, math.sqrt(0.5)
places = [
    (40, 50, 0, 0, -1, "E1"), (80 + q + 10, 100, 20, 1, 0, "E2"), (100 + 2 * q + 15, 75, 40, 0, 1, "E3"),
    (130 + 2 * q + q / 2, 60 - 10 * h, 50 - 10 * h, h, h, "C4"), (130 + 3 * q + 20, 50, 70, 1, 0, "E4"),
    (280 + 6 * q + 40, 50, 0, 0, -1, "E1"),
]
write(
    "O05-reflex-corner", title="An L: at its inner corner the normal points towards the centre of the blend", kind="outline",
    units=MM,
    inputs={"corners": [[0, 0], [100, 0], [100, 40], [50, 40], [50, 100], [0, 100]], "radii": [10] * 6,
            "s": [p[0] for p in places]},
    expected={"perimeter": 280 + 30 * math.pi,
              "points": [dict(zip(("s", "x", "y", "nx", "ny", "segment"), p)) for p in places]},
    tolerance={"perimeter": 1e-9, "x": 1e-9, "y": 1e-9, "nx": 1e-9, "ny": 1e-9},
    basis="by hand: six tangents of 2 x 10 off the 400 mm round, six quarter circles of 5 pi; last place once round")


# O06: predicted gaps share a common error; residuals by generalised least squares.
def solve(m, b):
    n = len(b)
    rows = [list(map(float, m[i])) + [float(b[i])] for i in range(n)]
    for i in range(n):
        p = max(range(i, n), key=lambda k: abs(rows[k][i]))
        rows[i], rows[p] = rows[p], rows[i]
        for k in range(n):
            if k != i:
                f = rows[k][i] / rows[i][i]
                rows[k] = [a - f * c for a, c in zip(rows[k], rows[i])]
    return [rows[i][n] / rows[i][i] for i in range(n)]


def inverse(m):
    n = len(m)
    return [list(c) for c in zip(*[solve(m, [1 if i == j else 0 for i in range(n)]) for j in range(n)])]


marks = [(300, 100, 1, 0), (0, 200, 0, 1), (-300, 100, -1, 0), (-300, -100, -1, 0), (0, -200, 0, -1), (300, -100, 1, 0)]
r = [0.3, 0.2, -0.1, 0.1, 0.1, 0.2]
own, shared, um = 0.0036, 0.01, 0.08
n = len(r)
cov = [[shared + (own if i == j else 0) for j in range(n)] for i in range(n)]
full = [[cov[i][j] + (um * um if i == j else 0) for j in range(n)] for i in range(n)]
weight = inverse(full)
chi = sum(r[i] * weight[i][j] * r[j] for i in range(n) for j in range(n))
a = own + um * um
by_hand = (sum(x * x for x in r) - shared * sum(r) ** 2 / (a + n * shared)) / a
assert abs(chi - by_hand) < 1e-9, (chi, by_hand)
row = [(nx, ny, x * ny - y * nx) for x, y, nx, ny in marks]
normal = [[sum(row[i][p] * weight[i][j] * row[j][q_] for i in range(n) for j in range(n)) for q_ in range(3)] for p in range(3)]
right = [-sum(row[i][p] * weight[i][j] * r[j] for i in range(n) for j in range(n)) for p in range(3)]
move = solve(normal, right)
var = inverse(normal)
left = [r[i] + sum(row[i][p] * move[p] for p in range(3)) for i in range(n)]
after = sum(left[i] * weight[i][j] * left[j] for i in range(n) for j in range(n))
prior = [0.3, 0.2, math.radians(0.05)]
both = [[var[p][k] + (prior[p] ** 2 if p == k else 0) for k in range(3)] for p in range(3)]
t = solve(both, move)
lesson = [prior[p] ** 2 * t[p] for p in range(3)]


def as_move(m):
    return {"dx": m[0], "dy": m[1], "thetaDeg": math.degrees(m[2])}


def tail6(x):
    return math.exp(-x / 2) * (1 + x / 2 + x * x / 8)


def tail3(x):
    return math.erfc(math.sqrt(x / 2)) + math.sqrt(2 * x / math.pi) * math.exp(-x / 2)


z = [x / math.sqrt(full[0][0]) for x in r]
ids = ["A1", "T", "F1", "F2", "B", "A2"]
write(
    "O06-as-built-covariance", title="As-built gaps whose predictions share a common error", kind="asbuilt", units=MM,
    inputs={"pivot": [0, 0], "priorStdBias": as_move(prior), "predictedCovariance": cov,
            "stations": [st(i, *m, predicted=3.0, uPredicted=0, measured=3.0 + x, uMeasured=um)
                         for i, m, x in zip(ids, marks, r)]},
    expected={"residual": r, "z": z, "flagged": [i for i, x in zip(ids, z) if abs(x) > 2], "chiSquare": chi,
              "pValue": tail6(chi), "fittedMove": as_move(move),
              "stdMove": as_move([math.sqrt(var[p][p]) for p in range(3)]), "chiSquareAfter": after,
              "pValueAfter": tail3(after), "lessonMove": as_move(lesson),
              "oppositeHandLesson": as_move([-lesson[0], lesson[1], -lesson[2]])},
    tolerance={k: 1e-8 for k in ("residual", "z", "chiSquare", "pValue", "dx", "dy", "thetaDeg", "chiSquareAfter", "pValueAfter")},
    basis="chi-square by hand, (sum r2 - c (sum r)2/(a + n c))/a with a = own + measured, c = shared variance; the rest by"
          " elimination; closed tails for 6 and 3 degrees of freedom")
