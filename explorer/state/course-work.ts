// What an apprentice has drawn and written on the pages of the course, kept in this browser: one record a
// lesson, plain and versioned. What cannot be read is left alone, never written over unread.

/** A place of a guess, SI. */
interface Place {
  readonly x: number;
  readonly y: number;
}

/** The work on one lesson. */
export interface LessonWork {
  readonly guess: { readonly points: readonly Place[]; readonly answered: boolean };
  /** What stands in the blanks of the questions, by the question's name. */
  readonly written: Readonly<Record<string, string>>;
  readonly ownWords: string;
}

export const noWork: LessonWork = { guess: { points: [], answered: false }, written: {}, ownWords: '' };

const version = 1;
const keyOf = (lesson: string): string => `kettle-and-plate.course.${lesson}`;
/** What stood there when the record could not be read goes here. */
const asideOf = (lesson: string): string => `${keyOf(lesson)}.unread`;

/** The work on a lesson; none where nothing was kept. */
export function keptWork(lesson: string, storage: Pick<Storage, 'getItem' | 'setItem'> = localStorage): LessonWork {
  try {
    const text = storage.getItem(keyOf(lesson));
    if (text === null) return noWork;
    const work = readWork(text);
    if (work === undefined) storage.setItem(asideOf(lesson), text);
    return work ?? noWork;
  } catch {
    return noWork; // storage may be forbidden; the lesson works without
  }
}

/** Keeps the work on a lesson in this browser. */
export function keepWork(
  lesson: string,
  work: LessonWork,
  storage: Pick<Storage, 'getItem' | 'setItem'> = localStorage,
): void {
  try {
    storage.setItem(keyOf(lesson), JSON.stringify({ version, ...work }));
  } catch {
    // storage may be full or forbidden; the work holds until the page is left
  }
}

/** A record as it was written; undefined where it is damaged or of another version. */
export function readWork(text: string): LessonWork | undefined {
  let record: unknown;
  try {
    record = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!isRecord(record) || record.version !== version) return undefined;
  const { guess, written, ownWords } = record;
  if (!isRecord(guess) || !Array.isArray(guess.points) || typeof guess.answered !== 'boolean') return undefined;
  if (!guess.points.every(isPlace) || !isRecord(written) || typeof ownWords !== 'string') return undefined;
  const texts = Object.entries(written).filter((entry): entry is [string, string] => typeof entry[1] === 'string');
  return { guess: { points: guess.points, answered: guess.answered }, written: Object.fromEntries(texts), ownWords };
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isPlace(value: unknown): value is Place {
  return isRecord(value) && Number.isFinite(value.x) && Number.isFinite(value.y);
}
