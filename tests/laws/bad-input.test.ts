// Whatever is wrong with an argument of a public function, or with a field of one at any depth, ends in an InputError that has a code, names
// the argument and its value, and says what would be right. A new export is tried by the example in its doc comment.

import { describe, expect, it } from 'vitest';
import {
  azeotrope,
  completeStill,
  condenserCapacity,
  createEthanolWater,
  InputError,
  inputErrorFromPlain,
  type InputFault,
  isPlainInputError,
  limitsOf,
  moleFractionFromStrength,
  packingLoad,
  solve,
} from '#lib/index.js';
import { badCalls, functionOf, publicCalls, type BadCall, type Sort } from '../support/bad-input.js';

const wholeStill = `{
  kettle: { volume_m3: 0.1, diameter_m: 0.5, heatingSurfaceHeight_m: 0.05, power_W: 5500, heatLoss_W_K: 1, metal_J_K: 5000 },
  doublers: [{ volume_m3: 0.01, diameter_m: 0.2, dipDepth_m: 0.1, heatLoss_W_K: 0.5, metal_J_K: 1000, overflow: 'back' }],
  column: {
    kind: 'plates', count: 3, plateKind: 'sieve', diameter_m: 0.15, spacing_m: 0.15, weirHeight_m: 0.02, openAreaShare: 0.1,
    holeDiameter_m: 0.005, holdUp: { kind: 'volume', volume_m3: 1e-4 }, efficiency: 0.7, efficiencyFalls: true, heatLoss_W_K: 0.2,
    metal_J_K: 500, drop_Pa: 300,
  },
  head: { heatLoss_W_K: 0.5, metal_J_K: 300, film_m3: 1e-5 },
  refluxCondenser: { kind: 'total', holdUp: { kind: 'amount', amount_mol: 1 }, subcooling_K: 5 },
  productCondenser: { holdUp: { kind: 'volume', volume_m3: 3e-5 }, flow_kg_s: 0.1, inlet_K: 288, transfer_W_K: 300 },
  air: { pressure_Pa: 100000, temperature_K: 293 },
}`;
const wholeProblem = `{
  still: ${wholeStill},
  charge: { kind: 'volume', volume_m3: 0.06, strength: 0.1 },
  chargeTemperature_K: 290,
  doublerCharges: [{ charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.1 }, temperature_K: 290 }],
  activity: 'nrtl',
  model: 'energy',
  heat: { kind: 'power', power_W: 5000 },
  sheet: [
    { reflux: 'total', heat: { kind: 'power', power_W: 4000 }, until: [{ kind: 'firstVapour' }] },
    { reflux: 2, until: [{ kind: 'duration', seconds: 60 }, { kind: 'collectedVolume', volume_m3: 0.01 }] },
    {
      reflux: { kind: 'hold', strength: 0.9, leastShare: 0.1, mostShare: 0.9 },
      until: [{ kind: 'spoutStrengthBelow', strength: 0.5 }, { kind: 'duration', seconds: 30 }, { kind: 'kettleTemperatureAbove', temperature_K: 370 }],
    },
  ],
  outputs: { kind: 'every', interval_s: 600 },
  jars: { kind: 'size', volume_m3: 0.001 },
  start: 'cold',
  lags: { boil_s: 0.5, weir_s: 3 },
  tolerance: 1e-4,
}`;

/** Calls where the example leaves out what should be tried. */
const others: Readonly<Record<string, string>> = {
  azeotrope: "azeotrope(101325, 'nrtl')",
  bubblePoint: "bubblePoint(0.5, 101325, 'nrtl')",
  bubblePressure: "bubblePressure(0.5, 351, 'nrtl')",
  dewPoint: "dewPoint(0.5, 101325, 'nrtl')",
  relativeVolatility: "relativeVolatility(0.5, 101325, 'nrtl')",
  excessEnthalpy: "excessEnthalpy(0.15, 298.15, 'nrtl')",
  excessHeatCapacity: "excessHeatCapacity(0.15, 298.15, 'nrtl')",
  liquidEnthalpy: "liquidEnthalpy(0.15, 298.15, 'nrtl')",
  liquidHeatCapacity: "liquidHeatCapacity(0.15, 298.15, 'nrtl')",
  heatToBoil: "heatToBoil({ kind: 'volume', volume_m3: 0.12, strength: 0.095 }, 293.15, 101325, 'nrtl')",
  chargeAmounts: "chargeAmounts({ kind: 'amount', amount_mol: 1000, moleFraction: 0.05 })",
  compileCurve: "compileCurve(activityModel('nrtl'), { range_Pa: [90000, 110000], intervals: 16, pressureNodes: 3 })",
  trueStrengthFromReading:
    "trueStrengthFromReading({ scale: 'volume', strength: 0.6, temperature_K: 300, glassExpansion_per_K: 1e-5 })",
  dilute: 'dilute({ spirit: { volume_m3: 0.1, strength: 0.7, temperature_K: 293 }, strength: 0.4, water_K: 285 })',
  reduceInSteps:
    'reduceInSteps({ spirit: { volume_m3: 0.1, strength: 0.7 }, strength: 0.4, steps: 3, water_K: 285, rested_K: 290 })',
  solve: `solve(${wholeProblem}, createEthanolWater(), { observers: [] })`,
  solveAsync: `solveAsync(${wholeProblem}, { observers: [] }, createEthanolWater())`,
  problemFaults: `problemFaults(${wholeProblem}, createEthanolWater())`,
  completeStill: `completeStill(${wholeStill})`,
  completions: `completions(${wholeStill})`,
  stillFaults: `stillFaults(completeStill(${wholeStill}))`,
  limitsOf: `limitsOf(solve(${wholeProblem}), createEthanolWater())`,
};

