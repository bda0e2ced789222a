// What can be done to a run sheet, as pure functions from sheet to sheet.

import type { Reflux, StopRule, RunStep } from '#lib/index.js';
import { mostRules, mostSteps } from '../../state/run-sheet-check.js';
import type { RunSheet } from '../../state/run-sheet.js';
import { rules, type RuleKind } from './rules.js';

export { mostRules, mostSteps };

/** How a step sends liquid back, as the list of choices has it. */
export type SendsBack = 'none' | 'total' | 'ratio' | 'hold';
export const sendsBackKinds: readonly SendsBack[] = ['none', 'total', 'ratio', 'hold'];

/** As the sentence of a step has it. */
export const sendsBackWords: Readonly<Record<SendsBack, string>> = {
  none: 'Send nothing back',
  total: 'Send everything back',
  ratio: 'Send back',
  hold: 'Hold the spout at',
};

export function sendsBack(reflux: Reflux): SendsBack {
  if (reflux === 'none' || reflux === 'total') return reflux;
  return typeof reflux === 'object' && reflux.kind === 'hold' ? 'hold' : 'ratio';
}

/** What each choice starts with. */
const startingReflux: Readonly<Record<SendsBack, Reflux>> = {
  none: 'none',
  total: 'total',
  ratio: 3,
  hold: { kind: 'hold', strength: 0.94, leastShare: 0.3, mostShare: 0.97 },
};

export function withStep(sheet: RunSheet, index: number, step: RunStep): RunSheet {
  return { ...sheet, steps: sheet.steps.map((other, i) => (i === index ? step : other)) };
}

export function withReflux(sheet: RunSheet, index: number, kind: SendsBack): RunSheet {
  return withStep(sheet, index, { ...sheet.steps[index]!, reflux: startingReflux[kind] });
}

export function withRefluxNumber(sheet: RunSheet, index: number, value: number): RunSheet {
  const step = sheet.steps[index]!;
  const { reflux } = step;
  const changed: Reflux = typeof reflux === 'object' && reflux.kind === 'hold' ? { ...reflux, strength: value } : value;
  return withStep(sheet, index, { ...step, reflux: changed });
}

/** `undefined` is the heat set above. */
export function withPower(sheet: RunSheet, index: number, power_W: number | undefined): RunSheet {
  const { reflux, until } = sheet.steps[index]!;
  return withStep(
    sheet,
    index,
    power_W === undefined ? { reflux, until } : { reflux, heat: { kind: 'power', power_W }, until },
  );
}

export function withRuleKind(sheet: RunSheet, index: number, rule: number, kind: RuleKind): RunSheet {
  return withRule(sheet, index, rule, rules[kind].start);
}

export function withRuleNumber(sheet: RunSheet, index: number, rule: number, value: number): RunSheet {
  const { kind } = sheet.steps[index]!.until[rule]!;
  return withRule(sheet, index, rule, rules[kind].withValue(value));
}

function withRule(sheet: RunSheet, index: number, rule: number, changed: StopRule): RunSheet {
  const step = sheet.steps[index]!;
  return withStep(sheet, index, { ...step, until: step.until.map((other, i) => (i === rule ? changed : other)) });
}

/** One more way for a step to end. */
export function withOneMoreRule(sheet: RunSheet, index: number): RunSheet {
  const step = sheet.steps[index]!;
  if (step.until.length >= mostRules) return sheet;
  return withStep(sheet, index, { ...step, until: [...step.until, rules.duration.start] });
}

export function withoutRule(sheet: RunSheet, index: number, rule: number): RunSheet {
  const step = sheet.steps[index]!;
  if (step.until.length === 1) return sheet;
  return withStep(sheet, index, { ...step, until: step.until.filter((_other, i) => i !== rule) });
}

/** A copy of a step after it. */
export function withStepAfter(sheet: RunSheet, index: number): RunSheet {
  if (sheet.steps.length >= mostSteps) return sheet;
  const step = sheet.steps[index]!;
  return { ...sheet, steps: [...sheet.steps.slice(0, index + 1), step, ...sheet.steps.slice(index + 1)] };
}

export function withoutStep(sheet: RunSheet, index: number): RunSheet {
  if (sheet.steps.length === 1) return sheet;
  return { ...sheet, steps: sheet.steps.filter((_step, i) => i !== index) };
}

/** A step moved up (−1) or down (1). */
export function withStepMoved(sheet: RunSheet, index: number, by: -1 | 1): RunSheet {
  const to = index + by;
  if (to < 0 || to >= sheet.steps.length) return sheet;
  const steps = [...sheet.steps];
  const [step] = steps.splice(index, 1);
  steps.splice(to, 0, step!);
  return { ...sheet, steps };
}
