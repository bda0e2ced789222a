// Rows of the figures of the course, all in strengths: what rises from which liquid, and the staircase of a
// column with everything sent back.

import { moleFractionFromStrength, strengthFromMoleFraction, temperatureOnSlice, vapourOnSlice } from '#lib/index.js';
import type { CurveSlice } from '#lib/index.js';
import type { RunRows, RunsDrawn } from '../../rows/run.js';
import type { OverTheLiquidRows } from '../../rows/course.js';
import type { StrengthStepsRows } from '../../rows/course.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { EquilibriumAnswer } from '../../worker/kinds/equilibrium.js';
import { azeotropeRow } from '../../state/equilibrium-rows.js';

/** Points of a drawn curve; the weak end is steep and gets more than its share. */
const points = 120;

/** What rises from a liquid that boils: its strength, condensed, and the temperature of the boil. */
export interface Boil {
  /** % vol / 100. */
  readonly liquid: number;
  readonly vapour: number;
  readonly temperature_K: number;
}

/** The boil of a liquid of this strength. */
export function boilOf(slice: CurveSlice, liquid: number): Boil {
  const moleFraction = moleFractionFromStrength(liquid);
  const vapour = strengthFromMoleFraction(vapourOnSlice(slice, moleFraction));
  return { liquid, vapour, temperature_K: temperatureOnSlice(slice, moleFraction) };
}

/** Rows of 'what rises from which liquid', with the reader's own liquid if there is one. */
export function overLiquidRows(
  answer: EquilibriumAnswer,
  own: number | null,
  pressure: number,
  units: UnitSystem,
): OverTheLiquidRows {
  const boils = Array.from({ length: points + 1 }, (_, k) => boilOf(answer.slice, (k / points) ** 1.5));
  return {
    liquidStrength: boils.map(({ liquid }) => liquid),
    vapourStrength: boils.map(({ vapour }) => vapour),
    temperature_K: boils.map(({ temperature_K }) => temperature_K),
    own: own === null ? null : boilOf(answer.slice, own),
    azeotrope: azeotropeRow(answer, pressure, units.pressure),
    units,
  };
}

/** Rows of the staircase of a kettle under ideal plates, everything sent back. */
export function strengthStepsRows(
  answer: EquilibriumAnswer,
  kettle: number,
  plates: number,
  pressure: number,
  units: UnitSystem,
): StrengthStepsRows {
  const { liquidStrength, vapourStrength, azeotrope } = overLiquidRows(answer, null, pressure, units);
  return { liquidStrength, vapourStrength, azeotrope, units, kettle, steps: ladderOf(answer.slice, kettle, plates) };
}

/** % vol / 100 of what rises from the kettle, from the first ideal plate, ..., from the last. */
export function ladderOf(slice: CurveSlice, kettle: number, plates: number): number[] {
  const steps: number[] = [];
  let liquid = kettle;
  while (steps.length <= plates) {
    liquid = boilOf(slice, liquid).vapour;
    steps.push(liquid);
  }
  return steps;
}

/** A run of the course with the number it is called after. */
export interface LessonRun {
  readonly label: string;
  readonly run: RunRows;
}

/** Rows of a run's strength at the spout with earlier runs in pencil; those of the same name stay away. */
export function lessonRunRows(
  now: LessonRun,
  kept: readonly LessonRun[],
  answer: EquilibriumAnswer,
  pressure: number,
  units: UnitSystem,
): RunsDrawn {
  const earlier = kept.filter(({ run }) => run !== now.run);
  return {
    runs: [
      { ...now, shortLabel: now.label, hand: 'ink', weight: 'result' },
      ...earlier.map(({ label, run }) => ({
        label: `${label}, before`,
        shortLabel: 'before',
        hand: 'pencil' as const,
        weight: 'pencil' as const,
        run,
      })),
    ],
    azeotrope: azeotropeRow(answer, pressure, units.pressure),
    panels: ['strength'],
    along: 'volume',
    measure: null,
    threshold: null,
    strengthFrom: null,
    units,
  };
}
