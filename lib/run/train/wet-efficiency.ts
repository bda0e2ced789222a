// Plates driven close to flooding work worse: liquid carried up with the vapour undoes part of what a plate has done. Taken anew at the
// beginning of each step of the run sheet, with the vapour its heat raises, and kept through the step.

import { plateLoad } from '../../still/plate-load.js';
import type { Still } from '../../still/still.js';
import type { Controls } from './controls.js';
import { LAMBDA0, type Train } from './holders.js';
import type { TrainState } from './train-state.js';

/** A plate that is still cold is taken to hold the heaviest vapour it may get. */
const RICH = 0.85;
/** About where rich vapour condenses, K. */
const HEAD_K = 351;

/** Murphree efficiency of every holder at the load of a step; null where nothing falls. */
export function wetEfficiencies(
  still: Still,
  train: Train,
  moment: TrainState,
  controls: Controls,
): Float64Array | null {
  const { column } = still;
  if (column.kind !== 'plates' || !column.efficiencyFalls) return null;
  const vapour_mol_s = controls.power_W / LAMBDA0;
  const returned = returnedShare(train, controls);
  return Float64Array.from(train.holders, (holder, j) => {
    if (holder.kind !== 'plate') return holder.efficiency;
    const warm = moment.vapourRate_mol_s(j) > 0;
    const { efficiencyFactor } = plateLoad(column, {
      vapour_mol_s,
      liquid_mol_s: returned * vapour_mol_s,
      vapourMoleFraction: warm ? within(moment.vapour(j)) : RICH,
      liquidMoleFraction: warm ? within(moment.liquid(j)) : RICH,
      temperature_K: warm ? moment.temperature_K(j) : HEAD_K,
      pressure_Pa: holder.pressure_Pa,
    });
    return holder.efficiency * efficiencyFactor;
  });
}

/** What runs back for each mole of vapour: what is set, the middle of a hold's limits, or what a partial condenser can condense. */
function returnedShare({ holders }: Train, { power_W, returned, duty_W, water_W_K, hold }: Controls): number {
  const asked = hold === null ? 1 : 0.5 * (hold.least + hold.most);
  const top = holders.at(-1)!;
  if (top.kind !== 'partialCondenser') return hold === null ? returned : asked;
  const duty = asked * duty_W + water_W_K * Math.max(0, HEAD_K - top.reference_K);
  return Math.min(1, duty / Math.max(1, power_W));
}

function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
