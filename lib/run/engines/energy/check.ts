// What of a problem the models with an account of energy cannot run.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import { mostVapour_mol_s, rowFaults } from '../../row-room.js';
import { holdUpFaults, surroundingsFaults } from './check-bounds.js';
import { powerOf } from './controls.js';
import { ENTHALPY_RANGE_PA } from '../../../equilibrium/enthalpy-curve.js';
import { ZERO_CELSIUS } from '../../../constants.js';
import type { Fault } from '../../../errors.js';
import { type Amounts, volumeAt20C } from '../../../mixture/volume.js';
import { chargeAmounts, chargeFaults, DRY_SHARE } from '../../charge.js';
import { rangeFault } from '../../check.js';
import type { Charge } from '../../problem.js';
import { stopRuleFaults } from '../../stop-rules.js';
import { trainOf } from './holders.js';
import { startingState } from './start.js';
import { ETHANOL, WATER } from './streams.js';
import { trainTables } from './tables.js';
import type { CompleteProblem } from '../../complete.js';

const BOILS_AT_MOST_K = 'the boiling point at the least';

/** Faults of a complete problem of the right shape. */
export function energyFaults(problem: CompleteProblem, system: EthanolWater): Fault[] {
  const numbers = [
    ...fillingFaults('charge', problem.charge, problem.chargeTemperature_K, 'chargeTemperature_K'),
    ...doublerFaults(problem),
    ...lagFaults(problem.lags),
    ...startFaults(problem),
  ];
  if (numbers.length > 0) return numbers;
  const train = [...pressureFaults(problem), ...volumeFaults(problem, system), ...jarFaults(problem)];
  if (train.length === 0) train.push(...surroundingsFaults(problem, system), ...holdUpFaults(problem));
  if (train.length > 0) return train;
  const sheet = sheetFaults(problem);
  if (sheet.length > 0) return sheet;
  const { ethanol_mol, water_mol } = chargeAmounts(problem.charge);
  return rowFaults(problem.outputs, problem.sheet, ethanol_mol + water_mol, ({ heat = problem.heat }) =>
    mostVapour_mol_s(powerOf(heat)),
  );
}

function startFaults({ start, model }: CompleteProblem): Fault[] {
  if (start !== 'charge') return [];
  const expected = `'cold' or 'firstVapour': the model '${model}' fills plates as a still does`;
  return [{ argument: 'start', value: start, expected }];
}

function lagFaults(lags: CompleteProblem['lags']): Fault[] {
  if (lags === undefined) return [];
  const { boil_s, weir_s } = lags;
  return [
    ...rangeFault('lags.boil_s', boil_s, 1e-3, 10, 'a time from 1 ms to 10 s'),
    ...rangeFault('lags.weir_s', weir_s, 1e-2, 60, 'a time from 10 ms to a minute'),
  ];
}

/** A kettle needs some alcohol; a doubler may be charged with water. */
function fillingFaults(
  where: string,
  charge: Charge,
  temperature_K: number | undefined,
  temperatureName: string,
): Fault[] {
  const faults = chargeFaults(charge, where === 'charge' ? undefined : 0).map((fault) => ({
    ...fault,
    argument: fault.argument.replace(/^charge/u, where),
  }));
  if (temperature_K === undefined) return faults;
  const expected = `a temperature from 0 °C to 105 °C in K (a charge hotter than ${BOILS_AT_MOST_K} counts as boiling)`;
  return [...faults, ...rangeFault(temperatureName, temperature_K, ZERO_CELSIUS, ZERO_CELSIUS + 105, expected)];
}

function doublerFaults({ still, doublerCharges }: CompleteProblem): Fault[] {
  if (doublerCharges.length !== still.doublers.length) {
    const expected = `one charge for each of the ${String(still.doublers.length)} doublers`;
    return [{ argument: 'doublerCharges', value: doublerCharges.length, expected }];
  }
  return doublerCharges.flatMap((own, i) => {
    const where = `doublerCharges[${String(i)}]`;
    return fillingFaults(`${where}.charge`, own.charge, own.temperature_K, `${where}.temperature_K`);
  });
}

/** Every holder must stand within the pressures the enthalpies cover. */
function pressureFaults(problem: CompleteProblem): Fault[] {
  const [low, high] = ENTHALPY_RANGE_PA;
  const { air } = problem.still;
  const expected = `a pressure from ${String(low)} to ${String(high)} Pa`;
  const faults = rangeFault('still.air.pressure_Pa', air.pressure_Pa, low, high, expected);
  if (faults.length > 0) return faults;
  const kettle_Pa = trainOf(problem).holders[0]!.pressure_Pa;
  if (kettle_Pa <= high) return [];
  const drops = `drops that leave the kettle at ${String(high)} Pa or less, not ${kettle_Pa.toFixed(0)} Pa`;
  return [{ argument: 'still', value: kettle_Pa, expected: drops }];
}

