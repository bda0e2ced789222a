// Refuses a train problem that cannot be run, naming every bad argument at once: of its shape, else of its numbers, else of its rules.

import { mostVapour_mol_s, rowFaults } from '../../row-room.js';
import { holdUpFaults, surroundingsFaults } from './check-bounds.js';
import { ENTHALPY_RANGE_PA } from '../../../equilibrium/enthalpy-curve.js';
import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import { ZERO_CELSIUS } from '../../../constants.js';
import { InputError, type InputFault } from '../../../errors.js';
import { type Amounts, volumeAt20C } from '../../../mixture/volume.js';
import { chargeAmounts, chargeFaults, DRY_SHARE } from '../../charge.js';
import { rangeFault, wholeFault } from '../../check.js';
import { trainShapeFaults } from '../../shape.js';
import type { Charge } from '../../problem.js';
import { stopRuleFaults } from '../../stop-rules.js';
import { stillFaults } from '../../../still/check.js';
import { trainOf } from './holders.js';
import type { TrainProblem } from './problem.js';
import { refluxFaults } from '../../check-reflux.js';

const BOILS_AT_MOST_K = 'the boiling point at the least';

/** Throws an InputError with every fault of the problem; says nothing when it can be run. */
export function checkTrainProblem(problem: TrainProblem, system: EthanolWater): void {
  const faults = trainProblemFaults(problem, system);
  if (faults.length > 0) throw new InputError(...faults);
}

/** Every fault of the problem. */
export function trainProblemFaults(problem: TrainProblem, system: EthanolWater): InputFault[] {
  const shape = trainShapeFaults(problem);
  if (shape.length > 0) return shape;
  const still = stillFaults(problem.still);
  if (still.length > 0) return still;
  const numbers = [
    ...fillingFaults('charge', problem.charge, problem.chargeTemperature_K, 'chargeTemperature_K'),
    ...doublerFaults(problem),
    ...rangeFault('power_W', problem.power_W, 1, 1e8, 'a power from 1 W up'),
    ...problem.sheet.flatMap(({ power_W }, i) =>
      power_W === undefined ? [] : rangeFault(`sheet[${String(i)}].power_W`, power_W, 0, 1e8, 'a power of 0 W or more'),
    ),
    ...outputFaults(problem),
    ...lagFaults(problem.lags),
    ...(problem.tolerance === undefined
      ? []
      : rangeFault('tolerance', problem.tolerance, 1e-10, 1e-3, 'a tolerance from 1e-10 to 0.001')),
  ];
  if (numbers.length > 0) return numbers;
  const train = [...pressureFaults(problem), ...volumeFaults(problem), ...jarFaults(problem)];
  if (train.length === 0) train.push(...surroundingsFaults(problem, system), ...holdUpFaults(problem));
  if (train.length > 0) return train;
  const sheet = sheetFaults(problem, system);
  if (sheet.length > 0) return sheet;
  const { ethanol_mol, water_mol } = chargeAmounts(problem.charge);
  return rowFaults(problem.outputs, problem.sheet, ethanol_mol + water_mol, ({ power_W }) =>
    mostVapour_mol_s(power_W ?? problem.power_W),
  );
}

function lagFaults(lags: unknown): InputFault[] {
  if (lags === undefined) return [];
  if (typeof lags !== 'object' || lags === null) return [{ argument: 'lags', value: lags, expected: 'a record' }];
  const { boil_s, weir_s } = lags as NonNullable<TrainProblem['lags']>;
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
): InputFault[] {
  const faults = chargeFaults(charge, where === 'charge' ? undefined : 0).map((fault) => ({
    ...fault,
    argument: fault.argument.replace(/^charge/u, where),
  }));
  if (temperature_K === undefined) return faults;
  const expected = `a temperature from 0 °C to 105 °C in K (a charge hotter than ${BOILS_AT_MOST_K} counts as boiling)`;
  return [...faults, ...rangeFault(temperatureName, temperature_K, ZERO_CELSIUS, ZERO_CELSIUS + 105, expected)];
}

