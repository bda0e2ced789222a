"""Ethanol and water in Python, for the reference solutions: the same published equations as lib/ (parameters read from
reference/parameters, constants typed from the sources named), written separately, without tables or splines.

Equilibrium by Newton's method at every call; slopes along the boiling line by complex steps. Every function takes
arrays that broadcast. x, y are mole fractions of ethanol, T in K, P in Pa, h and H in J/mol from the liquids at 0 degC.

Check:  python3 reference/derived/ethanol_water.py   prints a few values to compare with the library's.
"""
import json
import os

import numpy as np

R = 8.314462618
M1, M2 = 46.06844e-3, 18.015268e-3
ZERO = 273.15
FOLDER = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "parameters")


def parameters(name):
    published = json.load(open(os.path.join(FOLDER, name + ".json")))
    return {c["name"]: float(c["value"]) for c in published["coefficients"] + published["constants"]}


def series(values, prefix):
    return np.array([values[k] for k in sorted((k for k in values if k.startswith(prefix) and k[len(prefix):].isdigit()),
                                               key=lambda k: int(k[len(prefix):]))])


def horner(c, s):
    total = 0 * s
    for each in c[::-1]:
        total = total * s + each
    return total


# ---- activity: the project's expansion of the excess Gibbs energy, with the virial vapour it was fitted with

_RK = parameters("redlich-kister-ethanol-water")
RHO, T0, CROSS = _RK["rho"], _RK["T0"], _RK["cross"]
_A, _B, _C, _D = (np.pad(s, (0, 6 - len(s))) for s in (series(_RK, letter) for letter in "abcd"))


def _factors(x):
    """x1 x2/D and w with their first and second derivatives by x."""
    d = 1 + (RHO - 1) * x
    return ((x * (1 - x) / d, (1 - 2 * x - (RHO - 1) * x * x) / d**2, -2 * RHO / d**3),
            ((1 - (1 + RHO) * x) / d, -2 * RHO / d**2, 4 * RHO * (RHO - 1) / d**3))


def _expanded(x, c):
    """(x1 x2/D) sum c_k w^k and its first two derivatives by x; c is a list of 6 arrays."""
    (p, p1, p2), (w, w1, w2) = _factors(x)
    s = sum(c[k] * w**k for k in range(6))
    s1 = sum(k * c[k] * w ** (k - 1) for k in range(1, 6))
    s2 = sum(k * (k - 1) * c[k] * w ** (k - 2) for k in range(2, 6))
    return p * s, p1 * s + p * s1 * w1, p2 * s + 2 * p1 * s1 * w1 + p * (s2 * w1 * w1 + s1 * w2)


def excess_gibbs(x, t):
    tau = t / T0
    f1 = 1 / tau - 1
    f2 = f1 + np.log(tau)
    f3 = 1 / tau + 2 * np.log(tau) - tau
    return _expanded(x, [_A[k] + _B[k] * f1 + _C[k] * f2 + _D[k] * f3 for k in range(6)])


def mixing_heat(x, t):
    """hE and its derivative by x, J/mol, by the expansion's own closed form."""
    tau = t / T0
    e, e1, _ = _expanded(x, [_B[k] + _C[k] * (1 - tau) + _D[k] * (tau - 1) ** 2 for k in range(6)])
    return R * T0 * e, R * T0 * e1


def ln_water_pressure(t):
    th = 1 - t / 647.096
    a = (-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502)
    return np.log(22.064e6) + 647.096 / t * sum(ai * th**e for ai, e in zip(a, (1, 1.5, 3, 3.5, 4, 7.5)))


def ln_ethanol_pressure(t):
    th = 1 - t / 513.92
    return np.log(6.132e6) + 513.92 / t * (-8.68587 * th + 1.17831 * th**1.5 - 4.8762 * th**2.5 + 1.588 * th**5)


def _virial(t, tc, pc, omega, a, b):
    """Tsonopoulos 1974."""
    r = t / tc
    f0 = 0.1445 - 0.330 / r - 0.1385 / r**2 - 0.0121 / r**3 - 0.000607 / r**8
    f1 = 0.0637 + 0.331 / r**2 - 0.423 / r**3 - 0.008 / r**8
    return R * tc / pc * (f0 + omega * f1 + a / r**6 - b / r**8)


def virial_ethanol(t):
    return _virial(t, 514.0, 6.137e6, 0.645, 0.0878, 0.00908 + 0.0006957 * 66.2)


def virial_water(t):
    return _virial(t, 647.1, 22.06e6, 0.344, -0.0109, 0.0)


