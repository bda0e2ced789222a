// The last line of a test run, in one fixed form: `tests: N passed, N failed, N skipped`. A file that
// does not load, an error outside every test, and a run without any test count as one failure.

import type { Reporter, TestModule } from 'vitest/node';

export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const states = modules.flatMap((module) => [...module.children.allTests()].map((test) => test.result().state));
    const count = (state: string): number => states.filter((each) => each === state).length;
    const unloaded = modules.filter((module) => module.errors().length > 0).length;
    const failed = count('failed') + unloaded + errors.length + (states.length === 0 && unloaded === 0 ? 1 : 0);
    const skipped = count('skipped') + count('pending');
    process.stdout.write(
      `tests: ${String(count('passed'))} passed, ${String(failed)} failed, ${String(skipped)} skipped\n`,
    );
  }
}
