// Distillate into jars, read off the course of a run: the moments at which a jar is full are located on the solver's dense output.

import { strengthFromMoleFraction } from '../mixture/strength.js';
import { volumeAt20C } from '../mixture/volume.js';
import type { StepView } from '../numerics/stiff/path.js';
import { bracketedRoot } from '../numerics/root.js';
import type { CompleteProblem } from './complete.js';
import type { Course } from './drive.js';
import type { Engine, Moment } from './engine.js';
import type { Jars } from './problem.js';
import type { Jar } from './solution.js';

/** What is known of a jar where it begins or ends. */
interface Mark {
  readonly time_s: number;
  readonly ethanol_mol: number;
  readonly water_mol: number;
  readonly spout: number;
  readonly kettle_K: number;
  readonly head_K: number;
}

/** Pure ethanol at 20 °C, m³/mol. */
const MOLAR_VOLUME_ETHANOL = volumeAt20C(1, 0);
/** A jar with less than this is not a jar, m³. */
const LEAST_m3 = 1e-6;
/** The first drop, m³. */
const DROP_m3 = 1e-7;
const CLOSE_s = 1e-9;

/** The jars of a run. */
export function jarsOf({ jars }: CompleteProblem, { path, stretches }: Course, engine: Engine): readonly Jar[] {
  const filling = new JarFilling(jars, engine.moment, path.size);
  stretches.forEach(({ from, start, first, after }, k) => {
    // What the last step set no longer holds where its jar is closed: amounts, strengths and temperatures do not depend on it.
    engine.beginStep(k, from, start);
    filling.begin(k, from, start);
    for (let i = first; i < after; i++) filling.watch(path.step(i));
  });
  const last = stretches.at(-1)!;
  filling.close(last.to, last.end);
  return filling.jars;
}

/** Fills jars; the step of the run sheet and the end of the run close them too. */
class JarFilling {
  readonly jars: Jar[] = [];
  readonly #size_m3: number;
  readonly #moment: Moment;
  readonly #probe: Float64Array;
  #from: Mark | undefined;
  #step = 0;
  /** Where the jar under the spout was put there, in the path's own measure. */
  #since = 0;
  /** Whether anything has run into the jar under the spout. */
  #running = false;

  constructor(jars: Jars, moment: Moment, size: number) {
    this.#size_m3 = jars.kind === 'size' ? jars.volume_m3 : Infinity;
    this.#moment = moment;
    this.#probe = new Float64Array(size);
  }

  /** A step of the run sheet begins at a state: a new jar is put under the spout. */
  begin(step: number, s: number, state: Float64Array): void {
    this.close(s, state);
    this.#step = step;
    this.#from = this.#at(s, state);
    this.#since = s;
    this.#running = false;
  }

  /** Looks for jars that were filled within a step of the solver. */
  watch(step: StepView): void {
    if (!this.#running) this.#firstDrop(step);
    if (this.#size_m3 === Infinity) return;
    while (this.#filled(this.#moment.look(step.to, step.end)) >= this.#size_m3) {
      const short = (s: number): number => {
        step.state(s, this.#probe);
        return this.#size_m3 - this.#filled(this.#moment.look(s, this.#probe));
      };
      const from = Math.max(step.from, this.#since);
      const full_s = short(from) <= 0 ? from : bracketedRoot(short, from, step.to, CLOSE_s);
      step.state(full_s, this.#probe);
      this.#put(this.#at(full_s, this.#probe), true);
      this.#since = full_s;
    }
  }

  /** What a jar begins with is read at its first drop: what stood in the condenser before says nothing of it. */
  #firstDrop(step: StepView): void {
    const from = this.#from!;
    if (this.#filled(this.#moment.look(step.to, step.end)) <= DROP_m3) return;
    const short = (s: number): number => {
      step.state(s, this.#probe);
      return DROP_m3 - this.#filled(this.#moment.look(s, this.#probe));
    };
    const drop_s = short(step.from) <= 0 ? step.from : bracketedRoot(short, step.from, step.to, CLOSE_s);
    step.state(drop_s, this.#probe);
    const { time_s, ethanol_mol, water_mol } = from;
    this.#from = { ...this.#at(drop_s, this.#probe), time_s, ethanol_mol, water_mol };
    this.#running = true;
  }

  /** Ends the jar under the spout. */
  close(s: number, state: Float64Array): void {
    if (this.#from === undefined) return;
    const now = this.#at(s, state);
    const filled_m3 = this.#filled(this.#moment);
    if (filled_m3 > LEAST_m3) this.#put(now, filled_m3 >= this.#size_m3 - DROP_m3);
  }

  #put(to: Mark, full: boolean): void {
    const from = this.#from!;
    const ethanol_mol = Math.max(0, to.ethanol_mol - from.ethanol_mol);
    const water_mol = Math.max(0, to.water_mol - from.water_mol);
    this.jars.push({
      step: this.#step + 1,
      from_s: from.time_s,
      to_s: to.time_s,
      volume_m3: volumeAt20C(ethanol_mol, water_mol),
      strength: strengthFromMoleFraction(ethanol_mol / (ethanol_mol + water_mol)),
      pureAlcohol_m3: MOLAR_VOLUME_ETHANOL * ethanol_mol,
      spoutFrom: from.spout,
      spoutTo: to.spout,
      kettleFrom_K: from.kettle_K,
      kettleTo_K: to.kettle_K,
      headFrom_K: from.head_K,
      headTo_K: to.head_K,
      full,
    });
    this.#from = to;
  }

  #filled({ collectedEthanol_mol: ethanol_mol, collectedWater_mol: water_mol }: Moment): number {
    const from = this.#from!;
    return volumeAt20C(Math.max(0, ethanol_mol - from.ethanol_mol), Math.max(0, water_mol - from.water_mol));
  }

  #at(s: number, state: Float64Array): Mark {
    const now = this.#moment.look(s, state);
    return {
      time_s: now.time_s,
      ethanol_mol: now.collectedEthanol_mol,
      water_mol: now.collectedWater_mol,
      spout: strengthFromMoleFraction(Math.min(1, Math.max(0, now.spoutMoleFraction))),
      kettle_K: now.kettleTemperature_K,
      head_K: now.headTemperature_K,
    };
  }
}
