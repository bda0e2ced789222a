// Runs beside the page and answers for its files, so that the explorer opens without a network: all files of
// one version are put by together, and the page is served from them until the reader takes the next version.

/** What this file uses of a service worker's scope; the page's own types do not know it. */
interface Scope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: Waiting) => void): void;
  addEventListener(type: 'message', listener: (event: MessageEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: Fetching) => void): void;
}
interface Waiting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Waiting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

const scope = self as unknown as Scope;
/** Another copy of the explorer may stand at another path of the same host. */
const prefix = `kettle-and-plate ${scope.registration.scope} `;
// Both are written in by the build.
const version = `${prefix}__VERSION__`;
const files = '__FILES__' as unknown as readonly string[];

scope.addEventListener('install', (event) => {
  const requests = files.map((file) => new Request(new URL(file, scope.registration.scope), { cache: 'no-cache' }));
  event.waitUntil(caches.open(version).then((cache) => cache.addAll(requests)));
});

scope.addEventListener('activate', (event) => {
  event.waitUntil(letGo().then(() => scope.clients.claim()));
});

scope.addEventListener('message', ({ data }) => {
  if (data === 'take over') void scope.skipWaiting();
});

scope.addEventListener('fetch', (event) => {
  const { method, url, mode } = event.request;
  if (method !== 'GET' || !url.startsWith(scope.registration.scope)) return;
  event.respondWith(answer(event.request, mode === 'navigate' && new URL(url).pathname.endsWith('/')));
});

async function answer(request: Request, isPage: boolean): Promise<Response> {
  const cache = await caches.open(version);
  const wanted = isPage ? new URL('index.html', scope.registration.scope).href : request;
  return (await cache.match(wanted)) ?? (await caches.match(request)) ?? fetch(request);
}

/** Deletes old versions, but for the last: another window may still run it and fetch parts it has not yet loaded. */
async function letGo(): Promise<void> {
  const old = (await caches.keys()).filter((key) => key.startsWith(prefix) && key !== version);
  await Promise.all(old.slice(0, -1).map((key) => caches.delete(key)));
}
