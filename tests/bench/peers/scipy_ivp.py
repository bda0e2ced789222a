"""The yardstick problem by scipy: solve_ivp's stiff methods, and odeint, the older door to LSODA.

Right-hand side and Jacobian are the compiled ones of column.h, called through ctypes; what remains is scipy's own time. BDF and
Radau take the dense Jacobian (22 unknowns: faster than its sparse one), LSODA differences its band (solve_ivp) or takes the packed
analytic band (odeint). LSODA is run once more with the equations in numpy, as one writes them first.

    scipy_ivp.py LIBRARY TABLE REPEATS TOLERANCE...

Prints a line for each method and tolerance: method, tolerance, least and median ms of CPU time, steps, right-hand sides, 180 mole fractions.
"""
import ctypes
import sys
import time

import numpy as np
from scipy.integrate import odeint, solve_ivp

FEED, KETTLE, CHARGE, SIZE = 0.0405, 5200.0, 5241.0, 22
INTERVAL, OUTPUTS = 60 * 0.13, 180

library = ctypes.CDLL(sys.argv[1])
for name in ("column_side", "column_dense", "column_banded"):
    getattr(library, name).argtypes = [ctypes.c_double, ctypes.c_void_p, ctypes.c_void_p]
    getattr(library, name).restype = None
if library.read_table(sys.argv[2].encode()) != 0:
    sys.exit("cannot read the table")
column_side, column_dense, column_banded = library.column_side, library.column_dense, library.column_banded
empty, zeros = np.empty, np.zeros


def address(array):
    return array.__array_interface__["data"][0]


def side(b, u):
    out = empty(SIZE)
    column_side(b, address(u), address(out))
    return out


def dense(b, u):
    out = zeros((SIZE, SIZE))
    column_dense(b, address(u), address(out))
    return out


def banded(b, u):
    out = zeros((3, SIZE))
    column_banded(b, address(u), address(out))
    return out


data = np.fromfile(sys.argv[2], dtype="<f8")
intervals = int(data[0])
table = data[1:].reshape(intervals, 4)
masses = np.array([1.0] + [2.0] * (SIZE - 2) + [1.0])


def numpy_side(b, u):
    x = u[:-1].copy()
    x[0] /= KETTLE - 0.25 * b
    position = x * intervals
    k = np.clip(position.astype(int), 0, intervals - 1)
    s = position - k
    c = table[k]
    a = c[:, 0] + s * (c[:, 1] + s * (c[:, 2] + s * c[:, 3]))
    y = a * x / (1 + (a - 1) * x)
    out = empty(SIZE)
    out[0] = 0.75 * u[1] - y[0]
    out[1:-1] = 0.75 * (u[2:] - u[1:-1]) + y[:-1] - y[1:]
    out[-1] = y[-1] - u[-1]
    return out / masses


start = np.full(SIZE, FEED)
start[0] = FEED * KETTLE
outputs = INTERVAL * np.arange(1, OUTPUTS + 1)
weights = np.ones(SIZE)
weights[0] = 0.05 * CHARGE


def by_solve_ivp(side=side, **options):
    def run(tolerance):
        done = solve_ivp(side, (0, outputs[-1]), start, t_eval=outputs, rtol=3e-14, atol=tolerance * weights, **options)
        return (done.nfev, done.y[-1]) if done.success else None

    return run


def by_odeint(tolerance):
    moments = np.concatenate(([0.0], outputs))
    state, report = odeint(side, start, moments, Dfun=banded, col_deriv=False, ml=1, mu=1, tfirst=True, full_output=True,
                           rtol=0, atol=tolerance * weights, mxstep=100000)
    return (int(report["nfe"][-1]), state[1:, -1]) if report["message"] == "Integration successful." else None


METHODS = {
    "BDF": by_solve_ivp(method="BDF", jac=dense),
    "Radau": by_solve_ivp(method="Radau", jac=dense),
    "LSODA": by_solve_ivp(method="LSODA", lband=1, uband=1),
    "odeint": by_odeint,
    "LSODA,numpy": by_solve_ivp(numpy_side, method="LSODA", lband=1, uband=1),
}

for name, run in METHODS.items():
    for text in sys.argv[4:]:
        times, done = [], None
        for _ in range(int(sys.argv[3])):
            begin = time.process_time()
            done = run(float(text))
            times.append(1e3 * (time.process_time() - begin))
        if done is None:
            continue
        spout = " ".join(f"{value:.15g}" for value in done[1])
        times.sort()
        print(name, text, f"{times[0]:.4f} {times[len(times) // 2]:.4f}", -1, done[0], spout, flush=True)
