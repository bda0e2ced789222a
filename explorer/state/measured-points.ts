// Written by reference/measurements/build-points.mjs from reference/measurements; edit those files, not this one.
// Published points for laying over the curves; loaded only when asked for.

/** Liquid and vapour of one published set near 1 atm. */
export interface MeasuredSet {
  /** Name of its file in reference/measurements. */
  readonly set: string;
  /** 'Carey and Lewis, 1932'. */
  readonly source: string;
  readonly pressure_Pa: number;
  readonly liquidMoleFraction: readonly number[];
  readonly vapourMoleFraction: readonly number[];
  readonly temperature_K: readonly number[];
}

/** One published azeotrope: stated there, read where x and y cross, at a maximum of pressure, or from memory. */
export interface MeasuredAzeotrope {
  readonly pressure_Pa: number;
  readonly moleFraction: number;
  /** Of the mole fraction, as estimated by this project. */
  readonly uncertainty: number;
  readonly kind: 'printed' | 'read' | 'maximum' | 'memory';
  readonly source: string;
}

export const measuredSets: readonly MeasuredSet[] = [
  {
    set: 'carey-lewis-1932-101kPa',
    source: 'Carey and Lewis, 1932',
    pressure_Pa: 101325,
    liquidMoleFraction: [
      0, 0.019, 0.0721, 0.0966, 0.1238, 0.1661, 0.2337, 0.2608, 0.3273, 0.3965, 0.5079, 0.5198, 0.5732, 0.6763, 0.7472,
      0.8943, 1,
    ],
    vapourMoleFraction: [
      0, 0.17, 0.3891, 0.4375, 0.4704, 0.5089, 0.5445, 0.558, 0.5826, 0.6122, 0.6564, 0.6599, 0.6841, 0.7385, 0.7815,
      0.8943, 1,
    ],
    temperature_K: [
      373.15, 368.65, 362.15, 359.85, 358.45, 357.25, 355.85, 355.45, 354.65, 353.85, 352.95, 352.85, 352.45, 351.89,
      351.56, 351.3, 351.45,
    ],
  },
  {
    set: 'rieder-thompson-1949-101kPa',
    source: 'Rieder and Thompson, 1949',
    pressure_Pa: 101300,
    liquidMoleFraction: [
      0.0028, 0.0118, 0.0137, 0.0144, 0.0176, 0.0222, 0.0246, 0.0302, 0.0331, 0.0519, 0.053, 0.0625, 0.0673, 0.0715,
      0.0871, 0.126, 0.143, 0.172, 0.206, 0.21, 0.255, 0.284, 0.321, 0.324, 0.345, 0.405, 0.43, 0.449, 0.506, 0.545,
      0.663, 0.735, 0.804, 0.917,
    ],
    vapourMoleFraction: [
      0.032, 0.113, 0.157, 0.135, 0.156, 0.186, 0.212, 0.231, 0.248, 0.318, 0.314, 0.339, 0.37, 0.362, 0.406, 0.468,
      0.487, 0.505, 0.53, 0.527, 0.552, 0.567, 0.586, 0.586, 0.591, 0.614, 0.626, 0.633, 0.661, 0.673, 0.733, 0.776,
      0.815, 0.906,
    ],
    temperature_K: [
      372.45, 370.05, 369.15, 369.15, 368.75, 367.95, 366.95, 366.65, 366.05, 363.65, 363.65, 362.55, 361.55, 361.75,
      360.35, 358.55, 357.65, 357.15, 356.55, 356.15, 355.45, 355.15, 354.55, 354.65, 354.35, 354.05, 353.65, 353.35,
      353.15, 352.65, 351.95, 351.65, 351.55, 351.45,
    ],
  },
  {
    set: 'kamihama-2012-101kPa',
    source: 'Kamihama et al., 2012',
    pressure_Pa: 101300,
    liquidMoleFraction: [
      0.018, 0.079, 0.09, 0.147, 0.244, 0.311, 0.353, 0.425, 0.488, 0.57, 0.616, 0.67, 0.711, 0.802, 0.835, 0.869,
      0.901, 0.914, 0.922, 0.94, 0.972,
    ],
    vapourMoleFraction: [
      0.18, 0.418, 0.441, 0.51, 0.567, 0.589, 0.604, 0.627, 0.652, 0.688, 0.713, 0.736, 0.76, 0.819, 0.844, 0.873, 0.9,
      0.912, 0.92, 0.937, 0.969,
    ],
    temperature_K: [
      368.18, 360.5, 359.7, 357.27, 355.38, 354.55, 354.11, 353.45, 352.96, 352.39, 352.11, 351.82, 351.64, 351.37,
      351.3, 351.27, 351.26, 351.26, 351.27, 351.29, 351.35,
    ],
  },
  {
    set: 'liu-2012-101kPa',
    source: 'Liu et al., 2012',
    pressure_Pa: 101300,
    liquidMoleFraction: [0, 0.119, 0.154, 0.218, 0.269, 0.322, 0.357, 0.393, 0.425, 0.44, 0.557, 0.65, 0.759, 0.865, 1],
    vapourMoleFraction: [0, 0.518, 0.539, 0.598, 0.596, 0.624, 0.65, 0.642, 0.655, 0.661, 0.683, 0.741, 0.79, 0.867, 1],
    temperature_K: [
      373.1, 359.2, 357.3, 355.8, 354.8, 354.5, 354, 353.5, 353.4, 353.2, 351.5, 351.4, 351.3, 351.2, 351.2,
    ],
  },
  {
    set: 'susial-2021-100kPa',
    source: 'Susial et al., 2021',
    pressure_Pa: 100000,
    liquidMoleFraction: [
      0.001, 0.006, 0.015, 0.023, 0.032, 0.044, 0.054, 0.062, 0.077, 0.099, 0.107, 0.136, 0.198, 0.228, 0.283, 0.356,
      0.414, 0.46, 0.52, 0.588, 0.69, 0.722, 0.815, 0.861, 0.921, 0.963,
    ],
    vapourMoleFraction: [
      0.014, 0.056, 0.129, 0.184, 0.234, 0.289, 0.326, 0.358, 0.399, 0.436, 0.448, 0.48, 0.524, 0.543, 0.571, 0.594,
      0.61, 0.632, 0.659, 0.682, 0.745, 0.764, 0.834, 0.87, 0.918, 0.961,
    ],
    temperature_K: [
      372.3, 370.7, 368.8, 367.3, 365.8, 363.9, 362.6, 361.4, 360.4, 358.7, 358.4, 357.5, 356, 355.2, 354.7, 354.1,
      353.4, 353.2, 352.6, 352.3, 351.8, 351.7, 351.5, 351.4, 351.4, 351.4,
    ],
  },
];

