// What the reader may lay over figures, switched on for the whole page: published points, other models, another
// law. The code of points and models is loaded when first wanted.

import { html } from 'lit';
import { wanted } from '../../offline/wanted.js';
import type { Overlay, Overlays } from '../../pages/the-ceiling/overlays.js';
import type { Here } from '../entry.js';

const words: Readonly<Record<string, readonly [string, string]>> = {
  measured: ['Lay the measured points over it', 'Rub out the measured points'],
  models: ['Compare the models', 'Rub out the other models'],
  raoult: ['Draw Raoult’s law too', 'Rub out Raoult’s law'],
};
const listed = ['measured', 'models'] as const;
const holder: { overlays?: Overlays; asked?: boolean } = {};

/** The words to press that lay something over a figure or rub it out. */
export function layButton(name: string, { common, setCommon }: Pick<Here, 'common' | 'setCommon'>): unknown {
  const [lay, rubOut] = words[name]!;
  const laid = common[name] === true;
  const says = laid ? 'rubbed out' : 'laid over';
  return html`<button
    type="button"
    class="word-button"
    @click=${() => setCommon(name, laid ? undefined : true, { says })}
  >
    ${laid ? rubOut : lay}
  </button> `;
}

/** What is laid over the figures of a page; the same list for the same switches. */
export function laidOn({ common }: Pick<Here, 'common'>): readonly Overlay[] {
  return lists[Number(common.measured === true) + 2 * Number(common.models === true)]!;
}
const lists: readonly (readonly Overlay[])[] = [[], ['measured'], ['models'], [...listed]];

/** The code of what is laid over, where anything is; the page is drawn again when it has come. */
export function overlaysFor(here: Pick<Here, 'common' | 'redraw'>): Overlays | undefined {
  if (laidOn(here).length === 0) return undefined;
  if (holder.overlays === undefined && holder.asked !== true) {
    holder.asked = true;
    const says = 'What is to be laid over the figures could not be loaded.';
    void wanted(says, () => import('../../pages/the-ceiling/overlays.js')).then((overlays) => {
      holder.overlays = overlays;
      here.redraw();
    });
  }
  return holder.overlays;
}
