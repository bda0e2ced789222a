// How much a formula may ask for. Within these a page of formulas takes milliseconds; what still takes longer is
// stopped by the page (formula-client.ts).

export const limits = {
  /** Characters in a line. */
  text: 400,
  /** Lines on a page. */
  lines: 200,
  /** Brackets inside brackets. */
  brackets: 30,
  /** Parts of a line: numbers, names, operations. */
  parts: 300,
  /** Parts inside parts while computing, own functions included. */
  depth: 500,
  /** Parts computed for one line, own functions included. */
  line: { steps: 100_000, ownCall: 1 },
  /** The same for one point of a curve, which nothing interrupts: there a call of the library counts for the time it takes. */
  point: { steps: 20_000, ownCall: 50 },
  /** Arguments of a function. */
  arguments: 12,
  /** Characters in a name. */
  name: 40,
  /** Points of a curve. */
  points: 121,
  /** Time for one line or one curve before it is stopped, ms; for all of a page. */
  time_ms: 1000,
  page_ms: 5000,
  /** Time for the engine to load, ms. */
  loading_ms: 30_000,
} as const;
