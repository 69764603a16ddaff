"""Writes the tables beside this file. Standard library only; formulas as in the shop's guide, integrated in small fixed steps."""
import csv, json, math, os

R = 8.314462618
HEAD = ["case_id", "topic", "inputs", "expected", "tolerance", "source", "basis", "notes"]


def q(v, u="-"):
    return {"v": v, "u": u}


def row(i, given, expected, tol=1e-6, notes=""):
    tolerance = {k: ({"exact": True} if isinstance(v["v"], (bool, str)) or k in ("batches", "strips", "rolls", "strips_across")
                     else {"rel": tol}) for k, v in expected.items()}
    return [i, "own row", json.dumps(given), json.dumps(expected), json.dumps(tolerance), "make.py", "first-principles", notes]


def write(name, rows):
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "shop", name + ".csv"), "w", newline="") as f:
        w = csv.writer(f, lineterminator="\n")
        w.writerow(HEAD)
        w.writerows(rows)


def arr(e, tref, t, r=R):
    return math.exp(e / r * (1 / (tref + 273.15) - 1 / (t + 273.15)))


def two(tref, t):
    return 2 ** ((t - tref) / 10)


def on(profile, t):
    if t <= profile[0][0]:
        return profile[0][1]
    for (a, x), (b, y) in zip(profile, profile[1:]):
        if t <= b:
            return x if a == b else x + (y - x) * (t - a) / (b - a)
    return profile[-1][1]


def grow(rate, until, temp, a=0.0, step=0.02, level=None):
    """RK4; with a level, the time at which it is passed."""
    n = int(round(until / step))
    for i in range(n):
        t = i * step
        k1 = rate(a, temp(t))
        k2 = rate(a + step / 2 * k1, temp(t + step / 2))
        k3 = rate(a + step / 2 * k2, temp(t + step / 2))
        k4 = rate(a + step * k3, temp(t + step))
        b = a + step / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
        if level is not None and b >= level:
            return t + step * (level - a) / (b - a)
        a = b
    return a


def kamal(a1, e1, a2, e2, m, n):
    def f(a, c):
        t = c + 273.15
        a = min(1.0, max(0.0, a))
        return (a1 * math.exp(-e1 / R / t) + a2 * math.exp(-e2 / R / t) * a ** m) * (1 - a) ** n
    return f


def tg(a, t0, ti, lam):
    return t0 + (ti - t0) * lam * a / (1 - (1 - lam) * a)


def inv(t, t0, ti, lam):
    x = (t - t0) / (ti - t0)
    return x / (lam + (1 - lam) * x)


