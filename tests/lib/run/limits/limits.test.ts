// Where the train must turn into something known: the staircase, the simple still, the column at constant molar overflow, a hand-made
// heat balance; and what a doubler, a packing and a hold must do.

import { describe, expect, it } from 'vitest';
import {
  activityModel,
  createEthanolWater,
  heatToBoil,
  rayleighLeft,
  solve,
  staircase,
  strengthFromMoleFraction,
} from '#lib/index.js';
import { EQUAL_HEAT } from '#lib/run/engines/energy/tables.js';
import { flatStill } from '../../../support/column-problems.js';
import { doubler, platedStill, pot, power, trainProblem, type WholeProblem } from '../../../support/train-problems.js';

const system = createEthanolWater();
const slice = system.curve().at(101325);
const solverTolerance = 1e-6;

const at = (run: { holders: readonly unknown[]; rows: number }, column: Float64Array, j: number): number =>
  column[(run.rows - 1) * run.holders.length + j]!;

describe('a train', () => {
  it.each([
    { plates: 3, efficiency: 1 },
    { plates: 10, efficiency: 1 },
    { plates: 10, efficiency: 0.6 },
  ])('at total reflux settles to the staircase: $plates plates, efficiency $efficiency', ({ plates, efficiency }) => {
    const settled = 2e-6; // mole fraction
    const run = solve(
      trainProblem({
        still: platedStill(plates, efficiency, true),
        sheet: [{ reflux: 'total', until: [{ kind: 'duration', seconds: 40_000 }] }],
        tolerance: solverTolerance,
      }),
      system,
    );
    const kettle = run.kettleMoleFraction.at(-1)!;
    const steps = staircase({ slice, kettleMoleFraction: kettle, plates, efficiency, reflux: 'total' });
    expect(Math.abs(run.spoutMoleFraction.at(-1)! - steps.headMoleFraction)).toBeLessThan(settled);
    steps.steps.forEach((step, j) => {
      expect(Math.abs(at(run, run.holderLiquid, j + 1) - step.liquidMoleFraction)).toBeLessThan(settled);
    });
  });

  it('with neither plates nor reflux is the simple still: what is left follows Rayleigh’s equation', () => {
    const share = 2e-5; // of the charge: the vapour runs half a second behind its heat, the drum holds 0.05 %
    const problem = trainProblem({
      still: { ...pot(), kettle: { ...pot().kettle, heatLoss_W_K: 0, metal_J_K: 0 } },
      sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.1 }] }],
      tolerance: 1e-7,
    });
    const run = solve(problem, system);
    for (let row = 10; row < run.rows; row += 20) {
      const left = rayleighLeft(slice, run.kettleMoleFraction[0]!, run.kettleMoleFraction[row]!);
      if (!left.found) throw new Error('the kettle only weakens');
      expect(Math.abs(run.kettleAmount_mol[row]! / run.kettleAmount_mol[0]! - left.shareLeft)).toBeLessThan(share);
    }
  });

  it('with equal heats for every mole is the column at constant molar overflow', () => {
    // The train's weirs and drum hold a little more when liquid runs over them: compositions agree as well as hold-ups do.
    const strength = 3e-3;
    const share = 3e-3;
    const plates = 8;
    const still = platedStill(plates, 0.65, true);
    const section = still.column.kind === 'plates' ? still.column : null;
    const power_W = 5500;
    const boilUp = power_W / EQUAL_HEAT;
    const train = solve(
      trainProblem({
        still: { ...still, column: { ...section!, holdUp: { kind: 'amount', amount_mol: 3 } } },
        model: 'equalHeats',
        heat: power(power_W),
      }),
      system,
    );
    const crest = 0.4 * boilUp; // mol on each plate above its weir, about: liquid times the weir's lag
    const column = solve(
      {
        model: 'equalFlows',
        charge: { kind: 'volume', volume_m3: 0.12, strength: 0.095 },
        still: flatStill({
          plates,
          efficiency: 0.65,
          plateHoldUp_mol: 3 + crest,
          condenserHoldUp_mol: 0.9,
          headPressure_Pa: 101325,
          plateDrop_Pa: 0,
        }),
        activity: 'redlich-kister',
        heat: { kind: 'boilUp', rate_mol_s: boilUp },
        sheet: [
          { reflux: 'total', until: [{ kind: 'duration', seconds: 1200 }] },
          { reflux: 3, until: [{ kind: 'duration', seconds: 5400 }] },
        ],
        outputs: { kind: 'every', interval_s: 60 },
      },
      system,
    );
    for (let row = 40; row < 110; row += 10) {
      expect(Math.abs(train.spoutStrength[row]! - column.spoutStrength[row]!)).toBeLessThan(strength);
    }
    const collected = train.collectedVolume_m3.at(-1)! / column.collectedVolume_m3.at(-1)!;
    expect(Math.abs(collected - 1)).toBeLessThan(share);
  });

  it('takes the time to boil that a hand calculation gives', () => {
    // heat of the charge and of the metal over the power, losses at the mean temperature
    const minute_share = 3e-3;
    const problem = trainProblem({
      still: pot(),
      start: 'cold',
      sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }],
    });
    const run = solve(problem, system);
    const { kettle, air } = problem.still;
    const boiling_K = run.kettleTemperature_K.at(-1)!;
    const rise_K = boiling_K - air.temperature_K;
    const heat_J =
      heatToBoil(problem.charge, air.temperature_K, air.pressure_Pa, activityModel('redlich-kister')) +
      kettle.metal_J_K * rise_K;
    const byHand_s = heat_J / (5500 - (kettle.heatLoss_W_K * rise_K) / 2);
    expect(Math.abs(run.time_s.at(-1)! / byHand_s - 1)).toBeLessThan(minute_share);
    expect(run.firstVapour_s).not.toBeNull();
  });

  it('with a packing of n times its HETP is a column of n ideal plates that hold the same', () => {
    const alike = 1e-9;
    const still = platedStill(5, 1, true);
    const height_m = 1.25;
    const diameter_m = 0.08;
    const area = (Math.PI * diameter_m ** 2) / 4;
    const packed = trainProblem({
      still: {
        ...still,
        column: {
          kind: 'packing',
          height_m,
          hetp_m: 0.25,
          diameter_m,
          voidShare: 0.9,
          surface_m2_m3: 300,
          liquidShare: (5 * 1e-4) / (height_m * area),
          heatLoss_W_K: 0,
          metal_J_K: 0,
          drop_Pa_m: 0,
        },
      },
    });
    const [a, b] = [solve(packed, system), solve(trainProblem({ still }), system)];
    expect(a.plates).toBe(5);
    a.spoutMoleFraction.forEach((x, row) => expect(Math.abs(x - b.spoutMoleFraction[row]!)).toBeLessThan(alike));
  });
});