function doublerFaults({ still, doublerCharges }: TrainProblem): InputFault[] {
  if (doublerCharges.length !== still.doublers.length) {
    const expected = `one charge for each of the ${String(still.doublers.length)} doublers`;
    return [{ argument: 'doublerCharges', value: doublerCharges.length, expected }];
  }
  return doublerCharges.flatMap((own, i) => {
    const where = `doublerCharges[${String(i)}]`;
    return fillingFaults(`${where}.charge`, own.charge, own.temperature_K, `${where}.temperature_K`);
  });
}

function outputFaults({ outputs, jars }: TrainProblem): InputFault[] {
  const faults =
    outputs.kind === 'every'
      ? rangeFault('outputs.interval_s', outputs.interval_s, 1e-3, 1e9, 'an interval from 0.001 s up')
      : wholeFault('outputs.points', outputs.points, 1, 100);
  if (jars?.kind !== 'size') return faults;
  return [...faults, ...rangeFault('jars.volume_m3', jars.volume_m3, 1e-6, 1e3, 'a volume from 1 mL up')];
}

/** Every holder must stand within the pressures the enthalpies cover. */
function pressureFaults(problem: TrainProblem): InputFault[] {
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
function volumeFaults(problem: TrainProblem): InputFault[] {
  const { still, charge, doublerCharges } = problem;
  const faults: InputFault[] = [];
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
  const { holders, drum } = trainOf(problem);
  const held_mol = holders.reduce(
    (sum, { kind, scale_mol }) => (kind === 'kettle' || kind === 'doubler' ? sum : sum + scale_mol),
    drum.scale_mol,
  );
  const amounts = chargeAmounts(charge);
  const total_mol = amounts.ethanol_mol + amounts.water_mol;
  if (held_mol < 0.5 * total_mol) return [];
  const expected = `plates, head and condenser that hold less than half the charge (about ${held_mol.toPrecision(3)} of ${total_mol.toPrecision(3)} mol)`;
  return [{ argument: 'charge', value: total_mol, expected }];
}

/** More jars than this nobody fills. */
const MOST_JARS = 10_000;

function jarFaults({ jars, charge, doublerCharges }: TrainProblem): InputFault[] {
  if (jars?.kind !== 'size') return [];
  const { ethanol_mol, water_mol } = collectable([charge, ...doublerCharges.map((own) => own.charge)]);
  const least_m3 = volumeAt20C(ethanol_mol, water_mol) / MOST_JARS;
  if (jars.volume_m3 >= least_m3) return [];
  const expected = `at least ${least_m3.toPrecision(3)} m³, which the charge fills ${String(MOST_JARS)} times`;
  return [{ argument: 'jars.volume_m3', value: jars.volume_m3, expected }];
}

function sheetFaults(problem: TrainProblem, _system: EthanolWater): InputFault[] {
  const { sheet, still, doublerCharges, charge } = problem;
  if (sheet.length === 0) return [{ argument: 'sheet', value: sheet, expected: 'at least one step' }];
  const most = collectable([charge, ...doublerCharges.map((own) => own.charge)]);
  const kettle_Pa = trainOf(problem).holders[0]!.pressure_Pa;
  return sheet.flatMap((step, i) => {
    const where = `sheet[${String(i)}]`;
    const faults = refluxFaults(`${where}.reflux`, step.reflux, still);
    if (step.until.length === 0) {
      faults.push({ argument: `${where}.until`, value: step.until, expected: 'at least one rule that ends the step' });
    }
    const rules = step.until.flatMap((rule, k) => {
      const pressure_Pa = rule.kind === 'headTemperatureAbove' ? still.air.pressure_Pa : kettle_Pa;
      return stopRuleFaults(`${where}.until[${String(k)}]`, rule, most, pressure_Pa);
    });
    return [...faults, ...rules];
  });
}

/** The most that can come over before the kettle is dry. */
function collectable(charges: readonly Charge[]): Amounts {
  const amounts = charges.map(chargeAmounts);
  return {
    ethanol_mol: amounts.reduce((sum, { ethanol_mol }) => sum + ethanol_mol, 0),
    water_mol: (1 - DRY_SHARE) * amounts.reduce((sum, { water_mol }) => sum + water_mol, 0),
  };
}