def cure():
    rows = []
    e = 61000
    rows.append(row("OC-01", {"pot_life_ref": q(25, "min"), "temp_ref": q(23, "degC"), "temp": q(64.4, "degF"),
                              "activation_energy": q(61, "kJ/mol")},
                    {"pot_life": q(25 / arr(e, 23, 18) / 60, "h")}, notes="pot life by Arrhenius, mixed units"))
    rows.append(row("OC-02", {"gel_ref": q(3, "h"), "temp_ref": q(20, "degC"), "temp": q(27.5, "degC")},
                    {"gel": q(180 / two(20, 27.5), "min")}, notes="no activation energy: factor of two"))
    ea = R * math.log(1.8) / (1 / 291.15 - 1 / 301.15)
    rows.append(row("OC-03", {"t1": q(18, "degC"), "t2": q(28, "degC"), "factor": q(1.8), "gel_ref": q(140, "min"),
                              "temp_ref": q(23, "degC"), "shop_temp": q(19, "degC")},
                    {"activation_energy": q(ea / 1000, "kJ/mol"), "gel": q(140 / arr(ea, 23, 19), "min")},
                    notes="the energy is reckoned first, then used"))
    spans = [[5, 24], [9, 14], [3, 17.5]]
    age = sum(h * two(23, t) for h, t in spans)
    rows.append(row("OC-04", {"spans": q(spans, "h, degC"), "temp_ref": q(23, "degC"), "needed": q(24, "h at 23 degC"),
                              "now": q(21, "degC")},
                    {"equivalent_age": q(age, "h"), "wait": q((24 - age) / two(23, 21), "h")}))
    aage = sum(h * arr(58000, 23, t) for h, t in spans)
    rows.append(row("OC-05", {"spans": q(spans, "h, degC"), "temp_ref": q(23, "degC"), "needed": q(24, "h at 23 degC"),
                              "now": q(21, "degC"), "activation_energy": q(58000, "J/mol")},
                    {"equivalent_age": q(aage * 60, "min"), "wait": q((24 - aage) / arr(58000, 23, 21), "h")},
                    notes="the same by Arrhenius"))
    profile = [[0, 22], [300, 22], [480, 12], [900, 12], [960, 40], [1000, 40]]
    n = 100000
    h = 1000 / n
    page = sum(two(23, on(profile, (i + 0.5) * h)) * h for i in range(n)) / 60
    rows.append(row("OC-06", {"profile": q(profile, "min, degC"), "temp_ref": q(23, "degC")},
                    {"equivalent_age": q(page, "h")}, 1e-5, "straight lines between points"))
    f = kamal(8e6, 57500, 1.1e8, 56500, 0.9, 1.6)
    const = {"A1": q(8e6, "1/min"), "E1": q(57.5, "kJ/mol"), "A2": q(1.1e8, "1/min"), "E2": q(56500, "J/mol"),
             "m": q(0.9), "n": q(1.6)}
    a = [grow(f, t, lambda x: 24) for t in (60, 240)]
    rows.append(row("OC-07", {**const, "temp": q(24, "degC"), "times": q([1, 4], "h")}, {"alpha": q(a)}, 1e-4))
    rows.append(row("OC-08", {**const, "temp": q(24, "degC"), "time": q(240, "min"), "alpha0": q(0.05)},
                    {"alpha": q(grow(f, 240, lambda x: 24, 0.05))}, 1e-4))
    rows.append(row("OC-09", {**const, "temp": q(24, "degC")},
                    {"time_at_alpha_0p5": q(grow(f, 4000, lambda x: 24, level=0.5), "min"),
                     "time_at_alpha_0p25": q(grow(f, 4000, lambda x: 24, level=0.25), "min")}, 1e-4, "other degrees in the name"))
    al = grow(f, 240, lambda x: 24)
    rows.append(row("OC-10", {**const, "temp": q(24, "degC"), "time": q(240, "min"), "Tg0": q(-25, "degC"),
                              "Tg_inf": q(90, "degC"), "lambda": q(0.4)},
                    {"alpha": q(al), "Tg": q(tg(al, -25, 90, 0.4), "degC"), "alpha_vitrify": q(inv(24, -25, 90, 0.4))}, 2e-4,
                    "degree of cure, then its glass transition"))
    rows.append(row("OC-11", {"Tg": q([30, 60], "degC"), "Tg0": q(-25, "degC"), "Tg_inf": q(90, "degC"), "lambda": q(0.4)},
                    {"alpha": q([inv(30, -25, 90, 0.4), inv(60, -25, 90, 0.4)])}, notes="the other way round"))
    rows.append(row("OC-12", {"k1": q(0.01, "1/min"), "k2": q(0.08, "1/min"), "m": q(0.7), "n": q(1.3),
                              "times": q([20, 60], "min")},
                    {"alpha": q([grow(lambda a, c: (0.01 + 0.08 * max(a, 0) ** 0.7) * (1 - a) ** 1.3, t, lambda x: 0, step=0.005)
                                 for t in (20, 60)])}, 1e-4))
    rows.append(row("OC-13", {"constants": q("as OC-07"), "profile": q(profile, "min, degC"), "times": q([480, 1000], "min")},
                    {"alpha": q([grow(f, t, lambda x: on(profile, x)) for t in (480, 1000)])}, 1e-4,
                    "constants of another row, temperatures of its own"))
    rows.append(row("OC-14", {"gel_ref": q(100, "min"), "temp_ref": q(20, "degC"), "temp": q([10, 30], "degC"),
                              "activation_energy": q(50000, "J/mol"), "gas_constant": q(8.2, "J/(mol K)")},
                    {"gel": q([100 / arr(50000, 20, 10, 8.2), 100 / arr(50000, 20, 30, 8.2)], "min")},
                    notes="a list of temperatures; another gas constant"))
    rows.append(row("OC-15", {"Tg0": q(-28, "degC"), "Tg_inf": q(88, "degC"), "lambda": q(0.5), "temp": q(16, "degC"),
                              "Tg_minus_Tcure_at_stall": q(18, "K")},
                    {"alpha_stall": q(inv(34, -28, 88, 0.5)), "alpha_vitrify": q(inv(16, -28, 88, 0.5))}))
    h, t, aged = 0.01, 0.0, 0.0
    while aged < 400:
        aged += h * two(23, on(profile, t + h / 2))
        t += h
    rows.append(row("OC-16", {"gel_ref": q(400, "min"), "temp_ref": q(23, "degC"), "profile": q(profile, "min, degC")},
                    {"gel": q(t, "min")}, 1e-4, "over changing temperatures"))
    rows.append(row("OC-17", {"gel_ref": q(6, "h"), "temp_ref": q(23, "degC"), "spans": q([[2, 23], [10, 13]], "h, degC")},
                    {"gel": q(2 + 4 * 2, "h")}, notes="two hours at the reference, the rest at half speed"))
    write("cure", rows)


