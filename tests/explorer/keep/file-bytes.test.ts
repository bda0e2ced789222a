// A file that is chosen or dropped, before anything in it is looked at.

import { describe, expect, it } from 'vitest';
import { bytesOf } from '../../../explorer/keep/file-bytes.js';
import { limits } from '../../../explorer/keep/format.js';

/** A file of a size, that tells how often it was read. */
function fileOf(
  size: number,
  read: () => Promise<ArrayBuffer>,
): { file: Parameters<typeof bytesOf>[0]; reads: () => number } {
  let reads = 0;
  const arrayBuffer = (): Promise<ArrayBuffer> => {
    reads += 1;
    return read();
  };
  return { file: { size, arrayBuffer }, reads: () => reads };
}

describe('a file', () => {
  it('is read', async () => {
    expect(await bytesOf(new Blob(['abc']))).toEqual(new TextEncoder().encode('abc'));
  });

  it.each([3e9, limits.bytes + 1])('of %d bytes is refused by its size, without being read', async (size) => {
    const { file, reads } = fileOf(size, () => Promise.reject(new Error('out of memory')));
    const refused = await bytesOf(file);
    expect('refusal' in refused && refused.refusal.says).toMatch(/MB large; a notebook is at most 20 MB\.$/u);
    expect(reads()).toBe(0);
  });

  it('that is a folder, or gone, is refused with what to do', async () => {
    const { file } = fileOf(4096, () => Promise.reject(new DOMException('not found', 'NotFoundError')));
    const refused = await bytesOf(file);
    expect('refusal' in refused && refused.refusal).toEqual({
      kind: 'unreadable',
      says: 'It cannot be read: it is a folder, or a file that is no longer there or may not be opened. Choose a single file.',
    });
  });
});
