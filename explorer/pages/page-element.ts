// A page as the wiring sees it: an element that is given the solver, the numbers and the units.

import type { Scenario } from '../state/scenario.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { Solver } from '../worker/solver-client.js';

export interface PageElement extends HTMLElement {
  solver: Solver;
  scenario: Scenario;
  units: UnitSystem;
  /** The page after this one; null on the last. */
  next: { readonly title: string; readonly address: string } | null;
  /** After something was undone or redone: shows the entry it was done to. */
  readonly show?: (entry: string | undefined) => void;
}