describe('a doubler', () => {
  const withDoubler = (litres: number, strength: number, changes: Partial<WholeProblem> = {}): WholeProblem =>
    trainProblem({
      still: pot([{ ...doubler, volume_m3: Math.max(0.02, 1.5 * litres * 1e-3) }]),
      charge: { kind: 'volume', volume_m3: 0.1, strength: 0.08 },
      doublerCharges: [{ charge: { kind: 'volume', volume_m3: litres * 1e-3, strength } }],
      heat: power(6000),
      sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 9000 }] }],
      ...changes,
    });

  it('stays cold and gives nothing until the vapour it condenses has brought it to the boil', () => {
    const run = solve(withDoubler(8, 0.3), system);
    const boils = run.firstVapour_s!;
    expect(boils).toBeGreaterThan(300);
    for (let row = 0; run.time_s[row]! < boils - 60; row++) {
      expect(run.holderVapourRate_mol_s[2 * row + 1]).toBe(0);
      expect(run.collectedVolume_m3[row]).toBe(0);
    }
    // What warmed it up is condensed in it: heat to boil over the heat of condensing, within the kettle's own warming.
    const gained = run.holderAmount_mol.filter((_n, i) => i % 2 === 1);
    const row = run.time_s.findIndex((time) => time >= boils);
    const heat_J =
      heatToBoil({ kind: 'volume', volume_m3: 0.008, strength: 0.3 }, 293.15, 101325, activityModel('redlich-kister')) +
      doubler.metal_J_K * 66;
    expect(Math.abs((gained[row]! - gained[0]!) / (heat_J / 39_500) - 1)).toBeLessThan(0.1);
  });

  it('first gives what its own charge is good for: a strong charge a strong spirit, water next to nothing more than the pot', () => {
    const [strong, weak] = [solve(withDoubler(8, 0.6), system), solve(withDoubler(8, 0.01), system)];
    const best = (run: typeof strong): number => {
      let most = 0;
      run.spoutStrength.forEach(
        (value, row) => (most = run.collectedVolume_m3[row]! > 5e-5 ? Math.max(most, value) : most),
      );
      return most;
    };
    expect(best(strong)).toBeGreaterThan(0.78);
    expect(best(weak)).toBeLessThan(0.62);
  });

  it('with a huge charge barely changes its strength during the run', () => {
    const run = solve(
      withDoubler(2000, 0.3, {
        start: 'cold',
        sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 9000 }] }],
      }),
      system,
    );
    const first = strengthFromMoleFraction(at({ holders: run.holders, rows: 1 }, run.holderLiquid, 1));
    const last = strengthFromMoleFraction(at(run, run.holderLiquid, 1));
    expect(Math.abs(last - first)).toBeLessThan(0.002);
  });

  it('fills up and runs back through its drain, or over with the vapour where it has none', () => {
    const full = (overflow: 'back' | 'over'): WholeProblem => {
      const problem = withDoubler(19, 0.05);
      const still = pot([{ ...doubler, overflow }]);
      return { ...problem, still, sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 7200 }] }] };
    };
    const [back, over] = [solve(full('back'), system), solve(full('over'), system)];
    const runsOff = back.holderLiquidRate_mol_s.filter((_rate, i) => i % 2 === 1);
    expect(Math.max(...runsOff)).toBeGreaterThan(0.1); // about what condenses in it
    expect(over.collectedVolume_m3.at(-1)!).toBeGreaterThan(back.collectedVolume_m3.at(-1)! + 2e-4);
    expect(over.jars[0]!.strength).toBeLessThan(back.jars[0]!.strength);
  });
});

