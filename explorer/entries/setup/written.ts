// A setup sentence as it is written by hand: numbers in braces, by the names they have in the address.

import type { SentencePart } from '../../components/number/kp-setup.js';
import { inputAt, inputNamed, type Path } from '../../state/inputs.js';

const inBraces = /\{([a-z0-9-]+)\}/gu;

/** 'A charge of {volume} at {strength}.' */
export function written(sentence: readonly SentencePart<Path>[]): string {
  const nameOf = (key: Path): string => inputAt(key)!.name;
  return sentence.map((part) => (typeof part === 'string' ? part : `{${nameOf(part.blank)}}`)).join('');
}

/** The sentence of a text; a name in braces that no number has stays as words. */
export function readSentence(text: string): readonly SentencePart<Path>[] {
  const parts: SentencePart<Path>[] = [];
  let from = 0;
  for (const match of text.matchAll(inBraces)) {
    const row = inputNamed(match[1]!);
    if (row === undefined) continue;
    if (match.index > from) parts.push(text.slice(from, match.index));
    parts.push({ blank: row.key });
    from = match.index + match[0].length;
  }
  if (from < text.length) parts.push(text.slice(from));
  return parts;
}
