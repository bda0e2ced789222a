// The marks of prose, found in one walk from left to right: [[word]] with what may not part from it, {{ink}},
// ((print)), *stress*. No text is slow: every letter is looked at a few times, wherever brackets stand open.

export type MarkKind = 'term' | 'ink' | 'print' | 'stress';

export interface Mark {
  readonly kind: MarkKind;
  /** From its first bracket, up to and without what follows it. */
  readonly from: number;
  readonly to: number;
  readonly word: string;
  /** Full stops, commas and the like right behind a term. */
  readonly tail: string;
}

/** The part of a string that is used. */
export interface Letters {
  readonly length: number;
  readonly charAt: (place: number) => string;
  readonly slice: (from: number, to: number) => string;
}

interface Shape {
  readonly kind: MarkKind;
  readonly opens: string;
  readonly closes: string;
  /** How often either stands. */
  readonly times: 1 | 2;
}

const shapes: readonly Shape[] = [
  { kind: 'term', opens: '[', closes: ']', times: 2 },
  { kind: 'ink', opens: '{', closes: '}', times: 2 },
  { kind: 'print', opens: '(', closes: ')', times: 2 },
  { kind: 'stress', opens: '*', closes: '*', times: 1 },
];
const tails = '.,:;)’';

/** The marks of a text in order; what is not closed, or holds nothing, is no mark. */
export function marksIn(text: Letters): readonly Mark[] {
  const marks: Mark[] = [];
  const closers = new Map(shapes.map((shape) => [shape, new Next(text, shape.closes)]));
  for (let from = 0; from < text.length;) {
    const letter = text.charAt(from);
    const shape = shapes.find(({ opens }) => opens === letter);
    const mark = shape && markAt(text, from, shape, closers.get(shape)!);
    if (mark !== undefined) marks.push(mark);
    from = mark?.to ?? from + 1;
  }
  return marks;
}

/** A text with each mark put otherwise. */
export function withMarks(text: string, put: (mark: Mark) => string): string {
  let from = 0;
  let out = '';
  for (const mark of marksIn(text)) {
    out += text.slice(from, mark.from) + put(mark);
    from = mark.to;
  }
  return out + text.slice(from);
}

function markAt(text: Letters, from: number, { kind, opens, closes, times }: Shape, next: Next): Mark | undefined {
  const begins = from + times;
  if (times === 2 && text.charAt(from + 1) !== opens) return undefined;
  const ends = next.from(begins);
  if (ends <= begins || ends >= text.length) return undefined;
  if (times === 2 && text.charAt(ends + 1) !== closes) return undefined;
  let to = ends + times;
  const behind = to;
  while (kind === 'term' && to < text.length && tails.includes(text.charAt(to))) to += 1;
  return { kind, from, to, word: text.slice(begins, ends), tail: text.slice(behind, to) };
}

/** Where a letter stands next; asked for places that only go forward, it looks at each letter once. */
class Next {
  readonly #text: Letters;
  readonly #letter: string;
  #place = 0;

  constructor(text: Letters, letter: string) {
    this.#text = text;
    this.#letter = letter;
  }

  /** The first place at or behind `from`; the end of the text where there is none. */
  from(from: number): number {
    this.#place = Math.max(this.#place, from);
    while (this.#place < this.#text.length && this.#text.charAt(this.#place) !== this.#letter) this.#place += 1;
    return this.#place;
  }
}
