"""Whole runs of a still by scipy, written from docs/theory/train.md alone: cold start, rounded corners, lags, doublers, condensers and all.
The constants are read from the table of that page, so a run that agrees says that page and code are the same still.

Each case is a problem of the library as plain data; tests/lib/run/engines/energy/page.test.ts gives it to the library and compares row by row.
Radau at two tolerances; the difference is the stated error. Boiling line and dew line are splines through points found by Newton's method
(ethanol_water.py): their error is in the output as well.

Run:  python3 reference/derived/page-scipy.py > reference/derived/page-scipy.json
      npx prettier --write reference/derived/page-scipy.json
Needs Python 3 with numpy and scipy (Debian: python3-scipy). The versions used stand in the output. It takes some three minutes.
"""
import json
import platform
import re
import sys
from pathlib import Path

import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.interpolate import CubicSpline
from scipy.optimize import brentq

import ethanol_water as ew
from page_cases import CASES

PAGE = Path(__file__).resolve().parents[2] / "docs" / "theory" / "train.md"
ZERO = 273.15
TOLERANCES = (1e-6, 1e-8)


def constants():
    """The page's table 'Constants': its first column names them, its second has the number."""
    text = PAGE.read_text(encoding="utf-8").split("## Constants", 1)[1].split("\n## ", 1)[0]
    rows = re.findall(r"^\| `(\w+)` +\| ([-+0-9.e]+)", text, re.M)
    return {name: float(value) for name, value in rows}


PAGE_SAYS = constants()
assert (ew.R, ew.M1, ew.M2) == tuple(PAGE_SAYS[name] for name in ("gasConstant", "molarMassEthanol", "molarMassWater"))


def rounded(s, w):
    z = np.clip(s / w, -1.0, 1.0)
    inside = w * (5 / 32 + z / 2 + 15 / 32 * z**2 - 5 / 32 * z**4 + z**6 / 32)
    return np.where(s >= w, s, np.where(s <= -w, 0.0, inside))


class Lines:
    """Boiling line by x and dew line by y at one pressure."""

    def __init__(self, p):
        grid = np.concatenate((np.linspace(0, 0.05, 1001), np.linspace(0.05, 1, 1901)[1:]))
        t, y, h, v, _, _ = ew.boiling(grid, p)
        depth = t - PAGE_SAYS["cold_K"]
        whole = h - ew.liquid_enthalpy(grid, t - depth)
        half = h - ew.liquid_enthalpy(grid, t - depth / 2)
        inner = grid[1:-1]
        dew = np.concatenate(([t[0]], ew.dew(inner, p)[0], [t[-1]]))
        columns = dict(star=y, t=t, h=h, v=v, c1=(4 * half - whole) / depth, c2=(2 * whole - 4 * half) / depth**2,
                       dew=dew, H=ew.vapour_enthalpy(grid, dew))
        self.splines = {k: CubicSpline(grid, c) for k, c in columns.items()}

    def __call__(self, name, x):
        return self.splines[name](np.clip(x, 0.0, 1.0))


class Holder:
    def __init__(self, kind, held, brim_m3=None, brim_mol=0.0, efficiency=1.0, metal=0.0, loss=0.0, drop=0.0, over=False, reference=None):
        self.kind, self.held, self.brim_m3, self.brim_mol, self.efficiency = kind, held, brim_m3, brim_mol, efficiency
        self.metal, self.loss, self.drop, self.over, self.reference = metal, loss, drop, over, reference


def amounts(charge):
    if charge["kind"] == "volume":
        return ew.amounts(charge["volume_m3"], charge["strength"])
    return charge["amount_mol"] * charge["moleFraction"], charge["amount_mol"] * (1 - charge["moleFraction"])


