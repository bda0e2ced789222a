// Every question of the course, at the settings a page starts with and at any other: its answer meets it,
// its hints hold the page's own numbers and keep the answer back, its reply says what a number comes to.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toSI } from '#lib/index.js';
import { answersTo } from '../../../support/answers.js';
import type { PosedQuestion, QuestionDefinition } from '../../../../explorer/entries/question/definition.js';
import { judged, meets } from '../../../../explorer/entries/question/judge.js';
import { questionNamed, questions } from '../../../../explorer/entries/question/list.js';
import { startingScenario } from '../../../../explorer/state/scenario.js';
import type { Scenario } from '../../../../explorer/state/scenario.js';
import { unitSystems, type UnitSystem } from '../../../../explorer/text/unit-systems.js';
import { settings } from '../../../support/settings.js';

const { metric } = unitSystems;

async function posed(
  definition: QuestionDefinition,
  scenario: Scenario = startingScenario,
  units: UnitSystem = metric,
): Promise<PosedQuestion | null> {
  return definition.pose({ scenario, answers: await answersTo(definition.asks(scenario)), units });
}

async function asked(name: string, scenario?: Scenario, units?: UnitSystem): Promise<PosedQuestion> {
  return (await posed(questionNamed(name)!, scenario, units))!;
}

/** The SI number that a text is read as. */
function read(question: PosedQuestion, text: string): number {
  const reading = question.read(text);
  if (reading.kind !== 'value') throw new Error(`'${text}' is no number here`);
  return reading.si;
}

function reply(question: PosedQuestion, text: string, attempt = 1): string {
  return plain(judged(read(question, text), question.asked, attempt).reply);
}

describe.each(questions.map((definition) => [definition.name, definition] as const))(
  'the question %s',
  (_name, definition) => {
    it('is met by its own answer and missed by half and by twice of it', async () => {
      const { asked } = (await posed(definition))!;
      expect(meets(asked.answer, asked)).toBe(true);
      expect(meets(asked.answer / 2, asked)).toBe(false);
      expect(meets(asked.answer * 2, asked)).toBe(false);
    });

    it('says of a number that misses what it would come to, then hints in general, then with numbers', async () => {
      const { asked } = (await posed(definition))!;
      const miss = asked.answer / 2;
      const [first, second] = [judged(miss, asked, 1).reply, judged(miss, asked, 2).reply];
      for (const text of [first, second]) expect(text).toContain(asked.reached(miss));
      expect(first).toContain(asked.hints[0]);
      expect(second).toContain(asked.hints[1]);
      expect(asked.reached(miss)).toMatch(/\d|one|two|three|four/u);
      expect(asked.hints[1]).toMatch(/\d/u);
      expect(first).not.toContain(asked.answerWords);
      expect(judged(asked.answer, asked, 1).reply).toContain(asked.answerWords);
    });

    it('can be asked at any setting of its page, or is left out', async () => {
      const setting = fc.record({
        chargeStrength: fc.double({ min: 0.01, max: 0.6, noNaN: true }),
        plates: fc.integer({ min: 0, max: 30 }),
        reflux: fc.double({ min: 0.5, max: 20, noNaN: true }),
        pressure: fc.double({ min: 60_000, max: 108_000, noNaN: true }),
      });
      await fc.assert(
        fc.asyncProperty(setting, async (set) => {
          const question = await posed(definition, settings(set));
          if (question === null) return;
          expect(Number.isFinite(question.asked.answer)).toBe(true);
          expect(`${question.lead} ${question.tail} ${question.asked.answerWords}`).not.toMatch(
            /NaN|undefined|Infinity/u,
          );
          expect(question.asked.hints.join()).not.toMatch(/NaN|undefined|Infinity/u);
        }),
        { numRuns: 25 },
      );
    });
  },
);

describe('an answer', () => {
  it('is read in the unit shown, in another, and with a decimal comma', async () => {
    const question = await asked('what-rises');
    expect(read(question, '76')).toBeCloseTo(0.76, 12);
    expect(read(question, '76,5 % vol')).toBeCloseTo(0.765, 12);
    expect(read(question, '152 proof')).toBeCloseTo(0.76, 2);
    expect(read(await asked('what-rises', undefined, unitSystems.us), '152')).toBeCloseTo(0.76, 2);
    expect(read(await asked('time-at-ratio'), '0.5 h')).toBe(toSI(30, 'min'));
    expect(read(await asked('reflux-for-ninety-six'), '4.5 : 1')).toBe(4.5);
  });

  it('of another strength is told which liquid gives it off', async () => {
    const question = await asked('what-rises');
    expect(reply(question, '60')).toMatch(/^Not yet\. A vapour of 60\.0 % vol rises from a liquid of 12\.0 % vol\./u);
    expect(reply(question, '20')).toContain('no stronger than the liquid itself');
    expect(reply(question, '99')).toContain('as strong as the azeotrope');
    expect(reply(question, '76')).toBe('Yes. Over a liquid of 30 % vol the vapour holds 75.9 % vol.');
  });

  it('of other plates is told where they stand', async () => {
    expect(reply(await asked('plates-to-ninety'), '2')).toContain('With two plates it stands at 89.0 % vol.');
    expect(reply(await asked('plates-to-ninety'), '3')).toContain('With three plates it stands at 91.7 % vol');
    expect(reply(await asked('plates-to-ninety-six'), '1', 2)).toContain('With one plate more it stands at');
  });

  it('of other parts boiled is told its ratio', async () => {
    expect(reply(await asked('boiled-per-kept'), '3')).toContain('To boil 3 for each part kept is a ratio of 2 : 1.');
    expect(reply(await asked('boiled-per-kept'), '4')).toContain('Yes. 3 sent back and 1 kept');
  });

  it('of pure alcohol over the azeotrope is told that no plate could have lifted it there', async () => {
    expect(reply(await asked('over-azeotrope'), '99')).toContain(
      'weaker than itself: no plate could have lifted it there',
    );
    expect(reply(await asked('over-azeotrope'), '96')).toContain('stronger than itself');
    expect(judged(0.972, (await asked('over-azeotrope')).asked, 1).met).toBe(true);
  });

  it('of a time is told how much would be in the jar', async () => {
    const question = await asked('time-at-ratio');
    expect(reply(question, '20')).toMatch(/In 20 min at 7 : 1 there would be 1\.0 L in the jar/u);
    // Twice the parts boiled for each part kept take twice the time: what an apprentice reckons is met.
    const here = read(question, /take (\d+)/u.exec(question.lead)![1]!);
    expect(meets(2 * here, question.asked)).toBe(true);
    expect(meets(here, question.asked)).toBe(false);
  });
});

function plain(text: string): string {
  return text.replace(/[\u00a0\u2009]/gu, ' ');
}
