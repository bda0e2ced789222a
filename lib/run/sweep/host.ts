// What a sweep asks of the place it runs in, with nothing assumed of it: threads of a browser or of Node, and how many processors there are.

/** A worker of a browser, or of Node's worker_threads. */
export interface SweepWorker {
  postMessage(message: unknown): void;
  terminate(): unknown;
}

/** A worker made ready: messages and failures come to one place, whoever made it. */
export interface Thread {
  post(message: unknown): void;
  end(): void;
}

interface BrowserWorker extends SweepWorker {
  addEventListener(kind: string, call: (event: { data?: unknown; message?: string }) => void): void;
}
interface NodeWorker extends SweepWorker {
  on(kind: string, call: (value: unknown) => void): void;
}

/** Listens to a worker. `lost` is called when it failed and answers no more. */
export function threadOf(worker: SweepWorker, heard: (data: unknown) => void, lost: (why: string) => void): Thread {
  if ('addEventListener' in worker) {
    const own = worker as BrowserWorker;
    own.addEventListener('message', ({ data }) => heard(data));
    own.addEventListener('error', ({ message }) => lost(message ?? 'its file could not be loaded'));
    own.addEventListener('messageerror', () => lost('its answer could not be read'));
  } else {
    const own = worker as NodeWorker;
    own.on('message', heard);
    own.on('error', (error) => lost(error instanceof Error ? error.message : String(error)));
    own.on('exit', () => lost('it came to its end'));
  }
  return { post: (message) => worker.postMessage(message), end: () => void worker.terminate() };
}

interface Host {
  readonly navigator?: { readonly hardwareConcurrency?: number };
  readonly process?: { getBuiltinModule?(name: string): unknown };
}

/** Processors of this machine; 2 where it does not say. */
export function processors(): number {
  const host = globalThis as unknown as Host;
  const os = host.process?.getBuiltinModule?.('node:os') as { availableParallelism(): number } | undefined;
  return os?.availableParallelism() ?? host.navigator?.hardwareConcurrency ?? 2;
}