def holders_of(problem):
    still, c = problem["still"], PAGE_SAYS
    kettle, column, head, condenser = still["kettle"], still["column"], still["head"], still["refluxCondenser"]
    out = [Holder("kettle", sum(amounts(problem["charge"])), metal=kettle["metal_J_K"], loss=kettle["heatLoss_W_K"])]
    for doubler, own in zip(still["doublers"], problem["doublerCharges"]):
        n1, n2 = amounts(own["charge"])
        lifted = c["gravity"] * doubler["dipDepth_m"] * ew.density_r22(ew.mass_fraction(n1 / (n1 + n2)), ZERO + 20)
        out.append(Holder("doubler", n1 + n2, doubler["volume_m3"], metal=doubler["metal_J_K"], loss=doubler["heatLoss_W_K"], drop=lifted,
                          over=doubler["overflow"] == "over"))
    if column["kind"] == "plates":
        hold = column["holdUp"]
        volume, amount = hold.get("volume_m3", 0.0), hold.get("amount_mol", 0.0)
        held = amount + c["heldPerVolume"] * volume
        out += [Holder("plate", held, volume, amount, column["efficiency"], column["metal_J_K"], column["heatLoss_W_K"], column["drop_Pa"])
                for _ in range(column["count"])]
    if column["kind"] == "packing":
        stages = column["height_m"] / column["hetp_m"]
        n = max(1, int(np.ceil(stages - 1e-9)))
        volume = column["liquidShare"] * column["height_m"] * np.pi / 4 * column["diameter_m"] ** 2 / n
        out += [Holder("packing", c["heldPerVolume"] * volume, volume, 0.0, min(1.0, stages / n), column["metal_J_K"] / n,
                       column["heatLoss_W_K"] / n, column["drop_Pa_m"] * column["height_m"] / n) for _ in range(n)]
    if head["heatLoss_W_K"] or head["metal_J_K"]:
        out.append(Holder("head", c["heldPerVolume"] * head["film_m3"], head["film_m3"], metal=head["metal_J_K"], loss=head["heatLoss_W_K"]))
    if condenser["kind"] == "partial":
        coolant = condenser["coolant"]
        out.append(Holder("partialCondenser", c["heldPerVolume"] * condenser["holdUp"]["volume_m3"], condenser["holdUp"]["volume_m3"],
                          reference=coolant.get("inlet_K")))
    return out


