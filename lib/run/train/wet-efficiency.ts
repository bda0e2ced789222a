// Plates driven close to flooding work worse: liquid carried up with the vapour undoes part of what a plate has done. Taken anew at the
// beginning of each step of the run sheet, with the vapour its heat raises, and kept through the step.

import { plateLoad } from '../../still/plate-load.js';
import type { Still } from '../../still/still.js';
import { LAMBDA0, type Train } from './holders.js';
import type { TrainState } from './train-state.js';

/** A plate that is still cold is taken to hold the heaviest vapour it may get. */
const RICH = 0.85;

/** Murphree efficiency of every holder at the load of a step; null where nothing falls. */
export function wetEfficiencies(
  still: Still,
  train: Train,
  moment: TrainState,
  power_W: number,
  returned: number,
): Float64Array | null {
  const { column } = still;
  if (column.kind !== 'plates' || !column.efficiencyFalls) return null;
  const vapour_mol_s = power_W / LAMBDA0;
  return Float64Array.from(train.holders, (holder, j) => {
    if (holder.kind !== 'plate') return holder.efficiency;
    const warm = moment.vapourRate_mol_s(j) > 0;
    const { efficiencyFactor } = plateLoad(column, {
      vapour_mol_s,
      liquid_mol_s: returned * vapour_mol_s,
      vapourMoleFraction: warm ? within(moment.vapour(j)) : RICH,
      liquidMoleFraction: warm ? within(moment.liquid(j)) : RICH,
      temperature_K: warm ? moment.temperature_K(j) : 351,
      pressure_Pa: holder.pressure_Pa,
    });
    return holder.efficiency * efficiencyFactor;
  });
}

function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
