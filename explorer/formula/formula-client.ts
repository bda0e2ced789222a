// The page's side of the formula engine. It starts the worker when first asked, gives it one page of formulas at a
// time, and ends it when a line takes too long: that line is told so and left out until its text changes, a new
// worker computes the rest.

import { fetchAnew } from '../offline/load-part.js';
import { startWorker } from '../offline/start-worker.js';
import workerAddress from './formula.worker.ts?worker&url';
import type { ListedFunction } from './functions/registry.js';
import { limits } from './limits.js';
import type { FormulaAsk, FormulaReply, FormulaSheet } from './sheet.js';
import { curveKey, stoppedFault, textBehind } from './stopped.js';

export type ToWorker =
  | { readonly turn: number; readonly ask: FormulaAsk }
  /** This ask is not wanted any more. */
  | { readonly drop: number };

export type ToPage =
  | { readonly is: 'ready'; readonly functions: readonly ListedFunction[] }
  | { readonly is: 'began'; readonly turn: number; readonly key: string }
  | { readonly is: 'reply'; readonly turn: number; readonly reply: FormulaReply }
  | { readonly is: 'dropped'; readonly turn: number };

/** What the client needs of a worker. */
export interface FormulaWorker {
  postMessage: (message: ToWorker) => void;
  terminate: () => void;
  onmessage: ((event: { readonly data: ToPage }) => void) | null;
  onerror: ((event: { readonly message?: string }) => void) | null;
}

export interface FormulaEngine {
  /** What a page of formulas comes to; asks are answered one after the other. Rejected where it cannot be loaded. */
  readonly answer: (ask: FormulaAsk) => Promise<FormulaReply>;
  /** The same for what can wait: null where something else was asked meanwhile, which goes first. */
  readonly whenIdle: (ask: FormulaAsk) => Promise<FormulaReply | null>;
  /** The functions formulas may use; undefined until the engine has been loaded. */
  readonly functions: () => readonly ListedFunction[] | undefined;
  /** Ends the worker; a later ask starts it again. */
  readonly close: () => void;
}

export interface EngineOptions {
  readonly start: () => FormulaWorker;
  /** What is done before a worker that could not be loaded is started once more. */
  readonly afresh: () => Promise<void>;
  readonly line_ms: number;
  readonly page_ms: number;
}

