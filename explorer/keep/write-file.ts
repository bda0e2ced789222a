// A notebook -> the text of its file: JSON that people can read too, numbers in SI with their units named.

import type { Json, Notebook, PageWork } from '../state/notebook-record.js';
import type { Scenario } from '../state/scenario.js';
import { fileName } from '../components/hand/hand-over.js';
import { extension, formatName, formatVersion } from './format.js';
import { toFileNumbers } from './numbers.js';

/** The record that stands in a file. What did not change in a notebook is the same object in its record, too. */
export function notebookRecord({ name, scenario, pages, work }: Notebook, written: string): Json {
  return {
    format: formatName,
    version: formatVersion,
    written,
    name,
    numbers: numbersOf(scenario),
    pages: pages as unknown as Json,
    work: Object.fromEntries(Object.entries(work).map(([page, done]) => [page, workOf(done)])),
  };
}

export function notebookFile(notebook: Notebook, now: Date): string {
  return `${JSON.stringify(notebookRecord(notebook, now.toISOString()), null, 2)}\n`;
}

const numbersOf = once((scenario: Scenario): Json => toFileNumbers(scenario));
const workOf = once((work: PageWork): Json => ({ ...work, pencils: work.pencils.map(numbersOf) }));

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
