// The page's side of the solver asks each question once and hands out the very same answer again.

import { describe, expect, it } from 'vitest';
import type { Question, Reply, StagesQuestion } from '../../../explorer/worker/questions.js';
import { rememberingSolver, startSolver, type Running, type Solver } from '../../../explorer/worker/solver-client.js';

function question(fromStrength: number): StagesQuestion {
  return { kind: 'stages', activity: 'nrtl', pressure_Pa: 1e5, fromStrength, toStrengths: [] };
}

/** Counts what it is asked; refuses strengths below zero. */
function countingSolver(): Solver & { readonly asked: Question[] } {
  const asked: Question[] = [];
  return {
    asked,
    answer(questions): Promise<Reply> {
      asked.push(...questions);
      const refused = questions.some((one) => one.kind === 'stages' && one.fromStrength < 0);
      const faults = [{ argument: 'fromStrength', value: -1, expected: 'a strength' }];
      return Promise.resolve(
        refused
          ? { kind: 'refused', faults }
          : { kind: 'answered', answers: questions.map(() => ({ kind: 'stages', stages: [], ladder: [] })) },
      );
    },
  };
}

async function answers(solver: Solver, ...strengths: number[]) {
  const reply = await solver.answer(strengths.map(question));
  return reply.kind === 'answered' ? reply.answers : [];
}

describe('the remembering solver', () => {
  it('asks only what it does not know, and keeps the order of the questions', async () => {
    const remote = countingSolver();
    const solver = rememberingSolver(remote);
    const [first, second] = await answers(solver, 0.1, 0.2);
    const [third, again, fourth] = await answers(solver, 0.3, 0.1, 0.4);
    expect(remote.asked).toEqual([0.1, 0.2, 0.3, 0.4].map(question));
    expect(again).toBe(first);
    expect(new Set([first, second, third, fourth]).size).toBe(4);
  });

  it('asks nothing at all when all is known', async () => {
    const remote = countingSolver();
    const solver = rememberingSolver(remote);
    const before = await answers(solver, 0.1);
    const after = await answers(solver, 0.1);
    expect(remote.asked).toHaveLength(1);
    expect(after[0]).toBe(before[0]);
  });

  it('forgets the oldest, never what it was just asked', async () => {
    const remote = countingSolver();
    const solver = rememberingSolver(remote);
    for (let k = 0; k < 200; k += 1) expect(await answers(solver, 0.5, k / 1000)).toHaveLength(2);
    expect(remote.asked.filter((one) => one.kind === 'stages' && one.fromStrength === 0.5)).toHaveLength(1);
    await answers(solver, 0);
    expect(remote.asked.filter((one) => one.kind === 'stages' && one.fromStrength === 0)).toHaveLength(2);
  });

  it('hands a refusal on and remembers nothing of it', async () => {
    const remote = countingSolver();
    const solver = rememberingSolver(remote);
    expect((await solver.answer([question(-1)])).kind).toBe('refused');
    expect((await solver.answer([question(-1)])).kind).toBe('refused');
    expect(remote.asked).toHaveLength(2);
  });
});

describe('the solver in its worker', () => {
  it('answers all that was asked of a worker that lacked a part, once another has been started', async () => {
    const workers: string[] = [];
    const first = (): Running => {
      let end: () => void = () => undefined;
      const gone = new Promise<never>((_, reject) => (end = () => reject(new Error('ended'))));
      return {
        // What needs the part is told so; what does not has yet to be answered.
        answer: (questions) =>
          questions.length > 1 ? new Promise(() => undefined) : Promise.resolve({ kind: 'part-missing', why: 'late' }),
        gone,
        end,
      };
    };
    const second = (): Running => ({
      answer: (questions) => countingSolver().answer(questions),
      gone: new Promise(() => undefined),
      end: () => undefined,
    });
    const solver = startSolver({
      start: () => (workers.push('worker') === 1 ? first() : second()),
      afresh: () => Promise.resolve(),
    });
    const [two, one] = await Promise.all([answers(solver, 0.1, 0.2), answers(solver, 0.3)]);
    expect([two.length, one.length, workers.length]).toEqual([2, 1, 2]);
  });

  it('hands on what the solver throws, and asks no other worker for it', async () => {
    let started = 0;
    const solver = startSolver({
      start: () => {
        started += 1;
        return {
          answer: () => Promise.resolve({ threw: new Error('no such curve') }),
          gone: new Promise(() => undefined),
          end: () => undefined,
        };
      },
      afresh: () => Promise.resolve(),
    });
    await expect(answers(solver, 0.1)).rejects.toThrow('no such curve');
    expect(started).toBe(1);
  });
});
