// What can be done to a run sheet, as pure functions from sheet to sheet.

import type { Reflux, StopRule, RunStep } from '#lib/index.js';
import { mostSteps } from '../../state/inputs-of-run.js';
import { mostRules } from '../../state/run-sheet-check.js';
import type { SheetSet } from '../../state/scenario.js';
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

export function withStep(of: SheetSet, index: number, step: RunStep): SheetSet {
  return { ...of, sheet: of.sheet.map((other, i) => (i === index ? step : other)) };
}

export function withReflux(of: SheetSet, index: number, kind: SendsBack): SheetSet {
  return withStep(of, index, { ...of.sheet[index]!, reflux: startingReflux[kind] });
}

export function withRefluxNumber(of: SheetSet, index: number, value: number): SheetSet {
  const step = of.sheet[index]!;
  const { reflux } = step;
  const changed: Reflux = typeof reflux === 'object' && reflux.kind === 'hold' ? { ...reflux, strength: value } : value;
  return withStep(of, index, { ...step, reflux: changed });
}

/** `undefined` is the heat set above. */
export function withPower(of: SheetSet, index: number, power_W: number | undefined): SheetSet {
  const { reflux, until } = of.sheet[index]!;
  return withStep(
    of,
    index,
    power_W === undefined ? { reflux, until } : { reflux, heat: { kind: 'power', power_W }, until },
  );
}

export function withRuleKind(of: SheetSet, index: number, rule: number, kind: RuleKind): SheetSet {
  return withRule(of, index, rule, rules[kind].start);
}

export function withRuleNumber(of: SheetSet, index: number, rule: number, value: number): SheetSet {
  const { kind } = of.sheet[index]!.until[rule]!;
  return withRule(of, index, rule, rules[kind].withValue(value));
}

function withRule(of: SheetSet, index: number, rule: number, changed: StopRule): SheetSet {
  const step = of.sheet[index]!;
  return withStep(of, index, { ...step, until: step.until.map((other, i) => (i === rule ? changed : other)) });
}

/** One more way for a step to end. */
export function withOneMoreRule(of: SheetSet, index: number): SheetSet {
  const step = of.sheet[index]!;
  if (step.until.length >= mostRules) return of;
  return withStep(of, index, { ...step, until: [...step.until, rules.duration.start] });
}

export function withoutRule(of: SheetSet, index: number, rule: number): SheetSet {
  const step = of.sheet[index]!;
  if (step.until.length === 1) return of;
  return withStep(of, index, { ...step, until: step.until.filter((_other, i) => i !== rule) });
}

/** A copy of a step after it. */
export function withStepAfter(of: SheetSet, index: number): SheetSet {
  if (of.sheet.length >= mostSteps) return of;
  const step = of.sheet[index]!;
  return { ...of, sheet: [...of.sheet.slice(0, index + 1), step, ...of.sheet.slice(index + 1)] };
}

export function withoutStep(of: SheetSet, index: number): SheetSet {
  if (of.sheet.length === 1) return of;
  return { ...of, sheet: of.sheet.filter((_step, i) => i !== index) };
}

/** A step moved up (−1) or down (1). */
export function withStepMoved(of: SheetSet, index: number, by: -1 | 1): SheetSet {
  const to = index + by;
  if (to < 0 || to >= of.sheet.length) return of;
  const steps = [...of.sheet];
  const [step] = steps.splice(index, 1);
  steps.splice(to, 0, step!);
  return { ...of, sheet: steps };
}
