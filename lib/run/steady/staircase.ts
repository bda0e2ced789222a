// The steps a column takes on the x-y diagram when the kettle has a given composition: the quasi-steady state at a
// reflux ratio, with constant molar overflow, a total condenser and no liquid held on the plates.
//
//   kettle        y_0 = y*(x_B)
//   between       y_n = r x_(n+1) + (1 − r) x_D,  r = R/(R + 1)          operating line
//   plate n       y_n = y_(n−1) + E (y*(x_n) − y_(n−1)),  n = 1 … N      Murphree vapour efficiency E
//   top           y_N = x_D
// Marching up from the kettle with an assumed x_D gives y_N, which falls while x_D rises: one root, found by Newton
// in a bracket. Where many plates stand in a pinch at the bottom, errors grow on the way up; there the plates above
// are found marching down from the top, the direction in which errors shrink.

import { refuse } from '../../arguments.js';
import type { CurveSlice } from '../../equilibrium/equilibrium-curve.js';
import { readVapour } from '../../equilibrium/slice-tables.js';
import { bracketedNewton } from '../../numerics/root.js';
import type { MoleFraction } from '../../units/quantities.js';
import { rangeFault } from '../check.js';
import { plateFaults, questionFaults, refluxFault } from './check.js';
import { type March, marcher } from './marcher.js';

/** What the staircase is asked for. */
export interface StaircaseQuestion {
  /** Equilibrium at the column's pressure. */
  readonly slice: CurveSlice;
  readonly kettleMoleFraction: MoleFraction;
  /** Plates above the kettle, 0 or more. */
  readonly plates: number;
  /** Murphree vapour efficiency of each plate, above 0 up to 1. */
  readonly efficiency: number;
  /** Reflux ratio L/D, or 'total'. */
  readonly reflux: number | 'total';
}

/** One plate on the diagram. */
export interface StaircaseStep {
  /** Mole fraction of ethanol in the liquid that leaves the plate, x_n. */
  readonly liquidMoleFraction: MoleFraction;
  /** In the vapour that enters it from below, y_(n−1): the point (x_n, y_(n−1)) is on the operating line. */
  readonly vapourInMoleFraction: MoleFraction;
  /** In the vapour that leaves it, y_n. */
  readonly vapourOutMoleFraction: MoleFraction;
}

/** The staircase from the kettle to the spout. */
export interface Staircase {
  readonly kettleMoleFraction: MoleFraction;
  /** In the vapour that leaves the kettle, y_0. */
  readonly kettleVapourMoleFraction: MoleFraction;
  /** The plates from below; none where nothing flows back (reflux 0). */
  readonly steps: readonly StaircaseStep[];
  /** At the spout, x_D. */
  readonly headMoleFraction: MoleFraction;
  /** y = slope · x + intercept. */
  readonly operatingLine: { readonly slope: number; readonly intercept: number };
}

/**
 * The steps of a column on the x-y diagram and its head composition, for a kettle composition and a reflux.
 *
 * Equation: y_n = r x_(n+1) + (1 − r) x_D with r = R/(R + 1), y_n = y_(n−1) + E (y*(x_n) − y_(n−1)), y_N = x_D.
 * @param question Slice, ethanol in the kettle x_B [mol/mol] 0 to 1, plates N (whole, 0 to 1000), efficiency E above 0 to 1, reflux ratio R (0 or more) or 'total'; outside them it throws.
 * @returns Kettle vapour, plates from below, head composition and operating line. A pinch gives plates that hardly differ.
 * @throws InputError when a part of the question is outside its range.
 * @example staircase({ slice: createEthanolWater().curve('redlich-kister').at(101325), kettleMoleFraction: 0.0312, plates: 4, efficiency: 1, reflux: 3 }).headMoleFraction // → 0.7292
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605-611; E. V. Murphree, Ind. Eng. Chem. 17 (1925) 747-750.
 */
export function staircase(question: StaircaseQuestion): Staircase {
  checkQuestion(question);
  const { slice, kettleMoleFraction, plates, efficiency, reflux } = question;
  const kettleVapourMoleFraction = readVapour(slice.alpha, slice.intervals, kettleMoleFraction);
  const slope = reflux === 'total' ? 1 : reflux / (reflux + 1);
  const idle = plates === 0 || slope === 0;
  const march = marcher(slice, efficiency, slope);
  const head = idle ? kettleVapourMoleFraction : headOf(march, kettleVapourMoleFraction, plates, slope);
  return {
    kettleMoleFraction,
    kettleVapourMoleFraction,
    steps: idle ? [] : stepsOf(march, kettleVapourMoleFraction, plates, head),
    headMoleFraction: head,
    operatingLine: { slope, intercept: (1 - slope) * head },
  };
}

/** x_D: at total reflux by going up once, else the root of y_N(x_D) − x_D, which falls throughout. */
function headOf(march: March, kettleVapour: number, plates: number, slope: number): MoleFraction {
  const climb = (head: number): void => {
    march.vapour = kettleVapour;
    march.vapourSlope = 0;
    for (let n = 0; n < plates; n++) march.up(march.vapour, march.vapourSlope, head);
  };
  climb(kettleVapour);
  if (slope === 1) return march.vapour;
  return bracketedNewton(
    (head, out) => {
      climb(head);
      out.value = march.vapour - head;
      out.slope = march.vapourSlope - 1;
    },
    0,
    1,
    kettleVapour + 0.5 * (march.vapour - kettleVapour),
  );
}

/** Errors of x_D beyond this growth are not trusted; the plates above are found from the top. */
const MOST_GROWTH = 1e5;

function stepsOf(march: March, kettleVapour: number, plates: number, head: MoleFraction): StaircaseStep[] {
  const steps: StaircaseStep[] = [];
  march.vapour = kettleVapour;
  march.vapourSlope = 0;
  while (steps.length < plates) {
    const vapourIn = march.vapour;
    march.up(vapourIn, march.vapourSlope, head);
    if (Math.abs(march.vapourSlope) > MOST_GROWTH) break;
    steps.push(step(march.liquid, vapourIn, march.vapour));
  }
  const fromTop: StaircaseStep[] = [];
  let vapourOut = head;
  while (steps.length + fromTop.length < plates) {
    const { liquid, vapourIn } = march.down(vapourOut, head);
    fromTop.push(step(liquid, vapourIn, vapourOut));
    vapourOut = vapourIn;
  }
  return [...steps, ...fromTop.reverse()];
}

function step(liquid: number, vapourIn: number, vapourOut: number): StaircaseStep {
  return { liquidMoleFraction: liquid, vapourInMoleFraction: vapourIn, vapourOutMoleFraction: vapourOut };
}

const FIELDS = ['slice', 'kettleMoleFraction', 'plates', 'efficiency', 'reflux'];

function checkQuestion(question: StaircaseQuestion): void {
  refuse(questionFaults('question', question, FIELDS));
  refuse([
    ...rangeFault('kettleMoleFraction', question.kettleMoleFraction, 0, 1, 'a mole fraction of ethanol from 0 to 1'),
    ...plateFaults(question),
    ...refluxFault(question.reflux),
  ]);
}
