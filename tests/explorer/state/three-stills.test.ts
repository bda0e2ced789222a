// The same charge in three stills: what must hold whatever the model's last digits are.

import { describe, expect, it } from 'vitest';
import { createEthanolWater } from '#lib/index.js';
import { startingScenario } from '../../../explorer/state/parameters.js';
import type { Scenario } from '../../../explorer/state/scenario.js';
import {
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
