// How long a test waits for what has to come. Waits end with the event they wait for; these limits are there against
// hanging alone, and are far more than anything takes on a slow and busy machine. No test states a limit of its own.

/** For one thing to come, ms. */
export const patience_ms = 120_000;

/** For a whole test, or what is made ready before it, ms: many things, one after the other. */
export const wholeTest_ms = 1_200_000;

/** How many times slower than it is the browser of the tests is to work: `SLOW=6 npx vitest …`. */
export const slowness = Number(process.env.SLOW ?? 1);
if (!(slowness >= 1)) throw new Error(`SLOW is ‘${process.env.SLOW ?? ''}’, and should be a number from 1.`);
