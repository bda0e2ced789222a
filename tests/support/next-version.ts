// A version of the built explorer after the one that was built, as a host would have it: the same but for the title of
// its page, one part whose content and so whose name changed, and a service worker that lists it so.

import { createHash } from 'node:crypto';

/** A file as the service worker lists it. */
type Listed = [name: string, type: string, integrity: string];

export interface NextVersion {
  /** Files that are not as before, by name; what is not here is as it was. */
  readonly changed: ReadonlyMap<string, string>;
  /** Files that are no longer there. */
  readonly gone: readonly string[];
}

const list = /\[\["assets\/.*?"\]\]/u;

/** The files of the explorer as its service worker has them. */
export async function listedFiles(built: string): Promise<readonly Listed[]> {
  const worker = await (await fetch(`${built}service-worker.js`)).text();
  return JSON.parse(list.exec(worker)![0]) as Listed[];
}

/** The version after the one served at `built`: `part` is the start of the name of the part that changed. */
export async function nextVersion(built: string, part: string): Promise<NextVersion> {
  const files = await listedFiles(built);
  const old = files.find(([name]) => name.startsWith(`assets/${part}-`))![0];
  const oldName = old.slice('assets/'.length);
  const newName = oldName.replace(/[^-]+\.js$/u, 'nextnext.js');
  const text = async (name: string): Promise<string> => (await fetch(built + name)).text();
  const changed = new Map<string, string>();
  const next: Listed[] = [];
  for (const [name, type, integrity] of files) {
    if (!/\.(?:js|css|html)$/u.test(name)) {
      next.push([name, type, integrity]);
      continue;
    }
    const before = await text(name);
    let after = before.replaceAll(oldName, newName);
    if (name === 'index.html') after = after.replace('<title>', '<title data-version="next">');
    if (name === old) after += '\n';
    const nextName = name === old ? `assets/${newName}` : name;
    if (after !== before) changed.set(nextName, after);
    const hash = createHash('sha256').update(after).digest('base64');
    next.push([nextName, type, after === before ? integrity : `sha256-${hash}`]);
  }
  const worker = await text('service-worker.js');
  const version = /(["'`])[0-9a-f]{12}\1/u.exec(worker)![0];
  changed.set(
    'service-worker.js',
    worker.replace(list, () => JSON.stringify(next)).replaceAll(version, '"nextversion0"'),
  );
  return { changed, gone: [old] };
}
