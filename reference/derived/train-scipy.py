"""Stills with an energy balance on every holder solved by scipy, independently of lib/run/engines/energy: the equations of
docs/theory/train.md in their ideal limit (boiling_train.py). A holder that is still cold has V = 0 and keeps its energy
U as a state; the moment it boils is an event. Radau at two tolerances; the difference is the stated error.

Cases: a plated still with energy balance; the same with constant molar overflow; pot and doubler from a cold doubler; the
heat loss of a bare pot's head that given first runnings need.

Run:  python3 reference/derived/train-scipy.py > reference/derived/train-scipy.json
      npx prettier --write reference/derived/train-scipy.json
Needs Python 3 with numpy and scipy. The versions used stand in the output. It takes some five minutes.
"""
import json
import platform
import sys

import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

import ethanol_water as ew
from boiling_train import AIR_K, AIR_PA, TAU_S, TOLERANCES, ZERO, Train, atol_of, digits, run, two_tolerances

PLATED = dict(charge_m3=0.120, strength=0.095, power_W=5500.0, plates=8, drumHoldUp_m3=0.05e-3,
              kettle=dict(metal_J_K=8000.0, loss_W_K=3.0),
              plate=dict(holdUp_m3=0.1e-3, efficiency=0.65, loss_W_K=0.15, metal_J_K=600.0, drop_Pa=300.0),
              air_Pa=AIR_PA, air_K=AIR_K, weirTime_s=TAU_S, totalReflux_s=1200.0, reflux=3.0, draw_s=5400.0, interval_s=60.0)
STRENGTHS = (0.93, 0.925, 0.92, 0.91, 0.90, 0.85, 0.80)


def plated(problem, strengths=STRENGTHS):
    def make(rtol):
        train = Train(problem)
        share = problem["reflux"] / (1 + problem["reflux"])
        sheet = ((1.0, problem["totalReflux_s"]), (share, problem["draw_s"]))
        rows, times, residual, u = run(train, sheet, problem["interval_s"], rtol, strengths)
        ethanol, water = float(u[-3]), float(u[-2])
        chosen = {"collected_m3": ew.volume_20(ethanol, water), "collectedStrength": ew.strength(ethanol / (ethanol + water))}
        chosen.update({f"spoutBelow{100 * q:g}percent_s": t for q, t in times.items()})
        chosen = {k: float(v) for k, v in chosen.items()}
        if "latentHeat_J_mol" not in problem:
            chosen["energyBalanceResidual_J"] = float(residual)
        return dict(problem=problem, rows=rows, chosen=chosen)

    return two_tolerances(make)


DOUBLER = dict(charge_m3=0.100, strength=0.08, power_W=6000.0, plates=0, drumHoldUp_m3=0.05e-3, drumFilled=0.01,
               kettle=dict(metal_J_K=5000.0, loss_W_K=4.0),
               head=dict(charge_m3=0.008, strength=0.30, start_K=293.15, holdUp_m3=0.020, loss_W_K=1.5, metal_J_K=1500.0, drop_Pa=1000.0),
               air_Pa=AIR_PA, air_K=AIR_K, weirTime_s=TAU_S, run_s=10800.0, interval_s=60.0)


def cold_temperature(x, amount, metal, energy):
    t = np.full_like(x, 330.0)
    for _ in range(30):
        f = amount * ew.liquid_enthalpy(x, t) + metal * (t - ZERO) - energy
        slope = (amount * (ew.liquid_enthalpy(x, t + 0.01) - ew.liquid_enthalpy(x, t - 0.01))) / 0.02 + metal
        t = t - f / slope
        if np.max(np.abs(f / slope)) < 1e-10:
            return t
    raise ArithmeticError("temperature not found")


