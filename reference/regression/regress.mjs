// Regresses the project's activity models from reference/measurements with the weights of weights.json, and writes
// reference/parameters. Deterministic: no random numbers, fixed first guesses. Run: npm run regress

import { readFileSync, writeFileSync } from 'node:fs';
import { format } from 'prettier';
import { leastSquares } from '../../dist/lib/numerics/least-squares.js';
import { SETS } from './measurements.mjs';
import { expansion, nrtl, SERIES, STRETCH, wilson } from './models.mjs';
import {
  azeotropeMisses,
  covarianceOf,
  CROSS_STEP,
  crossErrors,
  leftOut,
  likeliestAzeotrope,
  likeliestLaboratory,
  missesOf,
} from './laboratories.mjs';
import { residualsOf } from './residuals-of.mjs';
import { LEAST, levelled, likeliest, whitened } from './scatter.mjs';

const PARAMETERS = new URL('../parameters/', import.meta.url);
const SCATTER = new URL('scatter.json', import.meta.url);
export const FITTED = SETS.filter(({ role }) => role === 'fit');

/** [{ name, entry, quantity, rows }]: the residuals that count, by set and quantity. */
export function groupsOf(model, sets) {
  return sets.flatMap((entry) => {
    const rows = residualsOf(model, entry, { own: true }).filter(({ used }) => used);
    return [...new Set(rows.map(({ quantity }) => quantity))].map((quantity) => ({
      name: `${entry.set} ${quantity}`,
      quantity,
      rows: rows.filter((row) => row.quantity === quantity),
    }));
  });
}

/** What every set and quantity is worth, as the last regression found it. */
export const scatterOnFile = () => JSON.parse(readFileSync(SCATTER, 'utf8')).sets;

/** The parameters of a form that fit `sets` best under a given scatter. */
export function fit(
  form,
  { sets = FITTED, scatter = scatterOnFile(), start = form.start, tolerance = TOLERANCE } = {},
) {
  const factors = new Map();
  const vector = (model) =>
    groupsOf(model, sets).flatMap(({ name, rows }) => [...whitened(name, rows, scatter[name], factors)]);
  const residuals = (parameters, out) => out.set(vector(form.model(parameters)));
  const residualCount = vector(form.model(Float64Array.from(start))).length;
  // A set that is smooth to 0.01 % magnifies the rounding of a boiling point ten thousand times, so the differences are
  // taken over wide steps, for which the residuals are straight enough.
  const jacobian = (parameters, out) => {
    const [above, below] = [new Float64Array(residualCount), new Float64Array(residualCount)];
    parameters.forEach((value, j) => {
      const moved = Float64Array.from(parameters);
      moved[j] = value + STEP;
      residuals(moved, above);
      moved[j] = value - STEP;
      residuals(moved, below);
      for (let i = 0; i < residualCount; i++) out[i * parameters.length + j] = (above[i] - below[i]) / (2 * STEP);
    });
  };
  return leastSquares({ residualCount, start: Array.from(start), residuals, jacobian }, { tolerance });
}
const STEP = 2e-4;
const TOLERANCE = 1e-11;

/** Fit and scatter in turn until no number of the scatter moves. */
export function fitWithScatter(form, sets = FITTED) {
  let scatter = {};
  let found = fit(form, { sets, scatter });
  for (let round = 0; round < ROUNDS; round++) {
    const before = JSON.stringify(scatter);
    const groups = groupsOf(form.model(found.parameters), sets).filter(({ quantity }) => quantity in LEAST);
    scatter = levelled(
      Object.fromEntries(
        groups.map(({ name, quantity, rows }) => [name, { quantity, ...likeliest(rows, LEAST[quantity]) }]),
      ),
    );
    found = fit(form, { sets, scatter, start: found.parameters });
    if (JSON.stringify(scatter) === before) return { found, scatter, rounds: round + 1 };
  }
  throw new Error(`the scatter did not settle in ${ROUNDS} rounds`);
}
const ROUNDS = 40;

