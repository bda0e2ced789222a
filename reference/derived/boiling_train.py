"""Stills of holders with an energy balance each, written for scipy independently of lib/run/engines/energy: the equations of
docs/theory/train.md in their ideal limit. A holder that boils stays exactly on its boiling line, so its vapour follows
from the derivative of its balance (index 1),

  V (H - h - k (y - x)) = sum of F_i (H_i - h - k (z_i - x)) over what flows in + Q - G (T - T_ref)
  k = dh/dx + (C/N) dT/dx along the boiling line at constant pressure

Used by train-scipy.py, which holds the cases. Properties: ethanol_water.py, equilibrium by Newton at every call.
"""
import sys

import numpy as np
from scipy.integrate import solve_ivp

import ethanol_water as ew

AIR_PA, AIR_K, ZERO = 101325.0, 293.15, 273.15
TAU_S = 1.0
TOLERANCES = (1e-7, 1e-9)


def weir(n, volume, v):
    """What runs off over the height at which `volume` stands."""
    return np.maximum(0.0, n - volume / v) / TAU_S


class Train:
    """Boiling holders from the kettle up, then a total condenser's drum (or none). State, one row each: ethanol of each
    holder, water of each, ethanol and water of the drum, collected ethanol and water, energy taken up [J]."""

    def __init__(self, p):
        self.p = p
        n = self.count = 1 + p["plates"] + (1 if "head" in p else 0)
        top = p.get("head", {})
        each = [p["kettle"]] + [p.get("plate")] * p["plates"] + ([top] if "head" in p else [])
        drops = np.array([0.0] + [one.get("drop_Pa", 0.0) for one in each[1:]])
        self.pressure = AIR_PA + (drops.sum() - np.cumsum(drops))[:, None]
        self.metal = np.array([one["metal_J_K"] for one in each])[:, None]
        self.loss = np.array([one["loss_W_K"] for one in each])[:, None]
        self.volume = np.array([0.0] + [one["holdUp_m3"] for one in each[1:]])[:, None]
        self.efficiency = [1.0] + [one.get("efficiency", 1.0) for one in each[1:]]
        self.drum = p.get("drumHoldUp_m3")
        self.size = 2 * n + (2 if self.drum else 0) + 3

    def start(self):
        p, n = self.p, self.count
        ethanol, water = ew.amounts(p["charge_m3"], p["strength"])
        x = ethanol / (ethanol + water)
        v = ew.boiling(np.full((n, 1), x), self.pressure)[3]
        held = np.where(self.volume > 0, self.volume / v, 0.0)[:, 0]
        drum = []
        if self.drum:
            y = float(ew.bubble(x, self.pressure[0, 0])[1])
            amount = self.drum / float(ew.boiling(y, AIR_PA)[3])
            drum = [amount * y, amount * (1 - y)]
        n1, n2 = held * x, held * (1 - x)
        n1[0] = ethanol - n1[1:].sum() - (drum[0] if drum else 0.0)
        n2[0] = water - n2[1:].sum() - (drum[1] if drum else 0.0)
        return np.concatenate((n1, n2, drum, [0.0, 0.0, 0.0]))

    def flows(self, u, share):
        """Everything algebraic at states u (columns); share of the drum's run-off that returns."""
        p, n = self.p, self.count
        n1, n2 = u[:n], u[n:2 * n]
        amount = n1 + n2
        x = n1 / amount
        t, equilibrium, h, v, t1, h1 = ew.boiling(x, self.pressure)
        y = np.empty_like(x)
        y[0] = equilibrium[0]
        for j in range(1, n):
            y[j] = y[j - 1] + self.efficiency[j] * (equilibrium[j] - y[j - 1])
        dew_t = ew.dew(y, self.pressure)[0]
        vapour_h = ew.vapour_enthalpy(y, dew_t)
        down = np.zeros_like(x)  # what leaves each holder downwards
        down[1:] = weir(amount[1:], self.volume[1:], v[1:])
        zero = np.zeros(u.shape[1:])
        drum_x = drum_h = run_off = zero
        if self.drum:
            d1, d2 = u[2 * n], u[2 * n + 1]
            drum_x = d1 / (d1 + d2)
            _, _, drum_h, drum_v, _, _ = ew.boiling(drum_x, AIR_PA)
            run_off = weir(d1 + d2, self.drum, drum_v)
        from_above = np.concatenate((down[1:], (share * run_off)[None]))
        above_x = np.concatenate((x[1:], drum_x[None]))
        above_h = np.concatenate((h[1:], drum_h[None]))
        heat = -self.loss * (t - AIR_K)
        heat[0] = heat[0] + p["power_W"]
        k = h1 + self.metal / amount * t1
        rise = np.empty_like(x)
        for j in range(n):
            gain = heat[j] + from_above[j] * (above_h[j] - h[j] - k[j] * (above_x[j] - x[j]))
            if j > 0:
                gain = gain + rise[j - 1] * (vapour_h[j - 1] - h[j] - k[j] * (y[j - 1] - x[j]))
            rise[j] = gain / (vapour_h[j] - h[j] - k[j] * (y[j] - x[j]))
        if "latentHeat_J_mol" in p:
            rise[:] = p["power_W"] / p["latentHeat_J_mol"]
        return dict(amount=amount, x=x, t=t, h=h, y=y, dew_t=dew_t, vapour_h=vapour_h, down=down, from_above=from_above,
                    above_x=above_x, above_h=above_h, drum_x=drum_x, run_off=run_off, heat=heat, rise=rise)

    def right_hand_side(self, share):
        n = self.count

        def f(_t, u):
            one = u.ndim == 1
            u = u.reshape(self.size, -1)
            s = self.flows(u, share)
            out = np.zeros_like(u)
            rise, y = s["rise"], s["y"]
            for rows, mole, above in ((slice(0, n), s["x"], s["above_x"]), (slice(n, 2 * n), 1 - s["x"], 1 - s["above_x"])):
                gas = y if rows.start == 0 else 1 - y
                d = s["from_above"] * above - s["down"] * mole - rise * gas
                d[1:] += rise[:-1] * gas[:-1]
                out[rows] = d
            top, product = rise[-1], (1 - share) * s["run_off"]
            product_x = s["drum_x"]
            if self.drum:
                out[2 * n] = top * y[-1] - s["run_off"] * s["drum_x"]
                out[2 * n + 1] = top * (1 - y[-1]) - s["run_off"] * (1 - s["drum_x"])
            else:
                product, product_x = top, y[-1]
            out[-3], out[-2] = product * product_x, product * (1 - product_x)
            out[-1] = s["heat"].sum(axis=0) - top * s["vapour_h"][-1] + s["from_above"][-1] * s["above_h"][-1]
            return out[:, 0] if one else out

        return f

    def stored_energy(self, u):
        s = self.flows(u[:, None], 0.0)
        return float((s["amount"] * s["h"] + self.metal * (s["t"] - ZERO)).sum())

    def row(self, time, u, share):
        s = {k: np.asarray(v)[..., 0] for k, v in self.flows(u[:, None], share).items()}
        top_y = s["y"][-1]
        row = dict(time_s=time, kettleMoleFraction=s["x"][0], kettle_mol=s["amount"][0], kettle_K=s["t"][0])
        if self.drum:
            row.update(spoutMoleFraction=s["drum_x"], spoutStrength=ew.strength(s["drum_x"]))
        else:
            row.update(spoutMoleFraction=top_y, spoutStrength=ew.strength(top_y))
        row.update(head_K=s["dew_t"][-1], distillate_mol_s=(1 - share) * s["run_off"] if self.drum else s["rise"][-1],
                   collectedEthanol_mol=u[-3], collectedWater_mol=u[-2], kettleVapour_mol_s=s["rise"][0], topVapour_mol_s=s["rise"][-1],
                   condenserDuty_W=s["rise"][-1] * (s["vapour_h"][-1] - float(ew.boiling(top_y, AIR_PA)[2])),
                   topVapourMoleFraction=top_y, lowestPlateLiquid=s["x"][min(1, self.count - 1)], highestPlateLiquid=s["x"][-1])
        return row


