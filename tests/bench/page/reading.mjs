// From the notes of a drag (watch.mjs) to what a hand feels of it.

const FRAME = 1000 / 60;

/**
 * For each input that was answered: ms to the last write to the DOM that belongs to it, the worker included. An answer of the worker is
 * credited to the newest input before it was asked for; writes after it, up to the next answer or two frames later, belong to it.
 */
export function latencies({ inputs, writes, asked, answered }, from, to) {
  const inputOf = new Map(asked);
  const within = answered.filter(([id, time]) => time >= from && time <= to && inputOf.has(id));
  const found = [];
  within.forEach(([id, time], i) => {
    const input = inputOf.get(id);
    if (input < from) return;
    const next = Math.min(within[i + 1]?.[1] ?? Infinity, time + 2 * FRAME);
    const last = writes.findLast((write) => write >= time && write < next);
    if (last !== undefined) found.push(last - input);
  });
  if (found.length > 0) return found;
  // Nothing was asked of the worker: writes before the next input.
  const moves = inputs.filter((time) => time >= from && time <= to);
  moves.forEach((input, i) => {
    const last = writes.findLast((write) => write >= input && write < (moves[i + 1] ?? input + FRAME));
    if (last !== undefined) found.push(last - input);
  });
  return found;
}

/** Frames that did not come: gaps in units of the usual frame, less one. */
export function missedFrames({ frames }, from, to) {
  const within = frames.filter((time) => time >= from && time <= to);
  let missed = 0;
  for (let i = 1; i < within.length; i++) missed += Math.max(0, Math.round((within[i] - within[i - 1]) / FRAME) - 1);
  return missed;
}

/** Long tasks of the page's thread, ms. */
export function longTasks({ longTasks: tasks }, from, to) {
  return tasks.filter(([start]) => start >= from && start <= to).map(([, duration]) => duration);
}

/** The value below which a share of the values lies. */
export function quantile(values, share) {
  if (values.length === 0) return NaN;
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}
