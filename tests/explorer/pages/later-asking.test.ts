// What is asked once the page stands: one question at a time, shown as it comes, stopped and gone on with.

import { beforeEach, describe, expect, it, vi } from 'vitest';
import { LaterAsking } from '../../../explorer/pages/later-asking.js';
import { startingScenario } from '../../../explorer/state/parameters.js';
import type { Question, Reply } from '../../../explorer/worker/questions.js';
import { onFakeClock } from '../../support/settled.js';

const question = (fromStrength: number): Question => ({
  kind: 'stages',
  activity: 'raoult',
  pressure_Pa: 1e5,
  fromStrength,
  toStrengths: [],
});
const cells = (from: number): Record<string, Question> =>
  Object.fromEntries([0, 1, 2, 3].map((cell) => [`c${String(cell)}`, question(Math.round(100 * from + cell) / 100)]));

beforeEach(() => void vi.useFakeTimers());

/** A solver that takes 100 ms a question. */
function desk(): { later: LaterAsking; asked: number[] } {
  const asked: number[] = [];
  const solver = {
    answer: async ([one]: readonly Question[]): Promise<Reply> => {
      await onFakeClock(100);
      if (one?.kind !== 'stages') return { kind: 'refused', faults: [] };
      asked.push(one.fromStrength);
      if (one.fromStrength === 0.92) return { kind: 'refused', faults: [] };
      return { kind: 'answered', answers: [{ kind: 'stages', stages: [], ladder: [one.fromStrength] }] };
    },
  };
  return { later: new LaterAsking(() => solver, vi.fn()), asked };
}

describe('what is asked later', () => {
  it('waits for quiet, comes one at a time in order, and says how far it is', async () => {
    const { later, asked } = desk();
    later.want(new Map([['map', cells(0.1)]]), startingScenario);
    await vi.advanceTimersByTimeAsync(200);
    expect([asked, later.of('map')!.state]).toEqual([[], 'waiting']);
    await vi.advanceTimersByTimeAsync(260);
    expect(later.of('map')).toMatchObject({ done: 2, of: 4, state: 'running' });
    await vi.advanceTimersByTimeAsync(1000);
    expect(later.of('map')).toMatchObject({ done: 4, of: 4, state: 'finished' });
    expect(asked).toEqual([0.1, 0.11, 0.12, 0.13]);
  });

  it('stops where it is told to, keeps what has come, and goes on from there', async () => {
    const { later, asked } = desk();
    later.want(new Map([['map', cells(0.1)]]), startingScenario);
    await vi.advanceTimersByTimeAsync(460);
    later.of('map')!.stop();
    await vi.advanceTimersByTimeAsync(2000);
    const stopped = later.of('map')!;
    expect(stopped.state).toBe('stopped');
    expect(stopped.done).toBeLessThan(4);
    stopped.goOn();
    await vi.advanceTimersByTimeAsync(2000);
    expect(later.of('map')!.state).toBe('finished');
    expect(asked).toEqual([0.1, 0.11, 0.12, 0.13]);
  });

  it('leaves off for new numbers, with the old answers standing until the first new one comes', async () => {
    const { later } = desk();
    later.want(new Map([['map', cells(0.1)]]), startingScenario);
    await vi.advanceTimersByTimeAsync(2000);
    const next = { ...startingScenario, plates: 20 };
    later.want(new Map([['map', cells(0.5)]]), next);
    await vi.advanceTimersByTimeAsync(200);
    expect(later.of('map')).toMatchObject({ done: 4, scenario: startingScenario });
    await vi.advanceTimersByTimeAsync(200);
    expect(later.of('map')).toMatchObject({ done: 1, scenario: next });
  });

  it('passes over a question that cannot be answered', async () => {
    const { later } = desk();
    later.want(new Map([['map', cells(0.9)]]), startingScenario);
    await vi.advanceTimersByTimeAsync(2000);
    expect(later.of('map')!.state).toBe('finished');
    expect(Object.keys(later.of('map')!.answers)).toEqual(['c0', 'c1', 'c3']);
  });

  it('rests while its page is not shown', async () => {
    const { later, asked } = desk();
    later.want(new Map([['map', cells(0.1)]]), startingScenario);
    later.rest();
    await vi.advanceTimersByTimeAsync(2000);
    expect(asked).toEqual([]);
    later.wake();
    await vi.advanceTimersByTimeAsync(2000);
    expect(later.of('map')!.state).toBe('finished');
  });
});
