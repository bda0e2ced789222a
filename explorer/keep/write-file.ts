// A notebook -> the text of its file: JSON that people can read too, numbers in SI with their units named.

import type { Notebook } from '../state/notebook-record.js';
import { fileName } from '../components/hand/hand-over.js';
import { extension, formatName, formatVersion } from './format.js';
import { toFileNumbers } from './numbers.js';

export function notebookFile({ name, scenario, pages, work }: Notebook, now: Date): string {
  const file = {
    format: formatName,
    version: formatVersion,
    written: now.toISOString(),
    name,
    numbers: toFileNumbers(scenario),
    pages,
    work: Object.fromEntries(
      Object.entries(work).map(([page, done]) => [page, { ...done, pencils: done.pencils.map(toFileNumbers) }]),
    ),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/** 'october-wash.kettle' */
export function notebookFileName(name: string): string {
  return fileName(name, extension);
}