/** What is filled in must fit, and plates, head and condenser must leave most of the charge in the kettle. */
function volumeFaults(problem: CompleteProblem, system: EthanolWater): Fault[] {
  const { still, charge, doublerCharges } = problem;
  const faults: Fault[] = [];
  const fits = (where: string, filled: Charge, room_m3: number): void => {
    const { ethanol_mol, water_mol } = chargeAmounts(filled);
    if (filled.kind === 'volume' ? filled.volume_m3 <= room_m3 : volumeAt20C(ethanol_mol, water_mol) <= room_m3) return;
    const [part, value] =
      filled.kind === 'volume' ? ['volume_m3', filled.volume_m3] : ['amount_mol', filled.amount_mol];
    const what = filled.kind === 'volume' ? 'a volume' : 'an amount';
    faults.push({
      argument: `${where}.${part}`,
      value,
      expected: `${what} that fits into ${room_m3.toPrecision(4)} m³`,
    });
  };
  fits('charge', charge, still.kettle.volume_m3);
  doublerCharges.forEach((own, i) => {
    fits(`doublerCharges[${String(i)}].charge`, own.charge, still.doublers[i]!.volume_m3);
  });
  if (faults.length > 0) return faults;
  return heldFaults(problem, system);
}

/** Plates, head and condenser leave most of the charge in the kettle; and something of it, with alcohol in it, where a hot run begins with all of them full. */
function heldFaults(problem: CompleteProblem, system: EthanolWater): Fault[] {
  const { charge, start, doublerCharges } = problem;
  const { holders, drum, nominalVapour_mol_s } = trainOf(problem);
  const parts = holders.filter(({ kind }) => kind !== 'kettle' && kind !== 'doubler');
  const { ethanol_mol, water_mol } = chargeAmounts(charge);
  const total_mol = ethanol_mol + water_mol;
  const half_mol = parts.reduce((sum, { scale_mol }) => sum + scale_mol, drum.scale_mol);
  const tooMuch = (held_mol: number, what: string): Fault[] => {
    const expected = `plates, head and condenser that hold less than ${what} the charge (about ${held_mol.toPrecision(3)} of ${total_mol.toPrecision(3)} mol)`;
    return [{ argument: 'charge', value: total_mol, expected }];
  };
  if (half_mol >= 0.5 * total_mol) return tooMuch(half_mol, 'half');
  if (start !== 'firstVapour' || doublerCharges.length > 0) return [];
  const full_mol = parts.reduce(
    (sum, { brim_m3, brim_mol }) => sum + (brim_m3 === null ? brim_mol : brim_m3 * MOST_MOL_M3),
    0,
  );
  const drum_mol = drum.brim_m3 * MOST_MOL_M3;
  if (full_mol + MOST_VOLATILE * drum_mol < 0.5 * total_mol) return [];
  const pressures = [...holders.map(({ pressure_Pa }) => pressure_Pa), drum.pressure_Pa];
  const tables = trainTables(system.enthalpy(problem.activity), pressures, problem.model === 'equalHeats');
  const state = startingState(problem, { holders, drum, nominalVapour_mol_s }, tables);
  const leaves = (own: number, of: number): boolean => own > LEAST_LEFT * of;
  if (leaves(state[ETHANOL]!, ethanol_mol) && leaves(state[WATER]!, water_mol)) return [];
  return tooMuch(full_mol + drum_mol, 'most of');
}

/** A hot run begins with at least this share of the charge's alcohol, and of its water, in the kettle. */
const LEAST_LEFT = 0.02;
/** No liquid here holds more, mol/m³: water's molar density at 20 °C, rounded up. */
const MOST_MOL_M3 = 56e3;
/** Vapour is at most so many times as strong as a weak liquid. Source: limiting activity coefficient and vapour pressures, rounded up. */
const MOST_VOLATILE = 15;

/** More jars than this nobody fills. */
const MOST_JARS = 10_000;

function jarFaults({ jars, charge, doublerCharges }: CompleteProblem): Fault[] {
  if (jars.kind !== 'size') return [];
  const { ethanol_mol, water_mol } = collectable([charge, ...doublerCharges.map((own) => own.charge)]);
  const least_m3 = volumeAt20C(ethanol_mol, water_mol) / MOST_JARS;
  if (jars.volume_m3 >= least_m3) return [];
  const expected = `at least ${least_m3.toPrecision(3)} m³, which the charge fills ${String(MOST_JARS)} times`;
  return [{ argument: 'jars.volume_m3', value: jars.volume_m3, expected }];
}

function sheetFaults(problem: CompleteProblem): Fault[] {
  const { sheet, still, doublerCharges, charge } = problem;
  const most = collectable([charge, ...doublerCharges.map((own) => own.charge)]);
  const kettle_Pa = trainOf(problem).holders[0]!.pressure_Pa;
  return sheet.flatMap(({ until }, i) =>
    until.flatMap((rule, k) => {
      const pressure_Pa = rule.kind === 'headTemperatureAbove' ? still.air.pressure_Pa : kettle_Pa;
      return stopRuleFaults(`sheet[${String(i)}].until[${String(k)}]`, rule, most, pressure_Pa);
    }),
  );
}

/** The most that can come over before the kettle is dry. */
function collectable(charges: readonly Charge[]): Amounts {
  const amounts = charges.map(chargeAmounts);
  return {
    ethanol_mol: amounts.reduce((sum, { ethanol_mol }) => sum + ethanol_mol, 0),
    water_mol: (1 - DRY_SHARE) * amounts.reduce((sum, { water_mol }) => sum + water_mol, 0),
  };
}
