// Which of several rules ended a step of a run: the one its last moment stands at. A run says so itself only of its last step.

import type { StopRule, RunStep } from '#lib/index.js';
import type { SheetRun } from '../../state/run-sheet.js';

/** The rule that ended a step that began at one row and ended at another. */
export function endedBy(run: SheetRun, step: RunStep, from: number, to: number): StopRule {
  const misses = step.until.map((rule) => miss(rule, run, from, to));
  return step.until[misses.indexOf(Math.min(...misses))]!;
}

/** How far the last moment is from a rule, as a share of what the rule names; 0 where it is met. */
function miss(rule: StopRule, run: SheetRun, from: number, to: number): number {
  const above = (reached: number, wanted: number, scale = wanted): number => Math.max(0, (wanted - reached) / scale);
  const below = (reached: number, wanted: number): number => Math.max(0, (reached - wanted) / wanted);
  switch (rule.kind) {
    case 'duration':
      return above(run.time_s[to]! - run.time_s[from]!, rule.seconds);
    case 'collectedVolume':
      return above(run.collectedVolume_m3[to]!, rule.volume_m3);
    case 'spoutStrengthBelow':
      // On plates a weak spout counts only once it has been strong; what has not yet run is no fall.
      return run.collectedVolume_m3[to]! > 0 ? below(run.spoutStrength[to]!, rule.strength) : 1;
    case 'kettleStrengthBelow':
      return below(run.kettleStrength[to]!, rule.strength);
    case 'headTemperatureAbove':
      return above(run.headTemperature_K[to]!, rule.temperature_K, degrees);
    case 'kettleTemperatureAbove':
      return above(run.kettleTemperature_K[to]!, rule.temperature_K, degrees);
    case 'alcoholLeftBelow':
      return below(run.pureAlcoholLeft_m3[to]! / run.pureAlcoholLeft_m3[0]!, rule.share);
    case 'firstVapour':
      return above(run.time_s[to]!, run.firstVapour_s ?? Infinity, Math.max(1, run.time_s[to]!));
    case 'refluxAbove':
      // The next step may begin with another reflux.
      return above(run.refluxRatio[Math.max(from, to - 1)]!, rule.ratio);
  }
}

/** What temperatures are told apart by, K. */
const degrees = 80;
