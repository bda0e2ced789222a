// What a change costs: questions stay the same until something they ask changes.

import { describe, expect, it } from 'vitest';
import { comparison } from '../../../explorer/pages/the-ceiling/comparison.js';
import { ceilingQuestions } from '../../../explorer/state/derive.js';
import { remembered } from '../../../explorer/state/memo.js';
import { inputAt } from '../../../explorer/state/inputs.js';
import { withValue } from '../../../explorer/state/paths.js';
import { startingScenario } from '../../../explorer/state/scenario.js';
import { runResults, type RunResults } from '../../../explorer/state/run-results.js';
import { answersTo, answerTo, solverAtHand } from '../../support/answers.js';
import { settings, short, type Short } from '../../support/settings.js';

/** Numbers of the setup sentence. */
const inSentence: readonly Short[] = [
  'chargeVolume',
  'chargeStrength',
  'plates',
  'efficiency',
  'reflux',
  'heat',
  'pressure',
];

describe('the questions of a page', () => {
  it('are the same when a number changes that the page does not run on', () => {
    const elsewhere = withValue(startingScenario, 'asked.pressure_Pa', 20_000);
    expect(ceilingQuestions(elsewhere)).toEqual(ceilingQuestions(startingScenario));
    expect(comparison(elsewhere)).toEqual(comparison(startingScenario));
  });

  it('are plain data that survive being written down', () => {
    const questions = ceilingQuestions(startingScenario);
    expect(JSON.parse(JSON.stringify(questions))).toEqual(questions);
  });

  it('differ when any number of the setup sentence differs', () => {
    const before = JSON.stringify(ceilingQuestions(startingScenario));
    for (const name of inSentence) {
      const changed = withValue(startingScenario, short[name], inputAt(short[name])!.low);
      expect(JSON.stringify(ceilingQuestions(changed))).not.toBe(before);
    }
  });

  it('have the reader’s own plates and reflux in the comparison, once', () => {
    const own = comparison(settings({ plates: 7, reflux: 2.5 }));
    expect(own.plates).toEqual([4, 7, 8, 12, 20, 30]);
    expect(own.refluxes).toEqual([1, 2, 2.5, 3, 6, 12]);
    expect(own.questions).toHaveLength(36);
    expect(comparison(startingScenario).plates).toEqual([4, 8, 12, 20, 30]);
  });
});

describe('the solver', () => {
  it('answers each question of the page with an answer of its kind', async () => {
    const questions = ceilingQuestions(startingScenario);
    const kinds = (of: object): string[] => Object.values(of).map(({ kind }: { kind: string }) => kind);
    expect(kinds(await answersTo(questions))).toEqual(kinds(questions));
  });

  it('keeps of a run what was asked for and no more', async () => {
    const { problem } = ceilingQuestions(startingScenario).run;
    const { solution } = await answerTo({ kind: 'run', problem, keep: ['spoutStrength', 'jars'] });
    expect(
      Object.keys(solution)
        .filter((name) => /_|Strength|jars|plate/u.test(name))
        .sort(),
    ).toEqual(['firstVapour_s', 'jars', 'plates', 'spoutStrength'].sort());
    expect(solution.spoutStrength).toHaveLength(solution.rows);
  });

  it('answers at every corner of the table, in a kettle that takes the charge, or says what does not go together', async () => {
    const refused = new Set<string>();
    for (let corner = 0; corner < 2 ** inSentence.length; corner += 1) {
      const numbers = inSentence.map((name, bit): [Short, number] => {
        const { low, high } = inputAt(short[name])!;
        return [name, (corner >> bit) & 1 ? high : low];
      });
      const scenario = settings(Object.fromEntries(numbers));
      const reply = await solverAtHand.answer(ceilingQuestions(scenario).run);
      if (reply.kind === 'refused') {
        // Sixty plates hold more than the smallest charge.
        expect([scenario.charge.volume_m3 < 0.001, reply.faults[0]!.expected]).toEqual([
          true,
          expect.stringContaining('hold less than half the charge'),
        ]);
        refused.add(reply.faults[0]!.argument);
      } else if (reply.answer.kind === 'run') {
        const { kind } = reply.answer.solution.ending;
        expect([numbers, ['stopped', 'kettleDry'].includes(kind)]).toEqual([numbers, true]);
      } else throw new Error(reply.answer.kind);
    }
    expect([...refused]).toEqual(['still.column.holdUp']);
  });

  it('draws a run that the library’s own tolerance would not draw otherwise', async () => {
    // Last printed digits: 0.1 L, 0.1 % vol, 1 min; half of each.
    const [halfLitreDigit_m3, halfStrengthDigit, halfMinute_s] = [5e-5, 5e-4, 30];
    const { run } = ceilingQuestions(startingScenario);
    const of = async (tolerance: number): Promise<RunResults> => {
      const problem = { ...run.problem, tolerance };
      return runResults((await answerTo({ ...run, problem })).solution, 0.9);
    };
    const [drawn, exact] = [await of(run.problem.tolerance!), await of(1e-7)];
    expect(Math.abs(drawn.volumeAbove_m3! - exact.volumeAbove_m3!)).toBeLessThan(halfLitreDigit_m3);
    expect(Math.abs(drawn.best - exact.best)).toBeLessThan(halfStrengthDigit);
    expect(Math.abs(drawn.duration_s - exact.duration_s)).toBeLessThan(halfMinute_s);
  });

  it('hands the faults of a problem back instead of breaking off', async () => {
    const { run } = ceilingQuestions(settings({ chargeStrength: 1.5 }));
    const reply = await solverAtHand.answer(run);
    expect(reply.kind).toBe('refused');
    if (reply.kind === 'refused') expect(reply.faults[0]?.argument).toBe('charge.strength');
  });

  it('counts the balance of the results in words: shares lie within the charge', async () => {
    const results = runResults((await answerTo(ceilingQuestions(startingScenario).run)).solution, 0.9);
    expect(results.volumeAbove_m3).toBeGreaterThan(0);
    expect(results.shareAbove!).toBeLessThan(results.shareCollected);
    expect(results.shareCollected).toBeLessThan(1);
    // Pure alcohol above the threshold is at least the threshold times the volume.
    expect(results.pureAlcoholAbove_m3!).toBeGreaterThan(0.9 * results.volumeAbove_m3!);
  });
});

describe('remembered', () => {
  it('computes again only when an argument is another', () => {
    let computed = 0;
    const sum = remembered((a: number, b: number) => {
      computed += 1;
      return a + b;
    });
    expect([sum(1, 2), sum(1, 2), sum(2, 2), sum(2, 2)]).toEqual([3, 3, 4, 4]);
    expect(computed).toBe(2);
  });
});