const everySort: readonly Sort[] = [
  'wrong type',
  'NaN',
  'infinite',
  'negative',
  'out of range',
  'wrong unit',
  'unknown',
  'unknown key',
  'empty',
  'absurdly long',
  'missing',
];

/** These answer with the faults instead of throwing them. */
const answersWithFaults = new Set(['stillFaults', 'descriptionFaults', 'problemFaults']);

/** What cannot be told from something right, by function and path, with the reason. */
const rightAfterAll: readonly { path: RegExp; sorts: readonly Sort[]; because: string }[] = [
  {
    path: /^inputErrorFromPlain\(plain[.[]/u,
    sorts: everySort,
    because: 'of what was sent only the shape is looked at: a fault may be of any value',
  },
  {
    path: /^foundIn\(outcome\.(?!found)/u,
    sorts: everySort,
    because: 'what was found is the answer of another function',
  },
  { path: /^isPlainInputError\(/u, sorts: ['wrong type', 'missing'], because: 'it says of anything whether it is one' },
  { path: /^(to|from)SI\(value/u, sorts: ['negative', 'out of range'], because: 'any finite number is one' },
  { path: /altitude_m\)/u, sorts: ['negative'], because: 'there is land below the sea' },
  { path: /(rise_K|over_Pa|drop_Pa|subcooling_K)\)/u, sorts: ['wrong unit'], because: 'a difference may be small' },
  { path: /change_per_m3\)/u, sorts: ['negative'], because: 'a strength may fall' },
  {
    path: /^compareReadings\(\w+\.(value|from)/u,
    sorts: ['negative', 'unknown key'],
    because: 'estimates and their changes have any sign, and inputs any name',
  },
  {
    path: /(spirit|stronger|weaker|charge|(charged|spirits|collected)\[\d+\])\.tolerence/u,
    sorts: ['unknown key'],
    because: 'a jar of a run is a spirit, and has more fields',
  },
  {
    path: /^carryUncertainty\(input/u,
    sorts: ['wrong type'],
    because: 'the function that is asked says what of its input is wrong',
  },
  {
    path: /^carryUncertainty\(uncertainties\.spirit\.strength/u,
    sorts: ['wrong unit'],
    because: 'how unsure one is is up to oneself',
  },
  { path: /sheet\[\d\]\.reflux\)/u, sorts: ['wrong type'], because: '3 is a reflux ratio' },
  { path: /^sweep\(options\.read/u, sorts: ['wrong type'], because: 'a function can read a run' },
];

const calls = publicCalls(others);

describe.each(calls)('$name', (call) => {
  const bad = badCalls(call).filter(({ path, sort }) => {
    const full = `${call.name}(${path})`;
    return !rightAfterAll.some((one) => one.path.test(full) && one.sorts.includes(sort));
  });

  it('takes what its example gives it', async () => {
    let error: unknown;
    try {
      await functionOf(call)(...call.good);
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeUndefined();
  });

  it('refuses what is wrong with code, argument, value and what would be right', async () => {
    const faults: string[] = [];
    for (const one of bad) {
      const fault = await faultOf(call.name, functionOf(call), one);
      if (fault !== '') faults.push(fault);
    }
    expect(faults).toEqual([]);
  });
});

/** What is not as it should be about how a bad call ends; '' where nothing is. */
async function faultOf(name: string, run: (...args: unknown[]) => unknown, { path, sort, bad, args }: BadCall) {
  const told = `${name}: ${path} = ${shown(bad)} (${sort})`;
  let error: unknown;
  try {
    const answer: unknown = await run(...args);
    if (answersWithFaults.has(name)) throw new InputError(...(answer as readonly InputFault[]));
    return `${told} is taken`;
  } catch (thrown) {
    error = thrown;
  }
  if (!(error instanceof InputError)) return `${told} ends in ${String(error).slice(0, 100)}`;
  const last = path.split(/[.[]/u).at(-1)!.replace(']', '');
  const named = error.faults.filter(({ argument }) => argument.includes(last) || path.startsWith(argument));
  const leaf = typeof bad === 'number' && named.some(({ argument }) => argument.endsWith(last));
  if (leaf && !named.some(({ value }) => Object.is(value, bad))) return `${told} is told with another value`;
  if (named.length === 0) return `${told} is said of ${error.faults.map(({ argument }) => argument).join(', ')}`;
  if (error.faults.some(({ code, expected }) => code.length === 0 || expected.length === 0))
    return `${told} has no code`;
  if (error.message.length > 5000) return `${told} is told in ${String(error.message.length)} letters`;
  return '';
}

function shown(value: unknown): string {
  return typeof value === 'string' ? JSON.stringify(value.slice(0, 20)) : Array.isArray(value) ? '[…]' : String(value);
}

describe('mistakes that are easily made', () => {
  const refused = (call: () => unknown): InputError => {
    try {
      call();
    } catch (error) {
      if (error instanceof InputError) return error;
      throw error;
    }
    throw new Error('it is taken');
  };
  const run = {
    still: { kettle: { volume_m3: 0.1 } },
    sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }],
  } as const;
  const charge = { kind: 'volume', volume_m3: 0.06, strength: 0.1 } as const;

  it('arguments the wrong way round', () => {
    // @ts-expect-error it is a name where a pressure belongs
    const swapped = refused(() => azeotrope('nrtl', 101325));
    expect(swapped).toMatchObject({ code: 'wrongType' });
    expect(swapped.message).toMatch(/pressure_Pa is 'nrtl'/u);
    // @ts-expect-error it is a system where a problem belongs
    expect(refused(() => solve(createEthanolWater(), { ...run, charge })).message).toMatch(/system is/u);
  });

  it('a mistyped field, with those that are known', () => {
    // @ts-expect-error the field is mistyped
    const error = refused(() => solve({ ...run, charge, tolerence: 1e-6 }));
    expect(error.code).toBe('unknownField');
    expect(error.message).toMatch(/tolerence is 0.000001; expected no such field; known are still, charge.*tolerance/u);
  });

  it('a model, a kind nobody knows', () => {
    // @ts-expect-error no such model
    expect(refused(() => solve({ ...run, charge, model: 'exact' }))).toMatchObject({ code: 'unknownChoice' });
    // @ts-expect-error no such kind
    const litres = refused(() => solve({ ...run, charge: { ...charge, kind: 'litres' } }));
    expect(litres.message).toMatch(/one of volume, amount/u);
  });

  it('plates where a packing belongs, no run where one belongs, a number that is none, a strength as text', () => {
    const { column } = completeStill({ kettle: { volume_m3: 0.1 }, column: { kind: 'plates' } });
    // @ts-expect-error these are plates
    const plates = refused(() => packingLoad(column, {}));
    expect(plates.message).toMatch(/packing.kind is 'plates'; expected 'packing'/u);
    // @ts-expect-error a system is no run
    const alone = refused(() => limitsOf(createEthanolWater()));
    expect(alone.message).toMatch(/expected a solution as solve gives it/u);
    expect(refused(() => condenserCapacity(NaN, 300, 288, 351))).toMatchObject({ code: 'notFinite' });
    // @ts-expect-error a strength as text
    expect(refused(() => moleFractionFromStrength('0.4'))).toMatchObject({ code: 'wrongType' });
    // @ts-expect-error nothing is given
    expect(refused(() => moleFractionFromStrength())).toMatchObject({ code: 'missing' });
    expect(refused(() => moleFractionFromStrength(40))).toMatchObject({ code: 'outOfRange' });
  });
});

describe('an InputError that is sent', () => {
  it('keeps code, faults and message, whatever the value was', () => {
    for (const value of [-1, NaN, '0,4', undefined, () => 1, Symbol('s'), { deep: { er: () => 1 } }, 12n]) {
      const error = new InputError({ argument: 'strength', value, expected: 'a strength' });
      const back = inputErrorFromPlain(structuredClone(error.toPlain()));
      expect(back).toBeInstanceOf(InputError);
      expect([back.code, back.message]).toEqual([error.code, error.message]);
      expect(back.faults[0]).toMatchObject({ code: error.code, argument: 'strength', expected: 'a strength' });
    }
  });

  it('is known among other data, and nothing else is made one', () => {
    const plain = new InputError({ argument: 'a', value: 1, expected: 'b' }).toPlain();
    expect(isPlainInputError(plain)).toBe(true);
    for (const other of [null, 3, {}, { name: 'InputError' }, { ...plain, faults: [3] }, new Error('x')]) {
      expect(isPlainInputError(other)).toBe(false);
      expect(() => inputErrorFromPlain(other as never)).toThrow(InputError);
    }
  });
});