class Train:
    """State, one row each: ethanol, water, energy of each holder; ethanol and water of the drum; integral; ethanol, water collected."""

    def __init__(self, problem):
        c, still = PAGE_SAYS, problem["still"]
        self.problem, self.still = problem, still
        self.holders = holders_of(problem)
        self.n = n = len(self.holders)
        air = self.air = still["air"]
        drops = np.array([one.drop for one in self.holders])
        pressure = air["pressure_Pa"] + drops.sum() - np.cumsum(drops)
        made = {}
        self.lines = [made.setdefault(p, None) or made.update({p: Lines(p)}) or made[p] for p in [*pressure, air["pressure_Pa"]]]
        self.pressure = pressure
        power = max(one["heat"]["power_W"] for one in [problem, *problem["sheet"]] if "heat" in one)
        self.v0 = power / c["unitHeat"]
        column = lambda name: np.array([getattr(one, name) for one in self.holders], float)[:, None]
        self.held, self.metal, self.loss, self.brim_mol = column("held"), column("metal"), column("loss"), column("brim_mol")
        self.brim_m3 = np.array([one.brim_m3 or 0.0 for one in self.holders])[:, None]
        self.runs_over = np.array([one.kind != "kettle" for one in self.holders])[:, None]
        self.little = c["nearlyDry"] * self.held / np.where(self.runs_over, 1.0, c["kettleCounts"])
        self.tau_b, self.tau_w = self.lags(self.held, "boil"), self.lags(self.held, "weir")
        condenser, product = still["refluxCondenser"], still["productCondenser"]
        total = condenser["kind"] == "total"
        self.drum_m3 = product["holdUp"]["volume_m3"] + (condenser["holdUp"]["volume_m3"] if total else 0.0)
        self.drum_tau = float(self.lags(c["heldPerVolumeOfDrum"] * self.drum_m3, "weir"))
        self.subcooling, self.water_K = (condenser["subcooling_K"] if total else 0.0), product["inlet_K"]
        self.partial = condenser["kind"] == "partial"

    def lags(self, held, kind):
        c = PAGE_SAYS
        if "lags" in self.problem:
            return np.full_like(np.asarray(held, float), self.problem["lags"][kind + "_s"])
        return np.minimum(c[kind + "LagMost"], c[kind + "LagShare"] * held / self.v0)

    def at(self, name, x, upto=None):
        return np.array([self.lines[j](name, x[j]) for j in range(self.n)])

    # ---- one state

    def flows(self, u, control):
        c, n = PAGE_SAYS, self.n
        n1, n2, energy = u[0:3 * n:3], u[1:3 * n:3], u[2:3 * n:3]
        amount = np.maximum(1e-12, n1 + n2)
        x = n1 / amount
        ts, hs, v = self.at("t", x), self.at("h", x), self.at("v", x)
        e = energy - amount * hs - self.metal * (ts - ZERO)
        w = c["rounding"] * self.v0 * c["unitHeat"] * self.tau_b
        rise = rounded(e, w) / (c["unitHeat"] * self.tau_b) * amount / (amount + self.little)
        spare = rounded(e, w) / self.tau_b * (self.little / (amount + self.little)) ** 2
        lacks = rounded(-e - 2 * w, w)
        c1, c2 = self.at("c1", x), self.at("c2", x)
        linear = amount * c1 + self.metal
        below = 2 * lacks / (linear + np.sqrt(np.maximum(0.0, linear**2 + 4 * amount * c2 * lacks)))
        h, t = hs - below * (c1 + c2 * below), ts - below
        crest = amount - self.brim_mol - self.brim_m3 / v
        down = np.where(self.runs_over, rounded(crest, c["rounding"] * self.v0 * self.tau_w) / self.tau_w, 0.0)
        star = self.at("star", x)
        y = np.empty_like(x)
        y[0] = star[0]
        for j in range(1, n):
            own = self.holders[j].efficiency
            met = min(c["byItself"], 1 / max(1e-300, 1 - own)) * rise[j - 1] + c["noVapour"] * self.v0
            now = np.where(rise[j] <= met, own, 1 - (1 - own) * met / np.maximum(rise[j], 1e-300))
            y[j] = y[j - 1] + now * (star[j] - y[j - 1])
        carried = self.at("H", y)
        d1, d2 = u[3 * n], u[3 * n + 1]
        drum = np.maximum(1e-12, d1 + d2)
        z, line = d1 / drum, self.lines[-1]
        colder = np.minimum(self.subcooling, np.maximum(0.0, line("t", z) - self.water_K))
        drum_h = line("h", z) - colder * (line("c1", z) + line("c2", z) * colder)
        run_off = rounded(drum - self.drum_m3 / line("v", z), c["rounding"] * self.v0 * self.drum_tau) / self.drum_tau
        hold = control.get("hold")
        share, integral_rate = control["returned"] + 0 * z, 0 * z
        if hold:
            asked = 0.5 * (hold["least"] + hold["most"]) + c["gain"] * (hold["target"] - z) + u[3 * n + 2]
            share = np.clip(asked, hold["least"], hold["most"])
            integral_rate = (c["gain"] * (hold["target"] - z) + share - asked) / c["integralTime"]
        loss = self.loss * (t - self.air["temperature_K"])
        if self.partial:
            s = np.clip((below[-1] - c["fadesFrom"]) / (c["fadesTo"] - c["fadesFrom"]), 0.0, 1.0)
            duty = (share if hold else 1.0) * control["duty_W"] * (1 - s * s * (3 - 2 * s))
            loss[-1] = loss[-1] + duty + control["water_W_K"] * (t[-1] - (self.holders[-1].reference or ZERO))
        back = 0.0 * share if self.partial else share
        return dict(amount=amount, x=x, t=t, h=h, rise=rise, y=y, carried=carried, spare=spare, down=down, z=z, drum=drum, drum_h=drum_h, run_off=run_off,
                    back=back * run_off, drawn=(1 - back) * run_off, loss=loss, integral_rate=integral_rate, share=share)

    def right_hand_side(self, control):
        n = self.n

        def f(_t, u):
            one = u.ndim == 1
            u = u.reshape(3 * n + 5, -1)
            s, out = self.flows(u, control), np.zeros_like(u)
            out[2] += control["power_W"]
            for j, holder in enumerate(self.holders):
                into = 3 * (j + 1)  # the next holder, or the drum
                up, y, L, x = s["rise"][j], s["y"][j], s["down"][j], s["x"][j]
                for k, (gas, liquid) in enumerate(((up * y, L * x), (up * (1 - y), L * (1 - x)), (up * s["carried"][j] + s["spare"][j], L * s["h"][j]))):
                    out[3 * j + k] -= gas + liquid
                    if j < n - 1 or k < 2:
                        out[into + k] += gas
                    if holder.over:
                        if j < n - 1 or k < 2:
                            out[into + k] += liquid
                    elif j > 0:
                        out[3 * (j - 1) + k] += liquid
                out[3 * j + 2] -= s["loss"][j]
            d, z = 3 * n, s["z"]
            top = 3 * (n - 1)
            for k, part in enumerate((z, 1 - z)):
                out[d + k] -= s["run_off"] * part
                out[top + k] += s["back"] * part
                out[d + 3 + k] += s["drawn"] * part
            out[top + 2] += s["back"] * s["drum_h"]
            out[d + 2] = s["integral_rate"]
            return out[:, 0] if one else out

        return f

    # ---- start

    def energy_at(self, j, n1, n2, temperature_K):
        c, N = PAGE_SAYS, n1 + n2
        x, line, metal = n1 / N, self.lines[j], float(self.metal[j, 0])
        ts = float(line("t", x))
        boiling = N * float(line("h", x)) + metal * (ts - ZERO)
        usual = self.v0 * c["unitHeat"] * float(self.tau_b[j, 0])
        if temperature_K is None or temperature_K >= ts:
            return boiling + usual
        d, w = ts - temperature_K, c["rounding"] * usual
        q = N * d * float(line("c1", x) + line("c2", x) * d) + metal * d
        e = -q - 2 * w if q >= w else -2 * w - brentq(lambda s: float(rounded(np.array(s), w)) - q, -w, w)
        return boiling + e

    def start(self):
        c, n, problem = PAGE_SAYS, self.n, self.problem
        hot = problem.get("start") == "firstVapour"
        doubled = any(one.kind == "doubler" for one in self.holders)
        air_K = self.air["temperature_K"]
        left = np.array(amounts(problem["charge"]))
        x0 = left[0] / left.sum()
        u = np.zeros(3 * n + 5)
        full = hot and not doubled

        def take(amount, x):
            taken = amount * np.array([x, 1 - x])
            left[:] -= taken
            return taken

        for j, holder in enumerate(self.holders):
            if holder.kind == "kettle":
                continue
            if holder.kind == "doubler":
                own = problem["doublerCharges"][[one for one in self.holders if one.kind == "doubler"].index(holder)]
                n1, n2 = amounts(own["charge"])
                t = own.get("temperature_K", air_K)
            else:
                brim = holder.brim_mol + (holder.brim_m3 or 0.0) / float(self.lines[j]("v", x0))
                n1, n2 = take(brim * (1 if full else c["moist"]), x0)
                t = None if full else air_K
            u[3 * j:3 * j + 3] = n1, n2, self.energy_at(j, n1, n2, t)
        z = float(self.lines[0]("star", x0)) if full else x0
        u[3 * n:3 * n + 2] = take(self.drum_m3 / float(self.lines[-1]("v", z)) * (1 if full else c["moist"]), z)
        u[0:3] = *left, self.energy_at(0, *left, None if hot else problem.get("chargeTemperature_K", air_K))
        return u

    # ---- a run

    def control(self, step):
        c, condenser = PAGE_SAYS, self.still["refluxCondenser"]
        power = step.get("heat", self.problem["heat"])["power_W"]
        out = dict(power_W=power, returned=0.0, duty_W=0.0, water_W_K=0.0)
        reflux = step["reflux"]
        kind = reflux["kind"] if isinstance(reflux, dict) else None
        if kind == "hold":
            out["hold"] = dict(target=ew.mole_fraction(reflux["strength"]), least=reflux["leastShare"], most=reflux["mostShare"])
        if condenser["kind"] == "total":
            out["returned"] = 1.0 if reflux == "total" else reflux / (1 + reflux) if isinstance(reflux, (int, float)) else 0.0
        elif condenser["kind"] == "partial" and reflux != "none":
            coolant = condenser["coolant"]
            if reflux == "total":
                out["duty_W"] = c["totalDuty"] * power
            elif kind == "duty":
                out["duty_W"] = reflux["power_W"]
            elif coolant["kind"] == "duty":
                out["duty_W"] = coolant["power_W"]
            else:
                flow = (reflux["flow_kg_s"] if kind == "water" else coolant["flow_kg_s"]) * c["waterHeat"]
                out["water_W_K"] = flow * (1 - np.exp(-coolant["transfer_W_K"] / flow))
        return out

    def row(self, time, u, control):
        s = {k: np.asarray(v)[..., 0] for k, v in self.flows(u[:, None], control).items()}
        row = dict(time_s=time)
        for j, holder in enumerate(self.holders):
            for name, key in (("holderAmount_mol", "amount"), ("holderLiquid", "x"), ("holderTemperature_K", "t"),
                              ("holderVapourRate_mol_s", "rise"), ("holderLiquidRate_mol_s", "down")):
                row[f"{name}.{j}"] = s[key][j]
        row.update(spoutMoleFraction=s["z"], drumAmount_mol=s["drum"], collectedEthanol_mol=u[-2], collectedWater_mol=u[-1])
        return row

    def run(self, rtol):
        c, n, every = PAGE_SAYS, self.n, self.problem["outputs"]["interval_s"]
        u, begin, before = self.start(), 0.0, {}
        atol = np.concatenate([np.ravel([h * rtol, h * rtol, 4e4 * h * rtol]) for h in self.held[:, 0]] + [np.full(2, 0.1 * rtol), [rtol], np.full(2, rtol)])
        rows, first = [self.row(0.0, u, self.control(self.problem["sheet"][0]))], None
        reaches = n - 2 if self.partial else n - 1
        for step in self.problem["sheet"]:
            control = self.control(step)
            if not ("hold" in control and "hold" in before):
                u[3 * n + 2] = 0.0
            before = control
            length = step["until"][0]["seconds"]

            def vapour(_t, state):
                return float(self.flows(state[:, None], control)["rise"][reaches, 0]) - c["firstVapour"] * self.v0

            vapour.direction = 1
            at = np.arange(every, length + 1e-6, every)
            done = solve_ivp(self.right_hand_side(control), (0.0, length), u, method="Radau", t_eval=at, rtol=rtol, atol=atol, vectorized=True,
                             first_step=1e-3, events=[] if first is not None else [vapour])
            assert done.success, done.message
            if first is None and len(done.t_events[0]):
                first = begin + float(done.t_events[0][0])
            rows += [self.row(begin + t, done.y[:, i], control) for i, t in enumerate(at)]
            u = done.y[:, -1].copy()
            begin += length
            print(f"  {rtol} {length} s: {done.nfev} calls", file=sys.stderr)
        return rows, first


