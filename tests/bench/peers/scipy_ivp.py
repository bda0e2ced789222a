"""The yardstick problem (see ../yardstick.mjs) by scipy's solve_ivp and its banded LSODA.

Same equations per mole of vapour raised and same table as cvode.c, vectorised over the plates, analytic banded
Jacobian where the method takes one.

    scipy_ivp.py TABLE REPEATS TOLERANCE...

Prints a line for each method and tolerance: method, tolerance, median ms, steps, right-hand sides, 180 mole fractions.
"""
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp
from scipy.sparse import diags

RETURNED, DRAWN, HELD, CONDENSER, KETTLE, FEED, PLATES = 0.75, 0.25, 2.0, 1.0, 5200.0, 0.0405, 20
INTERVAL, OUTPUTS, SIZE = 60 * 0.13, 180, PLATES + 2

data = np.fromfile(sys.argv[1], dtype="<f8")
intervals = int(data[0])
table = data[1:].reshape(intervals, 4)
masses = np.array([1.0] + [HELD] * PLATES + [CONDENSER])
weights = np.array([5241 * 0.05] + [1.0] * (PLATES + 1))


def volatility(x):
    position = x * intervals
    k = np.clip(position.astype(int), 0, intervals - 1)
    s = position - k
    c = table[k]
    return c[:, 0] + s * (c[:, 1] + s * (c[:, 2] + s * c[:, 3])), (c[:, 1] + s * (2 * c[:, 2] + 3 * s * c[:, 3])) * intervals


def liquids(b, u):
    x = u[:-1].copy()
    x[0] /= KETTLE - DRAWN * b
    return x


def side(b, u):
    x = liquids(b, u)
    a, _ = volatility(x)
    y = a * x / (1 + (a - 1) * x)
    out = np.empty(SIZE)
    out[0] = RETURNED * u[1] - y[0]
    out[1:-1] = RETURNED * (u[2:] - u[1:-1]) + y[:-1] - y[1:]
    out[-1] = y[-1] - u[-1]
    return out / masses


def slopes(b, u):
    x = liquids(b, u)
    a, da = volatility(x)
    slope = (a + da * x * (1 - x)) / (1 + (a - 1) * x) ** 2
    slope[0] /= KETTLE - DRAWN * b
    return slope


def diagonals(b, u):
    slope = slopes(b, u)
    lower = slope / masses[1:]
    middle = -np.append(slope, 1.0) / masses
    middle[1:-1] -= RETURNED / masses[1:-1]
    upper = np.full(SIZE - 1, RETURNED) / masses[:-1]
    return lower, middle, upper


def sparse_jacobian(b, u):
    return diags(diagonals(b, u), (-1, 0, 1), format="csc")


METHODS = {
    "BDF": dict(method="BDF", jac=sparse_jacobian),
    "Radau": dict(method="Radau", jac=sparse_jacobian),
    # Its own banded differences: scipy's wrapper refuses a packed analytic Jacobian here.
    "LSODA": dict(method="LSODA", lband=1, uband=1),
}


def main():
    start = np.full(SIZE, FEED)
    start[0] = FEED * KETTLE
    outputs = INTERVAL * np.arange(1, OUTPUTS + 1)
    repeats = int(sys.argv[2])
    for name, options in METHODS.items():
        for text in sys.argv[3:]:
            tolerance = float(text)
            times = []
            for _ in range(repeats):
                begin = time.perf_counter()
                done = solve_ivp(side, (0, outputs[-1]), start, t_eval=outputs, rtol=3e-14,
                                 atol=tolerance * weights, **options)
                times.append(1e3 * (time.perf_counter() - begin))
            if not done.success:
                continue
            spout = " ".join(f"{v:.15g}" for v in done.y[-1])
            print(name, text, f"{sorted(times)[repeats // 2]:.4f}", -1, done.nfev, spout, flush=True)


main()
