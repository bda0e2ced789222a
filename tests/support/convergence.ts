// Measures an order of accuracy: error against step length, halved again and again.

/** Slope of log(error) over log(step) between the coarsest and the finest of the given errors. */
export function observedOrder(errorOfSteps: (steps: number) => number, coarse: number, halvings: number): number {
  const first = errorOfSteps(coarse);
  const last = errorOfSteps(coarse * 2 ** halvings);
  return Math.log2(first / last) / halvings;
}
