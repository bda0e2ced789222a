// The jars of a run at one moment: which are filled, which stands under the spout, what is in it.

import type { JarMoment } from '../rows/still-moment.js';
import { strengthFromMoleFraction, volumeAt20C, type Jar } from '#lib/index.js';
import { positionIn, readAt } from './run-results.js';
import type { SheetRun } from './run-sheet.js';

/** A jar of no set size is drawn so much larger than what it takes. */
const room = 1.1;
/** Less than this is an empty jar, m³. */
const nothing = 1e-7;

/** All jars of the run; those to come are empty. Position is the row with its part. */
export function jarsAt(run: SheetRun, time_s: number, position: number): JarMoment[] {
  const size_m3 = Math.max(0, ...run.jars.filter((jar) => jar.full).map((jar) => jar.volume_m3));
  let taken = false;
  return run.jars.map((jar, index) => {
    const own = { number: index + 1, size_m3: size_m3 > 0 ? size_m3 : room * jar.volume_m3 };
    const last = index === run.jars.length - 1;
    if (time_s >= jar.to_s && !last) {
      return { ...own, filled_m3: jar.volume_m3, strength: jar.strength, state: 'filled' };
    }
    const state = taken ? 'waiting' : 'underSpout';
    taken = true;
    return { ...own, ...contents(run, jar, position), state };
  });
}

function contents(run: SheetRun, jar: Jar, position: number): Pick<JarMoment, 'filled_m3' | 'strength'> {
  const from = positionIn(run.time_s, jar.from_s);
  const to = Math.min(position, positionIn(run.time_s, jar.to_s));
  if (to <= from) return { filled_m3: 0, strength: null };
  const gained = (column: ArrayLike<number>): number => Math.max(0, readAt(column, to) - readAt(column, from));
  const ethanol_mol = gained(run.collectedEthanol_mol);
  const water_mol = gained(run.collectedWater_mol);
  const filled_m3 = volumeAt20C(ethanol_mol, water_mol);
  if (filled_m3 < nothing) return { filled_m3: 0, strength: null };
  return { filled_m3, strength: strengthFromMoleFraction(ethanol_mol / (ethanol_mol + water_mol)) };
}
