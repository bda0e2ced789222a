// How closely pages ask for their runs: so that what is printed of one is what a run at 1e-8 prints, but where a digit lies on the edge of
// rounding. tests/explorer/pages/printed-digits.test.ts holds it, on every page and over all its numbers.

/** Ten times the library's, in two thirds of the time. */
export const drawingTolerance = 1e-5;

/** Two rows a step: between rows things are read by straight lines, and where a step is long that shows more than its error does. */
export const drawnRows = { kind: 'perStep', points: 2 } as const;
