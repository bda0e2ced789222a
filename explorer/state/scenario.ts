// What the reader has set, as one immutable record of SI numbers. Keys are those of the parameter table.

/** Every number a page may set. */
export interface Scenario {
  /** Filled into the kettle, at 20 °C, m³. */
  readonly chargeVolume: number;
  /** % vol / 100 at 20 °C. */
  readonly chargeStrength: number;
  readonly plates: number;
  /** Murphree vapour efficiency of a plate, 0..1. */
  readonly efficiency: number;
  /** L/D in the head. */
  readonly reflux: number;
  /** Heat into the boiling kettle, W. */
  readonly heat: number;
  /** Air pressure at the spout, Pa. */
  readonly pressure: number;
  /** Filled into the doubler, at 20 °C, m³. */
  readonly doublerVolume: number;
  /** % vol / 100 at 20 °C. */
  readonly doublerStrength: number;
  /** Of the plates and the column round them, m. */
  readonly columnDiameter: number;
  /** From plate to plate, m. */
  readonly plateSpacing: number;
  /** Strength from which on what comes over counts, % vol / 100. */
  readonly wantedStrength: number;
  /** Pressure at which the azeotrope is looked up, Pa; no run is made at it. */
  readonly ceilingPressure: number;
}

export type ParameterKey = keyof Scenario;

/** `scenario` with one number changed; the same record when nothing changes. */
export function withNumber(scenario: Scenario, key: ParameterKey, value: number): Scenario {
  return Object.is(scenario[key], value) ? scenario : { ...scenario, [key]: value };
}

/** Numbers that a reader can tell apart differ by more than this, relative. */
const roundOff = 1e-9;

/** Whether two scenarios are the same but for what writing them in an address and reading them back may change. */
export function sameNumbers(one: Scenario, other: Scenario): boolean {
  const keys = Object.keys(one) as ParameterKey[];
  return keys.every((key) => Math.abs(one[key] - other[key]) <= roundOff * Math.abs(one[key]));
}
