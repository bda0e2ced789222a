// What a notebook's file is called and how large it may be. The layout is in schema.ts and, for other programs,
// in docs/notebook-file.schema.json.

export const formatName = 'kettle-and-plate notebook';
/** Version of the layout that is written; every earlier one is read. */
export const formatVersion = 2;
export const extension = 'kettle';
export const mediaType = 'application/vnd.kettle-and-plate.notebook+json';

/** Far above what work on these pages comes to; what is larger is no notebook. */
export const limits = {
  characters: 2_000_000,
  pages: 100,
  entries: 200,
  pencils: 3,
  name: 120,
  title: 200,
  promise: 400,
  depth: 32,
} as const;
