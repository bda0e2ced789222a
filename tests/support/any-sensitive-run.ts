// Random stills with a run on each, a number of the problem, and what is read, for tests of derivatives; and the derivatives to compare with, by
// differences of tight runs at three distances, extrapolated.

import fc from 'fast-check';
import { aboveStrength, type EthanolWater, type RunProblem, runAt, type RunSolution, solve } from '#lib/index.js';
import type { NumberOfProblem } from '#lib/run/sensitivity/paths.js';
import type { StopRule } from '#lib/run/problem.js';
import { anyTrainProblem } from './any-train.js';
import { flatStill } from './column-problems.js';
import type { WholeProblem } from './train-problems.js';

/** A problem, and the path of one of its numbers. */
export interface SensitiveRun {
  readonly problem: RunProblem;
  readonly path: string;
}

const unit = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** How the last step ends: rules that are met, early or late. */
const anyEnd: fc.Arbitrary<readonly StopRule[]> = fc.oneof(
  unit(0.05, 0.6).map((share): StopRule[] => [{ kind: 'alcoholLeftBelow', share }]),
  unit(0.001, 0.01).map((volume_m3): StopRule[] => [{ kind: 'collectedVolume', volume_m3 }]),
  unit(2000, 9000).map((seconds): StopRule[] => [{ kind: 'duration', seconds }]),
  unit(0.01, 0.1).map((strength): StopRule[] => [{ kind: 'kettleStrengthBelow', strength }]),
  unit(0.3, 0.75).map((strength): StopRule[] => [{ kind: 'spoutStrengthBelow', strength }]),
);

/** A still with its energy. */
export function anyEnergyRun(tolerance: number): fc.Arbitrary<SensitiveRun> {
  return fc
    .record({ base: anyTrainProblem(), end: anyEnd, falls: fc.boolean(), pick: fc.nat(1000) })
    .map(({ base, end, falls, pick }) => {
      const { column } = base.still;
      const sheet = base.sheet.map((step, i) =>
        i < base.sheet.length - 1 ? step : { ...step, until: [...end, { kind: 'duration', seconds: 20_000 } as const] },
      );
      const still =
        column.kind === 'plates' ? { ...base.still, column: { ...column, efficiencyFalls: falls } } : base.still;
      const problem: WholeProblem = { ...base, still, sheet, tolerance, jars: { kind: 'size', volume_m3: 1e-3 } };
      const paths = pathsOf(problem);
      return { problem, path: paths[pick % paths.length]! };
    });
}

function pathsOf({ still, sheet, doublerCharges }: WholeProblem): readonly string[] {
  const last = String(sheet.length - 1);
  const [rule] = sheet.at(-1)!.until;
  const paths = [
    'charge.volume_m3',
    'charge.strength',
    'heat.power_W',
    'still.kettle.heatLoss_W_K',
    'still.kettle.metal_J_K',
    'still.air.pressure_Pa',
    'still.air.temperature_K',
    'still.productCondenser.holdUp.volume_m3',
    'activity.parameters[0]',
  ];
  for (const [name, value] of Object.entries(rule!)) {
    if (typeof value === 'number') paths.push(`sheet[${last}].until[0].${name}`);
  }
  if (typeof sheet.at(-1)!.reflux === 'number') paths.push(`sheet[${last}].reflux`);
  if (still.column.kind === 'plates') {
    paths.push('still.column.holdUp.volume_m3', 'still.column.heatLoss_W_K');
    // Runs on both sides are compared with, and there is none above 1.
    if (still.column.efficiency < 0.99) paths.push('still.column.efficiency');
  }
  if (still.column.kind === 'packing') paths.push('still.column.liquidShare', 'still.column.heatLoss_W_K');
  if (still.head.heatLoss_W_K > 0) paths.push('still.head.heatLoss_W_K');
  const condenser = still.refluxCondenser;
  if (condenser.kind === 'partial') {
    paths.push(`still.refluxCondenser.coolant.${condenser.coolant.kind === 'duty' ? 'power_W' : 'flow_kg_s'}`);
  }
  if (doublerCharges.length > 0) paths.push('doublerCharges[0].charge.strength', 'doublerCharges[0].charge.volume_m3');
  return paths;
}

