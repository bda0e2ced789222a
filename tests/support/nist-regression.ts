// Data sets of the NIST Statistical Reference Datasets for nonlinear regression, with certified results.
// Typed from memory: a wrong digit in the data would move the certified sum of squares, which is the check.
// Source: NIST/ITL StRD, nonlinear least squares regression, itl.nist.gov/div898/strd.

/** One data set: model, both first guesses, certified parameters, standard deviations where remembered, and sum. */
export interface NistSet {
  readonly name: string;
  /** NIST's own grading. */
  readonly level: 'lower' | 'average' | 'higher';
  model(b: Float64Array, x: number): number;
  readonly starts: readonly (readonly number[])[];
  readonly certified: readonly number[];
  readonly sum: number;
  readonly x: readonly number[];
  readonly y: readonly number[];
}

const { exp } = Math;
const count = (n: number, first: number, step: number): number[] =>
  Array.from({ length: n }, (_, i) => first + i * step);

export const NIST_SETS: readonly NistSet[] = [
  {
    name: 'Misra1a',
    level: 'lower',
    model: ([b1, b2], x) => b1! * (1 - exp(-b2! * x)),
    starts: [
      [500, 0.0001],
      [250, 0.0005],
    ],
    certified: [2.3894212918e2, 5.5015643181e-4],
    sum: 1.2455138894e-1,
    x: [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0],
    y: [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78],
  },
  {
    name: 'Lanczos3',
    level: 'lower',
    model: ([b1, b2, b3, b4, b5, b6], x) => b1! * exp(-b2! * x) + b3! * exp(-b4! * x) + b5! * exp(-b6! * x),
    starts: [
      [1.2, 0.3, 5.6, 5.5, 6.5, 7.6],
      [0.5, 0.7, 3.6, 4.2, 4, 6.3],
    ],
    certified: [8.6816414977e-2, 9.5498101505e-1, 8.4400777463e-1, 2.9515951832, 1.5825685901, 4.9863565084],
    sum: 1.6117193594e-8,
    x: count(24, 0, 0.05),
    y: [
      2.5134, 2.0443, 1.6684, 1.3664, 1.1232, 0.9269, 0.7679, 0.6389, 0.5338, 0.4479, 0.3776, 0.3197, 0.272, 0.2325,
      0.1997, 0.1723, 0.1493, 0.1301, 0.1138, 0.1, 0.0883, 0.0783, 0.0698, 0.0624,
    ],
  },
  {
    name: 'Thurber',
    level: 'higher',
    model: ([b1, b2, b3, b4, b5, b6, b7], x) =>
      (b1! + x * (b2! + x * (b3! + x * b4!))) / (1 + x * (b5! + x * (b6! + x * b7!))),
    starts: [
      [1000, 1000, 400, 40, 0.7, 0.3, 0.03],
      [1300, 1500, 500, 75, 1, 0.4, 0.05],
    ],
    certified: [
      1.28813968e3, 1.4910792535e3, 5.8323836877e2, 7.5416644291e1, 9.6629502864e-1, 3.9797285797e-1, 4.9727297349e-2,
    ],
    sum: 5.6427082397e3,
    x: [
      -3.067, -2.981, -2.921, -2.912, -2.84, -2.797, -2.702, -2.699, -2.633, -2.481, -2.363, -2.322, -1.501, -1.46,
      -1.274, -1.212, -1.1, -1.046, -0.915, -0.714, -0.566, -0.545, -0.4, -0.309, -0.109, -0.103, 0.01, 0.119, 0.377,
      0.79, 0.963, 1.006, 1.115, 1.572, 1.841, 2.047, 2.2,
    ],
    y: [
      80.574, 84.248, 87.264, 87.195, 89.076, 89.608, 89.868, 90.101, 92.405, 95.854, 100.696, 101.06, 401.672, 390.724,
      567.534, 635.316, 733.054, 759.087, 894.206, 990.785, 1090.109, 1080.914, 1122.643, 1178.351, 1260.531, 1273.514,
      1288.339, 1327.543, 1353.863, 1414.509, 1425.208, 1421.384, 1442.962, 1464.35, 1468.705, 1447.894, 1457.628,
    ],
  },
  {
    name: 'MGH09',
    level: 'higher',
    model: ([b1, b2, b3, b4], x) => (b1! * x * (x + b2!)) / (x * (x + b3!) + b4!),
    starts: [
      [25, 39, 41.5, 39],
      [0.25, 0.39, 0.415, 0.39],
    ],
    certified: [1.9280693458e-1, 1.9128232873e-1, 1.2305650693e-1, 1.3606233068e-1],
    sum: 3.0750560385e-4,
    x: [4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625],
    y: [0.1957, 0.1947, 0.1735, 0.16, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246],
  },
  {
    name: 'MGH10',
    level: 'higher',
    model: ([b1, b2, b3], x) => b1! * exp(b2! / (x + b3!)),
    starts: [
      [2, 400000, 25000],
      [0.02, 4000, 250],
    ],
    certified: [5.609636471e-3, 6.1813463463e3, 3.4522363462e2],
    sum: 8.7945855171e1,
    x: count(16, 50, 5),
    y: [34780, 28610, 23650, 19630, 16370, 13720, 11540, 9744, 8261, 7030, 6005, 5147, 4427, 3820, 3307, 2872],
  },
  {
    name: 'Rat42',
    level: 'higher',
    model: ([b1, b2, b3], x) => b1! / (1 + exp(b2! - b3! * x)),
    starts: [
      [100, 1, 0.1],
      [75, 2.5, 0.07],
    ],
    certified: [7.2462237576e1, 2.6180768402, 6.7359200066e-2],
    sum: 8.0565229338,
    x: [9, 14, 21, 28, 42, 57, 63, 70, 79],
    y: [8.93, 10.8, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08],
  },
  {
    name: 'Rat43',
    level: 'higher',
    model: ([b1, b2, b3, b4], x) => b1! / (1 + exp(b2! - b3! * x)) ** (1 / b4!),
    starts: [
      [100, 10, 1, 1],
      [700, 5, 0.75, 1.3],
    ],
    certified: [6.996415127e2, 5.2771253025, 7.5962938329e-1, 1.2792483859],
    sum: 8.786404908e3,
    x: count(15, 1, 1),
    y: [
      16.08, 33.83, 65.8, 97.2, 191.55, 326.2, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56, 689.96, 637.56, 717.41,
    ],
  },
  {
    name: 'BoxBOD',
    level: 'higher',
    model: ([b1, b2], x) => b1! * (1 - exp(-b2! * x)),
    starts: [
      [1, 1],
      [100, 0.75],
    ],
    certified: [2.1380940889e2, 5.4723748542e-1],
    sum: 1.1680088766e3,
    x: [1, 2, 3, 5, 7, 10],
    y: [109, 149, 149, 191, 213, 224],
  },
];
