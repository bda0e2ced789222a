// The reference model regressed again with one thing changed, to show what its results hang on.

import { readFileSync } from 'node:fs';
import { azeotrope } from '../../dist/lib/index.js';
import { EXPANSION } from '../../dist/lib/mixture/activity/redlich-kister.js';
import { SETS } from './measurements.mjs';
import { vanishing } from './goals.mjs';
import { expansion, SERIES } from './models.mjs';
import { fit } from './regress.mjs';

const crossed = (cross) => expansion(EXPANSION.stretch, SERIES, cross);
const idealVapour = (form) => ({ ...form, model: (vector) => ({ ...form.model(vector), vapour: undefined }) });

/** Terms of the design's first trial: five, with three functions of temperature each, in the plain composition. */
const FIRST_TRIAL = [5, 5, 5, 0];

const VARIANTS = [
  ['as it is', () => expansion(EXPANSION.stretch)],
  ['Lewis rule, B12 = (B11 + B22)/2', () => crossed(0)],
  ['B12 10 % weaker', () => crossed(-0.1)],
  ['B12 25 % weaker', () => crossed(-0.25)],
  ['B12 30 % weaker', () => crossed(-0.3)],
  ['ideal vapour', () => idealVapour(expansion(EXPANSION.stretch))],
  ['plain composition, ρ = 1', () => expansion(1)],
  ['ρ = 1.5', () => expansion(1.5)],
  ['ρ = 2.5', () => expansion(2.5)],
  ['ρ = 3', () => expansion(3)],
  ['five terms, constant excess heat capacity, ρ = 1', () => expansion(1, FIRST_TRIAL)],
];

export function variantRows(summary) {
  const error = (model, set, quantity) =>
    summary(
      model,
      SETS.find((entry) => entry.set === set),
    ).get(quantity).error;
  const cell = (found) => (found.found ? found.moleFraction.toFixed(4) : 'none');
  const rows = VARIANTS.map(([name, make]) => {
    const form = make();
    // To six digits of S, which a form that fits badly reaches sooner than more.
    const found = fit(form, { tolerance: 1e-8 });
    if (found.ending !== 'converged') throw new Error(`${name} did not converge`);
    const model = form.model(found.parameters);
    return [
      name,
      found.sumOfSquares.toFixed(0),
      cell(azeotrope(101325, model)),
      cell(azeotrope(17290, model)),
      cell(azeotrope(1001300, model)),
      (vanishing(model) / 1000).toFixed(1),
      error(model, 'kamihama-2012-101kPa', 'y').toFixed(4),
      (100 * error(model, 'pemberton-mash-1978-303K', 'P')).toFixed(2),
      ['nagamachi-2006-298K', 'nagamachi-2006-323K', 'fang-2014-423K']
        .map((set) => error(model, set, 'hE').toFixed(0))
        .join(', '),
    ];
  });
  // The same by independent code.
  const { fits } = JSON.parse(readFileSync(new URL('../derived/regression-scipy.json', import.meta.url), 'utf8'));
  for (const { name, sumOfSquares, azeotrope: at } of fits) {
    const value = (pressure) => (at[pressure] === null ? 'none' : at[pressure].toFixed(4));
    rows.push([
      `scipy: ${name}`,
      sumOfSquares.toFixed(0),
      value('101325.0'),
      value('17290.0'),
      value('1001300.0'),
      '',
      '',
      '',
      '',
    ]);
  }
  return rows;
}
