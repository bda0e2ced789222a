// Formulas computed without a worker, told as text: '11.4 L', or a fault.

import { valueText } from '../../explorer/entries/formula/value-text.js';
import { answer } from '../../explorer/formula/answer.js';
import type { FormulaFault, FormulaResult, FormulaSheet, PageQuantity } from '../../explorer/formula/sheet.js';

/** An invented page: 120 L at 9.5 % vol, 5.5 kW, 1 atm, 12 plates. */
export const quantities: readonly PageQuantity[] = [
  { name: 'volume', kind: 'volume', si: 0.12 },
  { name: 'strength', kind: 'strength', si: 0.095 },
  { name: 'heat', kind: 'power', si: 5500 },
  { name: 'pressure', kind: 'pressure', si: 101_325 },
  { name: 'plates', kind: 'number', si: 12 },
];

export function sheetOf(texts: readonly string[], change: Partial<FormulaSheet> = {}): FormulaSheet {
  const lines = texts.map((text, index) => ({ id: `line ${String(index)}`, text }));
  return { lines, quantities, units: 'metric', stopped: [], ...change };
}

export function resultsOf(texts: readonly string[], change: Partial<FormulaSheet> = {}): readonly FormulaResult[] {
  return answer({ sheet: sheetOf(texts, change), curves: [] }).results;
}

/** What the last of some lines comes to: a value as text, or 'kind of fault: what is wrong; what would be right'. */
export function last(...texts: readonly string[]): string {
  return told(resultsOf(texts).at(-1)!);
}

export function told({ outcome }: FormulaResult): string {
  if ('fault' in outcome)
    return [`${outcome.fault.kind}: ${outcome.fault.wrong}`, outcome.fault.right].filter(Boolean).join('; ');
  return valueText(outcome.value).replace(/\u00a0/gu, ' ');
}

/** The fault of the last of some lines, with the text it points at. */
export function faultOf(...texts: readonly string[]): FormulaFault & { readonly pointsAt: string | null } {
  const { outcome } = resultsOf(texts).at(-1)!;
  if (!('fault' in outcome)) throw new Error(`‘${texts.at(-1) ?? ''}’ has a value: ${valueText(outcome.value)}`);
  const { at } = outcome.fault;
  return { ...outcome.fault, pointsAt: at === null ? null : texts.at(-1)!.slice(at.from, at.to) };
}