def doubler(problem):
    """The doubler is the train's holder above the kettle; while it is cold its energy is one more state, the last."""
    d = problem["head"]

    def make(rtol):
        train = Train(problem)
        ethanol, water = ew.amounts(problem["charge_m3"], problem["strength"])
        x = ethanol / (ethanol + water)
        drum = problem["drumFilled"] * problem["drumHoldUp_m3"] / float(ew.boiling(x, AIR_PA)[3])
        ethanol, water = ethanol - drum * x, water - drum * (1 - x)
        n1, n2 = ew.amounts(d["charge_m3"], d["strength"])
        u = np.array([ethanol, n1, water, n2, drum * x, drum * (1 - x), 0.0, 0.0, 0.0, 0.0])
        u[-1] = (n1 + n2) * ew.liquid_enthalpy(n1 / (n1 + n2), d["start_K"]) + d["metal_J_K"] * (d["start_K"] - ZERO)

        def cold(_t, u):
            one = u.ndim == 1
            u = u.reshape(train.size + 1, -1)
            s = train.flows(u[:-1], 0.0)
            assert not s["down"].any(), "the cold doubler runs over: not modelled here"
            t = cold_temperature(s["x"][1], s["amount"][1], d["metal_J_K"], u[-1])
            rise, y, out = s["rise"][0], s["y"][0], np.zeros_like(u)
            out[0], out[1], out[2], out[3] = -rise * y, rise * y, -rise * (1 - y), rise * (1 - y)
            loss = d["loss_W_K"] * (t - AIR_K)
            out[-1] = rise * s["vapour_h"][0] - loss
            out[-2] = s["heat"][0] - loss
            return out[:, 0] if one else out

        def boils(_t, u):
            s = train.flows(u[:-1, None], 0.0)
            full = s["amount"][1] * s["h"][1] + d["metal_J_K"] * (s["t"][1] - ZERO)
            return float((u[-1] - full)[0])

        boils.terminal = True
        energy = u[-1] + (ethanol + water) * float(train.flows(u[:-1, None], 0.0)["h"][0, 0]) + \
            problem["kettle"]["metal_J_K"] * (float(train.flows(u[:-1, None], 0.0)["t"][0, 0]) - ZERO)

        def row(time, u, energy_d=None):
            out = train.row(time, u, 0.0)
            s = {k: np.asarray(v)[..., 0] for k, v in train.flows(u[:, None], 0.0).items()}
            is_cold = energy_d is not None
            t = cold_temperature(s["x"][1], s["amount"][1], d["metal_J_K"], np.array(energy_d)) if is_cold else s["t"][1]
            names = ("time_s", "kettleMoleFraction", "kettle_mol", "kettle_K")
            return {**{k: out[k] for k in names}, "doublerMoleFraction": s["x"][1], "doubler_mol": s["amount"][1], "doubler_K": t,
                    "kettleVapour_mol_s": s["rise"][0], "doublerVapour_mol_s": 0.0 if is_cold else s["rise"][1],
                    "spoutMoleFraction": out["spoutMoleFraction"], "spoutStrength": out["spoutStrength"],
                    "distillate_mol_s": out["distillate_mol_s"],
                    "collectedEthanol_mol": out["collectedEthanol_mol"], "collectedWater_mol": out["collectedWater_mol"]}

        every, length = problem["interval_s"], problem["run_s"]
        at = np.arange(0.0, length + 1e-6, every)
        atol = np.append(atol_of(train.size, rtol), 1e3 * rtol)
        first = solve_ivp(cold, (0.0, length), u, method="Radau", t_eval=at, rtol=rtol, atol=atol, vectorized=True, events=boils)
        assert first.status == 1, first.message
        start, u = float(first.t_events[0][0]), first.y_events[0][0]
        rows = [row(t, first.y[:-1, i], first.y[-1, i]) for i, t in enumerate(first.t)]
        began = row(start, u[:-1])
        then = at[at > start]
        second = solve_ivp(train.right_hand_side(0.0), (start, length), u[:-1], method="Radau", t_eval=then, rtol=rtol,
                           atol=atol_of(train.size, rtol), vectorized=True, first_step=1e-4)
        assert second.success, second.message
        print(f"  doubler: calls {first.nfev} and {second.nfev}", file=sys.stderr)
        rows += [row(t, second.y[:, i]) for i, t in enumerate(then)]
        u = second.y[:, -1]
        ethanol, water = u[-3], u[-2]
        chosen = {"boilingFrom_s": start, "doublerMoleFractionThen": began["doublerMoleFraction"], "doublerThen_mol": began["doubler_mol"],
                  "doublerThen_K": began["doubler_K"], "firstVapour_mol_s": began["doublerVapour_mol_s"],
                  "firstVapourStrength": ew.strength(ew.bubble(began["doublerMoleFraction"], AIR_PA)[1]),
                  "collected_m3": ew.volume_20(ethanol, water), "collectedStrength": ew.strength(ethanol / (ethanol + water)),
                  "energyBalanceResidual_J": train.stored_energy(u) - energy - u[-1]}
        return dict(problem=problem, rows=rows, chosen={k: float(v) for k, v in chosen.items()})

    return two_tolerances(make)


HEAD = dict(charge_m3=0.100, strength=0.25, plates=0, kettle=dict(metal_J_K=0.0, loss_W_K=0.0), film_m3=0.1e-3, air_Pa=AIR_PA, air_K=AIR_K,
            weirTime_s=TAU_S, firstRunnings_m3=0.2e-3, powers_W=(3000.0, 10000.0), wantedStrengths=(0.75, 0.78, 0.80),
            losses_W_K=(0.0, 1.0, 2.0, 5.0, 10.0, 20.0, 30.0))


def steady_head(x, power, y):
    """The head that sends vapour y over a kettle at x: all flows steady, the kettle losing nothing and holding no metal."""
    _, y0, h0, _, _, k0 = (float(each) for each in ew.boiling(x, AIR_PA))
    t, liquid = (float(each) for each in ew.dew(y, AIR_PA))
    h = float(ew.liquid_enthalpy(liquid, t))
    steam, over = float(ew.vapour_enthalpy(y0, ew.bubble(x, AIR_PA)[0])), float(ew.vapour_enthalpy(y, t))
    left = (y0 - liquid) / (y - liquid)
    rise = power / (steam - h0 - k0 * (y0 - x) - (1 - left) * (h - h0 - k0 * (liquid - x)))
    loss = rise * (steam - left * over - (1 - left) * h)
    return dict(power_W=power, strength=float(ew.strength(y)), loss_W_K=loss / (t - AIR_K), loss_W=loss, shareCondensed=1 - left,
                kettleVapour_mol_s=rise, headVapour_mol_s=left * rise, head_K=t, headLiquidMoleFraction=liquid, headVapourMoleFraction=y)


