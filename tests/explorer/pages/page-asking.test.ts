// What entries ask together: one request, each question once, the same answers for the same questions, pencil lines.

import { describe, expect, it } from 'vitest';
import { PageAsking, type Want, type Wanted } from '../../../explorer/pages/page-asking.js';
import { startingScenario } from '../../../explorer/state/scenario.js';
import type { StagesQuestion } from '../../../explorer/worker/kinds/stages.js';
import type { Answer, Asks, Question, Reply } from '../../../explorer/worker/questions.js';
import type { How } from '../../../explorer/worker/solver-client.js';
import { turn } from '../../support/settled.js';
import { settings } from '../../support/settings.js';

const stages = (fromStrength: number): StagesQuestion => ({
  kind: 'stages',
  activity: 'raoult',
  pressure_Pa: 1e5,
  fromStrength,
  toStrengths: [],
});
/** An answer that says what was asked; the very same for the same question, as the solver has it. */
const answers = new Map<number, Answer>();
function answerTo(question: Question): Answer {
  const { fromStrength } = question as StagesQuestion;
  const answer = answers.get(fromStrength) ?? { kind: 'stages', stages: [], ladder: [fromStrength] };
  answers.set(fromStrength, answer);
  return answer;
}

/** A solver that refuses strengths of 1 and more and never answers those below 0. */
function desk() {
  const asked: number[] = [];
  const hows: How[] = [];
  let changes = 0;
  const solver = {
    answer: (question: Question, how: How = {}): Promise<Reply> => {
      const { fromStrength } = question as StagesQuestion;
      asked.push(fromStrength);
      hows.push(how);
      if (fromStrength < 0) return new Promise(() => undefined);
      const faults = [{ argument: 'plates', value: -1, expected: 'none below 0' }] as never;
      return Promise.resolve(
        fromStrength >= 1 ? { kind: 'refused', faults } : { kind: 'answered', answer: answerTo(question) },
      );
    },
  };
  const asking = new PageAsking(
    () => solver,
    () => (changes += 1),
  );
  return { asking, asked, hows, changes: () => changes };
}

const data = {};
const common = {};
const want = (asks: Asks, more: Partial<Want> = {}): Want => ({
  data,
  scenario: startingScenario,
  common,
  asks,
  ...more,
});
const wanted = (wants: Readonly<Record<string, Want>>): Wanted => new Map(Object.entries(wants));
const one = { a: stages(0.1), b: stages(0.2) };

