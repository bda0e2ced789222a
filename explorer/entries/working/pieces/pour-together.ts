// Any number of spirits and jars poured together.

import { html } from 'lit';
import { mix } from '#lib/index.js';
import { sheetQuestion, type SheetRun } from '../../../state/run-sheet.js';
import { strengthInk, strengthText, volumeInk, volumeText } from '../amounts.js';
import { spiritsOf } from '../spirits-of.js';
import { workingPiece, type Worked } from '../working.js';

function answer({ rows, units }: Worked): unknown {
  const spirits = spiritsOf(rows);
  if (spirits.every(({ volume_m3 }) => volume_m3 === 0)) return html`<p>There is nothing to pour.</p>`;
  const { spirit, lost_m3 } = mix(spirits);
  const apart_m3 = spirit.volume_m3 + lost_m3;
  return html`<p>
    Together they are <b>${volumeInk(spirit.volume_m3, units)} at ${strengthInk(spirit.strength, units)}</b>, with
    ${volumeInk(spirit.volume_m3 * spirit.strength, units)} of pure alcohol. Apart they are
    ${volumeInk(apart_m3, units)}.
  </p>`;
}

/** Jars of the run that can be put in. */
const mostOffered = 12;

export const pourTogether = workingPiece({
  sentences: [],
  list: {
    name: 'poured',
    row: 'spirit',
    parts: [{ blank: 'jarVolume' }, ' at ', { blank: 'jarStrength' }, ' '],
    start: [
      { numbers: { jarVolume: 0.001, jarStrength: 0.78 } },
      { numbers: { jarVolume: 0.001, jarStrength: 0.74 } },
      { numbers: { jarVolume: 0.0015, jarStrength: 0.66 } },
    ],
  },
  asksLater: (scenario) => ({ sheetRun: sheetQuestion(scenario) }),
  offers: ({ sheetRun }, units) =>
    sheetRun?.kind !== 'run'
      ? []
      : (sheetRun.solution as SheetRun).jars.slice(0, mostOffered).map((jar, index) => ({
          words: `Put in jar ${String(index + 1)} of the run: ${volumeText(jar.volume_m3, units)} at ${strengthText(jar.strength, units)}`,
          row: { numbers: { jarVolume: jar.volume_m3, jarStrength: jar.strength } },
        })),
  answer,
  cautions: ['pouring'],
  notes: () => html`<p>All at 20 °C. The order in which they are poured changes nothing.</p>`,
});
