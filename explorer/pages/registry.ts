// The pages that exist, in the order of the contents list. A new page is one file and one line here; it is
// loaded when it is first opened.

import type { PageElement } from './notebook-page.js';

export interface PageEntry {
  /** In the address. */
  readonly name: string;
  readonly title: string;
  readonly load: () => Promise<PageElement>;
}

export const pages: readonly PageEntry[] = [
  {
    name: 'the-ceiling',
    title: 'The ceiling',
    load: async () => new (await import('./the-ceiling.js')).TheCeiling(),
  },
  {
    name: 'one-charge-three-stills',
    title: 'One charge, three stills',
    load: async () => new (await import('./one-charge-three-stills.js')).OneChargeThreeStills(),
  },
];
