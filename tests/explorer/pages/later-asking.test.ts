// What is asked once the page stands: shown as it comes, stopped and gone on with, dropped for new numbers.

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LaterAsking } from '../../../explorer/pages/later-asking.js';
import type { Want, Wanted } from '../../../explorer/pages/page-asking.js';
import { startingScenario } from '../../../explorer/state/scenario.js';
import type { StagesQuestion } from '../../../explorer/worker/kinds/stages.js';
import type { Asks, Question, Reply } from '../../../explorer/worker/questions.js';
import type { How } from '../../../explorer/worker/solver-client.js';
import { onFakeClock } from '../../support/settled.js';
import { settings } from '../../support/settings.js';

const question = (fromStrength: number): StagesQuestion => ({
  kind: 'stages',
  activity: 'raoult',
  pressure_Pa: 1e5,
  fromStrength,
  toStrengths: [],
});
const cells = (from: number): Asks =>
  Object.fromEntries([0, 1, 2, 3].map((cell) => [`c${String(cell)}`, question(Math.round(100 * from + cell) / 100)]));

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A solver that takes 100 ms a question and works on one at a time, as a single worker does; 0.92 it refuses. */
function desk() {
  const answered: number[] = [];
  const hows: How[] = [];
  let before: Promise<unknown> = Promise.resolve();
  const solver = {
    answer: (one: Question, how: How = {}): Promise<Reply> => {
      hows.push(how);
      const { fromStrength } = one as StagesQuestion;
      const reply = before.then(async (): Promise<Reply> => {
        if (how.signal?.aborted === true) throw how.signal.reason as Error;
        await onFakeClock(100);
        answered.push(fromStrength);
        if (fromStrength === 0.92) return { kind: 'refused', faults: [] };
        return { kind: 'answered', answer: { kind: 'stages', stages: [], ladder: [fromStrength] } };
      });
      before = reply.catch(() => undefined);
      return reply;
    },
  };
  return { later: new LaterAsking(() => solver, vi.fn()), answered, hows };
}

const [data, common] = [{}, {}];
const map = (asks: Asks, more: Partial<Want> = {}): Wanted =>
  new Map([['map', { data, scenario: startingScenario, common, asks, ...more }]]);
const elsewhere = settings({ plates: 20 });

describe('what is asked later', () => {
  it('comes in order, gives way to all else, and says how far it is', async () => {
    const { later, answered, hows } = desk();
    later.want(map(cells(0.1)));
    expect(later.of('map')).toMatchObject({ done: 0, of: 4, state: 'waiting', whole: undefined });
    await vi.advanceTimersByTimeAsync(210);
    expect(later.of('map')).toMatchObject({ done: 2, of: 4, state: 'running', whole: undefined });
    await vi.advanceTimersByTimeAsync(1000);
    expect(later.of('map')).toMatchObject({ done: 4, of: 4, state: 'finished' });
    expect(Object.keys(later.of('map')!.whole!.answers)).toEqual(['c0', 'c1', 'c2', 'c3']);
    expect(answered).toEqual([0.1, 0.11, 0.12, 0.13]);
    expect(new Set(hows.map(({ urgency }) => urgency))).toEqual(new Set(['later']));
  });

  it('stops where it is told to, keeps what has come, and goes on from there', async () => {
    const { later, answered } = desk();
    later.want(map(cells(0.1)));
    await vi.advanceTimersByTimeAsync(210);
    later.of('map')!.stop();
    await vi.advanceTimersByTimeAsync(2000);
    const stopped = later.of('map')!;
    expect(stopped).toMatchObject({ state: 'stopped', done: 2 });
    stopped.goOn();
    await vi.advanceTimersByTimeAsync(2000);
    expect(later.of('map')!.state).toBe('finished');
    expect([...new Set(answered)]).toEqual([0.1, 0.11, 0.12, 0.13]);
  });

  it('waits for quiet with new numbers, the old answers standing until the first new one comes', async () => {
    const { later } = desk();
    later.want(map(cells(0.1)));
    await vi.advanceTimersByTimeAsync(2000);
    later.want(map(cells(0.5), { scenario: elsewhere }));
    await vi.advanceTimersByTimeAsync(340);
    expect(later.of('map')).toMatchObject({ done: 4, scenario: startingScenario });
    await vi.advanceTimersByTimeAsync(20);
    expect(later.of('map')).toMatchObject({ done: 1, scenario: elsewhere });
    expect(later.of('map')!.whole!.scenario).toBe(startingScenario);
    await vi.advanceTimersByTimeAsync(2000);
    expect(later.of('map')!.whole!.scenario).toBe(elsewhere);
  });

  it('drops what was asked for the numbers before', async () => {
    const { later, answered } = desk();
    later.want(map(cells(0.1)));
    await vi.advanceTimersByTimeAsync(150);
    later.want(map(cells(0.5), { scenario: elsewhere }));
    await vi.advanceTimersByTimeAsync(2000);
    expect(answered).toEqual([0.1, 0.11, 0.5, 0.51, 0.52, 0.53]);
  });

  it('asks nothing where new numbers ask the same, and has them', async () => {
    const { later, answered } = desk();
    later.want(map(cells(0.1)));
    await vi.advanceTimersByTimeAsync(2000);
    const { answers } = later.of('map')!.whole!;
    later.want(map(cells(0.1), { scenario: elsewhere }));
    await vi.advanceTimersByTimeAsync(2000);
    expect(answered).toHaveLength(4);
    expect(later.of('map')!.whole!.scenario).toBe(elsewhere);
    expect(later.of('map')!.whole!.answers).toBe(answers);
  });

  it('shows nothing of what an entry was before it was changed', async () => {
    const { later } = desk();
    later.want(map(cells(0.1)));
    await vi.advanceTimersByTimeAsync(2000);
    later.want(map(cells(0.5), { data: { show: 'something else' } }));
    expect(later.of('map')).toMatchObject({ done: 0, whole: undefined, state: 'waiting' });
  });

  it('passes over a question that cannot be answered', async () => {
    const { later } = desk();
    later.want(map(cells(0.9)));
    await vi.advanceTimersByTimeAsync(2000);
    expect(later.of('map')).toMatchObject({ state: 'finished', refused: 1, whole: undefined });
    expect(Object.keys(later.of('map')!.answers)).toEqual(['c0', 'c1', 'c3']);
  });

  it('rests while its page is not shown', async () => {
    const { later, answered } = desk();
    later.want(map(cells(0.1)));
    later.rest();
    await vi.advanceTimersByTimeAsync(2000);
    expect(answered).toEqual([]);
    later.wake();
    await vi.advanceTimersByTimeAsync(2000);
    expect(later.of('map')!.state).toBe('finished');
  });
});
