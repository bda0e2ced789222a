// The page's side of working offline: starts the service worker once the page stands, and says when a new
// version lies ready. Nothing reloads by itself; the reader chooses.

import { trustedAddress } from './trusted-address.js';

/** A version that lies ready. */
export interface NewVersion {
  /** Takes it and loads the page anew; rejects where it cannot be had. */
  readonly take: () => Promise<void>;
}

/** What the page is told. */
export interface Told {
  readonly newVersion: (version: NewVersion) => void;
  /** Whether the explorer opens without a network from now on; false where its files could not be put by. */
  readonly opensOffline: (does: boolean) => void;
}

/** Rest between two looks for a new version while the page stays open, ms. */
const lookAgain_ms = 3_600_000;

/** Starts the service worker at an address. */
export async function watchVersions(address: URL, told: Told): Promise<void> {
  const { serviceWorker } = navigator;
  // Undefined where the page was not served over HTTPS or from this machine.
  if ((serviceWorker as ServiceWorkerContainer | undefined) === undefined) {
    told.opensOffline(false);
    return;
  }
  const registration = await serviceWorker.register(trustedAddress(address.href), { updateViaCache: 'none' });
  const follow = (coming: ServiceWorker | null): void =>
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed') void look(registration, told);
      // What could not be put by is tried again by the browser when the explorer is opened again.
      if (coming.state === 'redundant' && registration.active === null) told.opensOffline(false);
    });
  follow(registration.installing);
  registration.addEventListener('updatefound', () => follow(registration.installing));
  lookNowAndThen(registration);
  await look(registration, told);
}

async function look({ waiting, active }: ServiceWorkerRegistration, told: Told): Promise<void> {
  const newest = waiting ?? active;
  if (newest === null) return;
  const which = (await ask(newest, 'which')) as { serving: string; newest: string };
  told.opensOffline(true);
  if (which.serving !== which.newest) told.newVersion({ take: () => take(newest) });
}

async function take(newest: ServiceWorker): Promise<void> {
  const said = await ask(newest, 'take over');
  if (said !== 'taken') throw new Error(`The new version could not be taken: ${JSON.stringify(said)}`);
  location.reload();
}

function ask(worker: ServiceWorker, what: 'which' | 'take over'): Promise<unknown> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = ({ data }) => resolve(data);
    worker.postMessage(what, [port2]);
  });
}

function lookNowAndThen(registration: ServiceWorkerRegistration): void {
  let looked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || Date.now() - looked < lookAgain_ms) return;
    looked = Date.now();
    registration.update().catch(() => undefined); // no network: the version in use goes on
  });
}
