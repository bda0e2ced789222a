// How every part of the built explorer that is loaded when it is first wanted comes: the build puts this in the place of
// its own loader around each import(). What failed is fetched anew, past whatever the browser remembers of it, and taken
// once more; only then is it a failure, and asking again begins from the start.

/** Takes a part with the style sheets and files it needs beside it. `files` are its own file and theirs, relative to
 * `from`; rejects where one of them cannot be had. */
export async function loadPart<Part>(
  take: () => Promise<Part>,
  files: readonly string[] = [],
  from: string = document.baseURI,
): Promise<Part> {
  const addresses = files.map((file) => new URL(file, from).href);
  try {
    return await once(take, addresses);
  } catch {
    await Promise.all(addresses.map(fetchAnew));
    return await once(take, addresses);
  }
}

async function once<Part>(take: () => Promise<Part>, addresses: readonly string[]): Promise<Part> {
  for (const address of addresses) if (!isStyle(address)) fetchBeside(address);
  await Promise.all(addresses.filter(isStyle).map(styled));
  return take();
}

/** Style sheets by address, on their way or there. */
const styles = new Map<string, Promise<void>>();

function styled(address: string): Promise<void> {
  const known = styles.get(address);
  if (known !== undefined) return known;
  if (linked(address)) return Promise.resolve();
  const link = linkTo(address, 'stylesheet');
  const there = new Promise<void>((resolve, reject) => {
    const fail = (): void => {
      styles.delete(address);
      link.remove();
      reject(new Error(`The style sheet ${address} could not be loaded`));
    };
    // Some browsers count another kind of file as loaded, without a rule.
    link.addEventListener('load', () => (link.sheet?.cssRules.length === 0 ? fail() : resolve()));
    link.addEventListener('error', fail);
  });
  styles.set(address, there);
  document.head.append(link);
  return there;
}

/** Has the browser fetch a script before whoever imports it has been read. */
function fetchBeside(address: string): void {
  if (linked(address)) return;
  const link = linkTo(address, 'modulepreload');
  link.addEventListener('error', () => link.remove());
  document.head.append(link);
}

function linkTo(href: string, rel: string): HTMLLinkElement {
  return Object.assign(document.createElement('link'), { rel, href, crossOrigin: '' });
}

function linked(address: string): boolean {
  return [...document.head.querySelectorAll('link')].some(({ href }) => href === address);
}

/** Fetches a file past the browser's own store, where a wrong answer may lie, and puts the right one there. */
export async function fetchAnew(address: string): Promise<void> {
  const response = await fetch(address, { cache: 'reload' });
  const type = response.headers.get('content-type') ?? '';
  if (!response.ok || !type.includes(isStyle(address) ? 'css' : 'javascript'))
    throw new Error(`${address} is not there: ${String(response.status)}, ${type}`);
  await response.arrayBuffer();
}

function isStyle(address: string): boolean {
  return address.endsWith('.css');
}
