// Starts a worker from a file of the explorer.

import { trustedAddress } from './trusted-address.js';

/** Starts the worker whose file stands at an address the build gave. */
export function startWorker(address: string): Worker {
  return new Worker(trustedAddress(address), { type: 'module' });
}
