// Batch rectification at one reflux ratio while the distillate weakens with the kettle: quasi-steady, with constant
// molar overflow, a total condenser and nothing held on the plates. Rayleigh's equation with the column's head in place of the
// kettle's vapour,
//
//   ln(F/S) = ∫_{x_S}^{x_F} dx/(x_D(x) − x) = ∫ x (1 − x)/(x_D(x) − x) du,  u = ln(x/(1 − x))
//
// and x_D(x) from the staircase.
// Source: Lord Rayleigh, Phil. Mag. (6) 4 (1902) 521-537.

import { refuse } from '../../arguments.js';
import type { Outcome } from '../../errors.js';
import { logistic, logit } from '../../numerics/logit.js';
import { integral } from '../../numerics/quadrature.js';
import type { Mole, MoleFraction } from '../../units/quantities.js';
import { rangeFault } from '../check.js';
import { plateFaults, questionFaults, refluxFault } from './check.js';
import { staircase, type StaircaseQuestion } from './staircase.js';

/** What constantReflux is asked for: a column, its charge and where the run ends. */
export interface ConstantRefluxQuestion extends Omit<StaircaseQuestion, 'kettleMoleFraction'> {
  readonly amount_mol: Mole;
  /** Ethanol in the charge, x_F, above 0 and below 1. */
  readonly chargeMoleFraction: MoleFraction;
  /** Ethanol in the kettle at the end, x_S, above 0 and below 1. */
  readonly endMoleFraction: MoleFraction;
}

/** What has come over and what is left. */
export interface ConstantReflux {
  readonly kettle_mol: Mole;
  readonly distillate_mol: Mole;
  /** Ethanol in all that came over. */
  readonly distillateMoleFraction: MoleFraction;
  /** At the spout at the start and at the end. */
  readonly firstMoleFraction: MoleFraction;
  readonly lastMoleFraction: MoleFraction;
}

/**
 * Batch rectification at a constant reflux ratio, quasi-steady.
 *
 * Equation: ln(F/S) = ∫ dx/(x_D(x) − x) from x_S to x_F, with x_D from the staircase; 'total' is the limit of very slow drawing.
 * @param question Slice, charge F [mol] with x_F, kettle at the end x_S [mol/mol], plates N, efficiency E, reflux ratio R or 'total'; outside their ranges it throws.
 * @returns found true with amounts and compositions; found false with reason 'unreachable' when the run moves the kettle the other way or never so far.
 * @throws InputError when a part of the question is outside its range.
 * @example foundIn(constantReflux({ slice: createEthanolWater().curve('redlich-kister').at(101325), amount_mol: 100, chargeMoleFraction: 0.18, endMoleFraction: 0.06, plates: 0, efficiency: 1, reflux: 0 })).kettle_mol // → 70.43
 * Source: Lord Rayleigh, Phil. Mag. (6) 4 (1902) 521-537, with the head of W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605-611.
 */
export function constantReflux(question: ConstantRefluxQuestion): Outcome<ConstantReflux, 'unreachable'> {
  check(question);
  const { slice, plates, efficiency, reflux, amount_mol, chargeMoleFraction, endMoleFraction } = question;
  const head = (kettleMoleFraction: number): number =>
    staircase({ slice, plates, efficiency, reflux, kettleMoleFraction }).headMoleFraction;
  const sign = Math.sign(chargeMoleFraction - endMoleFraction);
  for (let k = 0; k <= SAMPLES; k++) {
    const x = chargeMoleFraction + (k / SAMPLES) * (endMoleFraction - chargeMoleFraction);
    if (sign !== 0 && (head(x) - x) * sign < NEAR_AZEOTROPE * x * (1 - x)) {
      return {
        found: false,
        reason: 'unreachable',
        message: `Drawing from a kettle of mole fraction ${String(chargeMoleFraction)} never leaves one of ${String(endMoleFraction)}.`,
      };
    }
  }
  const logarithm = integral(
    (u) => {
      const x = logistic(u);
      return (x * (1 - x)) / (head(x) - x);
    },
    logit(endMoleFraction),
    logit(chargeMoleFraction),
    1e-10,
  );
  const over = -Math.expm1(-logarithm);
  const first = head(chargeMoleFraction);
  // (x_F − S/F x_S)/(1 − S/F), written so that little distillate loses no digits.
  const mean = endMoleFraction + (chargeMoleFraction - endMoleFraction) / over;
  return {
    found: true,
    kettle_mol: amount_mol * Math.exp(-logarithm),
    distillate_mol: amount_mol * over,
    distillateMoleFraction: sign === 0 ? first : mean,
    firstMoleFraction: first,
    lastMoleFraction: head(endMoleFraction),
  };
}

const SAMPLES = 64;
/** Smallest lift, as a share of x (1 − x), that still counts as distilling. */
const NEAR_AZEOTROPE = 1e-9;

const FIELDS = ['slice', 'plates', 'efficiency', 'reflux', 'amount_mol', 'chargeMoleFraction', 'endMoleFraction'];

function check(question: ConstantRefluxQuestion): void {
  refuse(questionFaults('question', question, FIELDS));
  const { amount_mol, chargeMoleFraction, endMoleFraction } = question;
  const inside = [Number.MIN_VALUE, 1 - Number.EPSILON] as const;
  refuse([
    ...rangeFault('amount_mol', amount_mol, Number.MIN_VALUE, 1e15, 'an amount above 0 mol'),
    ...rangeFault('chargeMoleFraction', chargeMoleFraction, ...inside, 'a mole fraction of ethanol between 0 and 1'),
    ...rangeFault('endMoleFraction', endMoleFraction, ...inside, 'a mole fraction of ethanol between 0 and 1'),
    ...plateFaults(question),
    ...refluxFault(question.reflux),
  ]);
}
