// A text that is nothing but the address of a page, as it was copied: '#the-ceiling?v=1&plates=9', with or without
// what stands before the #. Looked at once from left to right, so that no text is slow.

/** What stands behind the # of an address; undefined for a text that is none. */
export function addressIn(text: string): string | undefined {
  const hash = text.indexOf('#');
  if (hash < 0 || text.length > longest) return undefined;
  const home = text.slice(0, hash);
  if (home !== '' && !home.startsWith('http://') && !home.startsWith('https://')) return undefined;
  const address = text.slice(hash + 1);
  const question = address.indexOf('?');
  const page = question < 0 ? address : address.slice(0, question);
  return /^[a-z][a-z0-9-]*$/u.test(page) && !/\s/u.test(text) ? address : undefined;
}

/** Letters; addresses that are made here have at most 2000. */
const longest = 10_000;
