// How much a notebook may hold: one table for reading a file, for every field one types in, and for every act.
// Far above what work on these pages comes to. What is within these limits can be written and opened again.

/** Letters of a text, and what it is called. */
export interface Letters {
  readonly most: number;
  /** 'a title' */
  readonly what: string;
}

export const letters = {
  notebookName: { most: 120, what: 'the name of a notebook' },
  part: { most: 80, what: 'the name of a still, a charge or a run sheet' },
  title: { most: 200, what: 'a title' },
  promise: { most: 400, what: 'what a page promises' },
  heading: { most: 200, what: 'a heading' },
  text: { most: 100_000, what: 'a text' },
  sentence: { most: 4000, what: 'a setup sentence' },
  formula: { most: 2000, what: 'a formula' },
  rangeEnd: { most: 400, what: 'an end of a range' },
  question: { most: 2000, what: 'a part of a question' },
  ownWords: { most: 20_000, what: 'an answer in your own words' },
  answer: { most: 200, what: 'an answer' },
  /** Whatever else an entry may hold. */
  any: { most: 100_000, what: 'a text' },
} as const satisfies Readonly<Record<string, Letters>>;

export const counts = {
  /** Pages of the reader's own in a notebook. */
  pages: 400,
  /** Stills of a notebook; as many charges, and as many run sheets. */
  parts: 100,
  /** Entries on a page. */
  entries: 500,
  /** Pencil lines on a page. */
  pencils: 3,
  /** Levels of lists in lists that an entry, or what was done with it, may go deep. */
  depth: 20,
  /** All of a notebook as its record is written, letters: see record-size.ts. */
  record: 2_000_000,
} as const;

/** 'a title has at most 200 letters, and this has 201'; undefined for a text that is short enough. */
export function tooLong(text: string, { most, what }: Letters): string | undefined {
  return text.length <= most ? undefined : beyondWords(most, what, text.length);
}

/** The words for a text of so many letters. */
export function beyondWords(most: number, what: string, found: number): string {
  return `${what} has at most ${String(most)} letters, and this has ${String(found)}`;
}

/** `name` with `tail` behind it, shortened so that both fit. */
export function withTail(name: string, tail: string, { most }: Letters): string {
  if (name.length + tail.length <= most) return name + tail;
  // A letter of two halves is not cut in two.
  const cut = name.slice(0, most - tail.length - 1).replace(/[\ud800-\udbff]$/u, '');
  return `${cut.trimEnd()}…${tail}`;
}