def ln_k(x, t, p):
    """ln(y_i/x_i); B12 = (1 + CROSS) (B11 + B22)/2, the vapour by repeated substitution (a factor of 50 or more each)."""
    g, g1, _ = excess_gibbs(x, t)
    l1, l2 = ln_ethanol_pressure(t), ln_water_pressure(t)
    b1, b2 = virial_ethanol(t), virial_water(t)
    ln_p = np.log(p)
    k1 = g + (1 - x) * g1 + l1 - ln_p + b1 * (np.exp(l1) - p) / (R * t)
    k2 = g - x * g1 + l2 - ln_p + b2 * (np.exp(l2) - p) / (R * t)
    d = p * CROSS * (b1 + b2) / (R * t)
    alpha = np.exp(k1 - k2)
    y = alpha * x / (1 + (alpha - 1) * x)
    for _ in range(12):
        now = alpha * np.exp(-d * (1 - 2 * y))
        y = now * x / (1 + (now - 1) * x)
    return k1 - d * (1 - y) ** 2, k2 - d * y**2


def _bubble_excess(x, t, p):
    k1, k2 = ln_k(x, t, p)
    return np.log(x * np.exp(k1) + (1 - x) * np.exp(k2))


def _bubble_newton(x, p, t, steps):
    """Newton in T; slope by a central difference, good to 1e-9, so each step gains that many digits."""
    for _ in range(steps):
        slope = (_bubble_excess(x.real, t.real + 0.01, p) - _bubble_excess(x.real, t.real - 0.01, p)) / 0.02
        t = t - _bubble_excess(x, t, p) / slope
    return t


def _start_table():
    grid = np.concatenate(([0.0], np.geomspace(1e-6, 0.02, 150), np.linspace(0.02, 1, 400)[1:]))
    t = _bubble_newton(grid, 101325.0, np.full_like(grid, 362.0), 12)
    return grid, t


_GRID, _GRID_T = _start_table()
_GRID_Y = _GRID * np.exp(ln_k(_GRID, _GRID_T, 101325.0)[0])
_GRID_Y[-1] = 1.0


def _first_guess(x, p):
    return np.interp(x, _GRID, _GRID_T) / (1 - 0.073 * np.log(p / 101325.0))


def bubble(x, p):
    """T and y* over liquids x at pressures p."""
    x, p = np.broadcast_arrays(np.asarray(x, float), np.asarray(p, float))
    t = _bubble_newton(x, p, _first_guess(x, p), 2)
    for _ in range(20):
        new = _bubble_newton(x, p, t, 1)
        done = np.max(np.abs(new - t)) < 1e-9
        t = new
        if done:
            return t, x * np.exp(ln_k(x, t, p)[0])
    raise ArithmeticError("bubble point not found")


STEP = 1e-30


def boiling(x, p):
    """T, y*, h_s, v_L on the boiling line, and dT/dx, dh_s/dx along it at constant pressure."""
    t, y = bubble(x, p)
    xc = x + 1j * STEP
    tc = _bubble_newton(xc, p, t + 0j, 2)
    h = liquid_enthalpy(xc, tc)
    t = tc.real
    v = molar_volume(x, t)
    return t, y, h.real, v, tc.imag / STEP, h.imag / STEP


def dew(y, p):
    """T and x of the first drop of vapours y at pressures p, by Newton in x and T together."""
    y, p = np.broadcast_arrays(np.asarray(y, float), np.asarray(p, float))
    x = np.interp(y, _GRID_Y, _GRID)
    t = _first_guess(x, p)
    for _ in range(40):
        k1, k2 = ln_k(x, t, p)
        f1, f2 = x * np.exp(k1) - y, (1 - x) * np.exp(k2) - (1 - y)
        up, down = ln_k(x, t + 0.01, p), ln_k(x, t - 0.01, p)
        t1, t2 = (up[0] - down[0]) / 0.02, (up[1] - down[1]) / 0.02
        g2 = excess_gibbs(x, t)[2]
        a11, a12 = np.exp(k1) * (1 + x * (1 - x) * g2), x * np.exp(k1) * t1
        a21, a22 = -np.exp(k2) * (1 + x * (1 - x) * g2), (1 - x) * np.exp(k2) * t2
        det = a11 * a22 - a12 * a21
        dx, dt = (f1 * a22 - f2 * a12) / det, (f2 * a11 - f1 * a21) / det
        new = np.clip(x - dx, 0.3 * x, 1 - 0.3 * (1 - x))
        moved = np.max(np.abs(new - x)), np.max(np.abs(dt))
        x, t = new, t - np.clip(dt, -3, 3)
        if moved[0] < 1e-12 and moved[1] < 1e-9:
            return t, x
    raise ArithmeticError("dew point not found")


# ---- heats

