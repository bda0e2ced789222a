// What a doubler does first and later, and what two of them in series come to, in words.

import { html } from 'lit';
import { doublerQuestions, type DoublerQuestions } from '../../../pages/the-doubler/questions.js';
import type { Piece } from '../../pieces.js';
import { doublerNumbers, firstWords, laterWords, retortWords } from '../../../pages/the-doubler/words.js';
import { source } from '../../words.js';

const inventedNote = html`<p>
  Charge and still are invented: upright vessels of bare metal, the doubler with a drain at its brim that leads back to
  the kettle. What else nobody set stands at the foot of the page.
</p>`;

const modelNote = html`<p>
  Kettle and doubler are followed with their energy: vapour condenses in the cold doubler until it boils, its level and
  strength move, walls lose heat. The theory stands in the project’s documents.
</p>`;

const rumNote = html`<p>
  Common practice, no published source: the two charges, a tenth to a seventh of the pot’s, at some 30 and 70 to 75 %
  vol. Of two distillations one after the other Bryan Edwards (1793) gives the balance: two washes of 1200 gallons gave
  600 of low wines, and 530 of those 220 gallons of proof rum.
</p>`;

const retortSource = source(html`Edwards’ figures as quoted by F. H. Smith, Volatile Spirits (University of Florida).`);

export const doublerFirst: Piece<DoublerQuestions> = {
  asks: doublerQuestions,
  cautions: ['cooling', 'spout'],
  view: ({ units, specs, once }, now) => {
    const numbers = once('numbers', [now], () => doublerNumbers(now));
    return [firstWords(now, numbers, units, specs), laterWords(now, numbers, units)];
  },
  notes: () => [inventedNote, modelNote],
};

export const retorts: Piece<DoublerQuestions> = {
  asks: doublerQuestions,
  view: ({ units }, now) => retortWords(now, units),
  notes: () => [rumNote, retortSource],
};
