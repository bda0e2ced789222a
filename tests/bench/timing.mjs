// Times of a call after warm-up, in milliseconds, and tables of them. The least time is what the call costs; the median is what it costs
// beside whatever else the machine does.

import { performance } from 'node:perf_hooks';

/** Runs `call` until it is warm, then `samples` times; returns { ms: median, least }. */
export function timed(call, { warmUp = 300, samples = 501 } = {}) {
  for (let i = 0; i < warmUp; i++) call();
  const times = [];
  for (let i = 0; i < samples; i++) {
    const start = performance.now();
    call();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return { ms: times[samples >> 1], least: times[0] };
}

/** `ms` and `least` at an error, by straight lines between the runs' logarithms; null where no two runs enclose it. */
export function timesAtError(runs, error) {
  const sorted = runs.filter((run) => run.error > 0).sort((a, b) => a.error - b.error);
  for (let i = 1; i < sorted.length; i++) {
    const [fine, coarse] = [sorted[i - 1], sorted[i]];
    if (fine.error > error || coarse.error < error) continue;
    const part = Math.log(error / fine.error) / Math.log(coarse.error / fine.error);
    const between = (key) => Math.exp(Math.log(fine[key]) + part * Math.log(coarse[key] / fine[key]));
    return { ms: between('ms'), least: between('least') };
  }
  return null;
}

/** Milliseconds as printed. */
export const inMs = (time) => (time >= 10 ? time.toFixed(1) : time.toFixed(3));

/** A Markdown table, columns aligned. */
export function table(header, rows) {
  const cells = [header, ...rows].map((row) => row.map(String));
  const widths = header.map((_name, i) => Math.max(3, ...cells.map((row) => row[i].length)));
  const line = (row) =>
    `| ${row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join(' | ')} |`;
  const rule = `| ${widths.map((width, i) => (i === 0 ? '-'.repeat(width) : `${'-'.repeat(width - 1)}:`)).join(' | ')} |`;
  const [top, ...rest] = cells;
  return [line(top), rule, ...rest.map(line)].join('\n');
}
