// The page's side of working offline: starts the service worker once the page stands, and says when a new
// version lies ready. Nothing reloads by itself; the reader chooses.

/** A version that lies ready. */
export interface NewVersion {
  /** Takes it and loads the page anew. */
  readonly take: () => void;
}

/** Rest between two looks for a new version while the page stays open, ms. */
const lookAgain_ms = 3_600_000;

/** Starts the service worker at an address; resolves when the explorer can be opened offline. */
export async function watchVersions(address: URL, onNewVersion: (version: NewVersion) => void): Promise<void> {
  const { serviceWorker } = navigator;
  // Undefined where the page was not served over HTTPS or from this machine.
  if ((serviceWorker as ServiceWorkerContainer | undefined) === undefined) return;
  const registration = await serviceWorker.register(address);
  const tell = (waiting: ServiceWorker): void => onNewVersion({ take: () => take(waiting) });
  if (registration.waiting !== null && serviceWorker.controller !== null) tell(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      // Without a controller this is the first version, not a new one.
      if (coming.state === 'installed' && serviceWorker.controller !== null) tell(coming);
    });
  });
  lookNowAndThen(registration);
  await serviceWorker.ready;
}

function take(waiting: ServiceWorker): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting.postMessage('take over');
}

function lookNowAndThen(registration: ServiceWorkerRegistration): void {
  let looked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || Date.now() - looked < lookAgain_ms) return;
    looked = Date.now();
    registration.update().catch(() => undefined); // no network: the version in use goes on
  });
}
