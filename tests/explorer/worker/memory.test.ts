// Answers are remembered by what they take up, not by their number.

import { describe, expect, it } from 'vitest';
import type { RunAnswer } from '../../../explorer/worker/kinds/run.js';
import { AnswerMemory, bytesOf } from '../../../explorer/worker/memory.js';

const run = (rows: number): RunAnswer =>
  ({ kind: 'run', solution: { time_s: new Float64Array(rows) } }) as unknown as RunAnswer;

describe('the memory of answers', () => {
  it('keeps many small answers where it keeps few large ones', () => {
    const memory = new AnswerMemory(100_000);
    for (let k = 0; k < 200; k += 1) memory.put(`small ${String(k)}`, run(10));
    expect(memory.get('small 0')).toBeDefined();
    for (let k = 0; k < 20; k += 1) memory.put(`large ${String(k)}`, run(5000));
    expect(memory.get('small 199')).toBeUndefined();
    expect(memory.get('large 17')).toBeUndefined();
    expect(memory.get('large 19')).toBeDefined();
  });

  it('forgets what was not used longest', () => {
    const memory = new AnswerMemory(3 * (bytesOf(run(1000)) + 2));
    for (const key of ['a', 'b', 'c']) memory.put(key, run(1000));
    memory.get('a');
    memory.put('d', run(1000));
    expect(['a', 'b', 'c', 'd'].filter((key) => memory.get(key) !== undefined)).toEqual(['a', 'c', 'd']);
  });

  it('keeps nothing that is larger than all of it', () => {
    const memory = new AnswerMemory(1000);
    memory.put('a', run(10));
    memory.put('b', run(1000));
    expect(memory.get('b')).toBeUndefined();
  });

  it('counts an answer once that is put twice', () => {
    const memory = new AnswerMemory(3 * (bytesOf(run(1000)) + 2));
    for (const key of ['a', 'b', 'b', 'b', 'c']) memory.put(key, run(1000));
    expect(memory.get('a')).toBeDefined();
  });

  it('reckons columns by their bytes', () => {
    expect(bytesOf(new Float64Array(1000))).toBe(8000);
    expect(bytesOf({ a: [1, 2, 3], b: 'four' })).toBeGreaterThan(32);
  });
});
