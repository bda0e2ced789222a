// The accepted steps of an integration, kept with what their dense output needs, so that the path can be read at any moment afterwards,
// by the order of the method that took the step.
//
// A one-step method's output needs vectors of its own (step-method.ts); a multistep method's is the polynomial through the end of the step
// and as many states before it as its order (multistep-dense.ts), which are the ends of the steps before.

import { DenseWeights } from './multistep-dense.js';
import { PAST } from './multistep-formula.js';
import type { Path, StepView } from './path.js';

const FIRST_ROWS = 64;
/** Numbers kept of each step: from, to. */
const MOMENTS = 2;
/** Places kept of each step: row of its start, of its end, order (0 with vectors of its own, which stand behind the end), kind. */
const PLACES = 4;

/** What is recorded of a step: of a method at work, or of something carried along with it. */
export interface Recorded {
  readonly end: Float64Array;
  readonly before: { readonly moment: number; readonly state: Float64Array } | undefined;
  readonly denseVectors: number;
  readonly order: number;
  writeDense(m: number, out: Float64Array, at: number): void;
}

/** A growing record of steps of systems of one size. */
export class Recording implements Path {
  readonly size: number;
  steps = 0;
  #rows = 0;
  #states: Float64Array;
  #rowMoments: Float64Array;
  #moments: Float64Array;
  #places: Int32Array;
  readonly #view: RecordedStep;

  constructor(size: number, rows = FIRST_ROWS) {
    this.size = size;
    this.#states = new Float64Array(rows * size);
    this.#rowMoments = new Float64Array(rows);
    this.#moments = new Float64Array(MOMENTS * rows);
    this.#places = new Int32Array(PLACES * rows);
    this.#view = new RecordedStep(size);
  }

  /** Forgets everything. */
  clear(): void {
    this.steps = 0;
    this.#rows = 0;
  }

  /** A stretch begins at a state, which a multistep method has continued backwards. */
  begin(method: Recorded, s: number, start: Float64Array): void {
    if (method.before !== undefined) this.#addRow(method.before.moment, method.before.state);
    this.#addRow(s, start);
  }

  /** Adds the step just accepted, with a mark of the caller's. */
  add(method: Recorded, from: number, to: number, kind = 0): void {
    const startRow = this.#rows - 1 - this.#vectorsBehind();
    const endRow = this.#rows;
    this.#addRow(to, method.end);
    const { denseVectors } = method;
    for (let m = 0; m < denseVectors; m++) {
      this.#room();
      method.writeDense(m, this.#states, this.#rows * this.size);
      this.#rows++;
    }
    const i = this.steps++;
    if (MOMENTS * this.steps > this.#moments.length) {
      this.#moments = grown(this.#moments);
      this.#places = grown(this.#places);
    }
    this.#moments[MOMENTS * i] = from;
    this.#moments[MOMENTS * i + 1] = to;
    this.#places[PLACES * i] = startRow;
    this.#places[PLACES * i + 1] = endRow;
    this.#places[PLACES * i + 2] = denseVectors > 0 ? -denseVectors : method.order;
    this.#places[PLACES * i + 3] = kind;
  }

  from(i: number): number {
    return this.#moments[MOMENTS * i]!;
  }

  to(i: number): number {
    return this.#moments[MOMENTS * i + 1]!;
  }

  kind(i: number): number {
    return this.#places[PLACES * i + 3]!;
  }

  /** Step i; the same object every time, valid until the next call. */
  step(i: number): StepView {
    const at = PLACES * i;
    const places = this.#places;
    return this.#view.look(
      this.#states,
      this.#rowMoments,
      this.from(i),
      this.to(i),
      places[at]!,
      places[at + 1]!,
      places[at + 2]!,
    );
  }

  /** A copy that owns no more than it needs. */
  copy(): Recording {
    const copy = new Recording(this.size, 0);
    copy.steps = this.steps;
    copy.#rows = this.#rows;
    copy.#states = this.#states.slice(0, this.#rows * this.size);
    copy.#rowMoments = this.#rowMoments.slice(0, this.#rows);
    copy.#moments = this.#moments.slice(0, MOMENTS * this.steps);
    copy.#places = this.#places.slice(0, PLACES * this.steps);
    return copy;
  }

