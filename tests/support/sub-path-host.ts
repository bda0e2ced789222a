// A host for the built explorer as people have one: below a path of its own, with a next version when it is told to.

import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface SubPathHost {
  /** Address of the explorer, ending in '/'. */
  readonly url: string;
  /** From now on serves another version: the same files, but for the service worker, which is how a browser tells. */
  readonly renew: () => void;
  /** How many files were asked for. */
  readonly asked: () => number;
  readonly close: () => Promise<void>;
}

/** Serves what is served at `built`, under a path. */
export async function hostUnderPath(built: string): Promise<SubPathHost> {
  const path = '/cellar/kettle/';
  let version = '';
  let asked = 0;
  const server = createServer((request, response) => {
    const address = request.url ?? '';
    const isWorker = address.includes('service-worker.js');
    // A browser looks for a new service worker whenever it likes.
    if (!isWorker) asked++;
    void (async () => {
      if (!address.startsWith(path)) {
        response.writeHead(404).end();
        return;
      }
      const file = await fetch(built + address.slice(path.length));
      const body = new Uint8Array(await file.arrayBuffer());
      const type = file.headers.get('content-type') ?? 'application/octet-stream';
      response.writeHead(file.status, { 'content-type': type, 'cache-control': 'no-cache' });
      response.end(
        isWorker
          ? new TextDecoder().decode(body).replaceAll(/`kettle-and-plate/gu, `\`kettle-and-plate${version}`)
          : body,
      );
    })();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${String(port)}${path}`,
    renew: () => (version = ' next'),
    asked: () => asked,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
