// A setup sentence as it is written by hand: numbers in braces, by the names they have in the address.

import type { SentencePart } from '../../components/number/kp-setup.js';
import { parameters } from '../../state/parameters.js';
import type { ParameterKey } from '../../state/scenario.js';

const inBraces = /\{([a-z-]+)\}/gu;

/** 'A charge of {volume} at {strength}.' */
export function written(sentence: readonly SentencePart<ParameterKey>[]): string {
  const nameOf = (key: ParameterKey): string => parameters.find((row) => row.key === key)!.inAddress;
  return sentence.map((part) => (typeof part === 'string' ? part : `{${nameOf(part.blank)}}`)).join('');
}

/** The sentence of a text; a name in braces that no number has stays as words. */
export function readSentence(text: string): readonly SentencePart<ParameterKey>[] {
  const parts: SentencePart<ParameterKey>[] = [];
  let from = 0;
  for (const match of text.matchAll(inBraces)) {
    const row = parameters.find(({ inAddress }) => inAddress === match[1]);
    if (row === undefined) continue;
    if (match.index > from) parts.push(text.slice(from, match.index));
    parts.push({ blank: row.key });
    from = match.index + match[0].length;
  }
  if (from < text.length) parts.push(text.slice(from));
  return parts;
}
