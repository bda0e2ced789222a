// A template as plain text.

import { html, nothing } from 'lit';
import { describe, expect, it } from 'vitest';
import { plainWords } from '../../../explorer/entries/plain-words.js';

describe('plain words', () => {
  it('are the words and numbers of a template, a paragraph a line', () => {
    const strong = html`<span class=${'ink'} @click=${() => undefined}>95.2 % vol</span>`;
    const template = html`<p>It gets to ${strong}.</p>
      <p>${nothing}So &amp; so: ${['a', 'b']} ${3}</p>`;
    expect(plainWords(template)).toBe('It gets to 95.2 % vol.\nSo & so: ab 3');
  });

  it('set the cells of a table apart', () => {
    const table = html`<table>
      <tr>
        <th>plates</th>
        <td>${12}</td>
      </tr>
    </table>`;
    expect(plainWords(table)).toMatch(/^plates\s+12$/u);
  });
});
