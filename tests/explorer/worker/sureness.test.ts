// How sure the model is, as the margin of 'The ceiling' says it.

import { expect, it } from 'vitest';
import { azeotropeUncertainty, strengthFromMoleFraction, azeotrope, toSI } from '#lib/index.js';
import { ceilingNote, firstVapourNote, surenessAsks } from '../../../explorer/pages/the-ceiling/notes.js';
import type { Here } from '../../../explorer/entries/entry.js';
import { plainWords } from '../../../explorer/entries/plain-words.js';
import { startingScenario } from '../../../explorer/state/scenario.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { answersTo } from '../../support/answers.js';

const margin = (answers: object): Pick<Here, 'later' | 'units'> => ({
  later: { answers } as NonNullable<Here['later']>,
  units: unitSystems.metric,
});

it('the margin gives the first vapour of the charge, its boil and the ceiling with what the equilibrium leaves open, and says what is not in it', async () => {
  const answers = await answersTo(surenessAsks(startingScenario));
  const [first, ceiling] = [firstVapourNote, ceilingNote].map((note) => plainWords(note(margin(answers))));
  expect(first).toContain('the first step is 54.8 ± 0.1\u00a0%\u00a0vol, and the charge boils at 92.52 ± 0.03\u00a0°C');
  expect(ceiling).toMatch(/the ceiling is 97\.20 ± 0\.0\d\u00a0%\u00a0vol/u);
  for (const text of [first, ceiling]) expect(text).toContain('of the equilibrium alone');
  // By the closed derivatives of the library, whose cross coefficient is one constant: near.
  const found = azeotrope(toSI(1, 'atm'));
  const closed = azeotropeUncertainty(toSI(1, 'atm'));
  if (!found.found || !closed.found) throw new Error('an azeotrope at 1 atm');
  const strength = strengthFromMoleFraction;
  const error = strength(found.moleFraction) - strength(found.moleFraction - closed.curve.moleFraction);
  expect(Math.abs(answers.sureness.ceiling.uncertainty! / error - 1)).toBeLessThan(0.3);
});

it('the margin waits with dots of its own, and says nothing of a ceiling that is not there', async () => {
  expect(plainWords(firstVapourNote(margin({})))).toContain('…');
  const { sureness } = surenessAsks(startingScenario);
  const answers = await answersTo({ sureness: { ...sureness, pressure_Pa: 5000 } });
  expect(plainWords(ceilingNote(margin(answers)))).toBe('');
});
