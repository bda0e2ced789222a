// The train of a problem as numbers: for every holder from the kettle up its pressure, overflow, metal, losses and
// efficiency. Energies are counted in units of LAMBDA0 per mole, so that all rows of a holder's block have like sizes.

import { STANDARD_GRAVITY, ZERO_CELSIUS } from '../../../constants.js';
import { densityOfMixture } from '../../../mixture/density.js';
import { massFractionFromMoleFraction } from '../../../mixture/strength.js';
import { volumeAt20C } from '../../../mixture/volume.js';
import type { HoldUp, Still } from '../../../still/still.js';
import type { Kelvin, MoleFraction, Pascal } from '../../../units/quantities.js';
import { chargeAmounts } from '../../charge.js';
import type { CompleteProblem } from '../../complete.js';
import type { HolderKind } from '../../engine.js';
import { powerOf } from './controls.js';

/** Unit of molar energy inside the train, J/mol. Source: this project's choice, near the heat of vaporisation. */
export const LAMBDA0 = 40e3;

/** Longest time by which vapour follows its heat, and liquid its weir, s. */
export const LONGEST_BOIL_LAG_s = 0.5;
export const LONGEST_WEIR_LAG_s = 3;
/** The same as shares of the time in which the vapour renews a holder. */
export const BOIL_SHARE = 0.05;
export const WEIR_SHARE = 0.1;

/** One holder of the train. */
export interface Holder {
  readonly kind: HolderKind;
  /** Number among its kind, from 1. */
  readonly number: number;
  readonly pressure_Pa: Pascal;
  /** Murphree vapour efficiency. */
  readonly efficiency: number;
  /** Volume it holds before liquid runs off, m³; Infinity for the kettle; or null where an amount is kept. */
  readonly brim_m3: number | null;
  readonly brim_mol: number;
  readonly overflow: 'back' | 'over';
  readonly metal_J_K: number;
  /** Conductance to `reference_K`, W/K. */
  readonly loss_W_K: number;
  readonly reference_K: Kelvin;
  /** Amount that a tolerance of 1 stands for, mol. */
  readonly scale_mol: number;
  readonly boilLag_s: number;
  readonly weirLag_s: number;
}

/** The drum above the last holder. */
export interface Drum {
  readonly pressure_Pa: Pascal;
  readonly brim_m3: number;
  readonly subcooling_K: number;
  /** The cooling water's inlet: what is condensed gets no colder. */
  readonly water_K: Kelvin;
  readonly weirLag_s: number;
  readonly scale_mol: number;
}

export interface Train {
  readonly holders: readonly Holder[];
  readonly drum: Drum;
  /** Boil-up the heat would raise, mol/s. */
  readonly nominalVapour_mol_s: number;
}

/** What a volume under a brim counts as where lags are set, mol/m³: half the molar density of hot water. Source: this project's choice. */
export const MOL_PER_M3 = 26.5e3;

/** A kettle's charge counts so many times less. Source: this project's choice. */
export const KETTLE_COUNTS = 20;

/** The train of a checked problem, kettle first. */
export function trainOf(problem: CompleteProblem): Train {
  const { still } = problem;
  const vapour =
    Math.max(...[problem, ...problem.sheet].map(({ heat }) => (heat === undefined ? 0 : powerOf(heat)))) / LAMBDA0;
  const lags = (held_mol: number): Pick<Holder, 'boilLag_s' | 'weirLag_s'> => ({
    boilLag_s: problem.lags?.boil_s ?? Math.min(LONGEST_BOIL_LAG_s, (BOIL_SHARE * held_mol) / vapour),
    weirLag_s: problem.lags?.weir_s ?? Math.min(LONGEST_WEIR_LAG_s, (WEIR_SHARE * held_mol) / vapour),
  });
  const upwards = [...kettle(problem), ...doublers(problem), ...section(still), ...head(still), ...partial(problem)];
  let pressure_Pa = still.air.pressure_Pa;
  const holders: Holder[] = [];
  for (const part of upwards.reverse()) {
    const held_mol = part.holds_mol;
    holders.unshift({
      kind: part.kind,
      number: part.number,
      pressure_Pa,
      efficiency: part.efficiency ?? 1,
      brim_m3: part.brim_m3,
      brim_mol: part.brim_mol ?? 0,
      overflow: part.overflow ?? 'back',
      metal_J_K: part.metal_J_K,
      loss_W_K: part.loss_W_K,
      reference_K: part.reference_K ?? still.air.temperature_K,
      scale_mol: part.kind === 'kettle' ? held_mol / KETTLE_COUNTS : held_mol,
      ...lags(held_mol),
    });
    pressure_Pa += part.drop_Pa;
  }
  const held = heldVolumes(problem);
  const brim_m3 = held.reflux_m3 + held.product_m3;
  const drum_mol = brim_m3 * MOL_PER_DRUM;
  const drum: Drum = {
    pressure_Pa: still.air.pressure_Pa,
    brim_m3,
    subcooling_K: still.refluxCondenser.kind === 'total' ? still.refluxCondenser.subcooling_K : 0,
    water_K: still.productCondenser.inlet_K,
    weirLag_s: lags(drum_mol).weirLag_s,
    scale_mol: drum_mol,
  };
  return { holders, drum, nominalVapour_mol_s: vapour };
}

/** The same of a drum, which holds strong spirit. */
export const MOL_PER_DRUM = 17e3;

