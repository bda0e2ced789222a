// Watched where a step of the run sheet asks for a strength at the spout: whether a hold has lost it, and whether the reflux is below the
// least that could give it with any number of plates (the pinch, lib/run/steady/minimum-reflux.ts). The least is that of equal heats and
// no losses: what a column condenses on its walls and cold reflux add to what is counted here, so that it speaks only where the spout is too weak as well.

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { readVapour } from '../../equilibrium/slice-tables.js';
import { moleFractionFromStrength } from '../../mixture/strength.js';
import type { Still } from '../../still/still.js';
import { minimumReflux } from '../steady/minimum-reflux.js';
import type { RunStep } from '../problem.js';
import { holderAt, valueAt, type Watch, type WatchedRun, within } from './watch.js';

/** A strength is missed when the spout stands this far below it, % vol / 100. */
const MISSED = 0.005;
/** A column is at work when this share of what the heat raises leaves the vessel under it. */
const AT_WORK = 0.5;
/** Heat that raises a mole of vapour, J/mol; roughly. */
const HEAT_J_mol = 40e3;

/** Whether a hold, with all the reflux it may use, stands below what it should hold. */
export function holds(run: WatchedRun): Watch[] {
  const { sheet, still } = run.problem;
  return asked(sheet, run).flatMap(({ reflux, strength, first, end }): Watch[] => {
    if (typeof reflux !== 'object' || reflux.kind !== 'hold') return [];
    return [
      {
        kind: 'holdLost',
        holder: null,
        high: false,
        read: (place) => {
          if (place < first || place >= end) return null;
          const reached = valueAt(run.spoutStrength, place);
          const passed = reached < strength - MISSED && spent(still, reflux, run, place);
          return { worst: reached / strength, passed, extrapolated: false };
        },
        message: 'The strength to be held is lost: the kettle is too weak for these plates at the most reflux allowed.',
        cure: 'More plates or more reflux, until the least reflux is reached, below which no number of plates would do; or stop.',
      },
    ];
  });
}

/** Whether the reflux of a step that asks for a strength is less than any number of plates would need. */
export function leastRefluxes(run: WatchedRun, system: EthanolWater): Watch[] {
  const { still, activity, sheet } = run.problem;
  const slice = system.curve(activity).at(run.holders.at(-1)!.pressure_Pa);
  const vessel = run.holders.findLastIndex(({ kind }) => kind === 'kettle' || kind === 'doubler');
  return asked(sheet, run).map(({ reflux, strength, first, end }): Watch => {
    const distillate = moleFractionFromStrength(strength);
    const hold = typeof reflux === 'object' && reflux.kind === 'hold' ? reflux : null;
    /** Infinity where no reflux would do; null where the question makes no sense. */
    const least = (place: number): number | null => {
      const liquid = Math.max(WATER, within(holderAt(run, run.holderLiquid, place, vessel)));
      const found = minimumReflux(slice, liquid, distillate);
      if (found.found) return found.reflux;
      return found.reason === 'beyondAzeotrope' ? Infinity : null;
    };
    const allowed = (place: number): number =>
      hold !== null && still.refluxCondenser.kind === 'total'
        ? hold.mostShare / (1 - hold.mostShare)
        : run.refluxRatio[Math.floor(place)]!;
    const works = (place: number): boolean => {
      const raised = (AT_WORK * valueAt(run.power_W, place)) / HEAT_J_mol;
      return raised > 0 && holderAt(run, run.holderVapourRate_mol_s, place, vessel) > raised;
    };
    const beyond = readVapour(slice.alpha, slice.intervals, distillate) <= distillate;
    return {
      kind: 'refluxShort',
      holder: null,
      high: false,
      read: (place) => {
        if (place < first || place >= end || !works(place)) return null;
        if (valueAt(run.spoutStrength, place) >= strength - MISSED) return null;
        if (hold !== null && !spent(still, hold, run, place)) return null;
        const needed = least(place);
        if (needed === null || needed === 0) return null;
        const share = needed === Infinity ? 0 : allowed(place) / needed;
        return { worst: share, passed: share < 1, extrapolated: false };
      },
      message: (begins, worst) => {
        if (beyond) {
          return 'The strength asked for lies at or beyond the azeotrope: no reflux and no number of plates reaches it.';
        }
        const [first, last] = [ratio(least(begins)!), ratio(least(worst)!)];
        const needed = first === last ? first : `${first} when this begins and ${last} at worst`;
        const given = `the step ${hold === null ? 'has' : 'allows'} ${ratio(allowed(worst))}`;
        // Without a plate the least reflux of any number of plates is beside the point.
        return run.plates === 0
          ? `The strength asked for takes plates, and a reflux of at least ${needed}; there are no plates, and ${given}.`
          : `Over what boils under the column the strength asked for takes a reflux of at least ${needed}, however many ` +
              `plates there are; ${given}.`;
      },
      cure: beyond
        ? 'A lower strength.'
        : hold === null
          ? 'More reflux than that, or a lower strength.'
          : 'Allow more reflux than that, hold a lower strength, or stop before what boils is so weak.',
    };
  });
}

interface Asked {
  readonly reflux: RunStep['reflux'];
  readonly strength: number;
  /** Its first row, and the first after it. */
  readonly first: number;
  readonly end: number;
}

/** Steps that hold a strength or wait for the spout to fall to one. */
function asked(sheet: readonly RunStep[], run: WatchedRun): Asked[] {
  return sheet.flatMap(({ reflux, until }, step): Asked[] => {
    const first = run.stepStarts[step];
    if (first === undefined) return [];
    const end = run.stepStarts[step + 1] ?? run.rows;
    const held = typeof reflux === 'object' && reflux.kind === 'hold' ? [reflux.strength] : [];
    const awaited = until.flatMap((rule) => (rule.kind === 'spoutStrengthBelow' ? [rule.strength] : []));
    const strength = held[0] ?? awaited[0];
    return strength === undefined ? [] : [{ reflux, strength, first, end }];
  });
}

/** Whether a hold uses all it may: of what is condensed, or of a partial condenser's duty. */
function spent(
  { refluxCondenser }: Still,
  { mostShare }: { readonly mostShare: number },
  run: WatchedRun,
  place: number,
): boolean {
  if (refluxCondenser.kind === 'partial' && refluxCondenser.coolant.kind === 'duty') {
    return valueAt(run.refluxDuty_W, place) >= (mostShare - 1e-3) * refluxCondenser.coolant.power_W;
  }
  // A ratio may be without bound at one of two rows.
  const back = run.refluxRatio[Math.floor(place)]!;
  return back === Infinity || back / (1 + back) >= mostShare - 1e-6;
}

/** A vessel with less alcohol is as good as water, and takes reflux without bound. */
const WATER = 1e-6;

/** Beyond this a number says no more than that it is out of reach. */
const OUT_OF_REACH = 100;

function ratio(reflux: number): string {
  return `${String(Number(Math.min(OUT_OF_REACH, reflux).toPrecision(2)))} : 1`;
}
