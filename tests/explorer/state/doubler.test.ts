// The problems of 'The doubler' can be run at every corner of their numbers, and say what a distiller would.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, solve, type EnergyProblem, type PlainEnergySolution } from '#lib/index.js';
import { doublerQuestions, resultsOf, type DoublerQuestions } from '../../../explorer/pages/the-doubler/questions.js';
import { insideDoubler } from '../../../explorer/pages/the-doubler/inside.js';
import { inputAt } from '../../../explorer/state/inputs.js';
import { newNotebook } from '../../../explorer/state/notebook-record.js';
import { scenarioOn } from '../../../explorer/state/page-scenario.js';
import type { Scenario } from '../../../explorer/state/scenario.js';
import { settings, short, type Short } from '../../support/settings.js';

const system = createEthanolWater();
/** What the page starts with. */
const start = scenarioOn(newNotebook, 'the-doubler');
const own = start.doublerCharges[0]!.charge;
const chargeVolume = start.charge.volume_m3;
type RunName = 'pot' | 'doubler' | 'water' | 'otherwise' | 'lowWines' | 'feints' | 'heads' | 'retorts';

function run(name: RunName, scenario: Scenario = start): PlainEnergySolution {
  const questions: DoublerQuestions = doublerQuestions(scenario);
  return solve(questions[name].problem as EnergyProblem, system);
}

describe('the questions of the doubler', () => {
  it('are the same as long as nothing they ask changes', () => {
    const first = doublerQuestions(start);
    expect(doublerQuestions(settings({ wantedStrength: 0.5 }, start))).toEqual(first);
    expect(doublerQuestions(settings({ doublerStrength: 0.5 }, start))).not.toEqual(first);
  });

  it('run at every corner of their numbers', () => {
    const names: readonly Short[] = [
      'chargeVolume',
      'chargeStrength',
      'heat',
      'pressure',
      'doublerVolume',
      'doublerStrength',
    ];
    for (let corner = 0; corner < 2 ** names.length; corner += 1) {
      const numbers = names.map((name, bit): [Short, number] => {
        const { low, high } = inputAt(short[name])!;
        return [name, (corner >> bit) & 1 ? high : low];
      });
      const scenario = settings(Object.fromEntries(numbers), start);
      for (const name of ['doubler', 'retorts'] as const) {
        const { kind } = run(name, scenario).ending;
        expect([scenario, name, ['stopped', 'kettleDry', 'neverMet'].includes(kind)]).toEqual([scenario, name, true]);
      }
    }
  });
});

describe('a doubler', () => {
  it('begins with what its charge is good for: the stronger, the stronger', () => {
    const first = (['water', 'otherwise', 'lowWines', 'feints', 'heads'] as const).map(
      (name) => resultsOf(run(name), chargeVolume).first,
    );
    expect([...first].sort((a, b) => a - b)).toEqual(first);
    expect(first[0]!).toBeLessThan(resultsOf(run('pot'), chargeVolume).first + 0.05);
    expect(first.at(-1)!).toBeGreaterThan(0.8);
  });

  it('brings over more than the pot by little more than what it was charged with', () => {
    const more =
      resultsOf(run('doubler'), chargeVolume).pureAlcohol_m3 - resultsOf(run('pot'), chargeVolume).pureAlcohol_m3;
    expect(Math.abs(more / (own.volume_m3 * own.strength) - 1)).toBeLessThan(0.1);
  });

  it('gains water while it warms up, and holds about that to the end', () => {
    const { volume_m3, whenItRuns } = insideDoubler(run('doubler'));
    expect(whenItRuns.volume_m3).toBeGreaterThan(1.15 * own.volume_m3);
    expect(Math.abs(volume_m3.at(-1)! / whenItRuns.volume_m3 - 1)).toBeLessThan(0.15);
  });
});

describe('two in series', () => {
  it('with the charges of the trade give rum of 80 to 85 % vol and bring their charges back about', () => {
    // Common practice, no published source: rum off double retorts at 80 to 86 % vol.
    const scenario = settings({ chargeStrength: 0.065, chargeVolume: 1, heat: 50_000 }, start);
    const { jars } = run('retorts', scenario);
    const [spirit, high] = [2, 3].map((step) => jars.find((jar) => jar.step === step)!);
    expect(spirit!.strength).toBeGreaterThan(0.8);
    expect(spirit!.strength).toBeLessThan(0.86);
    expect(high!.strength).toBeGreaterThan(0.68);
    expect(high!.strength).toBeLessThan(0.78);
    // The wash's alcohol is the spirit's, within what the cuts move to and fro.
    const wash = scenario.charge.volume_m3 * scenario.charge.strength;
    expect(spirit!.pureAlcohol_m3).toBeGreaterThan(0.8 * wash);
    expect(spirit!.pureAlcohol_m3).toBeLessThan(1.8 * wash);
  });
});
