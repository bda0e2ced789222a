// What can be done with a page of the reader's own as a whole, under its title, and the way to add to it at its foot.

import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { atMost } from '../../components/field/at-most.js';
import { letters } from '../../state/limits.js';
import type { PageRecord } from '../../state/notebook-record.js';
import { namePage } from '../../state/page-acts.js';
import { addList } from './add-list.js';
import type { PageEditing } from './page-editing.js';

export function pageControls(editing: PageEditing, record: PageRecord): unknown {
  return html`<div class="page-controls" role="group" aria-label="This page">
      <button
        type="button"
        class="word-button"
        data-do="edit"
        aria-expanded=${editing.headIsOpen}
        @click=${() => editing.editHead()}
      >
        Edit title
      </button>
      <button type="button" class="word-button" @click=${() => editing.copyPage()}>Duplicate page</button>
      <button type="button" class="word-button" @click=${() => editing.deletePage()}>Delete page</button>
    </div>
    ${editing.headIsOpen ? headEditor(editing, record) : nothing}`;
}

function headEditor(editing: PageEditing, { name, title, promise }: PageRecord): unknown {
  const write = (field: 'title' | 'promise', event: Event): void => {
    const words = { [field]: (event.target as HTMLInputElement).value };
    editing.page.act((notebook) => namePage(notebook, name, words), {
      says: `${field} written`,
      together: `${field}:${name}`,
    });
  };
  const closed = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' && event.key !== 'Enter') return;
    event.preventDefault();
    editing.editHead();
  };
  return html`<div class="page-editor" @keydown=${closed}>
    <label class="edit-field">
      <span>Title</span>
      <input
        type="text"
        data-in-history
        ${atMost(letters.title)}
        .value=${live(title)}
        @input=${(event: Event) => write('title', event)}
      />
    </label>
    <label class="edit-field">
      <span>What the page promises, in one line</span>
      <input
        type="text"
        data-in-history
        ${atMost(letters.promise)}
        .value=${live(promise)}
        @input=${(event: Event) => write('promise', event)}
      />
    </label>
    <p class="edit-choices">
      <button type="button" class="word-button" @click=${() => editing.editHead()}>Done</button>
    </p>
  </div>`;
}

/** Behind the last entry; on an empty page the only thing there is. */
export function pageFoot(editing: PageEditing, { entries }: PageRecord): unknown {
  if (entries.length > 0 && !editing.isAdding(null)) return nothing;
  return html`<section class="entry page-adding" aria-label="Add an entry">
    ${
      editing.isAdding(null)
        ? addList(editing, null)
        : html`<p>
            <button type="button" class="word-button" @click=${() => editing.startAdding(null)}>
              Add the first entry
            </button>
          </p>`
    }
  </section>`;
}
