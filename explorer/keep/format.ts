// What a notebook's file is called and how large it may be. The layout is in schema.ts and, for other programs,
// in docs/notebook-file.schema.json.

import { letters } from '../state/limits.js';

export const formatName = 'kettle-and-plate notebook';
/** Version of the layout that is written; every earlier one is read. */
export const formatVersion = 3;
export const extension = 'kettle';
export const mediaType = 'application/vnd.kettle-and-plate.notebook+json';

/**
 * What a file may be. A notebook within the limits of state/limits.ts never comes to as many letters, whatever is in it:
 * its record has at most two million, and a file adds its head and the units of its numbers.
 */
export const limits = {
  letters: 5_000_000,
  /** A letter takes at most four. */
  bytes: 20_000_000,
  depth: 32,
  name: letters.notebookName.most,
} as const;
