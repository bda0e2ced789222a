"""A plated column solved by scipy, independently of lib/: equilibrium by Newton at every call (no compiled
curve), time as the independent variable, vapours eliminated, Radau at tight tolerance.

Run:  python3 reference/derived/column-scipy.py > reference/derived/column-scipy.json
Needs Python 3 with numpy and scipy (Debian: python3-scipy). The versions used stand in the output.

Equilibrium: NRTL with the parameters of reference/parameters/nrtl-ethanol-water.json, ideal vapour, water by the
IAPWS saturation equation (Wagner & Pruss 1993), ethanol by the Wagner-type equation of Poling et al. (2001).
Heats of vaporisation: ethanol DIPPR 106 (Perry, 8th ed., Table 2-150), water VDI Heat Atlas.
"""
import json
import os
import platform

import numpy as np
import scipy
from scipy.integrate import solve_ivp

R_GAS = 8.314462618
_FILE = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "parameters", "nrtl-ethanol-water.json")
_NRTL = {c["name"]: float(c["value"]) for c in json.load(open(_FILE))["coefficients"]}
A12, B12, C12 = _NRTL["a12"], _NRTL["b12"], _NRTL["c12"]
A21, B21, C21 = _NRTL["a21"], _NRTL["b21"], _NRTL["c21"]
ALPHA = _NRTL["alpha"]


def ln_gamma(x, t):
    tau12, tau21 = A12 + B12 / t + C12 * np.log(t), A21 + B21 / t + C21 * np.log(t)
    g12, g21 = np.exp(-ALPHA * tau12), np.exp(-ALPHA * tau21)
    w = 1 - x
    p, q = x + w * g21, w + x * g12
    return (w * w * (tau21 * (g21 / p) ** 2 + tau12 * g12 / q**2), x * x * (tau12 * (g12 / q) ** 2 + tau21 * g21 / p**2))


def water_pressure(t):
    th = 1 - t / 647.096
    a = (-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502)
    e = (1, 1.5, 3, 3.5, 4, 7.5)
    return 22.064e6 * np.exp(647.096 / t * sum(ai * th**ei for ai, ei in zip(a, e)))


def ethanol_pressure(t):
    tr = t / 513.92
    th = 1 - tr
    return 6.132e6 * np.exp((-8.68587 * th + 1.17831 * th**1.5 - 4.8762 * th**2.5 + 1.588 * th**5) / tr)


def bubble(x, pressure):
    """Vapour mole fraction and temperature over liquids x at their pressures (arrays)."""
    t = np.full_like(x, 360.0)
    for _ in range(60):
        def excess(temperature):
            g1, g2 = ln_gamma(x, temperature)
            return np.log((x * np.exp(g1) * ethanol_pressure(temperature) + (1 - x) * np.exp(g2) * water_pressure(temperature)) / pressure)
        f = excess(t)
        slope = (excess(t + 1e-4) - excess(t - 1e-4)) / 2e-4
        step = f / slope
        t = t - step
        if np.max(np.abs(step)) < 1e-11:
            break
    g1, _ = ln_gamma(x, t)
    return x * np.exp(g1) * ethanol_pressure(t) / pressure, t


def latent(y, t):
    ethanol = 55.789e3 * (1 - t / 514) ** 0.31245
    tau = 1 - t / 647.1
    water = R_GAS * 647.1 * (6.85307 * tau ** (1 / 3) + 7.43804 * tau ** (2 / 3) - 2.937595 * tau - 3.282093 * tau**2 + 8.397378 * tau**6)
    return y * ethanol + (1 - y) * water


PROBLEM = dict(amount_mol=6400.0, moleFraction=0.031, plates=8, efficiency=0.65, plateHoldUp_mol=4.0,
               condenserHoldUp_mol=2.0, headPressure_Pa=101325.0, plateDrop_Pa=300.0, power_W=5500.0,
               holdAtTotalReflux_s=900.0, reflux=3.0, draw_s=9000.0, interval_s=300.0)


def right_hand_side(reflux_share):
    p = PROBLEM
    n, m, mc = p["plates"], p["plateHoldUp_mol"], p["condenserHoldUp_mol"]
    pressures = p["headPressure_Pa"] + p["plateDrop_Pa"] * np.arange(n, -1, -1.0)

    def f(_t, u):
        kettle, ethanol, x, xc = u[0], u[1], u[2:2 + n], u[2 + n]
        liquids = np.append(ethanol / kettle, x)
        equilibrium, temperature = bubble(liquids, pressures)
        vapour = p["power_W"] / latent(equilibrium[0], temperature[0])
        y = np.empty(n + 1)
        y[0] = equilibrium[0]
        for j in range(1, n + 1):
            y[j] = y[j - 1] + p["efficiency"] * (equilibrium[j] - y[j - 1])
        back, drawn = reflux_share * vapour, (1 - reflux_share) * vapour
        down = np.append(x[1:], xc)
        return np.concatenate((
            [-drawn, back * (x[0]) - vapour * y[0]],
            (back * (down - x) + vapour * (y[:-1] - y[1:])) / m,
            [vapour * (y[-1] - xc) / mc, drawn * xc, drawn],
        ))

    return f


def main():
    p = PROBLEM
    n = p["plates"]
    kettle = p["amount_mol"] - n * p["plateHoldUp_mol"] - p["condenserHoldUp_mol"]
    x0 = p["moleFraction"]
    u = np.concatenate(([kettle, kettle * x0], np.full(n + 1, x0), [0.0, 0.0]))
    rows = []
    start = 0.0
    for share, length in ((1.0, p["holdAtTotalReflux_s"]), (p["reflux"] / (1 + p["reflux"]), p["draw_s"])):
        times = np.arange(p["interval_s"], length + 1e-6, p["interval_s"])
        done = solve_ivp(right_hand_side(share), (0.0, length), u, method="Radau", t_eval=times, rtol=1e-10, atol=1e-12)
        assert done.success, done.message
        for k, t in enumerate(times):
            s = done.y[:, k]
            rows.append([start + t, s[1] / s[0], s[2 + n], s[2], s[1 + n], s[3 + n], s[4 + n] - s[3 + n]])
        u = done.y[:, -1]
        start += length
    print(json.dumps(dict(
        maker="reference/derived/column-scipy.py",
        versions=dict(python=platform.python_version(), numpy=np.__version__, scipy=scipy.__version__),
        problem=PROBLEM,
        columns=["time_s", "kettleMoleFraction", "spoutMoleFraction", "lowestPlateLiquid", "highestPlateLiquid",
                 "collectedEthanol_mol", "collectedWater_mol"],
        rows=[[float(f"{v:.11g}") for v in row] for row in rows],
    ), indent=1))


main()
