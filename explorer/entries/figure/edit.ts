// Choosing what a figure entry shows: one figure, or two beside each other.

import { html } from 'lit';
import { choosing } from '../choice.js';
import type { Here } from '../entry.js';
import { figureLines } from './list.js';
import type { FigureData } from './piece.js';

const none = { name: '', title: 'nothing' };

export function edit({ data: { figures }, change }: Here<FigureData>): unknown {
  const [first = '', second = ''] = figures;
  const set = (one: string, two: string): void =>
    change(() => ({ figures: two === '' || two === one ? [one] : [one, two] }), { says: 'figure chosen' });
  return html`${choosing('Figure', figureLines, first, (name) => set(name, second))}
  ${choosing('Beside it', [none, ...figureLines.filter(({ name }) => name !== first)], second, (name) => set(first, name))}`;
}
