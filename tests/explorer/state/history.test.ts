// Laws of undoing and redoing: whatever was done, undoing all of it is the notebook as it was, to the object, and
// redoing all of it is the notebook as it had become.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setValue } from '../../../explorer/state/acts.js';
import { scenarioOn } from '../../../explorer/state/page-scenario.js';
import { numberAt } from '../../../explorer/state/paths.js';
import { done, redone, startHistory, undone, type History } from '../../../explorer/state/history.js';
import { newNotebook } from '../../../explorer/state/notebook-record.js';
import { anyAct, type Act } from './any-acts.js';

function doneAll(acts: readonly Act[], from: History = startHistory(newNotebook)): History {
  return acts.reduce((history, act, at) => done(history, act(history.now), { says: 'done', page: null, at }), from);
}

function all(history: History, step: (history: History) => History): History {
  const next = step(history);
  return next === history ? history : all(next, step);
}

const plateCount = 'still.column.count';
const platesOf = (notebook: typeof newNotebook): number | undefined => numberAt(scenarioOn(notebook, ''), plateCount);

describe('a history', () => {
  it('undone to its beginning is the notebook it began with, and redone to its end the one it had become', () => {
    fc.assert(
      fc.property(fc.array(anyAct, { maxLength: 40 }), (acts) => {
        const after = doneAll(acts);
        const back = all(after, undone);
        expect(back.now).toBe(newNotebook);
        expect(all(back, redone).now).toBe(after.now);
      }),
    );
  });

  it('redoes what was undone last, step by step, wherever it stands', () => {
    fc.assert(
      fc.property(fc.array(anyAct, { minLength: 1, maxLength: 20 }), fc.nat({ max: 20 }), (acts, steps) => {
        let history = doneAll(acts);
        for (let step = 0; step < steps; step += 1) history = undone(history);
        const here = history;
        if (here.past.length > 0) expect(redone(undone(here)).now).toBe(here.now);
        if (here.future.length > 0) expect(undone(redone(here)).now).toBe(here.now);
      }),
    );
  });

  it('forgets what was undone once something else is done', () => {
    fc.assert(
      fc.property(fc.array(anyAct, { maxLength: 10 }), fc.array(anyAct, { maxLength: 10 }), (acts, others) => {
        const before = undone(doneAll(acts));
        const after = doneAll(others, before);
        if (after.now !== before.now) expect(after.future).toEqual([]);
        expect(all(after, undone).now).toBe(newNotebook);
      }),
    );
  });

  it('is not made longer by what changes nothing', () => {
    const history = doneAll([(notebook) => notebook]);
    expect(history.past).toEqual([]);
    const plates = platesOf(newNotebook);
    expect(done(history, setValue(history.now, '', plateCount, plates), { says: 'set', page: null, at: 0 })).toBe(
      history,
    );
  });

  it('takes a number that is dragged as one step, and a pause as the end of it', () => {
    const set = (history: History, plates: number, at: number): History =>
      done(history, setValue(history.now, '', plateCount, plates), {
        says: 'plates',
        page: null,
        together: 'plates',
        at,
      });
    let history = startHistory(newNotebook);
    for (let plates = 13; plates <= 20; plates += 1) history = set(history, plates, 20 * plates);
    expect(history.past).toHaveLength(1);
    history = set(history, 25, 60_000);
    expect(history.past).toHaveLength(2);
    expect(platesOf(undone(history).now)).toBe(20);
    expect(undone(undone(history)).now).toBe(newNotebook);
  });

  it('keeps the last four hundred steps, and forgets the oldest', () => {
    const set = (history: History, at: number): History =>
      done(history, { ...history.now, name: `step ${String(at)}` }, { says: 'gone on', page: null, at });
    const steps = Array.from({ length: 450 }, (_none, step) => step + 1);
    const history = steps.reduce(set, startHistory(newNotebook));
    expect(undone(history).now.name).toBe('step 449');
    expect(history.past).toHaveLength(400);
    expect(all(history, undone).now.name).toBe('step 50');
  });

  it('joins deeds of one kind that follow each other within a second and a half, on one page', () => {
    const set = (history: History, plates: number, page: string, at: number): History =>
      done(history, setValue(history.now, '', plateCount, plates), { says: 'plates', page, together: 'plates', at });
    const first = set(startHistory(newNotebook), 13, 'one', 1000);
    expect(set(first, 14, 'one', 2500).past).toHaveLength(1);
    expect(set(first, 14, 'one', 2501).past).toHaveLength(2);
    expect(set(first, 14, 'another', 1001).past).toHaveLength(2);
  });

  it('joins nothing to a step that was come back to', () => {
    const set = (history: History, plates: number): History =>
      done(history, setValue(history.now, '', plateCount, plates), {
        says: 'plates',
        page: null,
        together: 'plates',
        at: 0,
      });
    const first = set(startHistory(newNotebook), 13);
    const reflux = done(first, setValue(first.now, '', 'sheet[2].reflux', 5), { says: 'reflux', page: null, at: 0 });
    const again = set(undone(reflux), 14);
    expect(platesOf(undone(again).now)).toBe(13);
  });
});
