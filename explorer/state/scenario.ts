// What the reader has set for a run, as one immutable record in the words of the library's problem: a still as far as it
// is known, what is filled in, how it is run; and two numbers that belong to no run. SI.

import { toSI, type Jars, type RunStep, type StillDescription, type VolumeFraction20C } from '#lib/index.js';

/** Filled in: a volume at 20 °C and its strength. */
export interface Filling {
  readonly kind: 'volume';
  readonly volume_m3: number;
  readonly strength: VolumeFraction20C;
}

/** Into the kettle, and into the doublers, in their order. */
export interface ChargeSet {
  readonly charge: Filling;
  readonly doublerCharges: readonly { readonly charge: Filling }[];
}

/** How a still is run, and the jars. */
export interface SheetSet {
  readonly sheet: readonly RunStep[];
  readonly jars: Jars;
}

/** Numbers of the notebook that belong to neither still, charge nor sheet. */
export interface Asked {
  /** Strength from which on what comes over counts, % vol / 100. */
  readonly strength: VolumeFraction20C;
  /** Pressure at which the azeotrope is looked up, Pa; no run is made at it. */
  readonly pressure_Pa: number;
}

/** All that a page may set. */
export interface Scenario extends ChargeSet, SheetSet {
  readonly still: StillDescription;
  readonly asked: Asked;
}

const litres = (value: number): number => toSI(value, 'L');

/** The still the pages begin with: a kettle under twelve plates. Invented. */
export const startingStill: StillDescription = {
  kettle: { volume_m3: litres(160), power_W: 5500 },
  column: { kind: 'plates', count: 12, efficiency: 0.65, diameter_m: 0.1, spacing_m: 0.15, weirHeight_m: 0.01 },
  // What stands over the plates is short and lagged: no helmet.
  head: { heatLoss_W_K: 0, metal_J_K: 0 },
  air: { pressure_Pa: toSI(1, 'atm') },
};

/** The settings a notebook starts with. Invented. */
export const startingScenario: Scenario = frozen({
  still: startingStill,
  charge: { kind: 'volume', volume_m3: litres(120), strength: 0.095 },
  doublerCharges: [{ charge: { kind: 'volume', volume_m3: litres(10), strength: 0.3 } }],
  sheet: [
    { reflux: 'total', until: [{ kind: 'firstVapour' }] },
    { reflux: 'total', until: [{ kind: 'duration', seconds: toSI(30, 'min') }] },
    { reflux: 3, until: [{ kind: 'alcoholLeftBelow', share: 0.05 }] },
  ],
  jars: { kind: 'size', volume_m3: litres(1) },
  asked: { strength: 0.8, pressure_Pa: toSI(1, 'atm') },
});

/** Numbers that a reader can tell apart differ by more than this, relative. */
const roundOff = 1e-9;

/** Whether two settings are the same but for what writing them in an address and reading them back may change. */
export function sameNumbers(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other) <= roundOff * Math.abs(one);
  if (!isRecord(one) || !isRecord(other)) return false;
  const names = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...names].every((name) => sameNumbers(one[name], other[name]));
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

function frozen<Of>(value: Of): Of {
  if (isRecord(value)) Object.values(value).forEach(frozen);
  return Object.freeze(value);
}
