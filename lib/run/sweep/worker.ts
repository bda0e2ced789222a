// The ready-made worker file of a sweep, for a browser's module worker or one of Node's worker_threads:
//
//   new Worker(new URL('…/sweep-worker', import.meta.url), { type: 'module' })
//
// It serves the library's own readers, and exports of modules that are named by their address.

import { type SweepPort, serveSweep } from './serve.js';

interface NodePort extends SweepPort {
  on(kind: 'message', call: (data: unknown) => void): void;
}
interface Place extends SweepPort {
  readonly process?: { getBuiltinModule?(name: string): unknown };
  addEventListener?(kind: 'message', call: (event: { readonly data: unknown }) => void): void;
}

const place = globalThis as unknown as Place;
const threads = place.process?.getBuiltinModule?.('node:worker_threads') as
  { readonly parentPort: NodePort | null } | undefined;

if (threads?.parentPort) {
  const { parentPort } = threads;
  parentPort.on('message', serveSweep(parentPort));
} else if (place.addEventListener !== undefined) {
  const serve = serveSweep(place);
  place.addEventListener('message', ({ data }) => serve(data));
}
