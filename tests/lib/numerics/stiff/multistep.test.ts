// Backward differentiation on uneven steps: its coefficients against what defines them, its stability, its order.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createIntegrator } from '#lib/numerics/stiff/integrate.js';
import { GROWTH } from '#lib/numerics/stiff/multistep-control.js';
import { MultistepFormula, PAST } from '#lib/numerics/stiff/multistep-formula.js';
import { MultistepPast } from '#lib/numerics/stiff/multistep-past.js';
import { BDF5, MultistepStep } from '#lib/numerics/stiff/multistep-step.js';
import { constrained, coupled, driven, type TestProblem } from '../../../support/stiff-problems.js';

const ORDERS = [1, 2, 3, 4, 5] as const;

/** Moments before `now`, newest first, with steps that each differ from the next by up to a half. */
const unevenMoments = fc
  .array(fc.double({ min: 0.5, max: 1.5, noNaN: true }), { minLength: PAST, maxLength: PAST })
  .map((steps) => {
    let moment = 0;
    return Float64Array.from(steps, (step) => (moment -= step));
  });

const dot = (weights: Float64Array, values: (moment: number) => number, moments: Float64Array): number =>
  weights.reduce((sum, weight, i) => (weight === 0 ? sum : sum + weight * values(moments[i]!)), 0);

/** Round-off of such a sum, and of its weights, where steps differ by up to three times. */
const roundOff = (weights: Float64Array, values: (moment: number) => number, moments: Float64Array): number =>
  1e-12 * (1 + weights.reduce((sum, weight, i) => sum + Math.abs(weight * values(moments[i]!)), 0));

describe.each(ORDERS)('the formula of order %i', (order) => {
  it('predicts polynomials of its degree and their slopes', () => {
    fc.assert(
      fc.property(unevenMoments, (moments) => {
        const formula = new MultistepFormula();
        formula.set(order, 0, -moments[0]!, moments);
        for (let degree = 0; degree <= order; degree++) {
          const power = (s: number): number => (s - 1) ** degree;
          const miss = Math.abs(dot(formula.predict, power, moments) - power(0));
          expect(miss).toBeLessThan(roundOff(formula.predict, power, moments));
          const slope = degree === 0 ? 0 : degree * (-1) ** (degree - 1);
          const slopeMiss = Math.abs(dot(formula.slope, power, moments) - slope);
          expect(slopeMiss).toBeLessThan(roundOff(formula.slope, power, moments));
        }
      }),
    );
  });

  it('knows its error where the next power is added', () => {
    fc.assert(
      fc.property(unevenMoments, (moments) => {
        const h = -moments[0]!;
        const formula = new MultistepFormula();
        formula.set(order, 0, h, moments);
        const power = (s: number): number => (s - 1) ** (order + 1);
        const slope = (order + 1) * (-1) ** order;
        const predicted = dot(formula.predict, power, moments);
        const reached = predicted + (h * (slope - dot(formula.slope, power, moments))) / formula.leading;
        const error = Math.abs(reached - power(0));
        const known = formula.errorShare * Math.abs(reached - predicted);
        expect(Math.abs(error - known)).toBeLessThan(10 * roundOff(formula.predict, power, moments));
      }),
    );
  });
});

describe.each([2, 3, 4, 5])('steps of order %i that grow', (order) => {
  /** What is left of a disturbance of u′ = 0 after many steps, each longer than the one before by `ratio`. */
  function disturbed(ratio: number): number {
    const past = new MultistepPast(1);
    const formula = new MultistepFormula();
    const at = (i: number): number => ratio ** i / (ratio - 1);
    for (let i = 0; i < PAST; i++) past.push(at(i), Float64Array.of(i === PAST - 1 ? 1 : 0));
    const [predicted, slope] = [new Float64Array(1), new Float64Array(1)];
    let [last, change] = [1, 1];
    for (let i = PAST; i < PAST + 150; i++) {
      const h = at(i) - at(i - 1);
      formula.set(order, at(i), h, past.moments);
      past.combine(predicted, formula.predict, slope, formula.slope);
      const next = predicted[0]! - (h * slope[0]!) / formula.leading;
      change = Math.abs(next - last);
      last = next;
      past.push(at(i), Float64Array.of(next));
    }
    return change;
  }

  it('let a disturbance die away at the growth allowed', () => {
    const gone = 1e-3; // of 1; 0.93^150 at order 5
    expect(disturbed(GROWTH[order]!)).toBeLessThan(gone);
  });

  it('would carry it on beyond the bound of the formula', () => {
    const bounds: Readonly<Record<number, number>> = {
      2: 1 + Math.SQRT2,
      3: (1 + Math.sqrt(5)) / 2,
      4: 1.2807,
      5: 1.1271,
    };
    expect(disturbed(1.02 * bounds[order]!)).toBeGreaterThan(1);
    expect(GROWTH[order]!).toBeLessThan(bounds[order]!);
  });
});

