// A path as it would be with one number of its problem a little changed, to first order: each moment of a segment moves with the segment's ends,
//
//   t̃ = t + δ τ(t),      ũ(t̃) = u(t) + δ (S(t) + u'(t) (τ(t) − shift)),      τ = shift at the segment's beginning, shift + longer at its end
//
// so that events and the fast changes after them stay where they are on it. What is read off a run is read off both sides of it.

import type { Path, StepView } from '../../numerics/stiff/path.js';
import type { Segment } from './carry.js';

/** Share of a step over which the slope of its polynomial is taken. */
const NEAR = 1e-3;

/** A path moved by `by` of number k. */
export class MovedPath implements Path {
  readonly size: number;
  readonly steps: number;
  readonly #main: Path;
  readonly #slopes: Path;
  readonly #segments: readonly Segment[];
  readonly #k: number;
  readonly #by: number;
  readonly #view: MovedStep;

  constructor(main: Path, slopes: Path, segments: readonly Segment[], k: number, by: number) {
    this.size = main.size;
    this.steps = main.steps;
    this.#main = main;
    this.#slopes = slopes;
    this.#segments = segments;
    this.#k = k;
    this.#by = by;
    this.#view = new MovedStep(main.size, by);
  }

  from(i: number): number {
    const s = this.#main.from(i);
    return s + this.#by * this.#moves(this.#segment(i), s);
  }

  to(i: number): number {
    const s = this.#main.to(i);
    return s + this.#by * this.#moves(this.#segment(i), s);
  }

  kind(i: number): number {
    return this.#main.kind(i);
  }

  step(i: number): StepView {
    const segment = this.#segment(i);
    const rate = segment.longer[this.#k]! / (segment.to - segment.from);
    const since = rate * (this.#main.from(i) - segment.from);
    return this.#view.look(this.#main.step(i), this.#slopes.step(i), segment.shift[this.#k]!, since, rate);
  }

  #segment(i: number): Segment {
    const segments = this.#segments;
    let [low, high] = [0, segments.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (segments[middle]!.after <= i) low = middle + 1;
      else high = middle;
    }
    return segments[low]!;
  }

  #moves({ shift, longer, from, to }: Segment, s: number): number {
    return shift[this.#k]! + longer[this.#k]! * ((s - from) / (to - from));
  }
}

class MovedStep implements StepView {
  from = 0;
  to = 0;
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly #by: number;
  readonly #buffers: readonly Float64Array[];
  #main: StepView | undefined;
  #slopes: StepView | undefined;
  /** How far τ is beyond the shift at the step's beginning, and its slope. */
  #since = 0;
  #rate = 0;

  constructor(size: number, by: number) {
    this.#by = by;
    this.start = new Float64Array(size);
    this.end = new Float64Array(size);
    this.#buffers = [0, 1, 2].map(() => new Float64Array(size));
  }

  look(main: StepView, slopes: StepView, shift: number, since: number, rate: number): this {
    this.#main = main;
    this.#slopes = slopes;
    this.#since = since;
    this.#rate = rate;
    this.from = main.from + this.#by * (shift + since);
    this.to = main.to + this.#by * (shift + since + rate * (main.to - main.from));
    this.#write(main.from, this.start);
    this.#write(main.to, this.end);
    return this;
  }

  state(s: number, out: Float64Array): void {
    const { from, to } = this.#main!;
    this.#write(from + ((s - this.from) / (this.to - this.from)) * (to - from), out);
  }

  component(s: number, k: number): number {
    const { from, to } = this.#main!;
    const at = from + ((s - this.from) / (this.to - this.from)) * (to - from);
    let moves = this.#slopes!.component(at, k);
    const beyond = this.#beyond(at);
    if (beyond !== 0) moves += beyond * slopeOf((where) => this.#main!.component(where, k), at, from, to);
    return this.#main!.component(at, k) + this.#by * moves;
  }

  #beyond(at: number): number {
    return this.#since + this.#rate * (at - this.#main!.from);
  }

  #write(at: number, out: Float64Array): void {
    const main = this.#main!;
    const [moves, one, other] = this.#buffers as [Float64Array, Float64Array, Float64Array];
    main.state(at, out);
    this.#slopes!.state(at, moves);
    const beyond = this.#beyond(at);
    if (beyond !== 0) {
      // The slope of the step's polynomial; at the step's ends from the inside, by a parabola.
      const near = NEAR * (main.to - main.from);
      if (at - near >= main.from && at + near <= main.to) {
        main.state(at + near, one);
        main.state(at - near, other);
        for (let i = 0; i < out.length; i++) moves[i]! += (beyond * (one[i]! - other[i]!)) / (2 * near);
      } else {
        const inwards = at - near < main.from ? near : -near;
        main.state(at + inwards, one);
        main.state(at + 2 * inwards, other);
        for (let i = 0; i < out.length; i++) {
          moves[i]! += (beyond * (4 * one[i]! - other[i]! - 3 * out[i]!)) / (2 * inwards);
        }
      }
    }
    for (let i = 0; i < out.length; i++) out[i]! += this.#by * moves[i]!;
  }
}

function slopeOf(value: (s: number) => number, at: number, from: number, to: number): number {
  const near = NEAR * (to - from);
  if (at - near >= from && at + near <= to) return (value(at + near) - value(at - near)) / (2 * near);
  const inwards = at - near < from ? near : -near;
  return (4 * value(at + inwards) - value(at + 2 * inwards) - 3 * value(at)) / (2 * inwards);
}