export const measuredAzeotropes: readonly MeasuredAzeotrope[] = [
  { pressure_Pa: 10473, moleFraction: 0.989, uncertainty: 0.008, kind: 'maximum', source: 'Pemberton and Mash, 1978' },
  { pressure_Pa: 12650, moleFraction: 0.987, uncertainty: 0.01, kind: 'memory', source: 'Wade and Merriman, 1911' },
  { pressure_Pa: 17290, moleFraction: 0.967, uncertainty: 0.01, kind: 'memory', source: 'Wade and Merriman, 1911' },
  { pressure_Pa: 26450, moleFraction: 0.934, uncertainty: 0.01, kind: 'memory', source: 'Wade and Merriman, 1911' },
  {
    pressure_Pa: 29520,
    moleFraction: 0.935,
    uncertainty: 0.01,
    kind: 'maximum',
    source: 'Balcazar-Ortiz et al., 1979',
  },
  { pressure_Pa: 53940, moleFraction: 0.909, uncertainty: 0.005, kind: 'memory', source: 'Wade and Merriman, 1911' },
  { pressure_Pa: 100000, moleFraction: 0.899, uncertainty: 0.005, kind: 'printed', source: 'Susial et al., 2021' },
  { pressure_Pa: 101300, moleFraction: 0.8946, uncertainty: 0.002, kind: 'read', source: 'Kamihama et al., 2012' },
  { pressure_Pa: 101325, moleFraction: 0.8943, uncertainty: 0.002, kind: 'printed', source: 'Carey and Lewis, 1932' },
  { pressure_Pa: 101325, moleFraction: 0.894, uncertainty: 0.002, kind: 'printed', source: 'Horsley, 1973' },
  { pressure_Pa: 101325, moleFraction: 0.8947, uncertainty: 0.002, kind: 'printed', source: 'Evans, 1916' },
  { pressure_Pa: 101325, moleFraction: 0.892, uncertainty: 0.003, kind: 'printed', source: 'Hodgman, 1962' },
  { pressure_Pa: 143370, moleFraction: 0.889, uncertainty: 0.005, kind: 'memory', source: 'Wade and Merriman, 1911' },
  { pressure_Pa: 158970, moleFraction: 0.885, uncertainty: 0.005, kind: 'maximum', source: 'Pemberton and Mash, 1978' },
  { pressure_Pa: 159570, moleFraction: 0.884, uncertainty: 0.005, kind: 'maximum', source: 'Kolbe and Gmehling, 1985' },
  { pressure_Pa: 193490, moleFraction: 0.887, uncertainty: 0.005, kind: 'memory', source: 'Wade and Merriman, 1911' },
  { pressure_Pa: 986000, moleFraction: 0.862, uncertainty: 0.008, kind: 'read', source: 'Barr-David and Dodge, 1959' },
  {
    pressure_Pa: 1001300,
    moleFraction: 0.873,
    uncertainty: 0.005,
    kind: 'maximum',
    source: 'Kolbe and Gmehling, 1985',
  },
  { pressure_Pa: 1500000, moleFraction: 0.857, uncertainty: 0.01, kind: 'printed', source: 'Susial et al., 2021' },
  { pressure_Pa: 2000000, moleFraction: 0.85, uncertainty: 0.01, kind: 'printed', source: 'Susial et al., 2021' },
  { pressure_Pa: 2980000, moleFraction: 0.873, uncertainty: 0.03, kind: 'read', source: 'Barr-David and Dodge, 1959' },
];
