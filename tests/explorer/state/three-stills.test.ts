// The same charge in three stills and more: what must hold whatever the model's last digits are.

import { describe, expect, it } from 'vitest';
import { createEthanolWater } from '#lib/index.js';
import { parameterOf, startingScenario } from '../../../explorer/state/parameters.js';
import { withNumber, type Scenario } from '../../../explorer/state/scenario.js';
import {
  inventedStills,
  ownNames,
  stillNames,
  stillResults,
  stillsQuestions,
  type OwnStill,
  type StillName,
  type StillResults,
} from '../../../explorer/state/three-stills.js';
import { createSolver } from '../../../explorer/worker/questions.js';
import { train } from '../../../explorer/worker/train.js';

const solve = createSolver(createEthanolWater(), { train });
type Results = Record<(typeof stillNames)[number], StillResults> & Partial<Record<StillName, StillResults>>;

function resultsFor(scenario: Scenario, own: readonly OwnStill[] = []): Results {
  const questions = stillsQuestions(scenario, own);
  const names = [...stillNames, ...ownNames].filter((name) => questions[name] !== undefined);
  const reply = solve(names.map((name) => questions[name]!));
  if (reply.kind !== 'answered') throw new Error(JSON.stringify(reply.faults));
  const entries = names.map((name, index): [StillName, StillResults] => {
    const answer = reply.answers[index]!;
    if (answer.kind !== 'train') throw new Error('not a run');
    return [name, stillResults(answer.solution, scenario.wantedStrength)];
  });
  return Object.fromEntries(entries) as Results;
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
    expect(results.doubler.collected_m3).toBeGreaterThan(results.column.collected_m3);
  });

  it('bring over nothing above 80 % vol in the pot, and something in the column', () => {
    expect(results.pot.pureAlcoholAbove_m3).toBeNull();
    expect(results.pot.meanAbove).toBeNull();
    expect(results.column.meanAbove).toBeGreaterThan(startingScenario.wantedStrength);
  });

  it('use heat from lighting up on, and lose some of it, the column most', () => {
    // The heater is on all the time.
    const roundOff = 1e-9;
    for (const name of stillNames) {
      const { heat_J, duration_s, heatingUp_s, lost_J } = results[name];
      expect(Math.abs(heat_J / (startingScenario.heat * duration_s) - 1)).toBeLessThan(roundOff);
      expect(heatingUp_s).toBeLessThan(duration_s);
      expect(lost_J).toBeGreaterThan(0);
      expect(lost_J).toBeLessThan(0.25 * heat_J);
    }
    expect(results.column.lost_J / results.column.duration_s).toBeGreaterThan(
      results.pot.lost_J / results.pot.duration_s,
    );
  });

  it('let the doubler begin later than the pot: its own charge has to boil first', () => {
    expect(results.doubler.heatingUp_s).toBeGreaterThan(results.pot.heatingUp_s + 60);
  });
});

describe('a still of the reader’s own', () => {
  it('stands beside the others with the numbers it was kept with', () => {
    const { plates, efficiency, reflux } = startingScenario;
    const results = resultsFor({ ...startingScenario, plates: 4 }, [{ plates, efficiency, reflux }]);
    const before = resultsFor(startingScenario);
    expect(results.own0).toEqual(before.column);
    expect(results.column.best).toBeLessThan(results.own0!.best);
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
    'doublerVolume',
    'doublerStrength',
  ] as const;

  it('runs in all three stills and ends by a rule, or dry: every eleventh corner', () => {
    for (let corner = 0; corner < 2 ** keys.length; corner += 11) {
      const scenario = keys.reduce((set, key, bit) => {
        const { low, high } = parameterOf(key);
        return withNumber(set, key, (corner >> bit) & 1 ? high : low);
      }, startingScenario);
      const questions = stillsQuestions(scenario);
      const reply = solve(stillNames.map((name) => questions[name]));
      const endings =
        reply.kind === 'answered'
          ? reply.answers.map((answer) => (answer.kind === 'train' ? answer.solution.ending.kind : answer.kind))
          : [JSON.stringify(reply.faults)];
      const good = endings.every((kind) => ['stopped', 'kettleDry', 'neverMet'].includes(kind));
      expect([scenario, endings, good]).toEqual([scenario, endings, true]);
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
