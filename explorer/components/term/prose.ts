// Text with a little mark-up, so that pages and lessons can be plain data: [[word]] opens its explanation,
// {{number}} is ink, ((number)) is print kept on one line, *word* is stressed.

import { html } from 'lit';
import { marksIn, withMarks, type Mark } from './marks.js';
import './kp-term.js';

/** A text as a template. */
export function prose(source: string): unknown {
  const text = kept(source);
  const parts: unknown[] = [];
  let from = 0;
  for (const mark of marksIn(text)) {
    parts.push(text.slice(from, mark.from), marked(mark));
    from = mark.to;
  }
  return [...parts, text.slice(from)];
}

/** Paragraphs, each a text. */
export function paragraphs(texts: readonly string[]): unknown {
  return texts.map((text) => html`<p>${prose(text)}</p>`);
}

/** A text without its marks, for a summary, a title or paper. */
export function plainProse(text: string): string {
  return withMarks(text, ({ word, tail }) => word + tail);
}

/** Words the glossary is asked for in a text. */
export function termsIn(text: string): string[] {
  return marksIn(text).flatMap(({ kind, word }) => (kind === 'term' ? [word] : []));
}

/** A number and its unit never part, nor a ratio. */
function kept(text: string): string {
  return text
    .replaceAll('% vol', '%\u00a0vol')
    .replaceAll(' : 1', '\u00a0:\u00a01')
    .replace(/(\d) (?=%|°|kPa\b|L\b|min\b)/gu, '$1\u00a0');
}

function marked({ kind, word, tail }: Mark): unknown {
  switch (kind) {
    case 'term':
      return html`<kp-term word=${word} tail=${tail}></kp-term>`;
    case 'ink':
      return html`<span class="ink number">${word}</span>`;
    case 'print':
      return html`<span class="number">${word}</span>`;
    case 'stress':
      return html`<em>${word}</em>`;
  }
}
