// What went wrong, as sentences for people: the correction of a number, faults that came back from the
// solver, and endings of a run that were not asked for.

import type { InputFault } from '#lib/index.js';
import type { NumberFault, NumberSpec } from '../components/number/number-spec.js';
import type { Correction } from '../components/number/kp-setup.js';

/** The correction line of a number: what is wrong, what would be right, which value the figures still use. */
export function correctionOf(spec: NumberSpec, fault: NumberFault, inUse: number): Correction {
  const unit = spec.suffix(2);
  const range = `${spec.digits(spec.low)} to ${spec.digits(spec.high)}`;
  const shown = spec.toShown(inUse);
  const still = `The figures still use ${spec.digits(shown)}${spec.suffix(shown)}.`;
  const putBack = `Put ${spec.digits(shown)} back`;
  const bare = /^[\d\s.,−-]+$/u.test(fault.draft);
  const draft = bare ? `${fault.draft.trim()}${unit}` : fault.draft.trim();
  const says = (words: string): Correction => ({ key: spec.key, draft, says: `${words} ${still}`, putBack });
  switch (fault.reason) {
    case 'tooHigh':
      return says(`${spec.tooHigh}: ${range}.`);
    case 'tooLow':
      return says(`${spec.tooLow}: ${range}.`);
    case 'ambiguousComma':
      return says(`may be thousands or a decimal: write it without the mark, or with the other one.`);
    case 'unknownUnit':
      return says(`has a unit that does not fit here: a number in${unit.replace(/\u00a0plates/u, ' plates')} will do.`);
    case 'empty':
      return { ...says(`A number is missing: ${range}${unit}.`), draft: '' };
    default:
      return says(`is no number: ${range}${unit}.`);
  }
}

/** Faults the solver found in its problem; the page's own limits should have caught them. */
export function refusalOf(faults: readonly InputFault[]): string {
  const first = faults[0];
  if (first === undefined) return 'The solver could not answer. The figures still show the run before.';
  const step = /^sheet\[(\d+)\]\.until\[\d+\]\.temperature_K$/u.exec(first.argument)?.[1];
  if (step !== undefined) {
    return `Step ${String(Number(step) + 1)} of the run sheet waits for a temperature that is never reached: under this air water itself boils below it. The figures still show the run before.`;
  }
  return `The solver refused ${first.argument}: it expected ${first.expected}. The figures still show the run before.`;
}
