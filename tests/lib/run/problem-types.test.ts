// A typing mistake in a problem does not compile: fields go with their model, and a solution has what its model keeps account of.

import { describe, expect, expectTypeOf, it } from 'vitest';
import {
  azeotrope,
  bubblePoint,
  type EnergySolution,
  equilibriumUncertainty,
  gaugeOffset,
  type Kelvin,
  type KelvinDifference,
  type MassFraction,
  type MoleFraction,
  moleFractionFromStrength,
  type RunProblem,
  type RunSolution,
  solve,
  solveAsync,
} from '#lib/index.js';

const still = { kettle: { volume_m3: 0.1 } };
const charge = { kind: 'volume', volume_m3: 0.06, strength: 0.1 } as const;
const sheet = [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }] as const;

/** Never run: what stands in it is compiled. */
function compiled(problem: RunProblem): void {
  solve({ still, charge, sheet, heat: { kind: 'power', power_W: 4000 }, start: 'cold' });
  solve({ still, charge, sheet, model: 'rayleigh', heat: { kind: 'boilUp', rate_mol_s: 0.1 } });
  solve({ still, charge, sheet, model: 'equalFlows', start: 'charge' });
  solve(problem);
  // @ts-expect-error a boil-up is no heat where energy is kept account of
  solve({ still, charge, sheet, heat: { kind: 'boilUp', rate_mol_s: 0.1 } });
  // @ts-expect-error plates that hold the charge belong to equal flows
  solve({ still, charge, sheet, model: 'equalHeats', start: 'charge' });
  // @ts-expect-error constant flows know no heating up
  solve({ still, charge, sheet, model: 'equalFlows', start: 'cold' });
  // @ts-expect-error constant flows know no lags
  solve({ still, charge, sheet, model: 'equalFlows', lags: { boil_s: 1, weir_s: 1 } });
  // @ts-expect-error a bare pot by quadrature has no reflux
  solve({ still, charge, model: 'rayleigh', sheet: [{ reflux: 3, until: [{ kind: 'firstVapour' }] }] });
  // @ts-expect-error a simplification has no doublers
  solve({ still, charge, sheet, model: 'rayleigh', doublerCharges: [{ charge }] });
  // @ts-expect-error the field is mistyped
  solve({ still, charge, sheet, tolerence: 1e-6 });
  // @ts-expect-error the field is mistyped, and the model known
  solve({ still, charge, sheet, model: 'rayleigh', tolerence: 1e-6 });
  // @ts-expect-error a field of the still is mistyped
  solve({ still: { kettle: { volume_m3: 0.1, powr_W: 3 } }, charge, sheet });
  // @ts-expect-error a rule of a kind nobody knows
  solve({ still, charge, sheet: [{ reflux: 'none', until: [{ kind: 'spoutStrengthAbove', strength: 0.9 }] }] });
  // @ts-expect-error a rule with the field of another
  solve({ still, charge, sheet: [{ reflux: 'none', until: [{ kind: 'duration', strength: 0.9 }] }] });
  // @ts-expect-error options where the system belongs
  solve({ still, charge, sheet }, { observers: [] });
}

describe('the types of a problem', () => {
  it('are compiled with the tests: each line above that must not compile does not', () => {
    expect(typeof compiled).toBe('function');
  });

  it('lead to the solution of the model', () => {
    expectTypeOf(solve({ still, charge, sheet })).toEqualTypeOf<EnergySolution>();
    expectTypeOf(solve({ still, charge, sheet, model: 'rayleigh' })).toEqualTypeOf<RunSolution>();
    const problem = { still, charge, sheet } as RunProblem;
    expectTypeOf(solve(problem)).toEqualTypeOf<RunSolution>();
    expectTypeOf(solveAsync({ still, charge, sheet })).resolves.toEqualTypeOf<EnergySolution>();
    expect(solve({ still, charge, sheet }).ending.kind).toBe('stopped');
  });
});

describe('the types of quantities', () => {
  it('keep bases of strength, temperatures and their differences apart', () => {
    const moleFraction = moleFractionFromStrength(0.4);
    expect(moleFraction).toBeCloseTo(0.1633, 4);
    expectTypeOf(moleFraction).toEqualTypeOf<MoleFraction>();
    expectTypeOf<MoleFraction>().not.toExtend<MassFraction>();
    expectTypeOf<Kelvin>().not.toExtend<KelvinDifference>();
    expectTypeOf(gaugeOffset(101325, 1000)).toEqualTypeOf<KelvinDifference>();
    expectTypeOf(equilibriumUncertainty(0.5, 101325).temperature_K).toEqualTypeOf<KelvinDifference>();
    expectTypeOf(bubblePoint(0.5, 101325).temperature_K).toEqualTypeOf<Kelvin>();
  });

  it('take a model by name, and no other name', () => {
    expect(azeotrope(101325, 'nrtl').found).toBe(true);
    // @ts-expect-error no model of that name
    expect(() => azeotrope(101325, 'uniquac')).toThrow(/activity is 'uniquac'; expected one of/u);
  });
});
