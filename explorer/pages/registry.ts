// The pages that exist, in the order of the contents list. A new page is one file and one line here.

import './one-charge-three-stills.js';
import './the-ceiling.js';

export interface PageEntry {
  /** In the address. */
  readonly name: string;
  readonly title: string;
  readonly element: string;
}

export const pages: readonly PageEntry[] = [
  { name: 'the-ceiling', title: 'The ceiling', element: 'kp-the-ceiling' },
  { name: 'one-charge-three-stills', title: 'One charge, three stills', element: 'kp-one-charge-three-stills' },
];
