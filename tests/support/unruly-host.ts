// A host for the built explorer as people have one: below a path of its own, with what real hosts do: another version,
// headers of their own, a wrong answer, a late one, none.

import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

/** How a file is answered other than as it is. */
export interface Treatment {
  readonly status?: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string | Uint8Array;
  /** Ends the connection without an answer. */
  readonly drop?: boolean;
  /** The answer waits for it. */
  readonly after?: Promise<unknown>;
}

/** Decides on an answer: from the file's name, as 'assets/x.js', and how often it was asked for before. */
export type Treat = (file: string, before: number) => Treatment | undefined;

export interface UnrulyHost {
  /** Address of the explorer, ending in '/'. */
  readonly url: string;
  /** From now on answers so; by default each file as it is. */
  readonly treat: (how: Treat) => void;
  /** Files asked for, in order; a browser looks for a new service worker whenever it likes, so that is not among them. */
  readonly asked: () => readonly string[];
  readonly close: () => Promise<void>;
}

/** What a host sends that answers everything with its own page. */
export const page: Treatment = {
  status: 200,
  headers: { 'content-type': 'text/html' },
  body: '<!doctype html><title>Welcome</title>',
};

const path = '/cellar/kettle/';

/** Serves what is served at `built`, under a path. */
export async function unrulyHost(built: string): Promise<UnrulyHost> {
  let how: Treat = () => undefined;
  const asked: string[] = [];
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const address = new URL(request.url ?? '', 'http://host');
    if (!address.pathname.startsWith(path)) {
      response.writeHead(404).end();
      return;
    }
    const file = address.pathname.slice(path.length);
    const treatment = how(file, asked.filter((name) => name === file).length) ?? {};
    if (file !== 'service-worker.js') asked.push(file);
    await treatment.after;
    if (treatment.drop === true) {
      request.socket.destroy();
      return;
    }
    const real = await fetch(built + file);
    const type = real.headers.get('content-type') ?? 'application/octet-stream';
    const body = treatment.body ?? new Uint8Array(await real.arrayBuffer());
    response.writeHead(treatment.status ?? real.status, {
      'content-type': type,
      'cache-control': 'no-cache',
      ...treatment.headers,
    });
    response.end(body);
  };
  const server = createServer((request, response) => void answer(request, response));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${String(port)}${path}`,
    treat: (next) => (how = next),
    asked: () => asked,
    close: () => {
      server.closeAllConnections();
      return new Promise((resolve) => server.close(() => resolve()));
    },
  };
}
