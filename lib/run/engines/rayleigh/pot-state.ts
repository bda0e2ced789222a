// Named reading of a bare pot at one point of its path: what gauges, stop rules and rows ask for.

import { type CurveSlice, temperatureOnSlice, vapourOnSlice } from '../../../equilibrium/equilibrium-curve.js';
import { logistic } from '../../../numerics/logit.js';
import type { RunState } from '../../stop-rules.js';
import type { PathPoint } from './path.js';

/** A bare pot at one moment. */
export interface PotState extends RunState {
  readonly boiledUp_mol: number;
  readonly kettleAmount_mol: number;
}

/** Reads a point of the path of a charge of `amount_mol` with `ethanol_mol` in it. */
export function potState(slice: CurveSlice, amount_mol: number, ethanol_mol: number, point: PathPoint): PotState {
  const kettleMoleFraction = logistic(point.u);
  const kettleAmount_mol = amount_mol * Math.exp(-point.s);
  // −expm1(−s), so that the first drop is not lost in rounding.
  const boiledUp_mol = -amount_mol * Math.expm1(-point.s);
  const ethanolLeft_mol = point.s === 0 ? ethanol_mol : kettleAmount_mol * kettleMoleFraction;
  const collectedEthanol_mol = Math.min(boiledUp_mol, Math.max(0, ethanol_mol - ethanolLeft_mol));
  const temperature_K = temperatureOnSlice(slice, kettleMoleFraction);
  return {
    time_s: point.time_s,
    stepTime_s: point.time_s,
    boiledUp_mol,
    kettleAmount_mol,
    kettleMoleFraction,
    kettleTemperature_K: temperature_K,
    spoutMoleFraction: vapourOnSlice(slice, kettleMoleFraction),
    // The vapour rises straight from the boiling liquid: its dew temperature is the kettle's.
    headTemperature_K: temperature_K,
    collectedEthanol_mol,
    collectedWater_mol: boiledUp_mol - collectedEthanol_mol,
    ethanolLeft_mol,
    chargeEthanol_mol: ethanol_mol,
    vapourShare: 1,
    refluxRatio: 0,
  };
}
