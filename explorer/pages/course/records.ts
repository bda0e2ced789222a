// Lessons as pages: the same parts in the same order, as entries.

import type { EntryRecord, PageRecord } from '../../state/notebook-record.js';
import type { Lesson } from './lesson.js';

export function lessonPage({ name, title, promise, guess, questions, ownWords }: Lesson): PageRecord {
  const part = (which: string): EntryRecord => ({ id: which, kind: 'lesson', data: { lesson: name, part: which } });
  const asked = questions.map((question, place): EntryRecord => ({
    id: question,
    kind: 'question',
    data: { question },
    ...(place === 0 ? { heading: 'Check yourself' } : { close: true }),
  }));
  return {
    name,
    title,
    promise,
    entries: [
      part('opening'),
      { id: 'guess', kind: 'guess', data: { guess, cautioned: true } },
      part('tries'),
      part('why'),
      ...asked,
      { id: 'own-words', kind: 'own-words', data: { ...ownWords }, heading: 'Say it in your own words' },
      part('listen'),
    ],
  };
}
