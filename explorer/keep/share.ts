// An address to hand on: the page with its numbers, and a page of the reader's own along with them where it is
// short enough. What does not fit is said; the file holds everything.

import { writeAddress } from '../state/address.js';
import { scenarioOn } from '../state/page-scenario.js';
import type { Notebook } from '../state/notebook-record.js';
import { longestAddress, packPage, pageKey } from './page-in-address.js';

export interface Shared {
  readonly address: string;
  /** What was copied, and what is not in it. */
  readonly says: string;
}

export async function shareAddress(notebook: Notebook, page: string, home = location.href): Promise<Shared> {
  const base = home.split('#', 1)[0]!;
  const hash = writeAddress(page, scenarioOn(notebook, page));
  const own = notebook.pages.find(({ name }) => name === page);
  const inFile = 'save the notebook as a file for those.';
  if (own === undefined) {
    const more = (notebook.work[page]?.pencils.length ?? 0) > 0 ? ` Pencil lines are not in it: ${inFile}` : '';
    return { address: base + hash, says: `The address of this page with its numbers is copied.${more}` };
  }
  const address = `${base}${hash}${hash.includes('?') ? '&' : '?v=2&'}${pageKey}=${await packPage(own)}`;
  return address.length <= longestAddress
    ? { address, says: 'The address is copied; your page is in it.' }
    : {
        address: base + writeAddress('notebooks', scenarioOn(notebook, 'notebooks')),
        says: 'Your page is too long for an address. Save the notebook as a file and send that; only its numbers are copied.',
      };
}
