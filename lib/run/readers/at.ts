// A run at any moment, by the order of the method that took the step: what every gauge would show, and what every vessel holds.

import { isRecord, typeCode } from '../../arguments.js';
import { checkRange, InputError } from '../../errors.js';
import { strengthFromMoleFraction } from '../../mixture/strength.js';
import { volumeAt20C } from '../../mixture/volume.js';
import type { Kelvin, Mole, MoleFraction, Pascal, Second, VolumeFraction20C, Watt } from '../../units/quantities.js';
import { HOLDER_COLUMNS, type HolderKind } from '../engine.js';
import { MOLAR_VOLUME_ETHANOL } from '../columns.js';
import { sAtTime } from '../rows.js';
import type { RunSolution } from '../solution.js';
import { Solved } from '../solved.js';

/** A vessel at one moment. */
export interface VesselAt {
  readonly kind: HolderKind;
  readonly number: number;
  readonly pressure_Pa: Pascal;
  readonly amount_mol: Mole;
  readonly liquidMoleFraction: MoleFraction;
  readonly vapourMoleFraction: MoleFraction;
  readonly temperature_K: Kelvin;
  readonly vapourRate_mol_s: number;
  readonly liquidRate_mol_s: number;
}

/** A run at one moment. */
export interface RunAt {
  readonly time_s: Second;
  /** Step of the run sheet that is in force, counted from 1 as in messages. */
  readonly step: number;
  readonly kettleStrength: VolumeFraction20C;
  readonly kettleTemperature_K: Kelvin;
  readonly headTemperature_K: Kelvin;
  readonly spoutStrength: VolumeFraction20C;
  readonly distillateRate_mol_s: number;
  readonly collectedVolume_m3: number;
  readonly pureAlcoholCollected_m3: number;
  readonly pureAlcoholLeft_m3: number;
  readonly refluxRatio: number;
  readonly power_W: Watt;
  readonly condenserDuty_W: Watt;
  readonly refluxDuty_W: Watt;
  readonly lost_W: Watt;
  readonly vessels: readonly VesselAt[];
}

/**
 * A run at any moment between its beginning and its end.
 *
 * Equation: the dense output of the solver's own step, of the order of the method that took it.
 * @param run A solution as solve gives it (not its plain copy, which has rows only).
 * @param time_s Time since the start, t, [s]; 0 to the end of the run; outside, an InputError.
 * @returns Gauges and every vessel; where a step of the run sheet ends and the next begins, the next.
 * @throws InputError when the moment is outside the run, or the solution is a plain copy.
 * @example runAt(solve({ model: 'rayleigh', still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, heat: { kind: 'power', power_W: 1000 }, sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 600 }] }] }), 300).step // → 1
 * Source: this project, docs/how-it-works/integrator.md.
 */
export function runAt(run: RunSolution, time_s: Second): RunAt {
  const { course, engine, holders } = solved(run);
  const { stretches, path } = course;
  const timeOf = (s: number, state: Float64Array): number => (engine.clock === null ? s : state[engine.clock]!);
  const last = stretches.at(-1)!;
  const end_s = timeOf(last.to, last.end);
  checkRange('time_s', time_s, 0, end_s, `a moment of the run, 0 to ${end_s.toFixed(0)} s`);
  const k = Math.max(
    0,
    stretches.findLastIndex(({ from, start }) => timeOf(from, start) <= time_s),
  );
  const { from, start, first, after } = stretches[k]!;
  const state = Float64Array.from(start);
  let s = from;
  if (after > first) {
    let [low, high] = [first, after - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      const reached_s = engine.clock === null ? path.to(middle) : path.step(middle).end[engine.clock]!;
      if (reached_s < time_s) low = middle + 1;
      else high = middle;
    }
    s = sAtTime(course, engine, low, time_s);
    engine.between(path.step(low), path.kind(low), s, state);
  }
  engine.beginStep(k, from, start);
  const moment = engine.moment.look(s, state);
  const tables = HOLDER_COLUMNS.map(() => new Float64Array(holders.length));
  moment.writeHolders(tables, 0);
  const [amounts, liquids, vapours, temperatures, vapourRates, liquidRates] = tables;
  return {
    time_s: moment.time_s,
    step: k + 1,
    kettleStrength: strengthFromMoleFraction(within(moment.kettleMoleFraction)),
    kettleTemperature_K: moment.kettleTemperature_K,
    headTemperature_K: moment.headTemperature_K,
    spoutStrength: strengthFromMoleFraction(within(moment.spoutMoleFraction)),
    distillateRate_mol_s: moment.distillateRate_mol_s,
    collectedVolume_m3: volumeAt20C(Math.max(0, moment.collectedEthanol_mol), Math.max(0, moment.collectedWater_mol)),
    pureAlcoholCollected_m3: MOLAR_VOLUME_ETHANOL * moment.collectedEthanol_mol,
    pureAlcoholLeft_m3: MOLAR_VOLUME_ETHANOL * moment.ethanolLeft_mol,
    refluxRatio: moment.refluxRatio,
    power_W: moment.power_W,
    condenserDuty_W: moment.condenserDuty_W,
    refluxDuty_W: moment.refluxDuty_W,
    lost_W: moment.lost_W,
    vessels: holders.map(({ kind, number, pressure_Pa }, j) => ({
      kind,
      number,
      pressure_Pa,
      amount_mol: amounts![j]!,
      liquidMoleFraction: liquids![j]!,
      vapourMoleFraction: vapours![j]!,
      temperature_K: temperatures![j]!,
      vapourRate_mol_s: vapourRates![j]!,
      liquidRate_mol_s: liquidRates![j]!,
    })),
  };
}

/** The solution with its course; a plain copy has none. */
export function solved(run: RunSolution): Solved {
  const own: unknown = run;
  if (own instanceof Solved) return own;
  const expected = 'a solution as solve gives it: a plain copy has rows only';
  throw new InputError({
    code: typeCode(run),
    argument: 'run',
    value: isRecord(run) ? 'another record' : run,
    expected,
  });
}

function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
