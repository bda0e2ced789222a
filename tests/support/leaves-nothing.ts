// Before every test file in Node and in the browser: nothing a test changes outlives it. Spies, stand-ins for globals
// and clocks are put back after each test, whether it passes or not; no test has to see to it.

import { afterEach, vi } from 'vitest';

afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  vi.unstubAllEnvs();
});