def magnus(t):
    return 6.112 * math.exp(17.62 * t / (243.12 + t))


def dew(t, rh):
    g = math.log(rh / 100) + 17.62 * t / (243.12 + t)
    return 243.12 * g / (17.62 - g)


def climate():
    rows = []
    d = dew(18.5, 71)
    rows.append(row("OL-01", {"air": q(18.5, "degC"), "rh": q(71, "percent"), "surface": q(17, "degC"),
                              "required_margin": q(5.4, "degF")},
                    {"dew_point": q(d, "degC"), "margin": q((17 - d) * 1.8, "degF"), "ok": q(17 - d >= 3),
                     "surface_needed": q(d + 3, "degC"), "rh_at_surface": q(71 * magnus(18.5) / magnus(17), "percent")}))
    rows.append(row("OL-02", {"air": q([15, 25, 35], "degC"), "rh": q(50, "percent")},
                    {"dew_point": q([dew(t, 50) for t in (15, 25, 35)], "degC")}))
    rows.append(row("OL-03", {"air": q(59, "degF"), "rh": q(0.8), "surface": q(55, "degF"), "required_margin": q(3, "K")},
                    {"margin": q((55 - 32) / 1.8 - dew(15, 80), "K"), "ok": q((55 - 32) / 1.8 - dew(15, 80) >= 3)}))
    buck = lambda t: 6.1121 * math.exp((18.678 - t / 234.5) * t / (257.14 + t))
    lo, hi = -40.0, 40.0
    for _ in range(200):
        mid = (lo + hi) / 2
        lo, hi = (mid, hi) if buck(mid) < 0.45 * buck(26) else (lo, mid)
    rows.append(row("OL-04", {"air": q(26, "degC"), "rh": q(45, "percent")},
                    {"saturation": q(buck(26) * 100, "Pa"), "dew_point": q(lo, "degC")}, notes="one formula for both"))
    rows.append(row("OL-05", {"air": q(21, "degC"), "rh": q(65, "percent"), "surface": q([16, 18.5, 20], "degC")},
                    {"dew_point": q(dew(21, 65), "degC"), "margin": q([s - dew(21, 65) for s in (16, 18.5, 20)], "K")},
                    notes="three probes"))
    write("climate", rows)


def fixed(rate, f, tmix, life):
    lo, hi = 1e-3, 1e5
    for _ in range(300):
        mid = (lo + hi) / 2
        lo, hi = (mid, hi) if mid < rate * (f * life(mid) - tmix) else (lo, mid)
    return lo


