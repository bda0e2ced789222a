"""The regression of the reference model repeated with scipy, independently of lib/ and reference/regression/: own
reader, own equations, bubble points by differences, scipy.optimize.least_squares (MINPACK). It takes the scatter of each
set from reference/regression/scatter.json and shows how much the result depends on the cross virial coefficient B12.

Run:  python3 reference/derived/regression-scipy.py > reference/derived/regression-scipy.json
Needs Python 3 with numpy and scipy (Debian: python3-scipy). The versions used stand in the output.
"""
import csv
import json
import os
import platform

import numpy as np
import scipy
from scipy.optimize import brentq, least_squares

R = 8.314462618
T0 = 350.0
STRETCH = 2.0
FUNCTIONS = [4, 4, 4, 3, 3, 3]  # functions of temperature for each composition term
FOLDER = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "measurements")
WEIGHTS = json.load(open(os.path.join(FOLDER, "weights.json")))["sets"]
SCATTER = json.load(open(os.path.join(FOLDER, "..", "regression", "scatter.json")))["sets"]
CROSS = {c["name"]: float(c["value"]) for c in json.load(
    open(os.path.join(FOLDER, "..", "parameters", "redlich-kister-ethanol-water.json")))["constants"]}["cross"]


def rows(name):
    lines = [line for line in open(os.path.join(FOLDER, name + ".csv")) if not line.startswith("#")]
    return list(csv.DictReader(lines))


def column(table, name):
    return np.array([float(row[name]) for row in table])


def kelvin(table):
    return column(table, "T_K") if "T_K" in table[0] else column(table, "t_degC") + 273.15


# Pure substances
def water_pressure(t):
    th = 1 - t / 647.096
    a = (-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502)
    return 22.064e6 * np.exp(647.096 / t * sum(ai * th**ei for ai, ei in zip(a, (1, 1.5, 3, 3.5, 4, 7.5))))


def ethanol_pressure(t):
    tr = t / 513.92
    th = 1 - tr
    return 6.132e6 * np.exp((-8.68587 * th + 1.17831 * th**1.5 - 4.8762 * th**2.5 + 1.588 * th**5) / tr)


def tsonopoulos(t, tc, pc, w, a, b):
    r = t / tc
    f0 = 0.1445 - 0.330 / r - 0.1385 / r**2 - 0.0121 / r**3 - 0.000607 / r**8
    f1 = 0.0637 + 0.331 / r**2 - 0.423 / r**3 - 0.008 / r**8
    return R * tc / pc * (f0 + w * f1 + a / r**6 - b / r**8)


def b_ethanol(t):
    return tsonopoulos(t, 514.0, 6.137e6, 0.645, 0.0878, 0.00908 + 0.0006957 * 66.2)


def b_water(t):
    return tsonopoulos(t, 647.1, 22.06e6, 0.344, -0.0109, 0)


def ideal_heat_capacity(x, t):
    e = (102640 - 139.63 * t - 0.030341 * t**2 + 0.0020386 * t**3) / 1000
    w = (276370 - 2090.1 * t + 8.125 * t**2 - 0.014116 * t**3 + 9.3701e-6 * t**4) / 1000
    return x * e + (1 - x) * w


# Liquid: matrices of gE/RT, its slope by x and by T, linear in the parameters
def matrices(x, t):
    x, t = np.broadcast_arrays(np.asarray(x, float), np.asarray(t, float))
    u = t / T0
    f = (np.ones_like(u), 1 / u - 1, 1 / u - 1 + np.log(u), 1 / u + 2 * np.log(u) - u)
    ft = tuple(d / T0 for d in (0 * u, -1 / u**2, 1 / u - 1 / u**2, -1 + 2 / u - 1 / u**2))
    d = 1 + (STRETCH - 1) * x
    p, w = x * (1 - x) / d, (1 - x - STRETCH * x) / d
    p1, w1 = (1 - 2 * x - (STRETCH - 1) * x * x) / d**2, -2 * STRETCH / d**2
    g, gx, gt = [], [], []
    for k, count in enumerate(FUNCTIONS):
        h = p * w**k
        h1 = p1 * w**k + (p * k * w ** (k - 1) * w1 if k else 0)
        for j in range(count):
            g.append(h * f[j]), gx.append(h1 * f[j]), gt.append(h * ft[j])
    return np.array(g).T, np.array(gx).T, np.array(gt).T


