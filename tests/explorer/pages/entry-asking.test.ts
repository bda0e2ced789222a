// What entries ask together: one request, each question once, the same answers for the same questions, pencil lines.

import { describe, expect, it } from 'vitest';
import { EntryAsking } from '../../../explorer/pages/entry-asking.js';
import { startingScenario } from '../../../explorer/state/parameters.js';
import type { Answer, Question, Reply } from '../../../explorer/worker/questions.js';
import { turn } from '../../support/settled.js';

const stages = (fromStrength: number): Question => ({
  kind: 'stages',
  activity: 'raoult',
  pressure_Pa: 1e5,
  fromStrength,
  toStrengths: [],
});
/** An answer that says what was asked. */
const answerTo = (question: Question): Answer => ({
  kind: 'stages',
  stages: [],
  ladder: question.kind === 'stages' ? [question.fromStrength] : [],
});

function desk(): {
  asking: EntryAsking;
  requests: (readonly Question[])[];
  refuse: (now: boolean) => void;
  changes: () => number;
} {
  const requests: (readonly Question[])[] = [];
  let [refused, changes] = [false, 0];
  const solver = {
    answer: (questions: readonly Question[]): Promise<Reply> => {
      requests.push(questions);
      const fault = { argument: 'plates', value: -1, expected: 'none below 0' };
      return Promise.resolve(
        refused
          ? { kind: 'refused', faults: [fault] as never }
          : { kind: 'answered', answers: questions.map(answerTo) },
      );
    },
  };
  const asking = new EntryAsking(
    () => solver,
    () => (changes += 1),
  );
  return { asking, requests, refuse: (now) => (refused = now), changes: () => changes };
}

const one = { a: stages(0.1), b: stages(0.2) };
const data = {};

describe('entries of a page', () => {
  it('ask one request with each question once, and get each its own answers by name', async () => {
    const { asking, requests } = desk();
    const other = { mine: stages(0.2) };
    asking.ask(
      new Map([
        ['e1', { data, asks: one }],
        ['e2', { data, asks: other }],
      ]),
      startingScenario,
    );
    await turn();
    expect(requests).toEqual([[stages(0.1), stages(0.2)]]);
    expect(asking.now('e1', data)!.answers).toEqual({ a: answerTo(stages(0.1)), b: answerTo(stages(0.2)) });
    expect(asking.now('e2', data)!.answers).toEqual({ mine: answerTo(stages(0.2)) });
  });

  it('keep the very same answers while their questions stay, whatever others ask', async () => {
    const { asking, requests } = desk();
    asking.ask(new Map([['e1', { data, asks: one }]]), startingScenario);
    await turn();
    const before = asking.now('e1', data);
    const next = { ...startingScenario, plates: 20 };
    asking.ask(
      new Map([
        ['e1', { data, asks: one }],
        ['e2', { data, asks: { c: stages(0.3) } }],
      ]),
      next,
    );
    await turn();
    expect(asking.now('e1', data)).toBe(before);
    expect(asking.now('e2', data)!.scenario).toBe(next);
    asking.ask(new Map([['e1', { data, asks: one }]]), next);
    const asked = requests.length;
    asking.ask(new Map([['e1', { data, asks: one }]]), next);
    expect(requests).toHaveLength(asked);
  });

  it('show no answer to what an entry was before it was changed', async () => {
    const { asking } = desk();
    asking.ask(new Map([['e1', { data, asks: one }]]), startingScenario);
    await turn();
    expect(asking.now('e1', { show: 'something else' })).toBeUndefined();
  });

  it('keep their answers when the numbers are refused, and say why', async () => {
    const { asking, refuse } = desk();
    asking.ask(new Map([['e1', { data, asks: one }]]), startingScenario);
    await turn();
    const before = asking.now('e1', data);
    refuse(true);
    asking.ask(new Map([['e1', { data, asks: { a: stages(0.9) } }]]), { ...startingScenario, plates: -1 });
    await turn();
    expect(asking.now('e1', data)).toBe(before);
    expect(asking.refusal).not.toBe('');
  });

  it('have the answers of a pencil line at once where they were the latest, and ask for them otherwise', async () => {
    const { asking, requests } = desk();
    asking.ask(new Map([['e1', { data, asks: one }]]), startingScenario);
    await turn();
    const made = { data, common: {} };
    expect(asking.pencil(startingScenario, 'e1', made, () => one)).toBe(asking.now('e1', data));
    const kept = { ...startingScenario, plates: 5 };
    const asks = (): typeof one => ({ a: stages(0.5), b: stages(0.6) });
    expect(asking.pencil(kept, 'e1', made, asks)).toBeUndefined();
    await turn();
    expect(asking.pencil(kept, 'e1', made, asks)!.answers).toEqual({
      a: answerTo(stages(0.5)),
      b: answerTo(stages(0.6)),
    });
    expect(requests).toHaveLength(2);
  });
});