def head_at_loss(x, power, loss):
    y0 = float(ew.bubble(x, AIR_PA)[1])
    if loss == 0:
        return steady_head(x, power, y0)
    most = float(ew.bubble(y0, AIR_PA)[1])  # all condensed
    y = brentq(lambda y: steady_head(x, power, y)["loss_W_K"] - loss, y0, most - 1e-9, xtol=1e-14)
    return steady_head(x, power, y)


def first_runnings(power, loss, film, rtol):
    """Strength at the spout when the first runnings are over, and their mean; the film starts at mole fraction `film`."""
    train = Train({**HEAD, "power_W": power, "head": dict(holdUp_m3=HEAD["film_m3"], loss_W_K=loss, metal_J_K=0.0)})
    u = train.start()
    if film is not None:
        total = u[0] + u[1], u[2] + u[3]
        amount = HEAD["film_m3"] / float(ew.boiling(film, AIR_PA)[3])
        u[1], u[3] = amount * film, amount * (1 - film)
        u[0], u[2] = total[0] - u[1], total[1] - u[3]

    def over(_t, u):
        return (ew.volume_20(u[-3], u[-2]) if u[-2] > 1e-9 else 0.0) - HEAD["firstRunnings_m3"]

    over.terminal = True
    done = solve_ivp(train.right_hand_side(0.0), (0.0, 3600.0), u, method="Radau", rtol=rtol, atol=atol_of(train.size, rtol),
                     vectorized=True, first_step=1e-4, events=over)
    assert done.status == 1, done.message
    u = done.y_events[0][0]
    return float(done.t_events[0][0]), float(train.row(0.0, u, 0.0)["spoutStrength"]), float(ew.strength(u[-3] / (u[-3] + u[-2])))


def head():
    x = ew.mole_fraction(HEAD["strength"])
    wanted, runs, errors = [], [], []
    for power in HEAD["powers_W"]:
        for strength in HEAD["wantedStrengths"]:
            found = steady_head(x, power, ew.mole_fraction(strength))
            wanted.append(found)
            coarse, fine = ([v for film in (found["headLiquidMoleFraction"], None) for v in first_runnings(power, found["loss_W_K"], film, rtol)]
                            for rtol in TOLERANCES)
            errors.append([abs(a - b) for a, b in zip(coarse, fine)])
            runs.append([power, found["loss_W_K"], *fine])
    by_loss = [head_at_loss(x, power, loss) for power in HEAD["powers_W"] for loss in HEAD["losses_W_K"]]
    table = lambda rows: [[digits(v) for v in row.values()] for row in rows]
    return dict(problem=HEAD, columns=list(wanted[0]), wanted=table(wanted), byLoss=table(by_loss),
                runColumns=["power_W", "loss_W_K", "steadyFilm_s", "steadyFilmStrength", "steadyFilmMeanStrength",
                            "chargeFilm_s", "chargeFilmStrength", "chargeFilmMeanStrength"],
                runs=[[digits(v) for v in run] for run in runs], runsOwnError=float(f"{np.max(errors):.2g}"))


def properties():
    """Values to compare with the library's before anything else."""
    rows = []
    for x, p in ((0.01, 101325.0), (0.0312, 103725.0), (0.1, 101325.0), (0.2, 102325.0), (0.5, 101325.0), (0.8, 101325.0), (0.89, 101325.0)):
        t, y, h, v, t1, h1 = (float(each) for each in ew.boiling(x, p))
        rows.append([x, p, t, y, h, float(ew.vapour_enthalpy(y, t)), v, t1, h1, float(ew.liquid_enthalpy(x, AIR_K))])
    return dict(columns=["moleFraction", "pressure_Pa", "boiling_K", "vapourMoleFraction", "liquid_J_mol", "vapour_J_mol", "volume_m3_mol",
                         "boilingSlope_K", "liquidSlope_J_mol", "liquidAt20C_J_mol"], rows=[[digits(v) for v in row] for row in rows])


def main(only=None):
    cases = dict(
        platedWithEnergyBalance=lambda: plated(PLATED),
        potAndDoubler=lambda: doubler(DOUBLER),
        platedConstantMolarOverflow=lambda: plated({**PLATED, "latentHeat_J_mol": 40650.0}),
        barePotHead=head,
    )
    done = {name: case() for name, case in cases.items() if only is None or name in only}
    print(json.dumps(dict(
        maker="reference/derived/train-scipy.py",
        versions=dict(python=platform.python_version(), numpy=np.__version__, scipy=scipy.__version__),
        method="Radau", rtol=TOLERANCES[1], comparedWithRtol=TOLERANCES[0],
        properties=properties(), cases=done), indent=1))


if __name__ == "__main__":
    main(sys.argv[1:] or None)
