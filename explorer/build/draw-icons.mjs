// Draws the icons of the explorer from one description: a kettle with a plated column, and the first drop.
// Writes an SVG and PNGs of the sizes that home screens ask for: node explorer/build/draw-icons.mjs

import { Buffer } from 'node:buffer';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { deflateSync } from 'node:zlib';

const paper = '#fafbf8';
const print = '#1b1f22';
const ink = '#1b4fb0';

/** Lines on a square of 64 by 64, each with its colour and half width. */
const strokes = [
  // plates and the first drop
  { colour: ink, half: 1.75, points: points('25,15 37,15') },
  { colour: ink, half: 1.75, points: points('21,22 33,22') },
  { colour: ink, half: 1.75, points: points('25,29 37,29') },
  { colour: ink, half: 1.75, points: points('17,45 41,45') },
  { colour: ink, half: 2.6, points: points('50,29 50,30.5') },
  // column, then kettle
  { colour: print, half: 1.75, points: points('21,36 21,9 37,9 37,36') },
  {
    colour: print,
    half: 1.75,
    points: [...points('21,36 12,40'), ...arc(29, 42, 18, 10, 190, -10, -1), ...points('46,40 37,36')],
  },
  // the way out
  { colour: print, half: 1.75, points: points('37,14 50,14 50,22') },
];

function points(text) {
  return text.split(' ').map((pair) => pair.split(',').map(Number));
}

function arc(cx, cy, rx, ry, from, to, step) {
  const made = [];
  for (let angle = from; step < 0 ? angle >= to : angle <= to; angle += 10 * step) {
    const radians = (angle * Math.PI) / 180;
    made.push([cx + rx * Math.cos(radians), cy + ry * Math.sin(radians)]);
  }
  return made;
}

function svg() {
  const lines = strokes.map(
    ({ colour, half, points: way }) =>
      `  <path d="M${way.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}" stroke="${colour}" stroke-width="${2 * half}" />`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64">
  <rect width="64" height="64" rx="12" fill="${paper}" />
  <g fill="none" stroke-linecap="round" stroke-linejoin="round">
${lines.map((line) => `  ${line}`).join('\n')}
  </g>
</svg>
`;
}

/** Distance of a place from a line through points. */
function distance(x, y, way) {
  let nearest = Infinity;
  for (let i = 1; i < way.length; i++) {
    const [[ax, ay], [bx, by]] = [way[i - 1], way[i]];
    const length = (bx - ax) ** 2 + (by - ay) ** 2;
    const share = Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
    nearest = Math.min(nearest, Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay)));
  }
  return nearest;
}

/** Red, green and blue of each pixel, `size` in a row; `scale` under 1 leaves room round the drawing. */
function pixels(size, scale) {
  const rgb = (colour) => [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  const bytes = Buffer.alloc(size * size * 3);
  const perPixel = 64 / size / scale;
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      const x = 32 + (column + 0.5 - size / 2) * perPixel;
      const y = 32 + (row + 0.5 - size / 2) * perPixel;
      let colour = rgb(paper);
      for (const stroke of strokes) {
        const cover = Math.min(1, Math.max(0, 0.5 + (stroke.half - distance(x, y, stroke.points)) / perPixel));
        colour = rgb(stroke.colour).map((value, i) => cover * value + (1 - cover) * colour[i]);
      }
      bytes.set(colour.map(Math.round), 3 * (row * size + column));
    }
  }
  return bytes;
}

function png(size, bytes) {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const rows = [];
  for (let row = 0; row < size; row++)
    rows.push(Buffer.from([0]), bytes.subarray(3 * row * size, 3 * (row + 1) * size));
  const chunks = [
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(Buffer.concat(rows), { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ];
  return Buffer.concat([Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]), ...chunks]);
}

function chunk(name, data) {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(data.length, 0);
  ends.writeUInt32BE(checksum(named), 4);
  return Buffer.concat([ends.subarray(0, 4), named, ends.subarray(4)]);
}

/** CRC-32 as PNG asks for it (ISO 3309). */
function checksum(bytes) {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

const place = (name) => fileURLToPath(new URL(`../public/${name}`, import.meta.url));
writeFileSync(place('icon.svg'), svg());
// Home screens cut a maskable icon to any form inside the middle four fifths.
for (const [name, size, scale] of [
  ['icon-180.png', 180, 0.9],
  ['icon-192.png', 192, 1],
  ['icon-512.png', 512, 1],
  ['icon-maskable-512.png', 512, 0.74],
]) {
  writeFileSync(place(name), png(size, pixels(size, scale)));
}
