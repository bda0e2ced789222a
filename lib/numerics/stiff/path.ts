// A path through time as a list of steps, each of which can be read at any moment inside it.

/** A step, seen from outside; valid only during the call that hands it over, or until the next step is looked at. */
export interface StepView {
  readonly from: number;
  readonly to: number;
  readonly start: Float64Array;
  readonly end: Float64Array;
  /** State at s inside the step. */
  state(s: number, out: Float64Array): void;
  /** One component at s inside the step. */
  component(s: number, k: number): number;
}

/** Steps one after the other. */
export interface Path {
  readonly size: number;
  readonly steps: number;
  from(i: number): number;
  to(i: number): number;
  /** The mark a step was recorded with. */
  kind(i: number): number;
  /** Step i; the same object every time, valid until the next call. */
  step(i: number): StepView;
}

/** The step of a path in which s lies, the later one where two meet; −1 before the first. */
export function stepAt(path: Path, s: number): number {
  let low = 0;
  let high = path.steps - 1;
  if (high < 0 || s < path.from(0)) return -1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (path.from(middle) <= s) low = middle;
    else high = middle - 1;
  }
  return low;
}