def mixes():
    rows = []
    fibre = 1.7 * (200 * 4 + 86) / 1000
    resin = fibre * 0.52 / 0.48
    mix = resin * 1.2
    rows.append(row("OM-01", {"area": q(1.7, "m2"), "ply_areal_masses": q([200, 200, 200, 200, 86], "g/m2"),
                              "fibre_mass_fraction": q(48, "percent"), "waste": q(0.2), "max_batch": q(0.35, "kg"),
                              "parts_resin": q(100, "pbw"), "parts_hardener": q(32, "pbw")},
                    {"fibre_mass": q(fibre * 1000, "g"), "mix_to_weigh": q(mix, "kg"),
                     "batches": q(math.ceil(mix / 0.35 - 1e-9)),
                     "batch_mass": q(mix / math.ceil(mix / 0.35 - 1e-9), "kg"),
                     "resin": q(mix * 100 / 132, "kg"), "hardener": q(mix * 32 / 132 * 1000, "g")},
                    notes="from plies to the scale"))
    rows.append(row("OM-02", {"gap_start": q(0.4, "mm"), "gap_end": q(1.6, "mm"), "width": q(25, "mm"), "length": q(1.8, "m"),
                              "density": q(1250, "kg/m3"), "waste": q(0.4)},
                    {"adhesive_mass": q(1.8 * 0.025 * 0.001 * 1250 * 1.4 * 1000, "g")}, notes="mean gap of a taper"))
    rows.append(row("OM-03", {"bond_line": q(20, "thou"), "width": q(1, "in"), "length": q(6, "ft"), "density": q(1.2, "g/cm3"),
                              "waste": q(0.25), "parts_hardener_by_weight": q(50, "per 100")},
                    {"adhesive_mass": q(72 * 25.4 * 25.4 * 0.508 * 1.2e-6 * 1.25, "kg"),
                     "hardener": q(72 * 25.4 * 25.4 * 0.508 * 1.2e-3 * 1.25 / 3, "g")}))
    rows.append(row("OM-04", {"radius": q(8, "mm"), "length": q(2500, "mm"), "density": q(0.7, "kg/L"), "waste": q(0.1)},
                    {"mass": q(2.5 * 64e-6 * (1 - math.pi / 4) * 700 * 1.1, "kg")}))
    rows.append(row("OM-05", {"resin_weighed": q(400, "g"), "hardener_weighed": q(131, "g"), "parts_resin": q(100, "pbw"),
                              "parts_hardener": q(30, "pbw"), "tolerance": q(5, "percent of nominal hardener")},
                    {"deviation": q(100 * (131 / 400 / 0.3 - 1), "percent"), "in_tolerance": q(False),
                     "resin_to_add": q(131 / 0.3 - 400, "g"), "hardener_to_add": q(0.0, "g")}, notes="too much hardener"))
    n = math.log(100 / 40) / math.log(400 / 100)
    life = lambda m, t: 100 * (100 / m) ** n * 2 ** ((25 - t) / 10)
    m = fixed(7, 0.6, 5, lambda x: life(x, 19))
    rows.append(row("OM-06", {"mass_1": q(100, "g"), "pot_life_1": q(100, "min"), "mass_2": q(400, "g"), "pot_life_2": q(40, "min"),
                              "temperature": q(25, "degC"), "shop_temp": q(19, "degC"), "use_rate": q(7, "g/min"),
                              "usable_fraction": q(0.6), "mixing_time": q(5, "min"), "total": q(1.5, "kg")},
                    {"exponent": q(n), "max_batch": q(m, "g"), "batches": q(math.ceil(1500 / m)),
                     "batch_mass": q(1.5 / math.ceil(1500 / m), "kg"),
                     "pot_life_of_batch": q(life(1500 / math.ceil(1500 / m), 19), "min")}, 1e-4,
                    "two data-sheet masses, then the largest batch at another temperature"))
    lf = lambda x: 45 * (200 / x) ** 0.6 * arr(60000, 25, 22) ** -1
    m = fixed(15, 0.55, 3, lf)
    rows.append(row("OM-07", {"pot_life_ref": q(45, "min"), "mass_ref": q(200, "g"), "temp_ref": q(25, "degC"),
                              "mass_exponent": q(0.6), "shop_temp": q(22, "degC"), "use_rate": q(0.9, "kg/h"),
                              "usable_fraction": q(55, "percent"), "mixing_time": q(180, "s"),
                              "activation_energy": q(60000, "J/mol")},
                    {"max_batch": q(fixed(15, 0.55, 3, lf), "g"), "pot_life_of_batch": q(lf(m), "min")}, 1e-4))
    rows.append(row("OM-08", {"mass_1": q(100, "g"), "pot_life_1": q(100, "min"), "mass_2": q(400, "g"), "pot_life_2": q(40, "min"),
                              "temperature": q(25, "degC")},
                    {"pot_life_at_250_g": q(life(250, 25), "min")}, notes="another mass in the name"))
    vf = (0.55 / 2.54) / (0.55 / 2.54 + 0.45 / 1.18)
    rows.append(row("OM-09", {"fibre_mass_fraction": q(0.55), "density_fibre": q(2540, "kg/m3"), "density_resin": q(1.18, "kg/L"),
                              "ply_areal_masses": q([300, 300, 160], "g/m2")},
                    {"fibre_volume_fraction": q(vf), "laminate_thickness": q(760 / 2.54e6 / vf * 1000, "mm")}))
    rows.append(row("OM-10", {"total": q(1.05, "kg"), "max_batch": q(150, "g")},
                    {"batches": q(7), "batch_mass": q(150, "g")}, notes="binary division must not make it 8"))
    rows.append(row("OM-11", {"area": q(0.9, "m2"), "areal_mass_fibre": q(5.8, "oz/yd2"), "plies": q(3),
                              "fibre_mass_fraction": q(0.5)},
                    {"fibre_mass": q(0.9 * 3 * 5.8 * 0.028349523125 / 0.83612736, "kg"),
                     "resin_in_part": q(0.9 * 3 * 5.8 * 0.028349523125 / 0.83612736, "kg")}))
    rows.append(row("OM-12", {"pot_life_ref": q(50, "min"), "mass_ref": q(100, "g"), "temp_ref": q(25, "degC"),
                              "mass_exponent": q(0.5), "temperature": q(15, "degC")},
                    {"pot_life_at_400_g": q(50 * 0.5 * 2, "min")}, notes="a temperature beside the data sheet's own"))
    write("mixes", rows)