def ln_gamma(theta, x, t):
    g, gx, _ = matrices(x, t)
    value, slope = g @ theta, gx @ theta
    return value + (1 - x) * slope, value - x * slope


def heat(theta, x, t):
    return -R * t * t * (matrices(x, t)[2] @ theta)


class Vapour:
    """Virial vapour; B12 = (1 + cross) (B11 + B22)/2, cross = 0 being the Lewis rule; or an ideal gas."""

    def __init__(self, cross=0.0, ideal=False):
        self.cross, self.ideal = cross, ideal

    def factors(self, p1, p2, pressure, y, t):
        if self.ideal:
            return 1.0, 1.0
        b1, b2 = b_ethanol(t), b_water(t)
        delta = self.cross * (b1 + b2)
        f1 = np.exp((b1 * (p1 - pressure) - pressure * delta * (1 - y) ** 2) / (R * t))
        f2 = np.exp((b2 * (p2 - pressure) - pressure * delta * y**2) / (R * t))
        return f1, f2


def pressure_over(v, theta, x, t, p1=None, p2=None):
    p1 = ethanol_pressure(t) if p1 is None else p1
    p2 = water_pressure(t) if p2 is None else p2
    l1, l2 = ln_gamma(theta, x, t)
    a, b = x * np.exp(l1) * p1, (1 - x) * np.exp(l2) * p2
    pressure, y = a + b, a / (a + b)
    for _ in range(1 if v.ideal else 40):
        f1, f2 = v.factors(p1, p2, pressure, y, t)
        pressure, y = a * f1 + b * f2, a * f1 / (a * f1 + b * f2)
    return pressure, y


def boil(v, theta, x, pressure):
    t = np.full_like(x, 360.0)
    for _ in range(30):
        f = np.log(pressure_over(v, theta, x, t)[0] / pressure)
        step = f / ((np.log(pressure_over(v, theta, x, t + 0.01)[0] / pressure) - f) / 0.01)
        t = np.clip(t - step, 275, 470)
        if np.max(np.abs(step)) < 1e-8:
            break
    return t, pressure_over(v, theta, x, t)[1]


def log_volatility(v, theta, x, pressure):
    _, y = boil(v, theta, x, pressure)
    return np.log(y * (1 - x) / (x * (1 - y)))


def read(entry):
    table, sigma = rows(entry["set"]), entry["sigma"]
    kind = entry["kind"]
    if kind in ("isothermal", "isobaric"):
        x, t, p = column(table, "x1"), kelvin(table), 1000 * column(table, "P_kPa")
        y = column(table, "y1") if "y1" in table[0] else None
        keep = (x > 0) & (x < 1)
        own = (p[x == 1][0], p[x == 0][0]) if (x == 1).any() and (x == 0).any() else (None, None)
        return dict(x=x[keep], t=t[keep], p=p[keep], y=None if y is None else y[keep], own=own, sigma=sigma)
    if kind == "heat of mixing":
        return dict(x=column(table, "x1"), t=kelvin(table), h=column(table, "hE_J_mol"), sigma=sigma)
    if kind == "heat capacity":
        x = column(table, "x1_percent") / 100
        c = column(table, "cp_cal_gK") * 4.184 * (46.06844 * x + 18.015268 * (1 - x))
        keep = x < 1
        return dict(x=x[keep], t=kelvin(table)[keep], c=c[keep], sigma=sigma)
    if kind == "limiting activity":
        t, g = column(table, "t_degC"), column(table, "gamma1")
        bands = [(t >= low) & (t <= high) for low, high in entry["bands_degC"]]
        return dict(t=np.array([np.median(t[b]) + 273.15 for b in bands]), g=np.array([np.median(g[b]) for b in bands]), sigma=sigma)
    p = column(table, "P_kPa")
    keep = np.array([q <= entry["largest_kPa"] and (r["kind"] in entry["fitted"] or f"{r['kind']}@{r['P_kPa']}" in entry["fitted"]) for q, r in zip(p, table)])
    x, p, s = column(table, "x1")[keep], 1000 * p[keep], column(table, "uncertainty_x1")[keep]
    return dict(x=x, p=p, s=s * np.sqrt([np.sum(np.abs(p / q - 1) < 0.01) for q in p]))


