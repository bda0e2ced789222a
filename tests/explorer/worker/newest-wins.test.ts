// Answers may come in any order; the page must end with the newest and never go back.

import { describe, expect, it, vi } from 'vitest';
import { newestWins } from '../../../explorer/worker/newest-wins.js';
import { turn } from '../../support/settled.js';

interface Open {
  readonly request: string;
  readonly answer: (text: string) => void;
  readonly fail: (error: Error) => void;
}

function lane() {
  const open: Open[] = [];
  const shown: string[] = [];
  const failed = vi.fn();
  const signals: AbortSignal[] = [];
  const { request } = newestWins<string, string>(
    (asked, signal) => {
      signals.push(signal);
      return new Promise((answer, fail) => open.push({ request: asked, answer, fail }));
    },
    (answer) => shown.push(answer),
    failed,
  );
  return { request, open, shown, failed, signals };
}

describe('of several requests', () => {
  it('an answer that comes after a newer one is never shown', async () => {
    const { request, open, shown } = lane();
    request('a');
    request('b');
    open[1]!.answer('B');
    await turn();
    open[0]!.answer('A');
    await turn();
    expect(shown).toEqual(['B']);
  });

  it('only the newest of those that wait is asked', async () => {
    const { request, open, shown } = lane();
    for (const name of ['a', 'b', 'c', 'd', 'e']) request(name);
    expect(open.map((one) => one.request)).toEqual(['a', 'b']);
    open[0]!.answer('A');
    await turn();
    expect(open.map((one) => one.request)).toEqual(['a', 'b', 'e']);
    open[1]!.answer('B');
    open[2]!.answer('E');
    await turn();
    expect(shown).toEqual(['A', 'B', 'E']);
  });

  it('the newest is shown last whatever the order of the answers', async () => {
    for (const order of [
      [0, 1, 2],
      [1, 0, 2],
      [1, 2, 0],
    ]) {
      const { request, open, shown } = lane();
      request('a');
      request('b');
      request('c');
      for (const index of order) {
        open[index]!.answer(open[index]!.request);
        await turn();
      }
      expect(shown.at(-1)).toBe('c');
      expect(shown).toEqual([...shown].sort());
    }
  });

  it('one that fails is told of, and those after it go on', async () => {
    const { request, open, shown, failed } = lane();
    request('a');
    open[0]!.fail(new Error('no worker'));
    await turn();
    request('b');
    open[1]!.answer('B');
    await turn();
    expect(failed).toHaveBeenCalledOnce();
    expect(shown).toEqual(['B']);
  });

  it('a failure that comes late is not told of', async () => {
    const { request, open, shown, failed } = lane();
    request('a');
    request('b');
    open[1]!.answer('B');
    await turn();
    open[0]!.fail(new Error('late'));
    await turn();
    expect(failed).not.toHaveBeenCalled();
    expect(shown).toEqual(['B']);
  });

  it('nobody waits any more for the answer to an older one', async () => {
    const signals: AbortSignal[] = [];
    const answers: (() => void)[] = [];
    const { request } = newestWins<string, string>(
      (_asked, signal) => {
        signals.push(signal);
        return new Promise((answer) => answers.push(() => answer('')));
      },
      () => undefined,
      () => undefined,
    );
    request('a');
    request('b');
    answers[1]!();
    await turn();
    expect(signals.map(({ aborted }) => aborted)).toEqual([true, false]);
  });

  it('the last of those on their way gives way to a newer one that has waited a while', async () => {
    vi.useFakeTimers();
    const { request, open, shown, failed, signals } = lane();
    request('a');
    request('b');
    request('c');
    await vi.advanceTimersByTimeAsync(500);
    expect(signals.map(({ aborted }) => aborted)).toEqual([false, true]);
    open[1]!.fail(new Error('dropped'));
    await vi.advanceTimersByTimeAsync(0);
    expect([open.map((one) => one.request), failed.mock.calls.length]).toEqual([['a', 'b', 'c'], 0]);
    open[0]!.answer('A');
    open[2]!.answer('C');
    await vi.advanceTimersByTimeAsync(500);
    expect([shown, signals.map(({ aborted }) => aborted)]).toEqual([
      ['A', 'C'],
      [false, true, false],
    ]);
    vi.useRealTimers();
  });
});
