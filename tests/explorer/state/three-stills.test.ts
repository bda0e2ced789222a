// The same charge in three stills: what must hold whatever the model's last digits are.

import { describe, expect, it } from 'vitest';
import { activityModel, createEthanolWater, DEFAULT_ACTIVITY, heatToBoil } from '#lib/index.js';
import { parameterOf, startingScenario } from '../../../explorer/state/parameters.js';
import { withNumber, type Scenario } from '../../../explorer/state/scenario.js';
import {
  heatingUp,
  inventedStills,
  stillNames,
  stillResults,
  stillsQuestions,
  type StillName,
  type StillResults,
} from '../../../explorer/state/three-stills.js';
import { createSolver } from '../../../explorer/worker/questions.js';

const solve = createSolver(createEthanolWater());

function resultsFor(scenario: Scenario): Record<StillName, StillResults> {
  const questions = stillsQuestions(scenario);
  const reply = solve(stillNames.map((name) => questions[name]));
  if (reply.kind !== 'answered') throw new Error(JSON.stringify(reply.faults));
  const entries = stillNames.map((name, index): [StillName, StillResults] => {
    const answer = reply.answers[index]!;
    if (answer.kind !== 'run') throw new Error('not a run');
    return [name, stillResults(answer.solution, scenario.wantedStrength, scenario.heat)];
  });
  return Object.fromEntries(entries) as Record<StillName, StillResults>;
}

describe('the starting settings in three stills', () => {
  const results = resultsFor(startingScenario);

  it('bring the same share of the alcohol out of each', () => {
    // What plates and condenser still hold counts as left, so the share is exact to the solver's event location.
    const eventLocation = 1e-6;
    for (const name of stillNames) {
      expect(Math.abs(results[name].shareCollected - (1 - inventedStills.alcoholLeft))).toBeLessThan(eventLocation);
    }
  });

  it('give a stronger spout and less water with every stage', () => {
    expect(results.pot.best).toBeLessThan(results.doubler.best);
    expect(results.doubler.best).toBeLessThan(results.column.best);
    expect(results.pot.collected_m3).toBeGreaterThan(results.doubler.collected_m3);
    expect(results.doubler.collected_m3).toBeGreaterThan(results.column.collected_m3);
  });

  it('bring over nothing above 80 % vol in the pot, and something in the column', () => {
    expect(results.pot.pureAlcoholAbove_m3).toBeNull();
    expect(results.pot.meanAbove).toBeNull();
    expect(results.column.meanAbove).toBeGreaterThan(startingScenario.wantedStrength);
  });

  it('use heat for as long as they run', () => {
    for (const name of stillNames) {
      expect(results[name].heat_J).toBe(startingScenario.heat * results[name].duration_s);
    }
  });
});

describe('every corner of the parameter table', () => {
  const keys = [
    'chargeVolume',
    'chargeStrength',
    'plates',
    'efficiency',
    'reflux',
    'heat',
    'pressure',
    'doublerReflux',
  ] as const;

  it('runs in all three stills and ends by a rule', () => {
    for (let corner = 0; corner < 2 ** keys.length; corner += 1) {
      const scenario = keys.reduce((set, key, bit) => {
        const { low, high } = parameterOf(key);
        return withNumber(set, key, (corner >> bit) & 1 ? high : low);
      }, startingScenario);
      const questions = stillsQuestions(scenario);
      const reply = solve(stillNames.map((name) => questions[name]));
      const endings =
        reply.kind === 'answered'
          ? reply.answers.map((answer) => (answer.kind === 'run' ? answer.solution.ending.kind : answer.kind))
          : JSON.stringify(reply.faults);
      expect([scenario, endings]).toEqual([scenario, ['stopped', 'stopped', 'stopped']]);
    }
  });
});

describe('heating up', () => {
  it('is what the library says for the charge, and takes as long as the heat needs', () => {
    const up = heatingUp(startingScenario);
    const charge = { kind: 'volume', volume_m3: 0.12, strength: 0.095 } as const;
    expect(up.heat_J).toBe(heatToBoil(charge, 293.15, 101_325, activityModel(DEFAULT_ACTIVITY)));
    expect(up.duration_s).toBe(up.heat_J / startingScenario.heat);
  });

  it('is about that of as much water: 4.2 MJ per K and m³', () => {
    // Water's 4.18 MJ/(m³ K); 9.5 % vol boils some 7 K lower and holds a little less: a tenth covers both.
    const water_J = 4.18e6 * startingScenario.chargeVolume * (100 - 20);
    expect(Math.abs(heatingUp(startingScenario).heat_J / water_J - 1)).toBeLessThan(0.1);
  });
});

describe('the doubler’s first drops', () => {
  it('are as strong as the pot’s, and less than a hundredth of its run', () => {
    const reply = solve([stillsQuestions(startingScenario).doubler]);
    const answer = reply.kind === 'answered' ? reply.answers[0] : undefined;
    if (answer?.kind !== 'run') throw new Error('not a run');
    const { spoutStrength, collectedVolume_m3, rows } = answer.solution;
    const best = Math.max(...spoutStrength);
    const reached = spoutStrength.findIndex((strength) => strength > best - 0.01);
    expect(spoutStrength[0]!).toBeLessThan(best - 0.1);
    expect(collectedVolume_m3[reached]!).toBeLessThan(0.01 * collectedVolume_m3[rows - 1]!);
  });
});

describe('a doubler with nothing running back', () => {
  const results = resultsFor({ ...startingScenario, doublerReflux: 0 });

  it('passes on what it gets: it is the bare pot again', () => {
    // Its plate stands under 0.25 kPa, so its kettle boils a few tenths of a degree hotter than the pot's.
    const pressureOfOnePlate = 2e-3;
    for (const column of ['collected_m3', 'best', 'duration_s', 'shareCollected'] as const) {
      expect(Math.abs(results.doubler[column] / results.pot[column] - 1)).toBeLessThan(pressureOfOnePlate);
    }
  });
});

describe('what counts', () => {
  it('is less the stronger it has to be', () => {
    const strict = resultsFor({ ...startingScenario, wantedStrength: 0.9 });
    const lax = resultsFor({ ...startingScenario, wantedStrength: 0.5 });
    expect(strict.column.pureAlcoholAbove_m3!).toBeLessThan(lax.column.pureAlcoholAbove_m3!);
    expect(lax.pot.pureAlcoholAbove_m3).not.toBeNull();
  });
});
