// The pages that exist, in the order of the contents list. A new page is one file and one line here.

import type { PageElement } from './notebook-page.js';
import { OneChargeThreeStills } from './one-charge-three-stills.js';
import { TheCeiling } from './the-ceiling.js';

export interface PageEntry {
  /** In the address. */
  readonly name: string;
  readonly title: string;
  readonly make: () => PageElement;
}

export const pages: readonly PageEntry[] = [
  { name: 'the-ceiling', title: 'The ceiling', make: () => new TheCeiling() },
  { name: 'one-charge-three-stills', title: 'One charge, three stills', make: () => new OneChargeThreeStills() },
];
