// Sensitivities carried along a run: between events by the solver (numerics/stiff/tangents.ts), at events by the chain rule.
//
// Each stretch between two events has a clock of its own that begins with it, and S = ∂u/∂p is taken at equal times of that clock; `shift` is how
// far the clock itself moves. At an event g(t, u, p) = 0
//
//   dτ = −(g_u S + g_p + g_t shift)/(g_u u' + g_t),      du = S + u' dτ,      shift⁺ = shift + dτ,      S⁺ = dT(t, u, p)
//
// where T is the state the next stretch begins with, differentiated along du, dt and dp. At equal times of the whole run this is the usual jump
// S⁺ = S⁻ + (u'⁻ − u'⁺) dτ of a state that goes on unchanged, without the large numbers that fast transients make of it.
// Source: S. Galán, W. F. Feehery, P. I. Barton, Appl. Numer. Math. 31 (1999) 17-47.

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import type { Path } from '../../numerics/stiff/path.js';
import type { StepMethod } from '../../numerics/stiff/step-method.js';
import type { RunCompanion } from '../drive.js';
import type { Engine, StepEnd } from '../engine.js';
import type { NumberOfProblem } from './paths.js';
import { type Side, Varied } from './varied.js';

/** A stretch of the run between two events: its recorded steps, and how its clock and its length change with each number. */
export interface Segment {
  readonly first: number;
  readonly after: number;
  readonly from: number;
  readonly to: number;
  readonly shift: Float64Array;
  readonly longer: Float64Array;
}

/** How the ends of a step of the sheet change with each number: moments and states. */
export interface StretchSlopes {
  readonly from: Float64Array;
  readonly start: readonly Float64Array[];
  readonly to: Float64Array;
  readonly end: readonly Float64Array[];
}

/** How far slopes of margins are taken: along time, s, no shorter than clocks can tell; and along a sensitivity, as a share of its number's size. */
const SMOOTH = { share: 1e-4, longest: 1e-3 };
const ALONG = 1e-6;
/** The first vapour comes in a corner that is rounded off over tenths of a second: closer, and along a sensitivity as far as in that time. */
const IN_A_CORNER = { share: 1e-6, longest: 2e-5 };
const CLOCK_SHARE = 1e-8;

/** What every carry does, whatever it carries between events. */
export abstract class Carry implements RunCompanion {
  readonly count: number;
  readonly segments: Segment[] = [];
  readonly stretches: StretchSlopes[] = [];
  readonly varied: readonly Varied[];
  protected readonly engine: Engine;
  /** How far the present stretch's clock moves with each number. */
  protected shift: Float64Array;
  #step = 0;
  #from = 0;
  #first = 0;
  #begun: Pick<StretchSlopes, 'from' | 'start'> | undefined;
  /** Where the step of the sheet began. */
  #origin: { readonly s: number; readonly state: Float64Array } | undefined;

  constructor(numbers: readonly NumberOfProblem[], engine: Engine, system: EthanolWater) {
    this.count = numbers.length;
    this.varied = numbers.map((number) => new Varied(number, engine, system));
    this.engine = engine;
    this.shift = new Float64Array(this.count);
  }

  /** Sensitivities by number k, step by step as the run was recorded. */
  abstract slopes(k: number): Path;
  /** Sensitivities now, which jumps are written to. */
  protected abstract now(k: number): Float64Array;
  /** Before an event is looked at: what follows of the rest is set right. */
  protected refine(_s: number, _state: Float64Array): void {
    // Nothing does.
  }

  /** u' at a state. */
  protected abstract slopeAt(s: number, state: Float64Array): Float64Array;

  begin(_method: StepMethod, _s: number, _start: Float64Array): void {
    // Nothing to begin.
  }

  step(_method: StepMethod, _from: number, _to: number, _start: Float64Array, _mark: number): void {
    // Nothing to take along.
  }

  start(): void {
    this.varied.forEach((one, k) => {
      this.now(k).set(one.start());
    });
  }

