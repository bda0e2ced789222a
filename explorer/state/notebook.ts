// The state of the explorer: which page, the notebook with all that was done to it, which units. Units are kept in
// this browser, the numbers in the address; both are read once at the start.

import { unitSystems, type UnitSystemName } from '../text/unit-systems.js';
import type { History } from './history.js';

export interface NotebookState {
  readonly page: string;
  readonly history: History;
  readonly units: UnitSystemName;
  /** What could not be read in the address. */
  readonly complaints: readonly string[];
}

const unitsKey = 'kettle-and-plate.units';

/** The units chosen last time, or litres and degrees Celsius. */
export function keptUnits(): UnitSystemName {
  try {
    const kept = localStorage.getItem(unitsKey) ?? '';
    return isUnitSystemName(kept) ? kept : 'metric';
  } catch {
    return 'metric'; // storage may be forbidden; the notebook works without
  }
}

/** Keeps the choice of units in this browser. */
export function keepUnits(name: UnitSystemName): void {
  try {
    localStorage.setItem(unitsKey, name);
  } catch {
    // storage may be forbidden; the choice holds until the page is left
  }
}

export function isUnitSystemName(name: string): name is UnitSystemName {
  return Object.hasOwn(unitSystems, name);
}
