// The account of a run's energy. What was lost and what a partial condenser took out are integrated along the solver's own steps, on their
// dense output; the other terms are unknowns of the equations. So the gap is an error, and nothing in the account is found by difference.

import { InputError } from '../../errors.js';
import type { StepView } from '../../numerics/stiff/path.js';
import type { EnergySolution } from '../solution.js';
import { solved } from './at.js';

/** Where the heat of a run went, J. */
export interface EnergyAccount {
  /** Put into the kettle. */
  readonly supplied_J: number;
  /** More in the still at the end than at the beginning; below 0 for less. */
  readonly stored_J: number;
  /** Taken out by the total or product condenser, by a partial condenser, and carried off by the distillate. */
  readonly condensed_J: number;
  readonly refluxed_J: number;
  readonly collected_J: number;
  /** To the air. */
  readonly lost_J: number;
  /** Supplied less all the others: the solver's error. */
  readonly gap_J: number;
}

/** Gauss's three points on 0..1, and their weights: exact to order 5 (Abramowitz & Stegun, table 25.4). */
const POINTS = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)] as const;
const WEIGHTS = [5 / 18, 8 / 18, 5 / 18] as const;

/**
 * The account of a run's energy: where the heat went.
 *
 * Equation: supplied = stored + condensed + refluxed + collected + lost + gap; lost and refluxed by Gauss's three-point rule on each step of the solver.
 * @param run A solution that keeps account of energy, as solve gives it.
 * @returns Each term since the start, [J]; the gap is the solver's error.
 * @throws InputError when the run keeps no account of energy, or is a plain copy.
 * @example energyAccount(solve({ still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'volume', volume_m3: 0.06, strength: 0.1 }, sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }] })).collected_J // → 0
 * Source: this project, docs/theory/train.md.
 */
export function energyAccount(run: EnergySolution): EnergyAccount {
  const { course, engine } = solved(run);
  const ofRow = (column: Float64Array | undefined): number => (column?.at(-1) ?? NaN) - (column?.[0] ?? NaN);
  const supplied_J = ofRow(run.supplied_J);
  if (!Number.isFinite(supplied_J) || !Number.isFinite(ofRow(run.stored_J))) {
    const expected = "a run of the model 'energy' or 'equalHeats': the others keep no account of energy";
    throw new InputError({ argument: 'run', value: run.problem.model, expected });
  }
  const { path, stretches } = course;
  const { moment } = engine;
  const state = new Float64Array(path.size);
  let lost_J = 0;
  let refluxed_J = 0;
  const addStep = (view: StepView, mark: number): void => {
    const width = view.to - view.from;
    POINTS.forEach((point, i) => {
      const s = view.from + point * width;
      engine.between(view, mark, s, state);
      moment.look(s, state);
      lost_J += width * WEIGHTS[i]! * moment.lost_W;
      refluxed_J += width * WEIGHTS[i]! * moment.refluxDuty_W;
    });
  };
  stretches.forEach(({ from, start, first, after }, k) => {
    engine.beginStep(k, from, start);
    for (let i = first; i < after; i++) addStep(path.step(i), path.kind(i));
  });
  const [stored_J, condensed_J, collected_J] = [ofRow(run.stored_J), ofRow(run.condensed_J), ofRow(run.collected_J)];
  const gap_J = supplied_J - stored_J - condensed_J - refluxed_J - collected_J - lost_J;
  return { supplied_J, stored_J, condensed_J, refluxed_J, collected_J, lost_J, gap_J };
}
