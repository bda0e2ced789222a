// What goes into the formula engine and what comes out of it, as plain data, so that both can cross to a worker.
// Nothing here knows mathjs: the page imports these types without loading it.

import type { KindName } from './kinds.js';

/** One formula as typed. */
export interface FormulaLine {
  readonly id: string;
  readonly text: string;
}

/** A number of the page that formulas may use by name. */
export interface PageQuantity {
  /** As a formula writes it: letters, digits and _ only. */
  readonly name: string;
  readonly kind: KindName;
  /** SI; strength as a share of volume at 20 °C. */
  readonly si: number;
}

/** The units results are shown in where the reader has not asked for others. */
export type ShownSystem = 'metric' | 'us' | 'imperial';

/** Everything a page has to compute. */
export interface FormulaSheet {
  readonly lines: readonly FormulaLine[];
  readonly quantities: readonly PageQuantity[];
  readonly units: ShownSystem;
  /** Lines that were stopped before and have not changed since: they are not tried again. */
  readonly stopped: readonly string[];
}

/** A place in the typed text: from the first character, up to and without the second. */
export interface Place {
  readonly from: number;
  readonly to: number;
}

/** What kind of thing is wrong. */
export type FaultKind =
  | 'empty'
  | 'grammar'
  | 'notOffered'
  | 'unknown'
  | 'taken'
  | 'circle'
  | 'units'
  | 'outside'
  | 'tooMuch'
  | 'noValue'
  | 'waits'
  | 'stopped';

/** Why a formula has no value. */
export interface FormulaFault {
  readonly kind: FaultKind;
  /** What is wrong, as a sentence without its full stop. */
  readonly wrong: string;
  /** What would be right, likewise; may be empty. */
  readonly right: string;
  readonly at: Place | null;
  /** A name that was probably meant, to be put at `at`. */
  readonly instead: string | null;
}

/** A value as it may be shown. */
export type FormulaValue =
  | {
      readonly is: 'number';
      /** SI, or the bare number. */
      readonly si: number;
      /** Null where its dimension is no kind that has a name here. */
      readonly kind: KindName | null;
      /** The number in the unit it is shown in, and that unit as printed; '' for a bare number. */
      readonly shown: number;
      readonly unit: string;
    }
  | { readonly is: 'truth'; readonly truth: boolean }
  /** A function of the reader's own. */
  | { readonly is: 'function'; readonly of: readonly string[] };

/** What became of one line. */
export interface FormulaResult {
  readonly id: string;
  /** The name it defines; null for a bare expression. */
  readonly name: string | null;
  /** Names of page quantities and of other lines it uses, in order of appearance. */
  readonly uses: readonly string[];
  readonly outcome: { readonly value: FormulaValue } | { readonly fault: FormulaFault };
}

/** A formula to be drawn as a curve. */
export interface CurveAsk {
  /** The line. */
  readonly id: string;
  /** Name of a page quantity, of another line, or of the one argument of a line that is a function. */
  readonly against: string;
  /** Ends of the range, as typed: '0 L', '40%'. */
  readonly from: string;
  readonly to: string;
}

/** One axis of a curve: numbers in the unit shown. */
export interface CurveColumn {
  readonly unit: string;
  readonly kind: KindName | null;
  /** NaN where there is no value. */
  readonly numbers: readonly number[];
}

/** A drawn formula, or why it cannot be drawn. */
export interface FormulaCurve {
  readonly id: string;
  readonly against: string;
  readonly outcome:
    | {
        readonly x: CurveColumn;
        readonly y: CurveColumn;
        /** Where the variable stands now, with the formula's value there; null where it has none. */
        readonly now: { readonly x: number; readonly y: number } | null;
        /** Why part of it is missing; null where nothing is. */
        readonly missing: string | null;
      }
    | { readonly fault: FormulaFault };
}

export interface FormulaAsk {
  readonly sheet: FormulaSheet;
  readonly curves: readonly CurveAsk[];
}

export interface FormulaReply {
  readonly results: readonly FormulaResult[];
  readonly curves: readonly FormulaCurve[];
}