/** The engine in a worker of its own. */
export function startFormulas(options: Partial<EngineOptions> = {}): FormulaEngine {
  const { start, afresh, line_ms, page_ms } = { ...usual, ...options };
  let worker: Promise<FormulaWorker> | undefined;
  let running: FormulaWorker | undefined;
  let turn = 0;
  /** The ask that gives way to others, while it is worked on. */
  let givesWay: number | undefined;
  let asked = 0;
  let functions: readonly ListedFunction[] | undefined;
  let queue: Promise<unknown> = Promise.resolve();
  /** Text behind what was stopped, by key of the line or curve. */
  const stopped = new Map<string, string>();

  const end = (): void => {
    running?.terminate();
    running = undefined;
    worker = undefined;
  };

  /** The reply, the key of what took too long, or null where it gave way. */
  const once = async (ask: FormulaAsk, askedBefore: number | null): Promise<FormulaReply | string | null> => {
    const tell = (listed: readonly ListedFunction[]): void => void (functions = listed);
    worker ??= loaded(start(), tell).catch(async () => {
      await afresh();
      return loaded(start(), tell);
    });
    worker.catch(end);
    const able = await worker;
    running = able;
    if (askedBefore !== null && askedBefore !== asked) return null;
    turn += 1;
    givesWay = askedBefore === null ? undefined : turn;
    try {
      return await watched(able, { turn, ask }, line_ms, page_ms);
    } finally {
      givesWay = undefined;
    }
  };

  /** `askedBefore` for what gives way: how often was asked before it. */
  const answer = async (ask: FormulaAsk, askedBefore: number | null): Promise<FormulaReply | null> => {
    for (;;) {
      const out = (key: string, id: string): boolean => stopped.get(key) === textBehind(ask.sheet.lines, id);
      const sheet: FormulaSheet = {
        ...ask.sheet,
        stopped: ask.sheet.lines.map(({ id }) => id).filter((id) => out(id, id)),
      };
      const curves = ask.curves.filter(({ id }) => !out(curveKey(id), id));
      const left = ask.curves.filter(({ id }) => out(curveKey(id), id));
      const found = await once({ sheet, curves }, askedBefore);
      if (found === null) return null;
      if (typeof found !== 'string') {
        const faults = left.map(({ id, against }) => ({ id, against, outcome: { fault: stoppedFault } }));
        return { ...found, curves: [...found.curves, ...faults] };
      }
      end();
      const line = ask.sheet.lines.find(({ id }) => id === found || curveKey(id) === found);
      if (line === undefined) throw new Error('The formula engine stopped before it began');
      stopped.set(found, textBehind(ask.sheet.lines, line.id));
    }
  };

  /** One after the other. */
  const inTurn = <Result>(work: () => Promise<Result>): Promise<Result> => {
    const next = queue.then(work);
    queue = next.catch(() => undefined);
    return next;
  };

  return {
    answer: (ask) => {
      asked += 1;
      if (givesWay !== undefined) running?.postMessage({ drop: givesWay });
      return inTurn(async () => (await answer(ask, null))!);
    },
    whenIdle: (ask) => {
      const before = asked;
      return inTurn(() => answer(ask, before));
    },
    functions: () => functions,
    close: end,
  };
}

const usual: EngineOptions = {
  start: () => startWorker(workerAddress) as unknown as FormulaWorker,
  afresh: () => fetchAnew(workerAddress),
  line_ms: limits.time_ms,
  page_ms: limits.page_ms,
};

const grace_ms = 50;

/** A worker once it has said that it is there. */
function loaded(worker: FormulaWorker, tell: (functions: readonly ListedFunction[]) => void): Promise<FormulaWorker> {
  return new Promise((resolve, reject) => {
    const fail = (): void => {
      clearTimeout(timer);
      worker.terminate();
      reject(new Error('The formula engine could not be loaded'));
    };
    const timer = setTimeout(fail, limits.loading_ms);
    worker.onerror = fail;
    worker.onmessage = ({ data }) => {
      if (data.is !== 'ready') return;
      clearTimeout(timer);
      tell(data.functions);
      resolve(worker);
    };
  });
}

/** Asks and waits, as long as each line takes less than `line_ms` and all less than `page_ms`. */
function watched(
  worker: FormulaWorker,
  asked: Extract<ToWorker, { readonly ask: unknown }>,
  line_ms: number,
  page_ms: number,
): Promise<FormulaReply | string | null> {
  return new Promise((resolve) => {
    let key = '';
    const settle = (found: FormulaReply | string | null): void => {
      clearTimeout(line);
      clearTimeout(page);
      worker.onmessage = null;
      worker.onerror = null;
      resolve(found);
    };
    const tooLong = (): void => settle(key);
    // A page that was busy itself reads late what the worker sent in time: it gets a little longer to read.
    const begin = (): ReturnType<typeof setTimeout> =>
      setTimeout(() => {
        line = setTimeout(tooLong, grace_ms);
      }, line_ms);
    let line = begin();
    const page = setTimeout(tooLong, page_ms);
    worker.onerror = tooLong;
    worker.onmessage = ({ data }) => {
      if (data.is === 'ready' || data.turn !== asked.turn) return;
      if (data.is === 'reply' || data.is === 'dropped') {
        settle(data.is === 'reply' ? data.reply : null);
        return;
      }
      key = data.key;
      clearTimeout(line);
      line = begin();
    };
    worker.postMessage(asked);
  });
}
