// Batch rectification that keeps the distillate at one strength by turning the reflux up while the kettle weakens:
// quasi-steady, with constant molar overflow, a total condenser and nothing held on the plates.
//
//   x_S(R)   kettle over which the plates hold x_D at reflux R, marching down from the top
//   D(R) = F (x_F − x_S)/(x_D − x_S)                              ethanol and total balance
//   ∫R dD = R D − ∫D dR, from R_0 with x_S(R_0) = x_F             liquid returned to the column
// Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605-611, for the steps.

import { refuse } from '../../arguments.js';
import type { CurveSlice } from '../../equilibrium/equilibrium-curve.js';
import { liquidOnSlice } from '../../equilibrium/liquid-on-slice.js';
import type { Outcome } from '../../errors.js';
import { integral } from '../../numerics/quadrature.js';
import { bracketedRoot } from '../../numerics/root.js';
import type { Mole, MoleFraction } from '../../units/quantities.js';
import { rangeFault, wholeFault } from '../check.js';
import { plateFaults, questionFaults } from './check.js';
import { marcher } from './marcher.js';

/** A column that is to hold one distillate. */
export interface HeldDistillate {
  /** Equilibrium at the column's pressure. */
  readonly slice: CurveSlice;
  /** The distillate held, x_D. */
  readonly distillateMoleFraction: MoleFraction;
  /** Plates above the kettle, 0 or more. */
  readonly plates: number;
  /** Murphree vapour efficiency of each plate, above 0 up to 1. */
  readonly efficiency: number;
}

/** What constantComposition is asked for. */
export interface ConstantCompositionQuestion extends HeldDistillate {
  readonly amount_mol: Mole;
  /** Ethanol in the charge, x_F. */
  readonly chargeMoleFraction: MoleFraction;
  /** Reflux ratio at which the run ends. */
  readonly mostReflux: number;
  /** How many rows after the first, at equal steps of R/(R + 1); 40 when left out. */
  readonly rows?: number;
}

/** The run when the reflux has come to R. */
export interface ConstantCompositionRow {
  readonly reflux: number;
  readonly kettleMoleFraction: MoleFraction;
  readonly kettle_mol: Mole;
  readonly distillate_mol: Mole;
  /** Liquid returned to the column so far, ∫R dD; with the distillate it is all the vapour boiled. */
  readonly returned_mol: Mole;
}

/** A run at constant composition. */
export interface ConstantComposition {
  /** From the start, where the reflux is the least that holds x_D over the charge, to the end at the most reflux. */
  readonly rows: readonly ConstantCompositionRow[];
}

/**
 * The kettle over which a column holds a distillate at a reflux ratio.
 *
 * Equation: y_N = x_D; x_n from y_n = y_(n−1) + E (y*(x_n) − y_(n−1)) with y_(n−1) = r x_n + (1 − r) x_D, down to y*(x_S) = y_0.
 * @param column Slice, distillate x_D [mol/mol] 0 to 1, plates N (whole, 0 to 1000), efficiency E above 0 to 1; outside them it throws.
 * @param reflux Reflux ratio R = L/D, [mol/mol]; 0 to 1e9; outside it throws.
 * @returns Ethanol in the kettle, x_S, [mol/mol].
 * @throws InputError when a part of the question is outside its range.
 * @example kettleHeld({ slice: createEthanolWater().curve('redlich-kister').at(101325), distillateMoleFraction: 0.75, plates: 4, efficiency: 1 }, 3) // → 0.0671
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605-611; E. V. Murphree, Ind. Eng. Chem. 17 (1925) 747-750.
 */
export function kettleHeld(column: HeldDistillate, reflux: number): MoleFraction {
  refuse(questionFaults('column', column, ASKED));
  refuse([...columnFaults(column), ...rangeFault('reflux', reflux, 0, 1e9, 'a reflux ratio from 0 up')]);
  return heldAt(column, reflux);
}

/**
 * Batch rectification at constant distillate composition with rising reflux, quasi-steady.
 *
 * Equation: D = F (x_F − x_S)/(x_D − x_S) with x_S(R) from the steps down the column; ∫R dD = R D − ∫D dR.
 * @param question Slice, charge F [mol] with x_F, distillate x_D, plates N, efficiency E, most reflux R, rows; outside their ranges it throws.
 * @returns found true with rows from the least reflux that holds x_D over the charge to the most; found false with reason 'refluxTooSmall' when even the most reflux does not hold it, 'weakerThanVapour' when the bare kettle already sends stronger vapour.
 * @throws InputError when a part of the question is outside its range.
 * @example foundIn(constantComposition({ slice: createEthanolWater().curve('redlich-kister').at(101325), amount_mol: 100, chargeMoleFraction: 0.55, distillateMoleFraction: 0.75, plates: 4, efficiency: 1, mostReflux: 4, rows: 10 })).rows[10].distillate_mol // → 71.77
 * Source: Coulson & Richardson's Chemical Engineering vol. 2, 5th ed. 2002, Example 11.12, for the method.
 */
