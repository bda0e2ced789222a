// Text with a little mark-up, so that pages and lessons can be plain data: [[word]] opens its explanation,
// {{number}} is ink, ((number)) is print kept on one line, *word* is stressed.

import { html } from 'lit';
import './kp-term.js';

const marks = /\[\[([^\]]+)\]\]([.,:;)’]*)|\{\{([^}]+)\}\}|\(\(([^)]+)\)\)|\*([^*]+)\*/gu;

/** A text as a template. */
export function prose(source: string): unknown {
  const text = kept(source);
  const parts: unknown[] = [];
  let from = 0;
  for (const match of text.matchAll(marks)) {
    parts.push(text.slice(from, match.index), marked(match));
    from = match.index + match[0].length;
  }
  return [...parts, text.slice(from)];
}

/** Paragraphs, each a text. */
export function paragraphs(texts: readonly string[]): unknown {
  return texts.map((text) => html`<p>${prose(text)}</p>`);
}

/** A text without its marks, for a summary, a title or paper. */
export function plainProse(text: string): string {
  return text.replace(marks, (_whole: string, term?: string, tail?: string, ...words: (string | undefined)[]) =>
    term !== undefined ? term + (tail ?? '') : (words.slice(0, 3).find((word) => word !== undefined) ?? ''),
  );
}

/** Words the glossary is asked for in a text. */
export function termsIn(text: string): string[] {
  return [...text.matchAll(marks)].flatMap(([, term]) => (term === undefined ? [] : [term]));
}

/** A number and its unit never part, nor a ratio. */
function kept(text: string): string {
  return text
    .replaceAll('% vol', '%\u00a0vol')
    .replaceAll(' : 1', '\u00a0:\u00a01')
    .replace(/(\d) (?=%|°|kPa\b|L\b|min\b)/gu, '$1\u00a0');
}

function marked([, term, tail, ink, print, stressed]: RegExpExecArray): unknown {
  if (term !== undefined) return html`<kp-term word=${term} tail=${tail ?? ''}></kp-term>`;
  if (ink !== undefined) return html`<span class="ink number">${ink}</span>`;
  return print !== undefined ? html`<span class="number">${print}</span>` : html`<em>${stressed}</em>`;
}