DATA = [(entry, read(entry)) for entry in WEIGHTS if entry["role"] == "fit"]


def whitened(entry, quantity, x, r, scale=1.0):
    """Residuals of a set made independent: within and between of scatter.json, between smooth in ln(x/(1 - x))."""
    found = SCATTER[f"{entry['set']} {quantity}"]
    z = np.clip(np.log(x / (1 - x)), -6, 6)
    c = found["within"] ** 2 * np.eye(len(x)) + found["between"] ** 2 * np.exp(-np.subtract.outer(z, z) ** 2 / 2)
    return np.linalg.solve(np.linalg.cholesky(c), r / scale)


def residuals(v, theta):
    out = []
    for entry, d in DATA:
        kind, s = entry["kind"], d.get("sigma")
        if kind == "isothermal":
            p, y = pressure_over(v, theta, d["x"], d["t"], *d["own"])
            out.append(whitened(entry, "P", d["x"], p / d["p"] - 1))
            if "y" in s:
                out.append(whitened(entry, "y", d["x"], y - d["y"], 4 * y * (1 - y)))
        elif kind == "isobaric":
            t, y = boil(v, theta, d["x"], d["p"])
            if "T_K" in entry.get("use", ["T_K"]):
                out.append(whitened(entry, "T", d["x"], t - d["t"]))
            out.append(whitened(entry, "y", d["x"], y - d["y"], 4 * y * (1 - y)))
        elif kind == "heat of mixing":
            out.append((heat(theta, d["x"], d["t"]) - d["h"]) / s["hE_J_mol"])
        elif kind == "heat capacity":
            excess = (heat(theta, d["x"], d["t"] + 0.1) - heat(theta, d["x"], d["t"] - 0.1)) / 0.2
            out.append(((ideal_heat_capacity(d["x"], d["t"]) + excess) / d["c"] - 1) / s["cp_relative"])
        elif kind == "limiting activity":
            out.append((ln_gamma(theta, 0 * d["t"], d["t"])[0] - np.log(d["g"])) / s["lnGamma"])
        else:
            value = log_volatility(v, theta, d["x"], d["p"])
            high, low = np.minimum(d["x"] + 1e-4, 1 - 1e-9), d["x"] - 1e-4
            slope = (log_volatility(v, theta, high, d["p"]) - log_volatility(v, theta, low, d["p"])) / (high - low)
            out.append(-value / np.minimum(slope, -0.15) / d["s"])
    return np.concatenate(out)


def azeotrope(v, theta, pressure):
    x = np.linspace(0.3, 0.9999, 80)
    values = log_volatility(v, theta, x, pressure)
    for i in range(len(x) - 1):
        if values[i] > 0 >= values[i + 1]:
            return brentq(lambda q: log_volatility(v, theta, np.array([q]), pressure)[0], x[i], x[i + 1], xtol=1e-10)
    return None


def run(name, v, start):
    found = least_squares(lambda theta: residuals(v, theta), start, method="lm", max_nfev=6000, xtol=1e-10, ftol=1e-10, diff_step=1e-4)
    theta = found.x
    rounded = lambda value: None if value is None else float(f"{value:.7g}")
    gamma = lambda t: rounded(float(np.exp(ln_gamma(theta, np.array([0.0]), t)[0][0])))
    return theta, dict(
        name=name, sumOfSquares=rounded(2 * found.cost), residuals=len(found.fun),
        azeotrope={str(p): rounded(azeotrope(v, theta, p)) for p in (17290.0, 32860.0, 101325.0, 193490.0, 1.0013e6)},
        limitingGammaEthanol={"298.15": gamma(298.15), "373.15": gamma(373.15)},
        parameters=[float(f"{q:.8g}") for q in theta],
    )


def main():
    start = np.zeros(sum(FUNCTIONS))
    start[0] = 1.2
    first, reference = run("as it is", Vapour(cross=CROSS), start)
    others = [run(name, v, first)[1] for name, v in (
        ("Lewis rule, B12 = (B11 + B22)/2", Vapour()), ("ideal vapour", Vapour(ideal=True)))]
    print(json.dumps(dict(
        maker="reference/derived/regression-scipy.py",
        versions=dict(python=platform.python_version(), numpy=np.__version__, scipy=scipy.__version__),
        stretch=STRETCH, fits=[reference] + others), indent=1))


main()
