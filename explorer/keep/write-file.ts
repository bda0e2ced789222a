// A notebook -> the text of its file: JSON that people can read too, numbers in SI with their units named.

import type { StillDescription } from '#lib/index.js';
import type { Json, Named, Notebook } from '../state/notebook-record.js';
import { fileName } from '../components/hand/hand-over.js';
import { extension, formatName, formatVersion } from './format.js';

/** The record that stands in a file. What did not change in a notebook is the same object in its record, too. */
export function notebookRecord(notebook: Notebook, written: string): Json {
  const { name, stills, charges, sheets, asked, pages, work } = notebook;
  return {
    format: formatName,
    version: formatVersion,
    written,
    name,
    stills: stillsOf(stills),
    charges: partsOf(charges),
    sheets: partsOf(sheets),
    asked: asked as unknown as Json,
    pages: pages as unknown as Json,
    work: work as unknown as Json,
  };
}

export function notebookFile(notebook: Notebook, now: Date): string {
  return `${JSON.stringify(notebookRecord(notebook, now.toISOString()), null, 2)}\n`;
}

const stillOf = once(({ name, what }: Named<StillDescription>): Json => ({ name, still: what as unknown as Json }));
const partOf = once(({ name, what }: Named<object>): Json => ({ name, ...what }));
const stillsOf = once((list: Notebook['stills']): Json => list.map(stillOf));
const partsOf = once((list: readonly Named<object>[]): Json => list.map(partOf));

/** A function that makes of the same object the same again. */
function once<Of extends object>(make: (of: Of) => Json): (of: Of) => Json {
  const made = new WeakMap<Of, Json>();
  return (of) => {
    const known = made.get(of);
    if (known !== undefined) return known;
    const fresh = make(of);
    made.set(of, fresh);
    return fresh;
  };
}

/** 'october-wash.kettle' */
export function notebookFileName(name: string): string {
  return fileName(name, extension);
}
