// Small pieces of text that entries share: numbers in their hand, notes, the permit at the foot.

import { html } from 'lit';
import { fixed, joined, trimmed } from '../text/format.js';
import type { UnitSystem } from '../text/unit-systems.js';

/** A number or phrase that follows from what the reader set. */
export function ink(text: string): unknown {
  return html`<span class="ink number">${text}</span>`;
}

/** A number or phrase of the run kept before. */
export function pencil(text: string): unknown {
  return html`<span class="pencil number">${text}</span>`;
}

/** A number that holds for every still, kept on one line. */
export function print(text: string): unknown {
  return html`<span class="number">${text}</span>`;
}

/** A caution for the margin. */
export function caution(words: unknown): unknown {
  return html`<p class="caution"><b>Caution.</b> ${words}</p>`;
}

/** A source for the margin. */
export function source(words: unknown): unknown {
  return html`<p><b>Source.</b> ${words}</p>`;
}

/** '97.2 ± 0.1', both to the first digit of the error, or to a tenth where that is coarser. */
export function plusMinus(shown: number, error: number, unit: string): string {
  const decimals = error < 0.095 ? 2 : 1;
  return joined(`${fixed(shown, decimals)} ± ${fixed(error, decimals)}`, unit);
}

/** The foot of every page: what the notebook is not. */
export const permit = html`<p class="permit">
  Distilling spirits needs a permit in many countries: ask before you light up. Kettle &amp; Plate advises and teaches;
  it controls nothing and is no safety device. Local codes, the maker’s instructions and licensed practice come first.
  Everything is computed on this device and nothing is sent anywhere.
</p>`;

/** A round strength, '90 % vol', not '90.0 % vol'. */
export function roundStrength(strength: number, units: UnitSystem): string {
  return joined(trimmed(units.strength.toShown(strength), 1), units.strength.unit);
}

const modelNames: Readonly<Record<string, string>> = {
  'redlich-kister': 'Redlich-Kister',
  nrtl: 'NRTL',
  wilson: 'Wilson',
  raoult: 'Raoult’s law',
};

/** An activity model as people call it. */
export function modelName(name: string): string {
  return modelNames[name] ?? name;
}
