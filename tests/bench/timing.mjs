// Median time of a call after warm-up, in milliseconds.

import { performance } from 'node:perf_hooks';

/** Runs `call` until it is warm, then `samples` times; returns the median in ms. */
export function medianTime(call, { warmUp = 200, samples = 301 } = {}) {
  for (let i = 0; i < warmUp; i++) call();
  const times = [];
  for (let i = 0; i < samples; i++) {
    const start = performance.now();
    call();
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[samples >> 1];
}

/** A table as text, columns aligned. */
export function table(header, rows) {
  const cells = [header, ...rows].map((row) => row.map(String));
  const widths = header.map((_name, i) => Math.max(...cells.map((row) => row[i].length)));
  return cells
    .map((row) => row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('  '))
    .join('\n');
}