def vacuum():
    rows = []
    amb = lambda h: 101.325 * (1 - 2.25577e-5 * h) ** 5.25588
    rows.append(row("OV-01", {"elevation": q(2000, "ft"), "bag_absolute": q(80, "mbar"), "length": q(1.5, "m"), "width": q(0.6, "m")},
                    {"ambient": q(amb(609.6) * 10, "hPa"), "clamp_pressure": q(amb(609.6) - 8, "kPa"),
                     "vacuum_percent": q(100 * (amb(609.6) - 8) / amb(609.6), "percent"),
                     "force": q((amb(609.6) - 8) * 0.9, "kN"),
                     "as_weight": q((amb(609.6) - 8) * 900 / 9.80665, "kgf")}, 1e-6))
    rows.append(row("OV-02", {"start": q(25, "inHg"), "end": q(23.5, "inHg"), "minutes": q(5, "min"), "max_drop": q(5, "inHg in 5 min"),
                              "minimum": q(22, "inHg")},
                    {"drop": q(1.5, "inHg"), "rate": q(0.3, "inHg/min"), "ok": q(True)}))
    rows.append(row("OV-03", {"start": q(25, "inHg"), "end": q(21.5, "inHg"), "minutes": q(5, "min"), "max_drop": q(5, "inHg in 5 min"),
                              "minimum": q(22, "inHg")},
                    {"drop": q(3.5, "inHg"), "ok": q(False)}, notes="drop allowed, level too low"))
    rows.append(row("OV-04", {"start": q(0.9, "bar"), "end": q(0.85, "bar"), "minutes": q(10, "min"), "limit": q(1, "inHg/min")},
                    {"rate": q(5000 / 3386.389 / 10, "inHg/min"), "ok": q(True)}))
    s, v, leak = 2.0 / 3600, 0.08, 3e-2
    pu = leak * 100 / 1000 / s
    rows.append(row("OV-05", {"volume": q(80, "L"), "pump_speed": q(2, "m3/h"), "leak": q(0.03, "hPa L/s"), "ambient": q(1000, "hPa"),
                              "to": q(60, "hPa")},
                    {"ultimate": q(0.03e-3 / s, "hPa"),
                     "time": q(v / s * math.log((1000 - 0.03e-3 / s) / (60 - 0.03e-3 / s)), "s")}))
    rows.append(row("OV-06", {"bag_volume": q(30, "L"), "rise": q(0.5, "inHg"), "minutes": q(3, "min")},
                    {"leak": q(30 * 0.5 * 33.86389 / 180, "hPa L/s")}))
    rows.append(row("OV-07", {"vacuum": q(24, "inHg"), "area": q(10, "ft2")},
                    {"pressure": q(24 * 3.386389, "kPa"), "pressure_psi": q(24 * 3386.389 / 6894.757293168361, "psi"),
                     "force": q(24 * 3386.389 * 0.9290304, "N"), "as_weight": q(24 * 3386.389 * 0.9290304 / 9.80665, "kgf")}))
    rows.append(row("OV-08", {"clamp_pressure": q(0.7, "bar"), "area": q(2500, "cm2")}, {"force": q(17.5, "kN")}))
    rows.append(row("OV-09", {"volume": q(25, "L"), "pump_speed": q(25, "L/min"), "elevation": q(400, "m"), "to": q(100, "hPa")},
                    {"time": q(math.log(amb(400) / 10), "min")}))
    rows.append(row("OV-10", {"start": q(24, "inHg"), "end": q(18.5, "inHg"), "max_drop": q(5, "inHg in 5 min")},
                    {"drop": q(5.5, "inHg"), "ok": q(False)}, notes="the limit says over what time"))
    rows.append(row("OV-11", {"start": q(24, "inHg"), "end": q(21, "inHg"), "minutes": q(10, "min"), "max_drop": q(2, "inHg")},
                    {"rate": q(0.3, "inHg/min"), "ok": q(False)}, notes="the test says over what time"))
    rows.append(row("OV-12", {"volume": q(60, "L"), "pump_speed": q(3, "m3/h"), "leak": q(80, "hPa L/s"), "to": q(90, "hPa")},
                    {"ultimate": q(80 / (3000 / 3600), "hPa"), "ok": q(False)}, notes="the pump never gets there"))
    rows.append(row("OV-13", {"volume": q(40, "L"), "pump_speed": q(2.4, "m3/h"), "ambient": q(1000, "hPa"), "vacuum": q(600, "mmHg")},
                    {"time": q(60 * math.log(1000 / (1000 - 600 * 1.33322387415)), "s"),
                     "pressure": q(600 * 0.133322387415, "kPa")}, notes="down to a gauge reading"))
    write("vacuum", rows)


