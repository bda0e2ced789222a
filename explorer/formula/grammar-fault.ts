// What mathjs' parser could not read, in our words: what stands in the way, where, and what would be right.

import { fault } from './faults.js';
import type { FormulaFault, Place } from './sheet.js';

/** The fault behind an error of the parser. */
export function grammarFault(text: string, error: unknown): FormulaFault {
  if (error instanceof RangeError) {
    return fault('tooMuch', 'The formula is nested too deeply', 'split it over several lines');
  }
  if (!(error instanceof SyntaxError)) {
    const twice = error instanceof Error && /Duplicate parameter/u.test(error.message);
    if (twice) return fault('taken', 'Two arguments have the same name', 'choose another name for one of them');
    return fault('grammar', 'That cannot be read as a formula');
  }
  const { char } = error as SyntaxError & { char?: number };
  const at = char === undefined ? null : placeAt(text, char - 1);
  return wordsFor(text, error.message, at);
}

function wordsFor(text: string, message: string, at: Place | null): FormulaFault {
  const here = at === null ? '' : text.slice(at.from, at.to);
  const before = at === null ? '' : text.slice(0, at.from);
  const end = at === null || text.slice(at.from).replace(/#.*/u, '').trim() === '';
  if (here === ',' && /\d$/u.test(before)) {
    const decimal = /^\d/u.test(text.slice(at!.to)) ? 'a decimal is written with a point: 9.5' : 'take the comma out';
    return fault('grammar', 'A comma stands between the things a function is given', decimal, at);
  }
  if (/[²³⁰-⁹]/u.test(here)) return fault('grammar', `‘${here}’ is not read`, 'a power is written ^2 or ^3', at);
  if (/^[‘’'"“”]/u.test(here)) return fault('grammar', 'Text in quotes has no place in a formula', '', at);
  if (/Parenthesis \) expected/u.test(message)) {
    return fault(
      'grammar',
      end ? 'A bracket is opened and not closed' : `‘)’ was expected before ‘${here}’`,
      'close it with )',
      at,
    );
  }
  if (/Unexpected end|Value expected/u.test(message) && end) {
    return fault('grammar', 'The formula ends before it is complete', 'something is to follow', at);
  }
  if (here === ')')
    return fault('grammar', 'A bracket is closed that was not opened', 'take it out, or open it with (', at);
  if (/left hand side of assignment/u.test(message)) {
    const right = 'write name = formula; two things are compared with ==';
    return fault('grammar', 'Only a name can stand before the equals sign', right, at);
  }
  if (/False part of conditional/u.test(message)) {
    return fault('grammar', 'A choice needs both answers', 'write condition ? one : other', at);
  }
  if (/Value expected/u.test(message))
    return fault('grammar', `A number or a name was expected before ‘${here}’`, '', at);
  return fault('grammar', here === '' ? 'That cannot be read as a formula' : `‘${here}’ cannot be read there`, '', at);
}

/** The sign at a character, or the end of the text. */
function placeAt(text: string, index: number): Place {
  const from = Math.min(Math.max(index, 0), text.length);
  const sign = /^./u.exec(text.slice(from))?.[0] ?? '';
  return { from, to: from + sign.length };
}
