// A template as plain text: its words and numbers without mark-up, for a summary or a file of text.

import { nothing } from 'lit';
import { numberWithUnit } from '../components/number/number-spec.js';
import type { Asks } from '../worker/questions.js';
import type { Here } from './entry.js';
import { numberAt } from '../state/paths.js';

interface Template {
  readonly strings: readonly string[];
  readonly values: readonly unknown[];
}

// A mark has no other inside it.
const marks = new RegExp('<[^<>]*>', 'gu');
const blockEnds = /<\/(p|h2|table|tr|li|div)>/gu;
const names: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&nbsp;': '\u00a0' };

export function plainWords(template: unknown): string {
  return textOf(template)
    .replace(/[^\S\u00a0]+/gu, ' ')
    .replace(blockEnds, '\n')
    .replace(/<\/t[hd]>/gu, '\t')
    .replace(marks, '')
    .replace(/&(amp|lt|gt|nbsp);/gu, (name) => names[name]!)
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .join('\n');
}

/** The same, with the numbers that can be set as words. */
export function inWords<Data, Asked extends Asks>(here: Here<Data, Asked>): Here<Data, Asked> {
  return { ...here, blank: (key) => numberWithUnit(here.specs(key), numberAt(here.scenario, key) ?? 0) };
}

/** Mark-up with the values that stand in text; those of attributes are left out. */
function textOf(value: unknown): string {
  if (value === nothing || value === null || value === undefined || typeof value === 'function') return '';
  if (Array.isArray(value)) return value.map(textOf).join('');
  if (!isTemplate(value)) return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
  let text = '';
  value.strings.forEach((string, place) => {
    text += string;
    const inTag = text.lastIndexOf('<') > text.lastIndexOf('>');
    if (!inTag) text += textOf(value.values[place]);
  });
  return text;
}

function isTemplate(value: unknown): value is Template {
  return typeof value === 'object' && value !== null && 'strings' in value && 'values' in value;
}
