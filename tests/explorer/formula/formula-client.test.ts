// The page's side of the engine: what takes too long is stopped, the rest goes on. Here the worker is a stand-in that
// works or hangs as told; the real one is in formula-worker.browser.test.ts.

import { describe, expect, it, vi } from 'vitest';
import { answer } from '../../../explorer/formula/answer.js';
import {
  startFormulas,
  type FormulaWorker,
  type ToPage,
  type ToWorker,
} from '../../../explorer/formula/formula-client.js';
import { sheetOf, told } from '../../support/formulas.js';
import { onFakeClock, turn as oneTurn } from '../../support/settled.js';

/** A worker that hangs when it begins a line whose text says so, until it is terminated. */
class StandIn implements FormulaWorker {
  onmessage: FormulaWorker['onmessage'] = null;
  onerror: FormulaWorker['onerror'] = null;
  terminated = false;
  readonly asked: ToWorker[] = [];
  /** Whether it holds its reply back until it is told to drop the ask. */
  holds = false;

  constructor(whenLoaded: 'ready' | 'error' = 'ready') {
    void oneTurn().then(() => {
      if (whenLoaded === 'ready') this.#tell({ is: 'ready', functions: [] });
      else this.onerror?.({});
    });
  }
  postMessage(message: ToWorker): void {
    this.asked.push(message);
    if ('drop' in message) {
      this.holds = false;
      void oneTurn().then(() => this.#tell({ is: 'dropped', turn: message.drop }));
      return;
    }
    if (this.holds) return;
    const { turn, ask } = message;
    void oneTurn().then(() => {
      const told: ToPage[] = [];
      const hangs = (key: string): boolean => {
        const line = ask.sheet.lines.find(({ id }) => key.endsWith(id));
        const curve = key !== line?.id;
        return (
          line?.text.includes(curve ? '# slow curve' : '# slow line') === true && !ask.sheet.stopped.includes(line.id)
        );
      };
      try {
        const reply = answer(ask, (key) => {
          told.push({ is: 'began', turn, key });
          if (hangs(key)) throw new Error('hangs');
        });
        told.push({ is: 'reply', turn, reply });
      } catch {
        // it hangs: nothing more is told
      }
      told.forEach((one) => this.#tell(one));
    });
  }
  terminate(): void {
    this.terminated = true;
    this.onmessage = null;
  }
  #tell(data: ToPage): void {
    if (!this.terminated) this.onmessage?.({ data });
  }
}

function engine(make: () => StandIn = () => new StandIn()): {
  engine: ReturnType<typeof startFormulas>;
  workers: StandIn[];
} {
  const workers: StandIn[] = [];
  const start = (): StandIn => {
    const worker = make();
    workers.push(worker);
    return worker;
  };
  return { engine: startFormulas({ start, afresh: () => Promise.resolve(), line_ms: 30, page_ms: 400 }), workers };
}

const ask = (...texts: string[]): Parameters<ReturnType<typeof startFormulas>['answer']>[0] => ({
  sheet: sheetOf(texts),
  curves: [],
});

describe('the formula engine of a page', () => {
  it('starts one worker and keeps it', async () => {
    const { engine: formulas, workers } = engine();
    expect((await formulas.answer(ask('a = 1', 'b = a + 1'))).results.map(told)).toEqual(['1', '2']);
    expect((await formulas.answer(ask('a = 2'))).results.map(told)).toEqual(['2']);
    expect(workers).toHaveLength(1);
  });

  it('stops what takes too long, says so at its line, and computes the others', async () => {
    const { engine: formulas, workers } = engine();
    const { results } = await formulas.answer(ask('a = 1', 'b = 2 # slow line', 'c = b + 1', 'd = a + 1'));
    expect(results.map(told)).toEqual([
      '1',
      'stopped: It took too long (more than 1 s) or too much memory, and was stopped; change it, and it is tried again',
      'waits: It waits for ‘b’, which has no value',
      '2',
    ]);
    expect(workers.map(({ terminated }) => terminated)).toEqual([true, false]);
  });

  it('does not try it again until its text, or that of a line it uses, has changed', async () => {
    const { engine: formulas, workers } = engine();
    await formulas.answer(ask('a = 1', 'b = a # slow line'));
    await formulas.answer(ask('other = 1', 'b = a # slow line', 'a = 1'));
    expect(workers).toHaveLength(2);
    await formulas.answer(ask('a = 2', 'b = a # slow line'));
    expect(workers).toHaveLength(3);
    expect((await formulas.answer(ask('a = 2', 'b = a'))).results.map(told)).toEqual(['2', '2']);
  });

  it('stops several, one after the other', async () => {
    const { engine: formulas } = engine();
    const { results } = await formulas.answer(ask('a = 1 # slow line', 'b = 2 # slow line', 'c = 3'));
    expect(results.map((result) => told(result).slice(0, 7))).toEqual(['stopped', 'stopped', '3']);
  });

  it('stops a curve and keeps the value of its line', async () => {
    const { engine: formulas } = engine();
    const texts = ['volume * 2 # slow curve', 'volume * 3'];
    const curves = ['line 0', 'line 1'].map((id) => ({ id, against: 'volume', from: '0', to: '9' }));
    const reply = await formulas.answer({ sheet: sheetOf(texts), curves });
    expect(reply.results.map(told)).toEqual(['240 L', '360 L']);
    const byId = new Map(reply.curves.map(({ id, outcome }) => [id, outcome]));
    expect(byId.get('line 0')).toMatchObject({ fault: { kind: 'stopped' } });
    expect(byId.get('line 1')).toHaveProperty('x');
  });

  it('answers asks one after the other', async () => {
    const { engine: formulas } = engine();
    const replies = await Promise.all([
      formulas.answer(ask('1')),
      formulas.answer(ask('2')),
      formulas.answer(ask('3')),
    ]);
    expect(replies.map(({ results }) => told(results[0]!))).toEqual(['1', '2', '3']);
  });

  it('is started once more by itself where it could not be loaded', async () => {
    let loads = 0;
    const { engine: formulas } = engine(() => new StandIn(++loads === 1 ? 'error' : 'ready'));
    expect((await formulas.answer(ask('1'))).results.map(told)).toEqual(['1']);
  });

  it('lets what can wait give way to what is asked meanwhile, and says so', async () => {
    const { engine: formulas, workers } = engine();
    await formulas.answer(ask('1'));
    workers[0]!.holds = true;
    const idle = formulas.whenIdle(ask('2'));
    await expect.poll(() => workers[0]!.asked.length).toBe(2);
    const next = formulas.answer(ask('3'));
    expect(await idle).toBeNull();
    expect((await next).results.map(told)).toEqual(['3']);
    expect(workers).toHaveLength(1);
    expect(workers[0]!.asked.slice(2)).toEqual([{ drop: 2 }, expect.objectContaining({ turn: 3 })]);
  });

  it('does not even begin what can wait where something else was asked before its turn', async () => {
    const { engine: formulas, workers } = engine();
    const first = formulas.answer(ask('1'));
    const idle = formulas.whenIdle(ask('2'));
    const last = formulas.answer(ask('3'));
    expect(await idle).toBeNull();
    expect([...(await first).results, ...(await last).results].map(told)).toEqual(['1', '3']);
    expect(workers[0]!.asked).toHaveLength(2);
  });

  it('answers what can wait when nothing else is asked', async () => {
    const { engine: formulas } = engine();
    expect((await formulas.whenIdle(ask('1')))?.results.map(told)).toEqual(['1']);
  });

  it('says that it could not be loaded, and tries again when asked again', async () => {
    let loads = 0;
    const { engine: formulas } = engine(() => new StandIn(++loads <= 2 ? 'error' : 'ready'));
    await expect(formulas.answer(ask('1'))).rejects.toThrow('could not be loaded');
    expect((await formulas.answer(ask('1'))).results.map(told)).toEqual(['1']);
  });

  it('ends its worker when closed, and starts another when asked again', async () => {
    const { engine: formulas, workers } = engine();
    await formulas.answer(ask('1'));
    formulas.close();
    expect(workers[0]!.terminated).toBe(true);
    expect((await formulas.answer(ask('2'))).results.map(told)).toEqual(['2']);
  });
});

describe('what the formulas of a page may take', () => {
  /** A worker that says for ever that it has begun another line, one every so often. */
  class Slow implements FormulaWorker {
    onmessage: FormulaWorker['onmessage'] = null;
    onerror: FormulaWorker['onerror'] = null;
    terminated = false;
    readonly #every_ms: number;
    constructor(every_ms: number) {
      this.#every_ms = every_ms;
      void onFakeClock(0).then(() => this.onmessage?.({ data: { is: 'ready', functions: [] } }));
    }
    postMessage(message: ToWorker): void {
      if ('drop' in message) return;
      const { turn, ask } = message;
      const work = async (): Promise<void> => {
        for (let k = 0; !this.terminated; k = (k + 1) % ask.sheet.lines.length) {
          this.onmessage?.({ data: { is: 'began', turn, key: ask.sheet.lines[k]!.id } });
          await onFakeClock(this.#every_ms);
        }
      };
      void work();
    }
    terminate(): void {
      this.terminated = true;
    }
  }

  /** When the worker is ended, ms after it was asked. */
  async function endedAfter(every_ms: number): Promise<number> {
    vi.useFakeTimers();
    const worker = new Slow(every_ms);
    let starts = 0;
    const start = (): FormulaWorker => (starts++ === 0 ? worker : new StandIn());
    void startFormulas({ start }).answer(ask('1', '2', '3'));
    for (let time_ms = 0; time_ms < 20_000; time_ms += 100) {
      if (worker.terminated) return time_ms;
      await vi.advanceTimersByTimeAsync(100);
    }
    return Infinity;
  }

  it('is a second for a line', async () => {
    const time_ms = await endedAfter(1e6);
    expect(time_ms).toBeGreaterThanOrEqual(1000);
    expect(time_ms).toBeLessThanOrEqual(1200);
  });

  it('and five for all of them, though each is quick enough', async () => {
    const time_ms = await endedAfter(900);
    expect(time_ms).toBeGreaterThanOrEqual(5000);
    expect(time_ms).toBeLessThanOrEqual(5200);
  });
});
