// The same charge in three stills and more: what must hold whatever the model's last digits are.

import { beforeAll, describe, expect, it } from 'vitest';
import { columnOf, type OwnStill } from '../../../explorer/state/column-of.js';
import { inputAt } from '../../../explorer/state/inputs.js';
import { startingScenario, type Scenario } from '../../../explorer/state/scenario.js';
import { settings, short, type Short } from '../../support/settings.js';
import {
  stillNames,
  stillResults,
  stillsQuestions,
  type StillName,
  type StillResults,
} from '../../../explorer/pages/one-charge-three-stills/questions.js';
import { answersTo, solverAtHand } from '../../support/answers.js';

/** Of all alcohol, when the starting sheet ends. */
const alcoholLeft = 0.05;
type Results = Record<(typeof stillNames)[number], StillResults> & Partial<Record<StillName, StillResults>>;
async function resultsFor(scenario: Scenario, own: readonly OwnStill[] = []): Promise<Results> {
  const { pot, doubler, column, own0 } = stillsQuestions(scenario, own);
  const runs: Readonly<Record<string, typeof pot>> = { pot, doubler, column, ...(own0 && { own0 }) };
  const answers = Object.entries(await answersTo(runs));
  return Object.fromEntries(
    answers.map(([name, { solution }]) => [name, stillResults(solution, scenario.asked.strength)]),
  ) as unknown as Results;
}

describe('the starting settings in three stills', () => {
  let results: Results;
  beforeAll(async () => void (results = await resultsFor(startingScenario)));

  it('bring the same share of the alcohol out of each', () => {
    // What plates and condenser still hold counts as left, so the share is exact to the solver's event location.
    const eventLocation = 1e-6;
    for (const name of stillNames) {
      expect(Math.abs(results[name].shareCollected - (1 - alcoholLeft))).toBeLessThan(eventLocation);
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
    expect(results.column.meanAbove).toBeGreaterThan(startingScenario.asked.strength);
  });

  it('use heat from lighting up on, and lose some of it, the column most', () => {
    // The heater is on all the time.
    const roundOff = 1e-9;
    for (const name of stillNames) {
      const { heat_J, duration_s, heatingUp_s, lost_J } = results[name];
      expect(Math.abs(heat_J / (startingScenario.still.kettle.power_W! * duration_s) - 1)).toBeLessThan(roundOff);
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
  it('stands beside the others with the numbers it was kept with', async () => {
    const results = await resultsFor(settings({ plates: 4 }), [columnOf(startingScenario)]);
    const before = await resultsFor(startingScenario);
    expect(results.own0).toEqual(before.column);
    expect(results.column.best).toBeLessThan(results.own0!.best);
  });
});

describe('every corner of the parameter table', () => {
  const names: readonly Short[] = [
    'chargeVolume',
    'chargeStrength',
    'plates',
    'efficiency',
    'reflux',
    'heat',
    'pressure',
    'doublerVolume',
    'doublerStrength',
  ];

  it('runs in all three stills and ends by a rule, or dry: every eleventh corner', async () => {
    for (let corner = 0; corner < 2 ** names.length; corner += 11) {
      const numbers = names.map((name, bit): [Short, number] => {
        const { low, high } = inputAt(short[name])!;
        return [name, (corner >> bit) & 1 ? high : low];
      });
      const scenario = settings(Object.fromEntries(numbers));
      const { pot, doubler, column } = stillsQuestions(scenario);
      const replies = await Promise.all([pot, doubler, column].map((run) => solverAtHand.answer(run)));
      const endings = replies.map((reply) =>
        reply.kind === 'answered' && reply.answer.kind === 'run'
          ? reply.answer.solution.ending.kind
          : JSON.stringify(reply),
      );
      // The smallest charge in the tallest column: its plates would hold all of it.
      const held = (ending: string): boolean =>
        ending.includes('hold less than half the charge') && scenario.charge.volume_m3 < 0.001;
      const good = endings.every((kind) => held(kind) || ['stopped', 'kettleDry', 'neverMet'].includes(kind));
      expect([scenario, endings, good]).toEqual([scenario, endings, true]);
    }
  });
});

describe('what counts', () => {
  it('is less the stronger it has to be', async () => {
    const strict = await resultsFor(settings({ wantedStrength: 0.9 }));
    const lax = await resultsFor(settings({ wantedStrength: 0.5 }));
    expect(strict.column.pureAlcoholAbove_m3!).toBeLessThan(lax.column.pureAlcoholAbove_m3!);
    expect(lax.pot.pureAlcoholAbove_m3).not.toBeNull();
  });
});
