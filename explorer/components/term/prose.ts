// Text with a little mark-up, so that pages and lessons can be plain data: [[word]] opens its explanation,
// {{number}} is ink, ((number)) is print kept on one line, *word* is stressed.

import { html } from 'lit';
import './kp-term.js';

const marks = /\[\[([^\]]+)\]\]|\{\{([^}]+)\}\}|\(\(([^)]+)\)\)|\*([^*]+)\*/gu;

/** A text as a template. */
export function prose(text: string): unknown {
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

/** A text without its marks, for a table, a title or paper. */
export function plainProse(text: string): string {
  return text.replace(
    marks,
    (_whole, ...words: (string | undefined)[]) => words.slice(0, 4).find((word) => word !== undefined) ?? '',
  );
}

/** Words the glossary is asked for in a text. */
export function termsIn(text: string): string[] {
  return [...text.matchAll(marks)].flatMap(([, term]) => (term === undefined ? [] : [term]));
}

function marked([, term, ink, print, stressed]: RegExpExecArray): unknown {
  if (term !== undefined) return html`<kp-term word=${term}></kp-term>`;
  if (ink !== undefined) return html`<span class="ink number">${ink}</span>`;
  return print !== undefined ? html`<span class="number">${print}</span>` : html`<em>${stressed}</em>`;
}