def atol_of(size, rtol):
    """Small amounts on plates count as much as the kettle's; the last state is an energy, J."""
    out = np.full(size, 0.01 * rtol)
    out[-1] = 1e3 * rtol
    return out


def run(train, sheet, interval, rtol, strengths=()):
    """Rows every `interval` from the start on; when the spout falls below each strength; the energy balance's residual."""
    u, begin = train.start(), 0.0
    energy = train.stored_energy(u)
    rows, times = [train.row(0.0, u, sheet[0][0])], {}
    spout = 2 * train.count
    for share, length in sheet:
        at = np.arange(interval, length + 1e-6, interval)
        events = []
        for q in strengths if share < 1 else ():
            x = ew.mole_fraction(q)

            def fallen(_t, state, x=x):
                return state[spout] / (state[spout] + state[spout + 1]) - x

            fallen.direction = -1
            events.append(fallen)
        done = solve_ivp(train.right_hand_side(share), (0.0, length), u, method="Radau", t_eval=at, rtol=rtol,
                         atol=atol_of(train.size, rtol), vectorized=True, first_step=1e-4, events=events or None)
        assert done.success, done.message
        print(f"  share {share} steps {len(done.t)} calls {done.nfev}", file=sys.stderr)
        for k, q in enumerate(strengths if share < 1 else ()):
            if len(done.t_events[k]):
                times[q] = begin + float(done.t_events[k][0])
        rows += [train.row(begin + t, done.y[:, i], share) for i, t in enumerate(at)]
        u = done.y[:, -1]
        begin += length
    residual = train.stored_energy(u) - energy - u[-1]
    return rows, times, residual, u


def two_tolerances(make):
    """The result at the finer tolerance and the largest difference of each column between the two."""
    coarse, fine = (make(rtol) for rtol in TOLERANCES)
    error = {k: max(abs(a[k] - b[k]) for a, b in zip(coarse["rows"], fine["rows"])) for k in fine["rows"][0]}
    fine["ownError"] = {k: float(f"{v:.2g}") for k, v in error.items()}
    fine["chosenOwnError"] = {k: float(f"{abs(coarse['chosen'][k] - v):.2g}") for k, v in fine["chosen"].items() if isinstance(v, float)}
    fine["columns"] = list(fine["rows"][0])
    fine["rows"] = [[digits(v) for v in row.values()] for row in fine["rows"]]
    fine["chosen"] = {k: digits(v) if isinstance(v, float) else v for k, v in fine["chosen"].items()}
    return fine


def digits(v):
    """Eleven digits; what is below 1e-15 is rounding."""
    return float(f"{float(v):.11g}") if abs(v) > 1e-15 else 0.0
