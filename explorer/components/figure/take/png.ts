// A picture as PNG, drawn by this browser at twice its size. The typeface goes into the picture, since a
// picture may not fetch one.

import regular from '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2?url';
import type { Picture } from './picture.js';

const scale = 2;

/** A style sheet that holds the typeface of the labels; empty where it cannot be had. */
export async function labelTypeface(): Promise<string> {
  try {
    const bytes = new Uint8Array(await (await fetch(regular)).arrayBuffer());
    let binary = '';
    for (const byte of bytes) binary += String.fromCharCode(byte);
    const source = `url(data:font/woff2;base64,${btoa(binary)}) format('woff2')`;
    return `@font-face { font-family: 'Source Sans 3'; font-weight: 200 900; src: ${source}; }`;
  } catch {
    return ''; // the words then stand in the next typeface of their list
  }
}

export async function pngOf({ svg, width, height }: Picture): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = scale * width;
    canvas.height = scale * height;
    canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    if (blob === null) throw new Error('The browser made no picture of it.');
    return blob;
  } finally {
    URL.revokeObjectURL(address);
  }
}
