// Editing a page of the reader's own: which entry is at hand, which is being edited, where something is added, and
// where the focus goes after each act. What is done goes upwards as acts; the words to press are drawn elsewhere.

import type { EntryEditor, EntryKind } from '../../entries/entry.js';
import { kindNamed, kindNames } from '../../entries/registry.js';
import { wanted } from '../../offline/wanted.js';
import type { PageRecord } from '../../state/notebook-record.js';
import * as acts from '../../state/page-acts.js';
import '../../styles/editing.css';
import { CopyPageEvent } from '../act-event.js';
import type { EntriesPage } from '../entries-page.js';
import type { Drawable } from '../here.js';
import { addList } from './add-list.js';
import { entryControls, entryEditor } from './entry-controls.js';
import { pageControls, pageFoot } from './page-controls.js';

/** What may be open for editing: the page's title, or an entry by its id. */
type Open = { readonly kind: 'head' } | { readonly kind: 'entry' | 'adding'; readonly id: string | null };

export class PageEditing {
  readonly page: EntriesPage;
  /** The kinds that can be added; undefined until they are loaded. */
  kinds: readonly EntryKind[] | undefined;
  /** The entry touched last. */
  active: string | null = null;
  #open: Open | null = null;
  readonly #editors = new Map<string, EntryEditor>();

  constructor(page: EntriesPage) {
    this.page = page;
    const note = ({ target }: Event): void => this.#note(target);
    page.addEventListener('focusin', note);
    page.addEventListener('pointerdown', note);
    if (page.record.entries.length === 0) this.editHead();
  }

