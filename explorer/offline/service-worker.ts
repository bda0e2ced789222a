// Runs beside the page and answers for its files, so that the explorer opens without a network. All files of a version
// are put by together, each checked against what was built, and a version is served only once the reader took it; the
// one before is kept for windows that still run it.

/** What this file uses of a service worker's scope; the page's own types do not know it. */
interface Scope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: Waiting) => void): void;
  addEventListener(type: 'message', listener: (event: Waiting & MessageEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: Fetching) => void): void;
}
interface Waiting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Waiting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

/** A file as it was built: its name below the scope, its type, and the hash of its bytes as `integrity` has it. */
type BuiltFile = readonly [name: string, type: string, integrity: string];

/** Which versions are served: the one the reader took, and the one before for windows that still run it. */
interface InUse {
  readonly serving: string;
  readonly before: string | null;
}

const scope = self as unknown as Scope;
const root = scope.registration.scope;
// These three are written in by the build.
const version = '__VERSION__';
const files = '__FILES__' as unknown as readonly BuiltFile[];
const policy = '__POLICY__';

/** Another copy of the explorer may stand at another path of the same host. */
const prefix = `kettle-and-plate ${root} `;
const storeOf = (one: string): string => prefix + one;
const inUseStore = storeOf('in use');
const start = 'index.html';

scope.addEventListener('install', (event) => {
  event.waitUntil(install());
});
scope.addEventListener('activate', (event) => {
  event.waitUntil(tidy().then(() => scope.clients.claim()));
});
scope.addEventListener('message', (event) => {
  event.waitUntil(reply(event.data).then((said) => event.ports[0]?.postMessage(said)));
});
scope.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  if (method === 'GET' && url.startsWith(root)) event.respondWith(answer(event.request));
});

async function install(): Promise<void> {
  await tidy();
  const store = await caches.open(storeOf(version));
  const before = await inUse();
  try {
    await Promise.all(files.map((file) => putBy(store, file)));
  } catch (error) {
    // The host has not all of this version, or not as it was built: what is served stays, and the browser tries again.
    if (before?.serving !== version) await caches.delete(storeOf(version));
    throw error;
  }
  if (before === undefined) await use({ serving: version, before: null });
}

/** What the page asks: 'which' versions there are, or to 'take over' with this one. */
async function reply(asked: unknown): Promise<unknown> {
  const now = (await inUse()) ?? { serving: version, before: null };
  if (asked === 'which') return { serving: now.serving, newest: version };
  if (asked !== 'take over') return undefined;
  try {
    const store = await caches.open(storeOf(version));
    const missing = await Promise.all(
      files.map(async (file) => ((await store.match(addressOf(file[0]))) ? [] : [file])),
    );
    await Promise.all(missing.flat().map((file) => putBy(store, file)));
  } catch (error) {
    return { failed: String(error) };
  }
  if (now.serving !== version) await use({ serving: version, before: now.serving });
  await scope.skipWaiting();
  return 'taken';
}

async function answer(request: Request): Promise<Response> {
  const name = request.url.slice(root.length).split(/[?#]/u, 1)[0]!;
  const address = addressOf(name === '' ? start : name);
  const now = (await inUse()) ?? { serving: version, before: null };
  const served = (await caches.has(storeOf(now.serving))) ? now.serving : version;
  const put =
    (await matchIn(served, address)) ?? (now.before === null ? undefined : await matchIn(now.before, address));
  if (put !== undefined) return put;
  // A file that the browser threw away; others are none of the explorer's.
  const file = files.find(([built]) => addressOf(built) === address);
  if (file === undefined || served !== version) return fetch(request);
  const store = await caches.open(storeOf(version));
  // The page itself may be a later one, which brings its own files; of those no other will do.
  return putBy(store, file).catch(() => (file[0] === start ? fetch(request) : Response.error()));
}

function matchIn(one: string, address: string): Promise<Response | undefined> {
  // By address alone: what the host said its answer varies with was for its own answer.
  return caches.match(address, { cacheName: storeOf(one), ignoreVary: true });
}

/** Fetches a file, checks it and puts it by; rejects where the host has another one. */
async function putBy(store: Cache, [name, type, integrity]: BuiltFile): Promise<Response> {
  const address = addressOf(name);
  const fetched = await fetch(address, { cache: 'no-cache', integrity }).catch(() =>
    // What lies in the browser's own store may be wrong.
    fetch(address, { cache: 'reload', integrity }),
  );
  if (!fetched.ok) throw new Error(`${name}: ${String(fetched.status)}`);
  const file = new Response(await fetched.arrayBuffer(), { headers: headersOf(fetched, type) });
  await store.put(address, file.clone());
  return file;
}

/** The host's headers, but for those of its own answer; the type is that of the file, whatever the host calls it. */
function headersOf({ headers }: Response, type: string): Headers {
  const kept = new Headers(headers);
  for (const name of ['vary', 'content-encoding', 'content-length', 'content-range', 'set-cookie']) kept.delete(name);
  kept.set('content-type', type);
  kept.set('x-content-type-options', 'nosniff');
  // In workers a policy holds only as a header.
  if (!kept.has('content-security-policy')) kept.set('content-security-policy', policy);
  return kept;
}

/** Deletes the files of versions that nobody runs. */
async function tidy(): Promise<void> {
  const now = await inUse();
  const kept = [version, now?.serving, now?.before].map((one) => storeOf(one ?? version));
  const old = (await caches.keys()).filter(
    (key) => key.startsWith(prefix) && key !== inUseStore && !kept.includes(key),
  );
  await Promise.all(old.map((key) => caches.delete(key)));
}

async function inUse(): Promise<InUse | undefined> {
  const noted = await caches.match(addressOf('in-use'), { cacheName: inUseStore });
  return noted === undefined ? undefined : ((await noted.json()) as InUse);
}

async function use(next: InUse): Promise<void> {
  const store = await caches.open(inUseStore);
  await store.put(addressOf('in-use'), new Response(JSON.stringify(next)));
}

function addressOf(name: string): string {
  return new URL(name, root).href;
}