  /** Rows of dense vectors that stand behind the newest state. */
  #vectorsBehind(): number {
    if (this.steps === 0) return 0;
    const at = PLACES * (this.steps - 1);
    const endRow = this.#places[at + 1]!;
    const vectors = Math.max(0, -this.#places[at + 2]!);
    return endRow + vectors === this.#rows - 1 ? vectors : 0;
  }

  #addRow(moment: number, state: Float64Array): void {
    this.#room();
    this.#states.set(state, this.#rows * this.size);
    this.#rowMoments[this.#rows] = moment;
    this.#rows++;
  }

  #room(): void {
    if ((this.#rows + 1) * this.size <= this.#states.length) return;
    this.#states = grown(this.#states, FIRST_ROWS * this.size);
    this.#rowMoments = grown(this.#rowMoments, FIRST_ROWS);
  }
}

/** One recorded step. */
class RecordedStep implements StepView {
  from = 0;
  to = 0;
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly #size: number;
  readonly #dense = new DenseWeights();
  readonly #ages = new Float64Array(PAST);
  #states = new Float64Array(0);
  #startAt = 0;
  #endAt = 0;
  /** Above 0 the order of a polynomial through past ends; below, the number of vectors behind the end. */
  #order = 0;

  constructor(size: number) {
    this.#size = size;
    this.start = new Float64Array(size);
    this.end = new Float64Array(size);
  }

  look(
    states: Float64Array,
    rowMoments: Float64Array,
    from: number,
    to: number,
    startRow: number,
    endRow: number,
    order: number,
  ): this {
    const size = this.#size;
    this.from = from;
    this.to = to;
    this.#states = states as Float64Array<ArrayBuffer>;
    this.#startAt = startRow * size;
    this.#endAt = endRow * size;
    this.#order = order;
    this.start.set(states.subarray(this.#startAt, this.#startAt + size));
    this.end.set(states.subarray(this.#endAt, this.#endAt + size));
    for (let m = 0; m < order; m++) this.#ages[m] = (to - rowMoments[endRow - 1 - m]!) / (to - from);
    return this;
  }

  component(s: number, k: number): number {
    const share = (s - this.from) / (this.to - this.from);
    const states = this.#states;
    const start = states[this.#startAt + k]!;
    if (share <= 0) return start;
    const end = states[this.#endAt + k]!;
    const order = this.#order;
    if (order > 0) {
      const { past, end: own } = this.#weights(share);
      let sum = own[0]! * end;
      for (let m = 0, at = this.#endAt - this.#size + k; m < order; m++, at -= this.#size)
        sum += past[m]! * states[at]!;
      return sum;
    }
    let inner = 0;
    for (let m = -order; m > 0; m--) inner = inner * share + states[this.#endAt + m * this.#size + k]!;
    const rest = 1 - share;
    return start * rest + share * (end + rest * inner);
  }

  state(s: number, out: Float64Array): void {
    const share = (s - this.from) / (this.to - this.from);
    if (share <= 0) {
      out.set(this.start);
      return;
    }
    const size = this.#size;
    const states = this.#states;
    const order = this.#order;
    const endAt = this.#endAt;
    if (order > 0) {
      const { past, end: own } = this.#weights(share);
      const o = own[0]!;
      for (let k = 0; k < size; k++) out[k] = o * states[endAt + k]!;
      for (let m = 0, at = endAt - size; m < order; m++, at -= size) {
        const weight = past[m]!;
        for (let k = 0; k < size; k++) out[k]! += weight * states[at + k]!;
      }
      return;
    }
    const rest = 1 - share;
    for (let k = 0; k < size; k++) {
      let inner = 0;
      for (let m = -order; m > 0; m--) inner = inner * share + states[endAt + m * size + k]!;
      out[k] = states[this.#startAt + k]! * rest + share * (states[endAt + k]! + rest * inner);
    }
  }

  #weights(share: number): DenseWeights {
    this.#dense.set(this.#order, share, this.#ages);
    return this.#dense;
  }
}

function grown<Table extends Float64Array | Int32Array>(table: Table, least = 64): Table {
  const length = Math.max(least, 2 * table.length);
  const larger = table instanceof Int32Array ? new Int32Array(length) : new Float64Array(length);
  larger.set(table);
  return larger as Table;
}
