// Handing something to the reader: a file to keep, or something to paste elsewhere. Both start from a press
// of a button; neither sends anything anywhere.

import { withoutEnd } from '../../text/ends.js';

/** How long a saved file's address stays good, ms: longer than any browser takes to fetch it. */
const goodFor_ms = 60_000;

/** Has the browser save a file under a name. */
export function saveFile(name: string, file: Blob): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), goodFor_ms);
}

/** Whether something could be put on the clipboard; browsers may refuse. */
export async function copy(item: string | Promise<Blob>): Promise<boolean> {
  try {
    if (typeof item === 'string') await navigator.clipboard.writeText(item);
    else await navigator.clipboard.write([new ClipboardItem({ 'image/png': item })]);
    return true;
  } catch {
    return false;
  }
}

/** A title as the name of a file: small letters, digits and hyphens, never empty, never long. */
export function fileName(title: string, extension: string): string {
  const words = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+/u, '')
    .slice(0, 60);
  const plain = withoutEnd(words, '-');
  return `${plain === '' ? 'notebook' : plain}.${extension}`;
}