export function constantComposition(
  question: ConstantCompositionQuestion,
): Outcome<ConstantComposition, 'refluxTooSmall' | 'weakerThanVapour'> {
  check(question);
  const { amount_mol, chargeMoleFraction, distillateMoleFraction, mostReflux, rows = 40 } = question;
  const excess = (reflux: number): number => heldAt(question, reflux) - chargeMoleFraction;
  if (excess(0) < 0) {
    return {
      found: false,
      reason: 'weakerThanVapour',
      message: `A kettle of mole fraction ${String(chargeMoleFraction)} sends stronger vapour than ${String(distillateMoleFraction)} without any reflux.`,
    };
  }
  if (excess(mostReflux) > 0) {
    return {
      found: false,
      reason: 'refluxTooSmall',
      message: `No reflux up to ${String(mostReflux)} holds a distillate of mole fraction ${String(distillateMoleFraction)} over this charge.`,
    };
  }
  const start = bracketedRoot(excess, 0, mostReflux);
  const distilled = (reflux: number): number => {
    const kettle = heldAt(question, reflux);
    return (amount_mol * (chargeMoleFraction - kettle)) / (distillateMoleFraction - kettle);
  };
  const [low, high] = [start / (start + 1), mostReflux / (mostReflux + 1)];
  let [below, area] = [start, 0];
  const table = Array.from({ length: rows + 1 }, (_none, k): ConstantCompositionRow => {
    const r = low + (k / rows) * (high - low);
    const reflux = k === 0 ? start : k === rows ? mostReflux : r / (1 - r);
    if (k > 0) area += integral(distilled, below, reflux, SMALL * amount_mol * Math.max(1, reflux - below));
    below = reflux;
    const distillate_mol = k === 0 ? 0 : distilled(reflux);
    return {
      reflux,
      kettleMoleFraction: k === 0 ? chargeMoleFraction : heldAt(question, reflux),
      kettle_mol: amount_mol - distillate_mol,
      distillate_mol,
      returned_mol: reflux * distillate_mol - area,
    };
  });
  return { found: true, rows: table };
}

/** Error aimed at in ∫D dR, per mole charged and per unit of reflux. */
const SMALL = 1e-9;

function heldAt({ slice, distillateMoleFraction, plates, efficiency }: HeldDistillate, reflux: number): MoleFraction {
  const march = marcher(slice, efficiency, reflux / (reflux + 1));
  let vapour: number = distillateMoleFraction;
  // Without reflux the plates are idle.
  const working = reflux === 0 ? 0 : plates;
  for (let n = 0; n < working; n++) vapour = march.down(vapour, distillateMoleFraction).vapourIn;
  return liquidOnSlice(slice, vapour);
}

/** Fields of a question; of a column it is a part, and may be given for one. */
const ASKED = [
  'slice',
  'distillateMoleFraction',
  'plates',
  'efficiency',
  'amount_mol',
  'chargeMoleFraction',
  'mostReflux',
  'rows',
];

function columnFaults(column: HeldDistillate): ReturnType<typeof rangeFault> {
  const share = 'a mole fraction of ethanol from 0 to 1';
  return [...rangeFault('distillateMoleFraction', column.distillateMoleFraction, 0, 1, share), ...plateFaults(column)];
}

function check(question: ConstantCompositionQuestion): void {
  refuse(questionFaults('question', question, ASKED));
  const { amount_mol, chargeMoleFraction, mostReflux, rows = 40 } = question;
  refuse([
    ...columnFaults(question),
    ...rangeFault('amount_mol', amount_mol, Number.MIN_VALUE, 1e15, 'an amount above 0 mol'),
    ...rangeFault('chargeMoleFraction', chargeMoleFraction, 0, 1, 'a mole fraction of ethanol from 0 to 1'),
    ...rangeFault('mostReflux', mostReflux, 0, 1e6, 'a reflux ratio from 0 to 1e6'),
    ...wholeFault('rows', rows, 1, 10_000),
  ]);
}