_CP1 = series(parameters("perry-liquid-heat-capacity-ethanol"), "C") / 1000
_CP2 = series(parameters("perry-liquid-heat-capacity-water"), "C") / 1000
_V1, _V2 = parameters("perry-vaporisation-ethanol"), parameters("vdi-vaporisation-water")


def _integral(c, t):
    powers = np.concatenate(([0.0], c / np.arange(1, len(c) + 1)))
    return horner(powers, t) - horner(powers, ZERO)


def liquid_enthalpy(x, t):
    return x * _integral(_CP1, t) + (1 - x) * _integral(_CP2, t) + mixing_heat(x, t)[0]


def vaporisation_ethanol(t):
    return _V1["C1"] / 1000 * (1 - t / _V1["criticalTemperature"]) ** _V1["C2"]


def vaporisation_water(t):
    v = _V2
    s = 1 - t / v["criticalTemperature"]
    return R * v["criticalTemperature"] * (v["A"] * s ** (1 / 3) + v["B"] * s ** (2 / 3) + v["C"] * s + v["D"] * s**2 + v["E"] * s**6)


def vapour_enthalpy(y, t):
    return (y * (_integral(_CP1, t) + vaporisation_ethanol(t)) + (1 - y) * (_integral(_CP2, t) + vaporisation_water(t)))


# ---- density and strength: OIML R 22; above 40 degC pure liquids on the saturation line with R 22's contraction at 40 degC

_R22 = parameters("oiml-r22")
_RA, _RB = series(_R22, "A"), series(_R22, "B")
_RC = [series(_R22, f"C{i}_") for i in range(1, 6)]


def density_r22(mass_fraction, t):
    w = t - ZERO - 20
    total = horner(_RA, mass_fraction)
    for i in range(6):
        total = total + _RB[i] * w ** (i + 1)
        if i < 5:
            total = total + mass_fraction * horner(_RC[i], mass_fraction) * w ** (i + 1)
    return total


def _saturated_ethanol(t):
    return 1628.8 * M1 / 0.27469 ** (1 + (1 - t / 514) ** 0.23178)


def _saturated_water(t):
    th = 1 - t / 647.096
    return 322 * (1 + 1.99274064 * th ** (1 / 3) + 1.09965342 * th ** (2 / 3) - 0.510839303 * th ** (5 / 3)
                  - 1.75493479 * th ** (16 / 3) - 45.5170352 * th ** (43 / 3) - 6.7469445e5 * th ** (110 / 3))


def mass_fraction(x):
    return x * M1 / (x * M1 + (1 - x) * M2)


def density(x, t):
    """Of liquids above 40 degC."""
    p, seam = mass_fraction(x), ZERO + 40
    r1, r2 = density_r22(1.0, seam), density_r22(0.0, seam)
    excess = 1 / density_r22(p, seam) - p / r1 - (1 - p) / r2
    volume = p * _saturated_ethanol(seam) / r1 / _saturated_ethanol(t) + (1 - p) * _saturated_water(seam) / r2 / _saturated_water(t)
    return 1 / (volume + excess)


def molar_volume(x, t):
    return (x * M1 + (1 - x) * M2) / density(x, t)


def strength(x):
    p = mass_fraction(x)
    return p * density_r22(p, ZERO + 20) / density_r22(1.0, ZERO + 20)


def mole_fraction(q):
    low, high = 0.0, 1.0
    for _ in range(200):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if strength(middle) < q else (low, middle)
    return 0.5 * (low + high)


def volume_20(ethanol_mol, water_mol):
    x = ethanol_mol / (ethanol_mol + water_mol)
    return (ethanol_mol * M1 + water_mol * M2) / density_r22(mass_fraction(x), ZERO + 20)


def amounts(volume_m3, q):
    x = mole_fraction(q)
    total = volume_m3 * density_r22(mass_fraction(x), ZERO + 20) / (x * M1 + (1 - x) * M2)
    return total * x, total * (1 - x)


if __name__ == "__main__":
    for x, p in ((0.0, 101325.0), (0.0312, 103725.0), (0.2, 101325.0), (0.6, 95000.0), (0.89, 101325.0), (1.0, 101325.0)):
        t, y, h, v, t1, h1 = (float(each) for each in boiling(np.array(x), p))
        td, xd = dew(y, p) if 0 < x < 1 else (t, x)
        print(x, p, f"T {t:.9f} y {y:.10f} h {h:.6f} H {float(vapour_enthalpy(y, t)):.6f} v {v:.10e} T' {t1:.6f} h' {h1:.4f} "
              f"dew {float(td) - t:.1e} {float(xd) - x:.1e} cold h {float(liquid_enthalpy(x, 293.15)):.6f} hE25 {float(mixing_heat(x, 298.15)[0]):.6f}")
    print(amounts(0.12, 0.095), strength(0.8), mole_fraction(0.095))
