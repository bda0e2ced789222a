// How large a record is when it is written as JSON, two blanks to a level, without writing it: what has not changed is
// not measured again, so that a keystroke in a large notebook measures what it changed.

export interface Size {
  /** Letters, the first line not indented. */
  readonly letters: number;
  /** Line breaks in it. */
  readonly breaks: number;
  /** Lists and records inside each other. */
  readonly depth: number;
  /** Letters of its longest text. */
  readonly longest: number;
}

const known = new WeakMap<object, Size>();
const blanks = 2;

/** The size of plain data; its parts must never be changed in place. */
export function sizeOf(value: unknown): Size {
  if (typeof value === 'string') {
    return { letters: JSON.stringify(value).length, breaks: 0, depth: 0, longest: value.length };
  }
  if (typeof value !== 'object' || value === null) {
    return { letters: JSON.stringify(value).length, breaks: 0, depth: 0, longest: 0 };
  }
  const before = known.get(value);
  if (before !== undefined) return before;
  const size = measured(value);
  known.set(value, size);
  return size;
}

function measured(value: object): Size {
  const isList = Array.isArray(value);
  const parts = Object.entries(value).filter(([, part]) => part !== undefined);
  if (parts.length === 0) return { letters: 2, breaks: 0, depth: 1, longest: 0 };
  // A bracket on either side, a line break before each part and at the end, a comma between two.
  let letters = 2 + 1 + (parts.length - 1);
  let breaks = 1;
  let depth = 0;
  let longest = 0;
  for (const [name, part] of parts) {
    const size = sizeOf(part);
    const label = isList ? 0 : JSON.stringify(name).length + 2;
    letters += 1 + blanks * (size.breaks + 1) + label + size.letters;
    breaks += 1 + size.breaks;
    depth = Math.max(depth, size.depth);
    longest = Math.max(longest, size.longest, isList ? 0 : name.length);
  }
  return { letters, breaks, depth: depth + 1, longest };
}
