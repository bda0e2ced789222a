// Every set against a model that has not seen it: errors, scores, and how many points lie within two stated standard errors.

import { azeotrope } from '../../dist/lib/equilibrium/azeotrope.js';
import { bubbleSolver } from '../../dist/lib/equilibrium/bubble-state.js';
import { azeotropeError, laboratoryErrors } from '../../dist/lib/equilibrium/laboratory.js';
import { LABORATORIES_ETHANOL_WATER as laboratories } from '../../dist/lib/data/laboratories-ethanol-water.js';
import { azeotropeMisses, covarianceOf, leftOut, missesOf, RANGES } from './laboratories.mjs';
import { SETS } from './measurements.mjs';
import { expansion, STRETCH } from './models.mjs';
import { fit, FITTED, scatterOnFile } from './regress.mjs';
import { residualsOf } from './residuals-of.mjs';

const mean = (values) => values.reduce((a, b) => a + b, 0) / values.length;
const UNITS = {
  T: (value) => `${value.toFixed(3)} K`,
  y: (value) => value.toFixed(4),
  P: (value) => `${(100 * value).toFixed(3)} %`,
  hE: (value) => `${value.toFixed(1)} J/mol`,
  cp: (value) => `${(100 * value).toFixed(1)} %`,
  'γ∞': (value) => `${(100 * value).toFixed(1)} %`,
  x: (value) => value.toFixed(4),
};

const ATMOSPHERE = 101325;
const signed = (value) => `${value > 0 ? '+' : ''}${value.toFixed(4)}`;

function moved(set, without, form, saying, whole) {
  if (without[set] === undefined) return ['', ''];
  const found = saying(form.model(Float64Array.from(without[set])));
  return [signed(found.vapour - whole.vapour), signed(found.azeotrope - whole.azeotrope)];
}

export function crossValidated(summary) {
  const form = expansion(STRETCH);
  const scatter = scatterOnFile();
  const found = fit(form, { scatter });
  const without = leftOut(fit, form, found, FITTED, scatter);
  const matrix = covarianceOf(found, without);
  const misses = missesOf(form, found, matrix, without).map((row) => {
    const laboratory = laboratoryErrors(laboratories.coefficients, row.x, row.pressure_Pa, row.state);
    const inside = (miss, name) =>
      miss === undefined ? undefined : Math.abs(miss) <= 2 * Math.hypot(row.curve[name], laboratory[name]);
    return {
      ...row,
      T: inside(row.temperature, 'temperature_K'),
      y: inside(row.vapour, 'vapourMoleFraction'),
    };
  });
  const share = (rows, quantity) => {
    const counted = rows.map((row) => row[quantity]).filter((each) => each !== undefined);
    return { share: counted.filter(Boolean).length / counted.length, count: counted.length };
  };
  const text = ({ share: part, count }) => (count === 0 ? '' : `${(100 * part).toFixed(0)} % of ${count}`);

  const all = form.model(found.parameters);
  // What the model says of a weak liquid and of the azeotrope at 1 atm, and by how much a set moves it.
  const saying = (model) => ({
    vapour: bubbleSolver(model)(0.05, ATMOSPHERE).vapour,
    azeotrope: azeotrope(ATMOSPHERE, model).moleFraction,
  });
  const whole = saying(all);
  const rows = SETS.filter(({ role }) => role !== 'outside').flatMap((entry) => {
    const model = form.model(Float64Array.from(without[entry.set] ?? found.parameters));
    const own = residualsOf(all, entry, { own: true }).filter(({ used }) => used);
    const left = residualsOf(model, entry, { own: true }).filter(({ used }) => used);
    return [...new Set(own.map(({ quantity }) => quantity))].map((quantity) => {
      const error = (list) =>
        mean(list.filter((row) => row.quantity === quantity).map((row) => Math.abs(row.residual)));
      const points = misses.filter(({ set }) => set === entry.set);
      const covered =
        quantity === 'y' ? share(points, 'y') : ['T', 'P'].includes(quantity) ? share(points, 'T') : { count: 0 };
      return [
        entry.set,
        quantity,
        own.filter((row) => row.quantity === quantity).length,
        without[entry.set] === undefined ? 'held back' : UNITS[quantity](error(own)),
        UNITS[quantity](error(left)),
        text(covered),
        ...moved(entry.set, without, form, saying, whole),
      ];
    });
  });

  const scores = new Map(
    SETS.filter(({ role }) => role !== 'outside').map((entry) => {
      const model = form.model(Float64Array.from(without[entry.set] ?? found.parameters));
      return [entry.set, [...summary(model, entry).values()].filter(({ used }) => used).map(({ score }) => score)];
    }),
  );

  const coverageRows = Object.entries(RANGES).map(([name, inside]) => {
    const part = misses.filter(inside);
    return [name, text(share(part, 'T')), text(share(part, 'y'))];
  });

  const points = azeotropeMisses(form, found, matrix, without);
  const met = points.filter(
    ({ miss, curve, pressure }) =>
      Math.abs(miss) <= 2 * Math.hypot(curve, azeotropeError(laboratories.coefficients, pressure)),
  );
  return {
    rows,
    scores,
    coverageRows,
    coverage: {
      temperature: share(misses, 'T').share,
      vapour: share(misses, 'y').share,
      azeotrope: met.length / points.length,
    },
    azeotropes: `${met.length} of ${points.length} have an ln α at the published composition within ± 2 of 0`,
  };
}
