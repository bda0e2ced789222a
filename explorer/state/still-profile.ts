// What stands where up a column at a moment: the rows of its profile, from the vessel it stands on to its top.

import type { ProfileMoment, ColumnProfileRows } from '../rows/column-profile.js';
import { strengthFromMoleFraction, type Still } from '#lib/index.js';
import type { UnitSystem } from '../text/unit-systems.js';
import { clock } from '../text/format.js';
import { readAt, readPlate } from './run-results.js';
import { stillMoment } from './still-moment.js';
import type { SheetRun } from './run-sheet.js';

/** Profiles at positions of the run, the first of them now. */
export function profileRows(
  still: Still,
  run: SheetRun,
  positions: readonly number[],
  units: UnitSystem,
): ColumnProfileRows {
  return {
    moments: positions.map((position) => profileAt(still, run, position)),
    stages: run.plates,
    kind: still.column.kind === 'packing' ? 'packing' : 'plates',
    base: still.doublers.length > 0 ? 'doubler' : 'kettle',
    range_K: hotRange(run),
    units,
  };
}

function profileAt(still: Still, run: SheetRun, asked: number): ProfileMoment {
  const moment = stillMoment(still, run, asked);
  const position = Math.min(Math.max(0, asked), run.rows - 1);
  const first = firstStage(run);
  const parts = [moment.doublers.at(-1) ?? moment.kettle, ...moment.stages]
    .map((part, stage) => ({ part, stage }))
    .filter(({ part }) => part.strength !== null);
  const vapourOf = (stage: number): number => {
    const moleFraction = readPlate(run.holderVapour, run.holders.length, first - 1 + stage, position);
    return strengthFromMoleFraction(Math.min(1, Math.max(0, moleFraction)));
  };
  return {
    label: clock(readAt(run.time_s, position)),
    stage: parts.map(({ stage }) => stage),
    liquid: parts.map(({ part }) => part.strength!),
    vapour: parts.map(({ stage }) => vapourOf(stage)),
    temperature_K: parts.map(({ part }) => part.temperature_K),
  };
}

/** Place of the lowest plate among the holders; one beyond the last where there is none. */
function firstStage({ holders }: SheetRun): number {
  const first = holders.findIndex(({ kind }) => kind === 'plate' || kind === 'packing');
  return first < 0 ? holders.length : first;
}

function hotRange(run: SheetRun): [number, number] {
  const from = run.firstVapour_s ?? Infinity;
  const first = firstStage(run);
  const width = run.holders.length;
  let [low, high] = [Infinity, -Infinity];
  for (let row = 0; row < run.rows; row++) {
    if (run.time_s[row]! < from) continue;
    for (let j = first - 1; j < first + run.plates; j++) {
      const here = run.holderTemperature_K[row * width + j]!;
      if (here < low) low = here;
      if (here > high) high = here;
    }
  }
  return low < high ? [low, high] : [351, 373];
}