def bagging():
    rows = []
    rows.append(row("OB-01", {"length": q(1800, "mm"), "width": q(70, "cm"), "margin": q(2, "in"), "surface_factor": q(1.12)},
                    {"area": q((1.8 + 0.1016) * (0.7 + 0.1016) * 1.12, "m2")}))
    rows.append(row("OB-02", {"area": q(1.4, "m2"), "perimeter": q(5.1, "m"), "margin": q(60, "mm"), "surface_factor": q(1.05)},
                    {"area_with_margin": q((1.4 + 5.1 * 0.06 + math.pi * 0.0036) * 1.05, "m2")}))
    rows.append(row("OB-03", {"needed_width": q(1.27, "m"), "length": q(2, "m"), "roll_width": q(1.27, "m"), "lap": q(50, "mm")},
                    {"strips": q(1), "run": q(2, "m")}, notes="just wide enough: no lap"))
    rows.append(row("OB-04", {"length": q(3.0, "m"), "width": q(1.5, "m"), "margin": q(0.05, "m"), "roll_width": q(1.25, "m"),
                              "lap": q(0.05, "m")},
                    {"strips": q(2), "run": q(6.2, "m"), "strips_across": q(3), "run_across": q(4.8, "m")}, notes="both directions"))
    rows.append(row("OB-05", {"tape_rectangle": q([3.0, 0.8], "m"), "pleats_per_long_side": q(3), "pleats_per_short_side": q(1),
                              "pleat_height": q(0.1, "m"), "hand_edge": q(60, "mm"), "roll_length": q(25, "ft"), "spare": q(10, "percent")},
                    {"tape": q((7.6 + 8 * 0.2) * 1.1, "m"), "rolls": q(math.ceil((7.6 + 1.6) * 1.1 / 7.62 - 1e-9)),
                     "film": q([3.12 + 0.6, 0.92 + 0.2], "m"), "film_area": q(3.72 * 1.12, "m2")},
                    notes="pleats counted from both pairs of sides"))
    rows.append(row("OB-06", {"length": q(2, "m"), "width": q(0.5, "m"), "peel_margin": q(0.04, "m"), "film_margin": q(0.02, "m"),
                              "breather_margin": q(0.1, "m")},
                    {"peel_ply": q(2.08 * 0.58, "m2"), "perforated_film": q(2.04 * 0.54, "m2"), "breather": q(2.2 * 0.7, "m2")}))
    rows.append(row("OB-07", {"needed_width": q(2.4, "m"), "length": q(1.1, "m"), "roll_width": q(1.2, "m"), "lap": q(0.05, "m")},
                    {"strips": q(3), "run": q(3.3, "m"), "strips_across": q(1), "run_across": q(2.4, "m")}))
    rows.append(row("OB-08", {"length": q(2, "m"), "width": q(0.5, "m"), "surface_factor": q(1.2)}, {"area": q(1.2, "m2")},
                    notes="no margin"))
    write("bagging", rows)


for make in (cure, climate, mixes, vacuum, bagging):
    make()