describe('a hold', () => {
  it('keeps the spout at its strength with ever more reflux, and says when that is too much', () => {
    const deviation = 0.001; // % vol / 100, once it has settled
    const run = solve(
      trainProblem({
        still: platedStill(12),
        sheet: [
          { reflux: 'total', until: [{ kind: 'duration', seconds: 2400 }] },
          {
            reflux: { kind: 'hold', strength: 0.93, leastShare: 0.3, mostShare: 0.95 },
            until: [{ kind: 'refluxAbove', ratio: 10 }],
          },
        ],
      }),
      system,
    );
    expect(run.ending.message).toBe('step 2 ended: the reflux ratio rose to 10');
    const settled = run.time_s.findIndex((time) => time > 4800);
    for (let row = settled; row < run.rows; row++) {
      expect(Math.abs(run.spoutStrength[row]! - 0.93)).toBeLessThan(deviation);
      expect(run.refluxRatio[row]!).toBeGreaterThan(run.refluxRatio[row - 1]! - 0.02);
    }
  });
});

describe('jars', () => {
  it('are full at their size to the millilitre, and together hold what was collected', () => {
    const millilitre = 1e-6;
    const run = solve(trainProblem({ jars: { kind: 'size', volume_m3: 5e-4 } }), system);
    const full = run.jars.filter((jar) => jar.full);
    expect(full.length).toBe(Math.floor(run.jars.reduce((sum, jar) => sum + jar.volume_m3, 0) / 5e-4));
    full.forEach((jar) => expect(Math.abs(jar.volume_m3 - 5e-4)).toBeLessThan(millilitre));
    const alcohol = run.jars.reduce((sum, jar) => sum + jar.pureAlcohol_m3, 0);
    expect(Math.abs(alcohol - run.pureAlcoholCollected_m3.at(-1)!)).toBeLessThan(millilitre);
    run.jars.slice(1).forEach((jar, i) => expect(jar.from_s).toBe(run.jars[i]!.to_s));
  });
});