describe('entries of a page', () => {
  it('ask each question once, and get each its own answers by name', async () => {
    const { asking, asked } = desk();
    asking.ask(wanted({ e1: want(one), e2: want({ mine: stages(0.2) }) }));
    await turn();
    expect(asked).toEqual([0.1, 0.2]);
    expect(asking.now('e1', data)!.answers).toEqual({ a: answerTo(stages(0.1)), b: answerTo(stages(0.2)) });
    expect(asking.now('e2', data)!.answers).toEqual({ mine: answerTo(stages(0.2)) });
  });

  it('are known by the content of what they ask: the same again asks nothing and changes nothing', async () => {
    const { asking, asked, changes } = desk();
    asking.ask(wanted({ e1: want(one) }));
    await turn();
    const before = [asking.now('e1', data), asked.length, changes()];
    asking.ask(wanted({ e1: want({ a: stages(0.1), b: stages(0.2) }) }));
    await turn();
    expect([asking.now('e1', data), asked.length, changes()]).toEqual(before);
    expect(asking.now('e1', data)).toBe(before[0]);
  });

  it('keep the very same answers while their questions stay, whatever others ask', async () => {
    const { asking } = desk();
    asking.ask(wanted({ e1: want(one) }));
    await turn();
    const before = asking.now('e1', data);
    asking.ask(wanted({ e1: want(one), e2: want({ c: stages(0.3) }) }));
    await turn();
    expect(asking.now('e1', data)).toBe(before);
    expect(asking.now('e2', data)).toBeDefined();
  });

  it('have the numbers of the moment where these ask nothing else, with the very same answers', async () => {
    const { asking, asked } = desk();
    asking.ask(wanted({ e1: want(one) }));
    await turn();
    const before = asking.now('e1', data)!;
    const scenario = { ...startingScenario, wantedStrength: 0.7 };
    asking.ask(wanted({ e1: want(one, { scenario }) }));
    expect(asked).toHaveLength(2);
    expect(asking.now('e1', data)!.scenario).toBe(scenario);
    expect(asking.now('e1', data)!.answers).toBe(before.answers);
    expect(asking.scenario).toBe(scenario);
  });

  it('keep their answers to the numbers before until those to new ones have come', async () => {
    const { asking } = desk();
    asking.ask(wanted({ e1: want(one) }));
    await turn();
    const before = asking.now('e1', data);
    const scenario = settings({ plates: 20 });
    asking.ask(wanted({ e1: want({ a: stages(-1) }, { scenario }) }));
    await turn();
    expect(asking.now('e1', data)).toBe(before);
    expect(asking.scenario).toBe(startingScenario);
  });

  it('show no answer to what an entry was before it was changed', async () => {
    const { asking } = desk();
    asking.ask(wanted({ e1: want(one) }));
    await turn();
    expect(asking.now('e1', { show: 'something else' })).toBeUndefined();
  });

  it('keep their answers when the numbers are refused, and say why; others go on', async () => {
    const { asking } = desk();
    asking.ask(wanted({ e1: want(one), e2: want(one) }));
    await turn();
    const before = asking.now('e1', data);
    const scenario = settings({ plates: 2 });
    asking.ask(wanted({ e1: want({ a: stages(2) }, { scenario }), e2: want({ a: stages(0.4) }, { scenario }) }));
    await turn();
    expect(asking.now('e1', data)).toBe(before);
    expect(asking.now('e2', data)!.scenario).toBe(scenario);
    expect([asking.refusal !== '', asking.scenario]).toEqual([true, startingScenario]);
    asking.ask(wanted({ e1: want(one), e2: want(one) }));
    await turn();
    expect(asking.refusal).toBe('');
  });

  it('that stand apart are waited for by nobody', async () => {
    const { asking } = desk();
    asking.ask(wanted({ e1: want(one), own: want({ a: stages(-1) }, { apart: true }) }));
    await turn();
    expect(asking.now('e1', data)).toBeDefined();
    expect(asking.now('own', data)).toBeUndefined();
  });

  it('have the answers of a pencil line, and a line that is refused troubles nobody', async () => {
    const { asking, asked } = desk();
    const pencil = true;
    const kept = settings({ plates: 5 });
    asking.ask(
      wanted({
        e1: want(one),
        'e1 as now': want(one, { pencil }),
        'e1 kept': want({ a: stages(0.5), b: stages(0.6) }, { pencil, scenario: kept }),
        'e1 too far': want({ a: stages(2), b: stages(0.6) }, { pencil, scenario: kept }),
      }),
    );
    await turn();
    expect(asked).toEqual([0.1, 0.2, 0.5, 0.6, 2]);
    expect(asking.now('e1 kept', data)!.answers).toEqual({ a: answerTo(stages(0.5)), b: answerTo(stages(0.6)) });
    expect(asking.now('e1 as now', data)!.answers.a).toBe(asking.now('e1', data)!.answers.a);
    expect([asking.now('e1 too far', data), asking.refusal, asking.scenario]).toEqual([
      undefined,
      '',
      startingScenario,
    ]);
  });

  it('say how urgent they are, and hear how far a long run has come', async () => {
    const { asking, hows } = desk();
    asking.ask(wanted({ e1: want({ a: stages(-1) }) }), 'first');
    await turn();
    expect(hows[0]!.urgency).toBe('first');
    hows[0]!.reached!(600);
    expect(asking.reached_s).toBe(600);
  });
});