  begun(sheetStep: number, s: number, before: Float64Array, after: Float64Array): void {
    this.#step = sheetStep;
    this.#origin = { s, state: after };
    this.#from = s;
    this.#first = this.engine.path.steps;
    this.varied.forEach((one, k) => {
      this.#through(one, k, (engine, by) => {
        const at = s + by * this.shift[k]!;
        const given = moved(before, this.now(k), by);
        const state = engine.beginStep(sheetStep, at, given);
        engine.moment.look(at, state).beginStep();
        return [given, state];
      });
    });
    this.#begun = { from: Float64Array.from(this.shift), start: this.#all() };
  }

  jumped(event: number, s: number, before: Float64Array): void {
    this.refine(s, before);
    this.#arrive(s, before, this.#eventSlopes(event, s, before));
    this.varied.forEach((one, k) => {
      this.#through(one, k, (engine, by) => {
        const given = moved(before, this.now(k), by);
        return [given, engine.rework(s + by * this.shift[k]!, given)];
      });
    });
  }

  /** Takes a sensitivity through what is done to a state: what is left alone loses nothing. */
  #through(one: Varied, k: number, act: (engine: Engine, by: number) => readonly [Float64Array, Float64Array]): void {
    const adds = one.slopes(({ engine }, by) => {
      const [given, state] = act(engine, by);
      return state.map((value, i) => value - given[i]!);
    }, new Float64Array(this.engine.path.size));
    const now = this.now(k);
    for (let i = 0; i < now.length; i++) now[i]! += adds[i]!;
  }

  ended(sheetStep: number, end: StepEnd | null): void {
    if (end !== null && end.s > this.#from) {
      this.refine(end.s, end.state);
      this.#arrive(end.s, end.state, this.#endSlopes(sheetStep, end));
    }
    const { from, start } = this.#begun!;
    this.stretches.push({ from, start, to: Float64Array.from(this.shift), end: this.#all() });
  }

  #all(): Float64Array[] {
    return this.varied.map((_one, k) => Float64Array.from(this.now(k)));
  }

  /** A segment ends at s, which moves by `longer` on its own clock: sensitivities go along, and the next segment's clock with them. */
  #arrive(s: number, state: Float64Array, longer: Float64Array): void {
    const { steps } = this.engine.path;
    const slope = this.slopeAt(s, state);
    this.segments.push({
      first: this.#first,
      after: steps,
      from: this.#from,
      to: s,
      shift: Float64Array.from(this.shift),
      longer,
    });
    for (let k = 0; k < this.count; k++) {
      const now = this.now(k);
      for (let i = 0; i < now.length; i++) now[i]! += longer[k]! * slope[i]!;
      this.shift[k]! += longer[k]!;
    }
    this.#first = steps;
    this.#from = s;
  }

  /** How a step's end moves on its clock. */
  #endSlopes(sheetStep: number, end: StepEnd): Float64Array {
    if (end.kind === 'rule') return this.#eventSlopes(end.rule, end.s, end.state);
    if (end.own !== undefined) {
      const rules = this.varied[0]?.sides[0].margins[sheetStep]!.length ?? 0;
      return this.#eventSlopes(rules + end.own, end.s, end.state);
    }
    if (end.kind !== 'reachedEnd') return new Float64Array(this.count);
    const { s, state } = this.#origin!;
    // Left because its rows are full: at a moment that stays.
    if (end.s !== this.engine.reach(sheetStep, s, state)) return new Float64Array(this.count);
    const { from, start } = this.#begun!;
    return Float64Array.from(this.varied, (one, k) => {
      const reach = one.slope(({ engine }, by) =>
        engine.reach(sheetStep, s + by * from[k]!, moved(state, start[k]!, by)),
      );
      return reach - this.shift[k]!;
    });
  }

  /** −(g_u S + g_p + g_t shift)/(g_u u' + g_t) of a rule, or of an event of the engine's own. */
  #eventSlopes(event: number, s: number, state: Float64Array): Float64Array {
    const slope = this.slopeAt(s, state);
    const cornered = this.varied[0]?.sides[0].problem.sheet[this.#step]!.until[event]?.kind === 'firstVapour';
    const { share, longest } = cornered ? IN_A_CORNER : SMOOTH;
    const span = Math.max(CLOCK_SHARE * s, Math.min(longest, share * (s - this.#from)));
    const value = ({ engine, margins }: Pick<Side, 'engine' | 'margins'>, at: number, u: Float64Array): number => {
      const rules = margins[this.#step]!;
      return event < rules.length
        ? rules[event]!(engine.moment.look(at, u))
        : engine.ownEvents[event - rules.length]!.value(at, u);
    };
    return Float64Array.from(this.varied, (one, k) => {
      const now = this.now(k);
      const itself = one.slope((own, by) => value(own, s + by * this.shift[k]!, state));
      // Both sides, for one of them is off the number.
      const slopeAlong = (vector: Float64Array, by: number, later: number): number =>
        one.sides.reduce(
          (sum, side) =>
            sum + value(side, s + later, moved(state, vector, by)) - value(side, s - later, moved(state, vector, -by)),
          0,
        ) /
        (4 * by);
      const short = cornered ? (span * largest(slope)) / Math.max(largest(now), Number.MIN_VALUE) : ALONG * one.size;
      return -(itself + slopeAlong(now, short, 0)) / slopeAlong(slope, span, span);
    });
  }
}

function moved(state: Float64Array, along: Float64Array, by: number): Float64Array {
  return state.map((value, i) => value + by * along[i]!);
}

function largest(vector: Float64Array): number {
  return vector.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}
