// Entries as sections of the page: those that stand close form one, with the notes of all of them in the margin.
// A caution stands once, beside the first entry that needs it.

import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { notLoaded } from '../components/frame/not-loaded.js';
import { cautions } from '../entries/cautions.js';
import type { CautionName } from '../entries/entry.js';
import type { PageEditing } from './editing/page-editing.js';
import type { Drawable } from './here.js';

export function sections(shown: readonly Drawable[], editing: PageEditing | undefined, own: boolean): unknown {
  const said = new Set<CautionName>();
  return repeat(
    grouped(shown),
    (group) => group[0]!.record.id,
    (group, place) => section(group, place === 0, said, editing, own),
  );
}

function grouped(shown: readonly Drawable[]): readonly (readonly Drawable[])[] {
  const groups: Drawable[][] = [];
  for (const one of shown) {
    const last = groups.at(-1);
    if (last !== undefined && one.record.close === true && last[0]!.kind?.whole !== true && one.kind?.whole !== true)
      last.push(one);
    else groups.push([one]);
  }
  return groups;
}

function section(
  group: readonly Drawable[],
  first: boolean,
  said: Set<CautionName>,
  editing: PageEditing | undefined,
  own: boolean,
): unknown {
  const [leader] = group;
  const { record, kind } = leader!;
  if (kind?.whole === true && !own) return view(leader!);
  const { heading } = record;
  const headingId = `heading-${record.id}`;
  const named = group.find((one) => one.kind !== undefined && one.record.kind !== 'setup') ?? leader!;
  const label = heading ?? (named.kind && named.here ? named.kind.label(named.here.data) : 'Entry');
  const notes = group.map((one) => notesOf(one, said));
  const anyNotes = notes.some((note) => note !== nothing);
  const figures = group.some((one) => one.record.kind === 'figure');
  const where = !figures ? '' : record.kind === 'setup' ? ' beside-first' : ' beside-words';
  const look = `entry prose${first ? ' first-entry' : heading === undefined ? ' after-words' : ''}`;
  return html`<section
    class=${look}
    aria-label=${heading === undefined ? capital(label) : nothing}
    aria-labelledby=${heading === undefined ? nothing : headingId}
  >
    ${heading === undefined ? nothing : html`<h2 id=${headingId}>${heading}</h2>`}
    ${repeat(
      group,
      (one) => one.record.id,
      (one) =>
        html`<div class="entry-body prose" data-entry=${one.record.id}>${view(one)} ${editing?.controls(one)}</div>`,
    )}
    ${anyNotes ? html`<aside class=${`notes${where}`}>${notes}</aside>` : nothing}
  </section>`;
}

function view({ record, kind, here, trouble }: Drawable): unknown {
  if (trouble !== undefined) return notLoaded(trouble.trouble, trouble.again);
  if (kind === undefined || here === undefined) {
    return html`<div class=${record.kind === 'figure' ? 'figure-to-come' : 'entry-to-come'}></div>`;
  }
  try {
    return kind.view(here);
  } catch (error) {
    console.error(error);
    return html`<p class="entry-trouble" role="status">
      This ${kind.title.toLowerCase()} could not be drawn with these numbers. What it is made of is kept.
    </p>`;
  }
}

function notesOf({ kind, here }: Drawable, said: Set<CautionName>): unknown {
  if (kind === undefined || here === undefined || kind.whole === true) return nothing;
  const fresh = (kind.cautions?.(here.data) ?? []).filter((name) => !said.has(name));
  fresh.forEach((name) => said.add(name));
  const own = kind.notes?.(here) ?? nothing;
  return fresh.length === 0 && own === nothing ? nothing : [own, ...fresh.map((name) => cautions[name])];
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
