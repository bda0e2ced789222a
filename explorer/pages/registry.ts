// The pages that exist, in the order of the contents list. A new page is one file and one line here.

import './the-ceiling.js';

export interface PageEntry {
  /** In the address. */
  readonly name: string;
  readonly title: string;
  readonly element: string;
}

export const pages: readonly PageEntry[] = [{ name: 'the-ceiling', title: 'The ceiling', element: 'kp-the-ceiling' }];