  /** The editor of a kind, where it is loaded; else it is on its way. */
  editorOf(kind: EntryKind): EntryEditor | undefined {
    const known = this.#editors.get(kind.name);
    if (known === undefined && kind.edit !== undefined) {
      void this.#wanted(kind.edit).then((editor) => {
        const first = !this.#editors.has(kind.name);
        this.#editors.set(kind.name, editor);
        this.page.requestUpdate();
        if (first) this.#focusAfter('.entry-editor :is(textarea, select, input)');
      });
    }
    return known;
  }

  isEditing(id: string): boolean {
    return this.#open?.kind === 'entry' && this.#open.id === id;
  }

  isAdding(after: string | null): boolean {
    return this.#open?.kind === 'adding' && this.#open.id === after;
  }

  get headIsOpen(): boolean {
    return this.#open?.kind === 'head';
  }

  /** Drawn under an entry. */
  controls(one: Drawable): unknown {
    const { id } = one.record;
    return [
      entryControls(this, one),
      this.isEditing(id) ? entryEditor(this, one) : '',
      this.isAdding(id) ? addList(this, id) : '',
    ];
  }

  head(record: PageRecord): unknown {
    return pageControls(this, record);
  }

  foot(record: PageRecord): unknown {
    return pageFoot(this, record);
  }

  /** After undoing: the entry comes into view and to hand, or where it was, what is there now. */
  show(entry: string): void {
    const { entries } = this.page.record;
    const there = entries.find(({ id }) => id === entry) ?? entries.at(-1);
    this.active = there?.id ?? null;
    this.page.requestUpdate();
    if (there?.id === entry)
      this.page.querySelector(here(entry))?.firstElementChild?.scrollIntoView({ block: 'nearest' });
    if (document.activeElement !== document.body) return;
    this.#focusAfter(there === undefined ? '.page-controls [data-do=edit]' : `${here(there.id)} [data-do=edit]`);
  }

  edit(id: string): void {
    const closing = this.isEditing(id);
    this.#set(closing ? null : { kind: 'entry', id });
    this.#focusAfter(closing ? `${here(id)} [data-do=edit]` : firstField(id));
  }

  editHead(): void {
    const closing = this.headIsOpen;
    this.#set(closing ? null : { kind: 'head' });
    this.#focusAfter(closing ? '.page-controls [data-do=edit]' : '.page-editor input');
  }

  /** Opens the list of what can be added behind an entry; null at the top of the page. */
  startAdding(after: string | null): void {
    const closing = this.isAdding(after);
    this.#set(closing ? null : { kind: 'adding', id: after });
    if (closing) this.#focusAfter(after === null ? '.page-adding button' : `${here(after)} [data-do=add]`);
    else void this.#loadKinds().then(() => this.#focusAfter('.add-list button'));
  }

  add(kind: EntryKind, after: string | null): void {
    const { record, work } = this.page;
    const id = acts.freeEntryId(record, work);
    const before = record.entries.find((entry) => entry.id === after);
    const close = kind.name === 'figure' && before?.kind === 'setup';
    const entry = { id, kind: kind.name, data: kind.start, ...(close ? { close } : {}) };
    this.page.act((notebook) => acts.addEntry(notebook, record.name, entry, after), {
      says: `${kind.title.toLowerCase()} added`,
      entry: id,
    });
    this.active = id;
    this.#set({ kind: 'entry', id });
    this.#focusAfter(firstField(id));
  }

  move(id: string, called: string, by: -1 | 1): void {
    const { record } = this.page;
    const place = record.entries.findIndex((entry) => entry.id === id) + by;
    if (place < 0 || place >= record.entries.length) return;
    const says = `${called} moved ${by < 0 ? 'up' : 'down'}, now ${String(place + 1)} of ${String(record.entries.length)}`;
    this.page.act((notebook) => acts.moveEntry(notebook, record.name, id, by), { says, entry: id });
    this.#focusAfter(`${here(id)} [data-do=${by < 0 ? 'up' : 'down'}]`);
  }

  duplicate(id: string, called: string): void {
    const { record, work } = this.page;
    const copy = acts.freeEntryId(record, work);
    this.page.act((notebook) => acts.copyEntry(notebook, record.name, id, copy), {
      says: `${called} duplicated`,
      entry: copy,
    });
    this.active = copy;
    this.#focusAfter(`${here(copy)} [data-do=duplicate]`);
  }

  delete(id: string, called: string): void {
    const { record } = this.page;
    const place = record.entries.findIndex((entry) => entry.id === id);
    const neighbour = record.entries[place + 1] ?? record.entries[place - 1];
    this.page.act((notebook) => acts.dropEntry(notebook, record.name, id), { says: `${called} deleted`, entry: id });
    this.active = neighbour?.id ?? null;
    this.#set(null);
    this.#focusAfter(neighbour === undefined ? '.page-adding button' : `${here(neighbour.id)} [data-do=delete]`);
  }

  copyPage(): void {
    this.page.dispatchEvent(new CopyPageEvent(this.page.record));
  }

  deletePage(): void {
    const { name } = this.page.record;
    this.page.act((notebook) => acts.dropPage(notebook, name), { says: 'page deleted' });
  }

  #set(open: Open | null): void {
    this.#open = open;
    this.page.requestUpdate();
  }

  #note(target: EventTarget | null): void {
    const id = (target as Element).closest<HTMLElement>('[data-entry]')?.dataset.entry ?? null;
    if (id === null || id === this.active) return;
    this.active = id;
    this.page.requestUpdate();
  }

  #wanted<Part>(load: () => Promise<Part>): Promise<Part> {
    return wanted('This page cannot be edited: what does so could not be loaded.', load);
  }

  async #loadKinds(): Promise<void> {
    const kinds = await this.#wanted(() => Promise.all(kindNames.map((name) => kindNamed(name))));
    this.kinds = kinds.filter((kind) => kind !== undefined);
    for (const kind of this.kinds) this.editorOf(kind); // so that what is added can be written at once
    this.page.requestUpdate();
  }

  /** The focus goes there once it is drawn; nowhere where there is no such thing. */
  #focusAfter(selector: string): void {
    this.page.requestUpdate();
    void this.page.updateComplete.then(() => {
      const found = this.page.querySelector<HTMLElement>(selector);
      found?.focus({ preventScroll: true });
      found?.scrollIntoView({ block: 'nearest' });
    });
  }
}

function here(id: string): string {
  return `[data-entry='${CSS.escape(id)}']`;
}

/** Where writing begins: in the entry itself where it is written in place, else in its editor. */
function firstField(id: string): string {
  return `${here(id)} [data-writes], .entry-editor :is(textarea, select, input)`;
}
