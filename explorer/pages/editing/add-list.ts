// The list of what can be added to a page.

import { html } from 'lit';
import type { PageEditing } from './page-editing.js';

/** Behind the entry of this id; null at the top of the page. */
export function addList(editing: PageEditing, after: string | null): unknown {
  const closed = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    editing.startAdding(after);
  };
  return html`<div class="add-list" role="group" aria-label="Add an entry" @keydown=${closed}>
    <ul>
      ${(editing.kinds ?? []).map(
        (kind) =>
          html`<li>
            <button type="button" class="word-button" @click=${() => editing.add(kind, after)}>${kind.title}</button>
            <span>${kind.about}</span>
          </li>`,
      )}
    </ul>
    <button type="button" class="word-button" @click=${() => editing.startAdding(after)}>Add nothing</button>
  </div>`;
}
