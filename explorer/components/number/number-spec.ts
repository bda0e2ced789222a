// What a number blank and the ruler need to know of the number they hold. Made by state/parameters.ts;
// the elements know no chemistry and no units of their own.

/** What a typed text turned out to be. */
export type Reading =
  | { readonly kind: 'value'; readonly si: number }
  /** A unit the small table does not know: the formula engine is asked. */
  | { readonly kind: 'ask'; readonly number: number; readonly unit: string }
  | { readonly kind: 'refused'; readonly reason: Refusal };

/** Why a text is no value: nothing there, no number, a comma that may be two things, or a unit that cannot be. */
export type Refusal = 'empty' | 'noNumber' | 'ambiguousComma' | 'unknownUnit' | 'wrongUnit' | 'notYet';

/** One number that a reader may set; `low`, `high` and `step` are in the unit shown. */
export interface NumberSpec {
  readonly key: string;
  /** Name for those who hear it, for instance 'strength of the charge'. */
  readonly label: string;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly toShown: (si: number) => number;
  readonly fromShown: (shown: number) => number;
  /** '9.5' from 9.5. */
  readonly digits: (shown: number) => string;
  /** What follows the digits in the blank, its space included: ' % vol', ' plates', ' : 1'. */
  readonly suffix: (shown: number) => string;
  readonly read: (text: string) => Reading;
  /** SI value of a number with a unit only the formula engine knows; undefined where the unit does not fit. */
  readonly readWithEngine: (number: number, unit: string) => Promise<number | undefined>;
  /** Ends 'x is ...': 'more than a plate can do', 'less than a still can hold'. */
  readonly tooHigh: string;
  readonly tooLow: string;
}

/** Why the text in a blank is not used. */
export interface NumberFault {
  readonly draft: string;
  readonly reason: Refusal | 'tooHigh' | 'tooLow';
}

/** `value` moved by whole steps, onto the grid of steps, kept within the limits; all SI. */
export function stepped(spec: NumberSpec, si: number, steps: number): number {
  if (steps === 0) return si;
  const shown = spec.toShown(si);
  const position = shown / spec.step;
  const slack = 1e-6; // so that a converted 3.0000000001 steps from 3
  const start = steps > 0 ? Math.floor(position + slack) : Math.ceil(position - slack);
  return atShown(spec, (start + steps) * spec.step);
}

/** SI value of a number in the unit shown, kept within the limits. */
export function atShown(spec: NumberSpec, shown: number): number {
  const rounded = Number(shown.toPrecision(12));
  return spec.fromShown(Math.min(spec.high, Math.max(spec.low, rounded)));
}

/** The fault of an SI value outside the limits, or undefined. */
export function rangeFault(spec: NumberSpec, si: number): 'tooHigh' | 'tooLow' | undefined {
  if (!Number.isFinite(si)) return si > 0 ? 'tooHigh' : 'tooLow';
  const shown = Number(spec.toShown(si).toPrecision(12));
  if (shown > spec.high) return 'tooHigh';
  return shown < spec.low ? 'tooLow' : undefined;
}

/** '12 plates' from SI. */
export function numberWithUnit(spec: NumberSpec, si: number): string {
  const shown = spec.toShown(si);
  return spec.digits(shown) + spec.suffix(shown);
}