interface Part {
  readonly kind: HolderKind;
  readonly number: number;
  readonly efficiency?: number;
  readonly brim_m3: number | null;
  readonly brim_mol?: number;
  readonly overflow?: 'back' | 'over';
  readonly metal_J_K: number;
  readonly loss_W_K: number;
  readonly reference_K?: Kelvin;
  /** What the vapour from below must overcome to enter it. */
  readonly drop_Pa: Pascal;
  readonly holds_mol: number;
}

function kettle({ still, charge }: CompleteProblem): Part[] {
  const { ethanol_mol, water_mol } = chargeAmounts(charge);
  return [
    {
      kind: 'kettle',
      number: 1,
      brim_m3: Infinity,
      metal_J_K: still.kettle.metal_J_K,
      loss_W_K: still.kettle.heatLoss_W_K,
      drop_Pa: 0,
      holds_mol: ethanol_mol + water_mol,
    },
  ];
}

function doublers({ still, doublerCharges }: CompleteProblem): Part[] {
  return still.doublers.map((doubler, i): Part => {
    const { ethanol_mol, water_mol } = chargeAmounts(doublerCharges[i]!.charge);
    const amount_mol = ethanol_mol + water_mol;
    return {
      kind: 'doubler',
      number: i + 1,
      brim_m3: doubler.volume_m3,
      overflow: doubler.overflow,
      metal_J_K: doubler.metal_J_K,
      loss_W_K: doubler.heatLoss_W_K,
      drop_Pa: STANDARD_GRAVITY * doubler.dipDepth_m * filledDensity(ethanol_mol / amount_mol),
      holds_mol: amount_mol,
    };
  });
}

function filledDensity(moleFraction: MoleFraction): number {
  return densityOfMixture(massFractionFromMoleFraction(moleFraction), ZERO_CELSIUS + 20);
}

/** Plates, or the stages of a packing: height / HETP rounded up, each that much less efficient. */
function section({ column }: Still): Part[] {
  if (column.kind === 'none') return [];
  if (column.kind === 'plates') {
    const { holdUp } = column;
    return Array.from({ length: column.count }, (_none, i): Part => {
      return {
        kind: 'plate',
        number: i + 1,
        efficiency: column.efficiency,
        brim_m3: holdUp.kind === 'volume' ? holdUp.volume_m3 : null,
        brim_mol: holdUp.kind === 'amount' ? holdUp.amount_mol : 0,
        metal_J_K: column.metal_J_K,
        loss_W_K: column.heatLoss_W_K,
        drop_Pa: column.drop_Pa,
        holds_mol: holdUp.kind === 'volume' ? MOL_PER_M3 * holdUp.volume_m3 : holdUp.amount_mol,
      };
    });
  }
  const stages = column.height_m / column.hetp_m;
  const count = Math.max(1, Math.ceil(stages - 1e-9));
  const held_m3 = (column.liquidShare * column.height_m * Math.PI * column.diameter_m ** 2) / 4 / count;
  return Array.from({ length: count }, (_none, i): Part => {
    return {
      kind: 'packing',
      number: i + 1,
      efficiency: Math.min(1, stages / count),
      brim_m3: held_m3,
      metal_J_K: column.metal_J_K / count,
      loss_W_K: column.heatLoss_W_K / count,
      drop_Pa: (column.drop_Pa_m * column.height_m) / count,
      holds_mol: MOL_PER_M3 * held_m3,
    };
  });
}

/** A head that neither loses heat nor has metal to warm is left out. */
function head({ head: { heatLoss_W_K, metal_J_K, film_m3 } }: Still): Part[] {
  if (heatLoss_W_K === 0 && metal_J_K === 0) return [];
  return [
    {
      kind: 'head',
      number: 1,
      brim_m3: film_m3,
      metal_J_K,
      loss_W_K: heatLoss_W_K,
      drop_Pa: 0,
      holds_mol: MOL_PER_M3 * film_m3,
    },
  ];
}

function partial(problem: CompleteProblem): Part[] {
  const { refluxCondenser: condenser } = problem.still;
  if (condenser.kind !== 'partial') return [];
  const held_m3 = heldVolumes(problem).film_m3;
  return [
    {
      kind: 'partialCondenser',
      number: 1,
      brim_m3: held_m3,
      metal_J_K: 0,
      loss_W_K: 0,
      reference_K: condenser.coolant.kind === 'water' ? condenser.coolant.inlet_K : ZERO_CELSIUS,
      drop_Pa: 0,
      holds_mol: MOL_PER_M3 * held_m3,
    },
  ];
}

/** What the condensers hold, m³: a partial one its film; an amount counts as its volume of charge at 20 °C. */
function heldVolumes({ still, charge }: CompleteProblem): { reflux_m3: number; film_m3: number; product_m3: number } {
  const { refluxCondenser, productCondenser } = still;
  const { ethanol_mol, water_mol } = chargeAmounts(charge);
  const perMole_m3 = volumeAt20C(ethanol_mol, water_mol) / (ethanol_mol + water_mol);
  const volumeOf = (holdUp: HoldUp): number =>
    holdUp.kind === 'volume' ? holdUp.volume_m3 : holdUp.amount_mol * perMole_m3;
  return {
    reflux_m3: refluxCondenser.kind === 'total' ? volumeOf(refluxCondenser.holdUp) : 0,
    film_m3: refluxCondenser.kind === 'partial' ? volumeOf(refluxCondenser.holdUp) : 0,
    product_m3: volumeOf(productCondenser.holdUp),
  };
}
