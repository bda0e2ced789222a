// RODAS, order 4(3), six stages, L-stable and stiffly accurate, dense output of order 3.
// E. Hairer, G. Wanner, Solving Ordinary Differential Equations II, 2nd ed. 1996, IV.10 (method of the
// authors' own program, coefficient set 1). Digits typed from memory; the order conditions and measured orders in
// tests/lib/numerics/stiff check them, the last two rows (dense output) to about 1e-3 only.

import type { RosenbrockTableau } from './rosenbrock-tableau.js';

export const RODAS4: RosenbrockTableau = {
  name: 'rodas4',
  order: 4,
  gamma: 0.25,
  alpha: [0, 0.386, 0.21, 0.63, 1, 1],
  gammaSums: [0.25, -0.1043, 0.1035, -0.03620000000000023, 0, 0],
  a: [
    [],
    [1.544],
    [0.9466785280815826, 0.2557011698983284],
    [3.314825187068521, 2.896124015972201, 0.9986419139977817],
    [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895],
    [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895, 1],
  ],
  c: [
    [],
    [-5.6688],
    [-2.430093356833875, -0.2063599157091915],
    [-0.1073529058151375, -9.594562251023355, -20.47028614809616],
    [7.496443313967647, -10.24680431464352, -33.99990352819905, 11.7089089320616],
    [8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054],
  ],
  dense: [
    [10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662],
    [-0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872],
  ],
};