/** A column of equal flows. */
export function anyFlowsRun(tolerance: number): fc.Arbitrary<SensitiveRun> {
  return fc
    .record({
      plates: fc.integer({ min: 0, max: 15 }),
      efficiency: fc.oneof(fc.constant(1), unit(0.3, 0.95)),
      strength: unit(0.05, 0.4),
      reflux: unit(0.5, 8),
      drop: unit(50, 500),
      end: anyEnd,
      pick: fc.nat(1000),
    })
    .map(({ plates, efficiency, strength, reflux, drop, end, pick }) => {
      const problem: RunProblem = {
        model: 'equalFlows',
        still: { ...flatStill({ plates, efficiency, plateDrop_Pa: drop }), kettle: { volume_m3: 0.15 } },
        charge: { kind: 'volume', volume_m3: 0.1, strength },
        heat: { kind: 'power', power_W: 5000 },
        sheet: [
          { reflux: 'total', until: [{ kind: 'duration', seconds: 900 }] },
          { reflux, until: [...end, { kind: 'duration', seconds: 20_000 }] },
        ],
        outputs: { kind: 'every', interval_s: 120 },
        jars: { kind: 'size', volume_m3: 1e-3 },
        tolerance,
      };
      const paths = ['charge.volume_m3', 'charge.strength', 'heat.power_W', 'sheet[1].reflux', 'still.air.pressure_Pa'];
      if (plates > 0) paths.push('still.column.holdUp.amount_mol', 'still.column.drop_Pa');
      if (plates > 0 && efficiency < 0.99) paths.push('still.column.efficiency');
      paths.push('sheet[0].until[0].seconds', 'still.refluxCondenser.holdUp.amount_mol', 'activity.parameters[0]');
      return { problem, path: paths[pick % paths.length]! };
    });
}

/** A bare pot by quadrature. */
export const anyQuadratureRun: fc.Arbitrary<SensitiveRun> = fc
  .record({ strength: unit(0.03, 0.6), power: unit(2000, 8000), end: anyEnd, pick: fc.nat(1000) })
  .map(({ strength, power, end, pick }) => {
    const problem: RunProblem = {
      model: 'rayleigh',
      still: { kettle: { volume_m3: 0.15 } },
      charge: { kind: 'volume', volume_m3: 0.1, strength },
      heat: { kind: 'power', power_W: power },
      sheet: [
        { reflux: 'none', until: [{ kind: 'duration', seconds: 900 }] },
        { reflux: 'none', heat: { kind: 'power', power_W: 0.8 * power }, until: end },
      ],
      outputs: { kind: 'every', interval_s: 120 },
      jars: { kind: 'size', volume_m3: 1e-3 },
    };
    const paths = ['charge.volume_m3', 'charge.strength', 'heat.power_W', 'sheet[1].heat.power_W'];
    paths.push('still.air.pressure_Pa', 'sheet[0].until[0].seconds', 'activity.parameters[0]');
    return { problem, path: paths[pick % paths.length]! };
  });

/** What is read off a run: at its end, at a moment, above a strength, of a jar, of its energy. */
export function readingsAt(moment_s: number): (run: RunSolution) => Readonly<Record<string, number>> {
  return (run) => {
    const at = runAt(run, moment_s);
    const energy = run as RunSolution & { readonly condensed_J?: Float64Array };
    return {
      end_s: run.time_s.at(-1)!,
      pureAlcohol_m3: run.pureAlcoholCollected_m3.at(-1)!,
      left_m3: run.pureAlcoholLeft_m3.at(-1)!,
      spoutAt: at.spoutStrength,
      kettleAt_K: at.kettleTemperature_K - 273,
      collectedAt_m3: at.collectedVolume_m3,
      above_m3: aboveStrength(run, 0.5).volume_m3,
      jar_m3: run.jars[0]?.pureAlcohol_m3 ?? 0,
      jarTo_s: run.jars[0]?.to_s ?? 0,
      condensed_J: energy.condensed_J?.at(-1) ?? 0,
    };
  };
}

/** A derivative by differences of runs, extrapolated, and how far the extrapolation is to be trusted. */
export interface Reference {
  readonly value: number;
  readonly doubt: number;
}

/** Distances from the number, as shares of its size. */
const FARTHEST = 4e-3;

/** Derivatives of all readings by differences of runs at three distances: error of order 6. */
export function byDifferences(
  { value, size, at }: NumberOfProblem,
  read: (run: RunSolution) => Readonly<Record<string, number>>,
  system: EthanolWater,
): Readonly<Record<string, Reference>> {
  const ends = [1, 0.5, 0.25].map((share) => {
    const h = FARTHEST * share * size;
    const [more, less] = [read(solve(at(value + h), system)), read(solve(at(value - h), system))];
    return Object.fromEntries(Object.entries(more).map(([name, one]) => [name, (one - less[name]!) / (2 * h)]));
  });
  const [far, middle, near] = ends as [Record<string, number>, Record<string, number>, Record<string, number>];
  return Object.fromEntries(
    Object.keys(far).map((name) => {
      const coarse = (4 * middle[name]! - far[name]!) / 3;
      const fine = (4 * near[name]! - middle[name]!) / 3;
      return [name, { value: (16 * fine - coarse) / 15, doubt: Math.abs(fine - coarse) / 15 }];
    }),
  );
}
