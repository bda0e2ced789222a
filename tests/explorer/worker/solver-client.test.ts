// The page's side of the solver asks each question once, gives the very same answer again, and drops what nobody waits
// for.

import { describe, expect, it } from 'vitest';
import type { StagesQuestion } from '../../../explorer/worker/kinds/stages.js';
import { AnswerMemory } from '../../../explorer/worker/memory.js';
import type { Ticket, Urgency } from '../../../explorer/worker/pool.js';
import type { Question, Reply } from '../../../explorer/worker/questions.js';
import { rememberingSolver } from '../../../explorer/worker/solver-client.js';
import { turn } from '../../support/settled.js';

const stages = (fromStrength: number): StagesQuestion => ({
  kind: 'stages',
  activity: 'nrtl',
  pressure_Pa: 1e5,
  fromStrength,
  toStrengths: [],
});

function desk() {
  const asked: number[] = [];
  const kept: Urgency[] = [];
  const dropped: number[] = [];
  const open: ((reply: Reply) => void)[] = [];
  const told: ((reached_s: number) => void)[] = [];
  const pool = {
    ask(question: Question, urgency: Urgency, reached: (reached_s: number) => void): Ticket {
      const { fromStrength } = question as StagesQuestion;
      asked.push(fromStrength);
      told.push(reached);
      return {
        reply: new Promise((done) => open.push(done)),
        drop: () => dropped.push(fromStrength) > 0,
        keep: (sooner) => kept.push(sooner),
      };
    },
  };
  const answerAll = async (): Promise<void> => {
    for (const done of open.splice(0))
      done({ kind: 'answered', answer: { kind: 'stages', stages: [], ladder: [asked.length] } });
    await turn();
  };
  return { solver: rememberingSolver(pool, new AnswerMemory(1e6)), asked, kept, dropped, open, told, answerAll };
}

describe('the solver of the page', () => {
  it('asks a question once however many want it, and gives all the very same answer', async () => {
    const { solver, asked, answerAll } = desk();
    const replies = [solver.answer(stages(0.1)), solver.answer(stages(0.1)), solver.answer(stages(0.2))];
    expect(asked).toEqual([0.1, 0.2]);
    await answerAll();
    const [first, second, third] = await Promise.all(replies);
    expect(second).toEqual(first);
    expect((second as { answer: unknown }).answer).toBe((first as { answer: unknown }).answer);
    expect((third as { answer: unknown }).answer).not.toBe((first as { answer: unknown }).answer);
  });

  it('knows an answer by the content of its question', async () => {
    const { solver, asked, answerAll } = desk();
    const before = solver.answer(stages(0.1));
    await answerAll();
    const again = await solver.answer({ ...stages(0.1) });
    expect(asked).toEqual([0.1]);
    expect((again as { answer: unknown }).answer).toBe(((await before) as { answer: unknown }).answer);
  });

  it('hands a refusal on and remembers nothing of it', async () => {
    const { solver, asked, open } = desk();
    const faults = [{ argument: 'fromStrength', value: -1, expected: 'a strength' }] as never;
    for (let time = 0; time < 2; time += 1) {
      const reply = solver.answer(stages(-1));
      open.shift()!({ kind: 'refused', faults });
      expect((await reply).kind).toBe('refused');
      await turn();
    }
    expect(asked).toEqual([-1, -1]);
  });

  it('drops a question once all who asked it have gone, and not before', async () => {
    const { solver, asked, dropped } = desk();
    const [one, other] = [new AbortController(), new AbortController()];
    const gone = [one, other].map(async ({ signal }) => solver.answer(stages(0.1), { signal }).catch(() => 'gone'));
    one.abort();
    expect(dropped).toEqual([]);
    other.abort();
    expect(dropped).toEqual([0.1]);
    expect(await Promise.all(gone)).toEqual(['gone', 'gone']);
    void solver.answer(stages(0.1));
    expect(asked).toEqual([0.1, 0.1]);
  });

  it('says how urgent it is to whoever asks the same', () => {
    const { solver, kept } = desk();
    void solver.answer(stages(0.1), { urgency: 'later' });
    void solver.answer(stages(0.1), { urgency: 'now' });
    expect(kept).toEqual(['later', 'now']);
  });

  it('tells all who wait how far a run has come', () => {
    const { solver, told } = desk();
    const reached: number[] = [];
    void solver.answer(stages(0.1), { reached: (s) => reached.push(s) });
    void solver.answer(stages(0.1), { reached: (s) => reached.push(10 * s) });
    told[0]!(6);
    expect(reached).toEqual([6, 60]);
  });
});
