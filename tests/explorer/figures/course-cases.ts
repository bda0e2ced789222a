// Cases of the figures of the course, from the invented mixture.

import { guessFigure } from '../../../explorer/figures/guess-figure.js';
import { overTheLiquid } from '../../../explorer/figures/over-the-liquid.js';
import { refluxPrice } from '../../../explorer/figures/reflux-price.js';
import type { RefluxPriceRows } from '../../../explorer/rows/course.js';
import { strengthByPlates } from '../../../explorer/figures/strength-by-plates.js';
import type { StrengthByPlatesRows } from '../../../explorer/rows/course.js';
import { strengthCorner, strengthSteps } from '../../../explorer/figures/strength-steps.js';
import type { StrengthStepsRows } from '../../../explorer/rows/course.js';
import { vapourOverLiquid } from '../../../explorer/figures/vapour-over-liquid.js';
import type { OverTheLiquidRows } from '../../../explorer/rows/course.js';
import { minutes, plates } from '../../../explorer/entries/guess/quantities.js';
import { azeotrope, curve, inventedStrength, staircase, units } from './invented-rows.js';

const invented = {
  liquidStrength: Array.from(curve.liquidMoleFraction, inventedStrength),
  vapourStrength: Array.from(curve.vapourMoleFraction, inventedStrength),
  azeotrope: { ...azeotrope, strength: inventedStrength(azeotrope.moleFraction) },
  units,
};

export const overLiquid: OverTheLiquidRows = {
  ...invented,
  temperature_K: curve.temperature_K,
  own: { liquid: 0.095, vapour: 0.55, temperature_K: 365.5 },
};

export const strengthStairs: StrengthStepsRows = {
  ...invented,
  kettle: inventedStrength(0.031),
  steps: staircase(0.031, 9).strength,
};

export const byPlates: StrengthByPlatesRows = {
  plates: [4, 12, 20, 40, 60],
  strength: [0.874, 0.936, 0.951, 0.956, 0.957],
  known: [4, 12],
  strengthFrom: 0.8,
  azeotrope,
  title: 'Strength at the spout after 2.0 L',
  units,
};

export const price: RefluxPriceRows = {
  reflux: [1, 2, 4, 8, 12],
  strength: [0.87, 0.92, 0.94, 0.946, 0.948],
  time_s: [600, 900, 1500, 2700, 3900],
  known: 1,
  strengthFrom: 0.8,
  azeotrope,
  measure: '2.0 L',
  minutes,
  units,
};

const guessed = {
  x: plates,
  y: units.strength,
  start: { x: 12, y: 0.936 },
  points: [
    { x: 25, y: 0.96 },
    { x: 45, y: 0.975 },
    { x: 60, y: 0.99 },
  ],
  hand: null,
};

export const guessOfPlates = guessFigure<StrengthByPlatesRows>({
  figure: strengthByPlates,
  panel: 'plates',
  hidden: ['strength'],
  answer: ({ plates: x, strength }) => ({ x, y: strength }),
});

/** Before and after the answer. */
export const guesses = {
  before: { ...guessed, rows: byPlates, answered: false },
  after: { ...guessed, rows: byPlates, answered: true },
};

const alone = { pencils: -1, pair: false };
const paired = { pencils: -1, pair: true };

export const courseCases = [
  { name: 'over the liquid', figure: overTheLiquid, rows: overLiquid, ...alone },
  { name: 'vapour over liquid', figure: vapourOverLiquid, rows: { ...overLiquid, own: null }, ...alone },
  { name: 'strength steps', figure: strengthSteps, rows: strengthStairs, ...paired },
  { name: 'the last tenth', figure: strengthCorner, rows: strengthStairs, ...paired },
  { name: 'strength by plates', figure: strengthByPlates, rows: byPlates, ...alone },
  { name: 'price of reflux', figure: refluxPrice, rows: price, ...alone },
] as const;
