// The rules of a run sheet, watched over a whole run. A rule about the spout or the head counts once the run has stood on its far side: while
// plates fill, the spout climbs towards its strength from below.

import type { RunStep } from './problem.js';
import { armsFirst, type RunState, stopMargin, type StopMargin } from './stop-rules.js';

/** A rule of one step with what is known of it. */
export interface WatchedRule {
  readonly margin: StopMargin;
  /** Whether it can be met by now. */
  armed: boolean;
}

/** Watches every rule of a sheet. */
export class RuleWatch {
  readonly #steps: readonly (readonly WatchedRule[])[];
  readonly #waiting: WatchedRule[];

  constructor(sheet: readonly Pick<RunStep, 'until'>[], arming = true) {
    this.#steps = sheet.map((step) =>
      step.until.map((rule) => ({ margin: stopMargin(rule), armed: !arming || !armsFirst(rule) })),
    );
    this.#waiting = this.#steps.flat().filter((rule) => !rule.armed);
  }

  /** The rules of a step. */
  rules(step: number): readonly WatchedRule[] {
    return this.#steps[step]!;
  }

  /** Arms every waiting rule on whose far side the run stands at this moment. */
  look(moment: RunState): void {
    for (const rule of this.#waiting) rule.armed ||= rule.margin(moment) > 0;
  }

  /** Index of a rule of the step that is met at this moment, -1 for none. */
  met(step: number, moment: RunState): number {
    return this.rules(step).findIndex((rule) => rule.armed && rule.margin(moment) <= 0);
  }
}
