// The integrator as a whole: error follows tolerance, events are exact, endings are honest.

import { describe, expect, it } from 'vitest';
import { InputError } from '#lib/errors.js';
import { bandedMatrix } from '#lib/numerics/linear/banded.js';
import { createIntegrator, type IntegrationTask } from '#lib/numerics/stiff/integrate.js';
import { STIFF_METHODS } from '#lib/numerics/stiff/stiff-method.js';
import type { StiffSystem } from '#lib/numerics/stiff/stiff-system.js';
import { constrained, driven, type TestProblem } from '../../../support/stiff-problems.js';

const nothing = (): void => undefined;

function taskOf(problem: TestProblem, change: Partial<IntegrationTask> = {}): IntegrationTask {
  const { from, to, start } = problem;
  return { from, to, start: Float64Array.from(start), events: [], firstStep: 1e-3, onStep: nothing, ...change };
}

function withTolerance(problem: TestProblem, tolerance: number): StiffSystem {
  return { ...problem.system, weights: (_u, out) => void out.fill(tolerance) };
}

describe.each(STIFF_METHODS)('integrate by $name', (method) => {
  function errorAt(problem: TestProblem, tolerance: number): number {
    const done = createIntegrator(withTolerance(problem, tolerance), method).run(taskOf(problem));
    return Math.max(...problem.exact(problem.to).map((value, k) => Math.abs(value - done.state[k]!)));
  }

  it.each([driven(), constrained()])('keeps the error near the tolerance on $name', (problem) => {
    const errorPerTolerance = 20; // local errors add up over some tens of steps
    for (const tolerance of [1e-4, 1e-6, 1e-8]) {
      expect(errorAt(problem, tolerance)).toBeLessThan(errorPerTolerance * tolerance);
    }
  });

  it('follows a stiff decay without small steps', () => {
    const mostSteps = 'gamma' in method ? 120 : 300; // several short steps for one long one
    const matrix = bandedMatrix(1, 0, 0);
    const rate = 1e6;
    const system: StiffSystem = {
      size: 1,
      mass: new Float64Array([1]),
      matrix,
      rightHandSide: (s, u, out) => void (out[0] = -rate * (u[0]! - Math.cos(s)) - Math.sin(s)),
      linearise: (s, _u, slope) => {
        matrix.entries[0] = -rate;
        slope[0] = -rate * Math.sin(s) - Math.cos(s);
      },
      weights: (_u, out) => void out.fill(1e-6),
    };
    const integrator = createIntegrator(system, method);
    const done = integrator.run({
      from: 0,
      to: 10,
      start: new Float64Array([2]),
      events: [],
      firstStep: 1e-8,
      onStep: nothing,
    });
    expect(done.state[0]).toBeCloseTo(Math.cos(10), 6);
    expect(integrator.counts.accepted).toBeLessThan(mostSteps);
  });

  it('leaves off after the step that is left, for another method to go on from there', () => {
    const problem = driven();
    const half = 0.5 * (problem.from + problem.to);
    const system = withTolerance(problem, 1e-7);
    const first = createIntegrator(system, method).run(taskOf(problem, { leave: (step) => step.to > half }));
    expect(first.kind).toBe('reachedEnd');
    expect(first.s).toBeGreaterThan(half);
    expect(first.s).toBeLessThan(problem.to);
    const rest = createIntegrator(system).run(taskOf(problem, { from: first.s, start: first.state }));
    const misses = problem.exact(problem.to).map((value, k) => Math.abs(value - rest.state[k]!));
    expect(Math.max(...misses)).toBeLessThan(20 * 1e-7);
  });

  it('ends exactly where an event falls through zero', () => {
    const problem = driven();
    const rootTolerance = 1e-7; // integration tolerance 1e-8 over the slope of u there
    const done = createIntegrator(withTolerance(problem, 1e-9), method).run(
      taskOf(problem, { events: [{ value: (_s, u) => u[0]! - 0.5 }] }),
    );
    // u = 2/(s² + 2) = 1/2 at s = √2.
    expect(done.kind).toBe('event');
    expect(Math.abs(done.s - Math.SQRT2)).toBeLessThan(rootTolerance);
    expect(Math.abs(done.state[0]! - 0.5)).toBeLessThan(rootTolerance);
  });

  it('takes the earlier of two events and ignores one that starts below zero', () => {
    const problem = driven();
    const done = createIntegrator(withTolerance(problem, 1e-9), method).run(
      taskOf(problem, {
        events: [{ value: (s) => 1.5 - s }, { value: (s) => 1.2 - s }, { value: () => -1 }],
      }),
    );
    expect([done.kind, done.event]).toEqual(['event', 1]);
    expect(done.s).toBeCloseTo(1.2, 12);
  });

  it('hands over steps whose dense output joins without a gap', () => {
    const problem = driven();
    let lastEnd = problem.from;
    const probe = new Float64Array(1);
    createIntegrator(withTolerance(problem, 1e-8), method).run(
      taskOf(problem, {
        onStep: (step) => {
          expect(step.from).toBe(lastEnd);
          step.state(step.from, probe);
          expect(probe[0]).toBe(step.start[0]);
          const middle = (step.from + step.to) / 2;
          expect(Math.abs(step.component(middle, 0) - problem.exact(middle)[0]!)).toBeLessThan(1e-6);
          lastEnd = step.to;
        },
      }),
    );
    expect(lastEnd).toBe(problem.to);
  });

  it('gives the same answer when its storage is used again', () => {
    const problem = driven();
    const integrator = createIntegrator(problem.system, method);
    const first = integrator.run(taskOf(problem)).state[0];
    expect(integrator.run(taskOf(problem)).state[0]).toBe(first);
  });

  it('reports when it runs out of steps instead of pretending', () => {
    const problem = driven();
    expect(createIntegrator(problem.system, method).run(taskOf(problem, { maxSteps: 3 })).kind).toBe('stepLimit');
  });

  it('names the bad component of a start that is not a number', () => {
    const problem = driven();
    const run = (): unknown =>
      createIntegrator(problem.system, method).run(taskOf(problem, { start: new Float64Array([NaN]) }));
    expect(run).toThrow(InputError);
    expect(run).toThrow('start[0] is NaN; expected a finite number');
  });
});
