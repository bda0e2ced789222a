"""Batch rectification at constant composition and at constant reflux, quasi-steady, by scipy and independently of
lib/run/steady: stages stepped from the top with brentq, head compositions by brentq on the steps upwards, integrals by quad.

The charge of Coulson & Richardson vol. 2, 5th ed. 2002, Example 11.12 (100 kmol at 0.55, product 0.75, four ideal plates and
the still) with two equilibria: a shape-preserving cubic through the measurements of Carey & Lewis 1932, and the project's
own (ethanol_water.py); and a weak charge at constant reflux over plates of 65 %.

Run:  python3 reference/derived/batch-scipy.py > reference/derived/batch-scipy.json
      npx prettier --write reference/derived/batch-scipy.json
Needs Python 3 with numpy and scipy. The versions used stand in the output.
"""
import json
import os
import platform

import numpy as np
import scipy
from scipy.integrate import quad
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq

import ethanol_water as ew

EXAMPLE = dict(amount_mol=100.0, chargeMoleFraction=0.55, distillateMoleFraction=0.75, plates=4, mostReflux=4.0)
WEAK = dict(amount_mol=100.0, chargeMoleFraction=0.0312, endMoleFraction=0.003, plates=8, efficiency=0.65, reflux=3.0)
REFLUXES = (0.85, 1.0, 1.5, 2.0, 3.0, 4.0)
MEASURED = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "measurements", "carey-lewis-1932-101kPa.csv")


def carey_lewis():
    rows = [line.split(",") for line in open(MEASURED) if not line.startswith("#")][1:]
    return PchipInterpolator([float(r[2]) for r in rows], [float(r[3]) for r in rows])


def own(x):
    return float(ew.bubble(x, 101325.0)[1])


def kettle(vapour, reflux):
    """x_S under four ideal plates that send x_D at a reflux."""
    y = x_d = EXAMPLE["distillateMoleFraction"]
    for stage in range(EXAMPLE["plates"] + 1):
        x = brentq(lambda x: float(vapour(x)) - y, 1e-12, 1 - 1e-12, xtol=1e-15, rtol=1e-14)
        y = (reflux * x + x_d) / (reflux + 1)
    return x


def constant_composition(vapour):
    e = EXAMPLE
    start = brentq(lambda r: kettle(vapour, r) - e["chargeMoleFraction"], 0.5, 2.0, xtol=1e-13)

    def product(r):
        x = kettle(vapour, r)
        return e["amount_mol"] * (e["chargeMoleFraction"] - x) / (e["distillateMoleFraction"] - x)

    area = quad(product, start, e["mostReflux"], epsabs=1e-8, epsrel=1e-10, limit=400)[0]
    return dict(still=[kettle(vapour, r) for r in REFLUXES], leastReflux=start, distillate_mol=product(e["mostReflux"]),
                returned_mol=e["mostReflux"] * product(e["mostReflux"]) - area)


def head(x):
    r, e = WEAK["reflux"] / (WEAK["reflux"] + 1), WEAK["efficiency"]
    bottom = own(x)

    def miss(x_d):
        y = bottom
        for _ in range(WEAK["plates"]):
            liquid = min(1.0, max(0.0, (y - (1 - r) * x_d) / r))
            y = y + e * (own(liquid) - y)
        return y - x_d

    return brentq(miss, bottom, 0.89, xtol=1e-14, rtol=1e-14)


def constant_reflux():
    w = WEAK
    log = quad(lambda u: np.exp(u) / (head(np.exp(u)) - np.exp(u)), np.log(w["endMoleFraction"]), np.log(w["chargeMoleFraction"]),
               epsabs=1e-10, epsrel=1e-10, limit=400)[0]
    left = w["amount_mol"] * np.exp(-log)
    over = w["amount_mol"] - left
    return dict(kettle_mol=left, distillate_mol=over, firstMoleFraction=head(w["chargeMoleFraction"]), lastMoleFraction=head(w["endMoleFraction"]),
                distillateMoleFraction=(w["amount_mol"] * w["chargeMoleFraction"] - left * w["endMoleFraction"]) / over)


def rounded(values):
    return {k: [float(f"{one:.10g}") for one in v] if isinstance(v, list) else float(f"{v:.10g}") for k, v in values.items()}


print(json.dumps(dict(
    maker="reference/derived/batch-scipy.py",
    versions=dict(python=platform.python_version(), numpy=np.__version__, scipy=scipy.__version__),
    example=dict(problem=EXAMPLE, refluxes=REFLUXES, careyLewis=rounded(constant_composition(carey_lewis())), own=rounded(constant_composition(own))),
    constantReflux=dict(problem=WEAK, own=rounded(constant_reflux()))), indent=1))
