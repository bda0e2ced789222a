// Which moments of a run its solution reports, and the states there. Rows follow from the course alone: asking for more of them changes
// nothing of what was solved.

import { stepAt } from '../numerics/stiff/path.js';
import { MOST_ROWS } from './check.js';
import type { CompleteProblem } from './complete.js';
import type { Course } from './drive.js';
import type { Engine } from './engine.js';

/** Two moments closer than this share of the time are the same row. */
const SAME_MOMENT = 1e-9;
/** A row that stands where a step of the sheet begins or ends. */
const BEGINS = -1;
const ENDS = -2;

/** The rows of a run. */
export class Rows {
  /** For each row the step of the sheet whose rates it shows, the recorded step it lies in (or BEGINS, ENDS), and its moment. */
  readonly #sheet: number[] = [];
  readonly #recorded: number[] = [];
  readonly #s: number[] = [];
  readonly stepStarts: number[] = [];
  readonly #course: Course;
  readonly #engine: Engine;
  #states: Float64Array | undefined;

  constructor(course: Course, engine: Engine, { outputs }: CompleteProblem) {
    this.#course = course;
    this.#engine = engine;
    if (outputs.kind === 'every') this.#everySoOften(outputs.interval_s);
    else if (outputs.kind === 'perStep') this.#perStep(outputs.points);
    else this.#evenly(outputs.rows);
  }

  get count(): number {
    return this.#s.length;
  }

  /** Step of the sheet a row belongs to. */
  sheetStep(row: number): number {
    return this.#sheet[row]!;
  }

  s(row: number): number {
    return this.#s[row]!;
  }

  /** The states of all rows, side by side. */
  get states(): Float64Array {
    return (this.#states ??= this.#read());
  }

  /** The moment of time inside a recorded step: its s. */
  #whereTime(i: number, time_s: number): number {
    return sAtTime(this.#course, this.#engine, i, time_s);
  }

  #timeAt(i: number): number {
    const { clock } = this.#engine;
    return clock === null ? this.#course.path.to(i) : this.#course.path.step(i).end[clock]!;
  }

  #begin(k: number): void {
    const { from } = this.#course.stretches[k]!;
    if (k > 0) this.#drop();
    this.stepStarts.push(this.#s.length);
    this.#add(k, BEGINS, from);
  }

  #everySoOften(interval_s: number): void {
    let next = interval_s;
    this.#course.stretches.forEach(({ first, after, to, end }, k) => {
      this.#begin(k);
      for (let i = first; i < after; i++) {
        const reached_s = this.#timeAt(i);
        for (; next <= reached_s * (1 + SAME_MOMENT) && this.count < MOST_ROWS - 1; next += interval_s) {
          this.#add(k, i, this.#whereTime(i, next));
        }
      }
      if (after === first) return;
      const { clock } = this.#engine;
      const end_s = clock === null ? to : end[clock]!;
      if (end_s <= (next - interval_s) * (1 + SAME_MOMENT) && this.#recorded.at(-1)! >= 0) this.#drop();
      this.#add(k, ENDS, to);
    });
  }

  #perStep(points: number): void {
    const { path } = this.#course;
    this.#course.stretches.forEach(({ first, after }, k) => {
      this.#begin(k);
      for (let i = first; i < after && this.count < MOST_ROWS; i++) {
        const [from, to] = [path.from(i), path.to(i)];
        for (let p = 1; p < points; p++) this.#add(k, i, from + (p / points) * (to - from));
        if (i === after - 1) this.#add(k, ENDS, this.#course.stretches[k]!.to);
        else this.#add(k, i, to);
      }
    });
  }

  /** Rows evenly spread over the run's progress; where steps of the sheet meet there is one too. */
  #evenly(rows: number): void {
    const { path, stretches } = this.#course;
    const { progress, atProgress } = bound(this.#engine);
    const all = progress(stretches.at(-1)!.to);
    let row = 1;
    stretches.forEach(({ first, after, to }, k) => {
      this.#begin(k);
      for (; row < rows - 1 && (all * row) / (rows - 1) < progress(to); row++) {
        const s = atProgress((all * row) / (rows - 1));
        this.#add(k, Math.min(after - 1, Math.max(first, stepAt(path, s))), s);
      }
      if (after > first) this.#add(k, ENDS, to);
    });
  }

  /** Moments that round-off does not tell apart are one row. */
  #add(sheet: number, recorded: number, s: number): void {
    if (this.#s.length > this.stepStarts.at(-1)! && s <= this.#s.at(-1)!) this.#drop();
    this.#sheet.push(sheet);
    this.#recorded.push(recorded);
    this.#s.push(s);
  }

  #drop(): void {
    this.#sheet.pop();
    this.#recorded.pop();
    this.#s.pop();
  }

  #read(): Float64Array {
    const { path, stretches } = this.#course;
    const { size } = path;
    const states = new Float64Array(this.count * size);
    let recorded = BEGINS;
    let view = path.steps > 0 ? path.step(0) : undefined;
    for (let row = 0, at = 0; row < this.count; row++, at += size) {
      const i = this.#recorded[row]!;
      const out = states.subarray(at, at + size);
      if (i === BEGINS) out.set(stretches[this.#sheet[row]!]!.start);
      else if (i === ENDS) out.set(stretches[this.#sheet[row]!]!.end);
      else {
        if (i !== recorded) view = path.step(i);
        recorded = i;
        // A step too short for its ends to be told apart has nothing between them.
        if (view!.to > view!.from) this.#engine.between(view!, path.kind(i), this.#s[row]!, out);
        else out.set(view!.end);
      }
    }
    return states;
  }
}

/** The s inside a recorded step at which the clock shows a time; the clock rises almost evenly. */
export function sAtTime({ path }: Course, { clock }: Engine, i: number, time_s: number): number {
  if (clock === null) return time_s;
  const view = path.step(i);
  const { from, to } = view;
  const begin = view.start[clock]!;
  const end = view.end[clock]!;
  if (end <= begin) return to;
  const rate = (end - begin) / (to - from);
  let s = from + (time_s - begin) / rate;
  for (let n = 0; n < 8; n++) {
    const miss = view.component(s, clock) - time_s;
    s = Math.min(to, Math.max(from, s - miss / rate));
    if (Math.abs(miss) <= 1e-12 * end) break;
  }
  return s;
}

function bound(engine: Engine): Pick<Engine, 'progress' | 'atProgress'> {
  return { progress: (s) => engine.progress(s), atProgress: (progress) => engine.atProgress(progress) };
}
