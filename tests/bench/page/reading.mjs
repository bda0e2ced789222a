// From the notes of a drag (watch.mjs) to what a hand feels of it.

const FRAME = 1000 / 60;

/**
 * For each input that was answered: ms to the last write to the DOM that belongs to it, the worker included. Writes while it was handled
 * belong to it. An answer of the worker is credited to the newest input before it was asked for; writes after it, up to the next answer or
 * two frames later, belong to it, save those made while another input was handled. Where nothing was asked, since the page knew the answer,
 * writes before the next input do.
 */
export function latencies({ inputs, writes, asked, answered }, from, to) {
  const moves = inputs.filter((time) => time >= from && time <= to);
  const answerAt = new Map(answered);
  const asking = new Map(asked.map(([id, input]) => [input, id]));
  const times = answered.map(([, time]) => time);
  const found = [];
  moves.forEach((input, i) => {
    const id = asking.get(input);
    const begin = id === undefined ? input : answerAt.get(id);
    if (begin === undefined) return;
    const other = id === undefined ? (moves[i + 1] ?? Infinity) : (times.find((time) => time > begin) ?? Infinity);
    const end = Math.min(other, begin + 2 * FRAME);
    const last = writes.findLast(
      ([write, handled]) => handled === input || (handled === null && write >= begin && write < end),
    );
    if (last !== undefined) found.push(last[0] - input);
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