/** Twelve digits: more than any of them deserves, enough to repeat every printed result. */
const digits = (value) => String(Number(value.toPrecision(12)));
const row = ([name, value, unit]) => ({ name, value: digits(value), unit });

async function write(key, change) {
  const url = new URL(`${key}.json`, PARAMETERS);
  const set = { ...JSON.parse(readFileSync(url, 'utf8')), ...change };
  writeFileSync(url, await format(JSON.stringify(set), { parser: 'json', printWidth: 120 }));
  console.log(`reference/parameters/${key}.json`);
}

function say(name, found) {
  const reduced = found.sumOfSquares / found.degreesOfFreedom;
  console.log(
    `${name.padEnd(24)} ${found.ending}, ${found.steps} steps, ${found.parameters.length} parameters, ` +
      `S ${found.sumOfSquares.toFixed(2)}, S/freedom ${reduced.toFixed(3)}`,
  );
  if (found.ending !== 'converged') throw new Error(`${name} did not converge`);
  return reduced;
}

/** Lower triangular L with covariance = L Lᵀ, so that a variance from it can never come out negative. */
function cholesky(matrix, n) {
  const l = Array.from({ length: n }, () => new Array(n).fill(0));
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j];
      for (let k = 0; k < j; k++) sum -= l[i][k] * l[j][k];
      if (i === j && !(sum > 0)) throw new Error('the covariance is not positive');
      l[i][j] = i === j ? Math.sqrt(sum) : sum / l[j][j];
    }
  }
  return l;
}

async function main() {
  const form = expansion(STRETCH);
  const { found, scatter, rounds } = fitWithScatter(form);
  console.log(`scatter settled after ${rounds} rounds`);
  for (const [name, { within, between }] of Object.entries(scatter)) {
    console.log(`  ${name.padEnd(32)} within ${within.toPrecision(3)}  between ${between.toPrecision(3)}`);
  }
  const about =
    'Scatter of each set in the fit, point to point (within) and against other laboratories (between), by npm run regress: P relative, T in K, y at y = 1/2. Equation in scatter.mjs.';
  writeFileSync(SCATTER, await format(JSON.stringify({ about, sets: scatter }), { parser: 'json', printWidth: 120 }));
  const reduced = say(form.key, found);
  const n = found.parameters.length;
  await write(form.key, {
    coefficients: form.coefficients(found.parameters).map(row),
    constants: form.constants.map(row),
  });
  const without = leftOut(fit, form, found, FITTED, scatter);
  const covariance = covarianceOf(found, without);
  const crossed = crossErrors(fit, found, scatter);
  const laboratory = {
    ...crossed.errors,
    ...likeliestLaboratory(missesOf(form, found, covariance, without)),
    ...likeliestAzeotrope(azeotropeMisses(form, found, covariance, without)),
  };
  console.log('laboratories', laboratory);
  const factor = cholesky(covariance, n);
  await write('redlich-kister-covariance', {
    coefficients: [
      ...factor.flatMap((line, i) => line.slice(0, i + 1).map((value, j) => [`L${i + 1}_${j + 1}`, value])),
      ...crossed.follows.map((value, i) => [`cross_${i + 1}`, value]),
    ].map(([name, value]) => ({ name, value: digits(Number(value.toPrecision(8))), unit: '1' })),
    constants: [
      ['reducedChiSquare', Number(reduced.toPrecision(5)), '1'],
      ['degreesOfFreedom', found.degreesOfFreedom, '1'],
      ['terms', SERIES[0], '1'],
      ['crossStep', CROSS_STEP, '1'],
    ].map(row),
  });
  await write('laboratories-ethanol-water', {
    coefficients: Object.entries(laboratory).map(([name, value]) =>
      row([name, value, name.endsWith('_K') ? 'K' : '1']),
    ),
    constants: [],
  });
  for (const each of [nrtl, wilson]) {
    const result = fit(each, { scatter });
    say(each.key, result);
    await write(each.key, { coefficients: each.coefficients(result.parameters).map(row), constants: [] });
  }
}

if (process.argv[1] === new URL(import.meta.url).pathname) await main();