describe.each([2, 3, 4, 5] as const)('an integration of highest order %i', (highestOrder) => {
  function run(problem: TestProblem, tolerance: number): { error: number; steps: number } {
    const system = { ...problem.system, weights: (_u: Float64Array, out: Float64Array) => void out.fill(tolerance) };
    const integrator = createIntegrator(system, { name: 'bdf', highestOrder });
    const { from, to } = problem;
    const start = Float64Array.from(problem.start);
    const done = integrator.run({ from, to, start, events: [], firstStep: 1e-4, onStep: () => undefined });
    const error = Math.max(...problem.exact(to).map((value, k) => Math.abs(value - done.state[k]!)));
    return { error, steps: integrator.counts.accepted };
  }

  it.each([driven(), coupled(), constrained()])('gains that many powers of the step on $name', (problem) => {
    const scatter = 0.7; // steps of all lengths, and a start at order 1
    const coarse = run(problem, 1e-5);
    const fine = run(problem, highestOrder === 2 ? 1e-9 : 1e-10);
    const order = Math.log(coarse.error / fine.error) / Math.log(fine.steps / coarse.steps);
    expect(order).toBeGreaterThan(highestOrder - scatter);
  });
});

describe('a multistep method', () => {
  it('takes as a rule one side, one Jacobian and one factorisation a step', () => {
    const integrator = createIntegrator(driven().system, BDF5);
    const { from, to, start } = driven();
    integrator.run({
      from,
      to,
      start: Float64Array.from(start),
      events: [],
      firstStep: 1e-4,
      onStep: () => undefined,
    });
    const { accepted, rejected, rightHandSides, jacobians, factorisations } = integrator.counts;
    expect(jacobians).toBe(accepted + rejected + 1);
    expect(factorisations).toBe(jacobians);
    expect(rightHandSides).toBeLessThan(1.15 * jacobians);
  });

  /** One step of order 1 and length 1 on u′ = −s u² from u(0) = 1: its end solves u = 1 − u², the golden ratio less 1. */
  function longStep(tolerance: number): { error: number; end: number; sides: number } {
    const system = { ...driven().system, weights: (_u: Float64Array, out: Float64Array) => void out.fill(tolerance) };
    const step = new MultistepStep(system, BDF5);
    const start = Float64Array.of(1);
    step.begin(0, start, 1);
    step.prepare(0, start);
    const error = step.attempt(0, start, 1);
    return { error, end: step.end[0]!, sides: step.work.rightHandSides };
  }

  it('iterates where one iteration is not enough', () => {
    const iterationError = 0.1 * 0.2 * 1e-2; // a tenth of the local error, which is a fifth of the tolerance
    const { end, sides } = longStep(1e-2);
    expect(sides).toBeGreaterThan(3);
    expect(Math.abs(end - (Math.sqrt(5) - 1) / 2)).toBeLessThan(iterationError);
  });

  it('fails a step whose iterations do not arrive', () => {
    expect(longStep(1e-7).error).toBe(Infinity);
  });

  it('forgets one run before the next, to the last digit', () => {
    const integrator = createIntegrator(coupled().system, BDF5);
    const { from, to, start } = coupled();
    const task = { from, to, events: [], firstStep: 1e-4, onStep: () => undefined };
    const first = Float64Array.from(integrator.run({ ...task, start: Float64Array.from(start) }).state);
    integrator.run({ ...task, start: Float64Array.from([0.3, 2]) });
    expect(integrator.run({ ...task, start: Float64Array.from(start) }).state).toEqual(first);
  });
});
