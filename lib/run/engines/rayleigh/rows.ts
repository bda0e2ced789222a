// From moments of a bare pot to the columns of its solution; the plate columns are empty.

import type { CurveSlice } from '../../../equilibrium/equilibrium-curve.js';
import { strengthFromMoleFraction } from '../../../mixture/strength.js';
import { volumeAt20C } from '../../../mixture/volume.js';
import type { Heat } from '../../problem.js';
import type { RunSolution } from '../../solution.js';
import { paceOf } from './path.js';
import type { PotState } from './pot-state.js';

type PotColumns = Omit<RunSolution, 'ending' | 'statistics' | 'stepStarts'>;

/** The columns of a bare pot's solution. */
export function potColumns(moments: readonly PotState[], heat: Heat, slice: CurveSlice): PotColumns {
  const column = (read: (moment: PotState) => number): Float64Array => Float64Array.from(moments, read);
  const pace = paceOf(heat, slice);
  const rate = (moment: PotState): number => 1 / pace(moment.kettleMoleFraction);
  const spoutVolume = (moment: PotState): number => {
    const moleFraction: number = moment.spoutMoleFraction;
    return volumeAt20C(moleFraction, 1 - moleFraction);
  };
  return {
    rows: moments.length,
    plates: 0,
    time_s: column((moment) => moment.time_s),
    boiledUp_mol: column((moment) => moment.boiledUp_mol),
    kettleAmount_mol: column((moment) => moment.kettleAmount_mol),
    kettleMoleFraction: column((moment) => moment.kettleMoleFraction),
    kettleStrength: column((moment) => strengthFromMoleFraction(moment.kettleMoleFraction)),
    kettleTemperature_K: column((moment) => moment.kettleTemperature_K),
    spoutMoleFraction: column((moment) => moment.spoutMoleFraction),
    spoutStrength: column((moment) => strengthFromMoleFraction(moment.spoutMoleFraction)),
    headTemperature_K: column((moment) => moment.headTemperature_K),
    distillateRate_mol_s: column(rate),
    distillateRate_m3_s: column((moment) => rate(moment) * spoutVolume(moment)),
    collectedEthanol_mol: column((moment) => moment.collectedEthanol_mol),
    collectedWater_mol: column((moment) => moment.collectedWater_mol),
    collectedVolume_m3: column((moment) => volumeAt20C(moment.collectedEthanol_mol, moment.collectedWater_mol)),
    pureAlcoholCollected_m3: column((moment) => volumeAt20C(moment.collectedEthanol_mol, 0)),
    pureAlcoholLeft_m3: column((moment) => volumeAt20C(moment.ethanolLeft_mol, 0)),
    plateLiquid: new Float64Array(0),
    plateVapour: new Float64Array(0),
  };
}
