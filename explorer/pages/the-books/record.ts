// The page 'The books': every litre of pure alcohol of a run, and the gap.

import type { PageRecord } from '../../state/notebook-record.js';

export const theBooks: PageRecord = {
  name: 'the-books',
  title: 'The books',
  promise: 'Where every litre of pure alcohol went, and what is missing.',
  entries: [{ id: 'books', kind: 'working', data: { show: 'books' } }],
};
