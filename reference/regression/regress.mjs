// Regresses the project's activity models from reference/measurements with the weights of weights.json, and writes
// reference/parameters. Deterministic: no random numbers, fixed first guesses. Run: npm run regress

import { readFileSync, writeFileSync } from 'node:fs';
import { format } from 'prettier';
import { leastSquares } from '../../dist/lib/numerics/least-squares.js';
import { SETS } from './measurements.mjs';
import { expansion, nrtl, SERIES, STRETCH, wilson } from './models.mjs';
import { residualsOf } from './residuals-of.mjs';

const PARAMETERS = new URL('../parameters/', import.meta.url);
const fitted = SETS.filter(({ role }) => role === 'fit');

function residualVector(model) {
  return fitted.flatMap((entry) =>
    residualsOf(model, entry, { own: true })
      .filter((row) => row.used)
      .map((row) => row.residual / row.sigma),
  );
}

export function fit(form, start = form.start) {
  const count = residualVector(form.model(Float64Array.from(start))).length;
  return leastSquares({
    residualCount: count,
    start,
    residuals: (vector, out) => out.set(residualVector(form.model(vector))),
  });
}

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
  const found = fit(form);
  const reduced = say(form.key, found);
  const n = found.parameters.length;
  await write(form.key, {
    coefficients: form.coefficients(found.parameters).map(row),
    constants: form.constants.map(row),
  });
  const factor = cholesky(
    found.inverseNormal.map((value) => value * reduced),
    n,
  );
  await write('redlich-kister-covariance', {
    coefficients: factor.flatMap((line, i) =>
      line
        .slice(0, i + 1)
        .map((value, j) => ({ name: `L${i + 1}_${j + 1}`, value: digits(Number(value.toPrecision(8))), unit: '1' })),
    ),
    constants: [
      ['reducedChiSquare', Number(reduced.toPrecision(5)), '1'],
      ['degreesOfFreedom', found.degreesOfFreedom, '1'],
      ['terms', SERIES[0], '1'],
    ].map(row),
  });
  for (const each of [nrtl, wilson]) {
    const result = fit(each);
    say(each.key, result);
    await write(each.key, { coefficients: each.coefficients(result.parameters).map(row), constants: [] });
  }
}

if (process.argv[1] === new URL(import.meta.url).pathname) await main();
