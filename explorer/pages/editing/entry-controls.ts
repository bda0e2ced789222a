// The words to press under an entry, and its editor: a heading, and what its kind has to edit.

import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { atMost } from '../../components/field/at-most.js';
import { letters } from '../../state/limits.js';
import { headEntry } from '../../state/page-acts.js';
import type { Drawable } from '../here.js';
import type { PageEditing } from './page-editing.js';

/** What an entry is called by those who hear it: 'figure: the run'. */
function calledOf({ record, kind, here }: Drawable): string {
  if (kind === undefined || here === undefined) return 'entry';
  return record.heading === undefined ? kind.label(here.data) : `‘${record.heading}’`;
}

export function entryControls(editing: PageEditing, one: Drawable): unknown {
  const { id } = one.record;
  const { entries } = editing.page.record;
  const called = calledOf(one);
  const first = entries[0]?.id === id;
  const last = entries.at(-1)?.id === id;
  const word = (what: string, text: string, press: () => void, off = false, open?: boolean): unknown =>
    html`<button
      type="button"
      class="word-button"
      data-do=${what}
      aria-label=${`${text}: ${called}`}
      aria-disabled=${off ? 'true' : nothing}
      aria-expanded=${open ?? nothing}
      @click=${() => !off && press()}
    >
      ${text}
    </button>`;
  return html`<div class="entry-controls ${editing.active === id ? 'at-hand' : ''}" role="group" aria-label=${called}>
    ${word('edit', 'Edit', () => editing.edit(id), false, editing.isEditing(id))}
    ${word('up', 'Up', () => editing.move(id, called, -1), first)}
    ${word('down', 'Down', () => editing.move(id, called, 1), last)}
    ${word('duplicate', 'Duplicate', () => editing.duplicate(id, called))}
    ${word('delete', 'Delete', () => editing.delete(id, called))}
    ${word('add', 'Add below', () => editing.startAdding(id), false, editing.isAdding(id))}
  </div>`;
}

export function entryEditor(editing: PageEditing, one: Drawable): unknown {
  const { record, kind, here } = one;
  const { page } = editing;
  const { id } = record;
  const rename = (event: Event): void => {
    const heading = (event.target as HTMLInputElement).value;
    page.act((notebook) => headEntry(notebook, page.record.name, id, heading), {
      says: 'heading written',
      entry: id,
      together: `heading:${id}`,
    });
  };
  const closed = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    event.preventDefault();
    editing.edit(id);
  };
  const editor = kind && editing.editorOf(kind);
  return html`<div class="entry-editor" @keydown=${closed}>
    ${here && editor ? editor.edit(here) : nothing}
    <label class="edit-field">
      <span>Heading above it</span>
      <input
        type="text"
        data-in-history
        ${atMost(letters.heading)}
        .value=${live(record.heading ?? '')}
        @input=${rename}
      />
    </label>
    <p class="edit-choices">
      <button type="button" class="word-button" @click=${() => editing.edit(id)}>Done</button>
    </p>
  </div>`;
}