def digits(v):
    return float(f"{float(v):.10g}") if abs(v) > 1e-14 else 0.0


def solved(problem):
    train = Train(problem)
    (coarse, first_coarse), (fine, first) = (train.run(rtol) for rtol in TOLERANCES)
    names = list(fine[0])
    error = {name.split(".")[0]: 0.0 for name in names}
    for a, b in zip(coarse, fine):
        for name in names:
            error[name.split(".")[0]] = max(error[name.split(".")[0]], abs(float(a[name]) - float(b[name])))
    return dict(problem=problem, firstVapour_s=digits(first), firstVapourOwnError_s=float(f"{abs(first - first_coarse):.1g}"),
                ownError={k: float(f"{v:.1g}") for k, v in error.items()}, columns=names, rows=[[digits(v) for v in row.values()] for row in fine])


def spline_error(p=101325.0):
    """Between the knots of Lines, against Newton's method."""
    lines, x = Lines(p), np.linspace(0.00037, 0.99963, 977)
    t, y, h, v, _, _ = ew.boiling(x, p)
    return dict(boiling_K=float(f"{np.abs(lines('t', x) - t).max():.1g}"), vapour=float(f"{np.abs(lines('star', x) - y).max():.1g}"),
                liquid_J_mol=float(f"{np.abs(lines('h', x) - h).max():.1g}"),
                vapour_J_mol=float(f"{np.abs(lines('H', x) - ew.vapour_enthalpy(x, ew.dew(x, p)[0])).max():.1g}"))


if __name__ == "__main__":
    only = sys.argv[1:]
    versions = dict(python=platform.python_version(), numpy=np.__version__, scipy=scipy.__version__)
    cases = {name: solved(problem) for name, problem in CASES.items() if not only or name in only}
    json.dump(dict(maker="reference/derived/page-scipy.py", page="docs/theory/train.md", versions=versions, method="Radau", rtol=TOLERANCES[-1],
                   comparedWithRtol=TOLERANCES[0], splineError=spline_error(), constants=PAGE_SAYS, cases=cases), sys.stdout, indent=1)
