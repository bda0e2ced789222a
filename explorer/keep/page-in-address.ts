// A page of the reader's own in an address, where it is short enough: its record compressed and written in
// letters that addresses allow. What is longer is handed on as a file.

import { withoutEnd } from '../text/ends.js';
import { newNotebook, type PageRecord } from '../state/notebook-record.js';
import { formatName } from './format.js';
import { readNotebookFile } from './read-file.js';
import { notebookRecord } from './write-file.js';

export { pageInAddress as pageKey } from '../state/address.js';
/** Longest address that is made, letters: what messages and chats let through whole. */
export const longestAddress = 2000;
/** Most that a page in an address may come to when it is unpacked, bytes. */
const mostBytes = 200_000;

/** The page in the letters of an address. */
export async function packPage(page: PageRecord): Promise<string> {
  const text = new Blob([JSON.stringify(page)]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  let binary = '';
  for (const byte of new Uint8Array(await new Response(text).arrayBuffer())) binary += String.fromCharCode(byte);
  return withoutEnd(btoa(binary).replaceAll('+', '-').replaceAll('/', '_'), '=');
}

/** The page that `packPage` wrote; undefined where it cannot be read. Checked like a page in a file, `old` ones like one of version 2. */
export async function unpackPage(
  packed: string,
  readyPages: readonly string[],
  old = false,
): Promise<PageRecord | undefined> {
  try {
    const binary = atob(packed.replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
    const text = await textOf(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw')));
    const page: unknown = JSON.parse(text);
    const written = new Date(0).toISOString();
    const empty = notebookRecord(newNotebook, written) as object;
    const file = old
      ? { format: formatName, version: 2, written, name: '', numbers: {}, pages: [page], work: {} }
      : { ...empty, pages: [page] };
    const reading = await readNotebookFile(JSON.stringify(file), readyPages, new Date(0));
    return reading.kind === 'read' ? reading.notebook.pages[0] : undefined;
  } catch {
    return undefined;
  }
}

/** Text of a stream, given up where it grows beyond all bounds. */
async function textOf(stream: ReadableStream<Uint8Array>): Promise<string> {
  const reader = stream.getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let size = 0;
  for (;;) {
    const part = await reader.read();
    if (part.done) return text + decoder.decode();
    size += part.value.length;
    if (size > mostBytes) {
      await reader.cancel();
      throw new Error('A page in an address is not that large.');
    }
    text += decoder.decode(part.value, { stream: true });
  }
}
