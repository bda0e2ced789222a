// Nothing a test changes outlives it, whether it puts it back or not (tests/support/leaves-nothing.ts).

import { describe, expect, it, vi } from 'vitest';

describe('what a test changes', () => {
  const thing = { says: () => 'its own' };

  it('stands while it runs', () => {
    vi.spyOn(thing, 'says').mockReturnValue('another');
    vi.useFakeTimers();
    vi.stubGlobal('left', true);
    vi.stubEnv('LEFT', 'yes');
    expect([thing.says(), vi.isFakeTimers(), 'left' in globalThis, process.env.LEFT]).toEqual([
      'another',
      true,
      true,
      'yes',
    ]);
  });

  it('is gone in the next', () => {
    expect([thing.says(), vi.isFakeTimers(), 'left' in globalThis, process.env.LEFT]).toEqual([
      'its own',
      false,
      false,
      undefined,
    ]);
  });
});
