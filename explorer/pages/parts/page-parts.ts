// The foot of a page: which still, charge and run sheet it uses, what can be done with them, and what nobody set of the
// still. Loaded when the reader first opens it.

import { html, nothing } from 'lit';
import { STILL_PRESETS } from '#lib/index.js';
import { atMost } from '../../components/field/at-most.js';
import { letters } from '../../state/limits.js';
import type { Notebook } from '../../state/notebook-record.js';
import { addPart, copyPart, dropPart, listOf, renamePart, usePart, type UseName } from '../../state/part-acts.js';
import { usedOn } from '../../state/page-scenario.js';
import { presetName } from './preset-names.js';
import { nobodySetView, type SetActs } from './nobody-set-view.js';
import type { Act } from '../act-event.js';
import type { Scenario } from '../../state/scenario.js';
import type { NumberSpecs } from '../../state/number-specs.js';

export interface PartsGiven {
  readonly page: string;
  readonly notebook: Notebook;
  readonly scenario: Scenario;
  readonly specs: NumberSpecs;
  readonly act: (next: Act['next'], deed: { readonly says: string; readonly together?: string }) => void;
  readonly set: SetActs;
}

interface UseWords {
  readonly use: UseName;
  /** 'Still' */
  readonly title: string;
  /** 'the still' */
  readonly the: string;
}

const uses: readonly UseWords[] = [
  { use: 'still', title: 'Still', the: 'the still' },
  { use: 'charge', title: 'Charge', the: 'the charge' },
  { use: 'sheet', title: 'Run sheet', the: 'the run sheet' },
];

export function pageParts(given: PartsGiven): unknown {
  return html`<p>
      Every page that uses the same still, charge or run sheet shows the same numbers of it: what you set on one is set
      on all of them.
    </p>
    ${uses.map((words) => partView(given, words))} ${nobodySetView(given.scenario, given.specs, given.set)}`;
}

function partView({ page, notebook, act }: PartsGiven, { use, title, the }: UseWords): unknown {
  const { name } = usedOn(notebook, page)[use];
  const list = notebook[listOf[use]];
  const choose = (event: Event): void => {
    const chosen = (event.target as HTMLSelectElement).value;
    act((now) => usePart(now, page, use, chosen), { says: `${the} chosen` });
  };
  const rename = (event: Event): void => {
    const field = event.target as HTMLInputElement;
    const wish = field.value;
    act((now) => renamePart(now, use, name, wish), { says: `${the} named` });
    field.value = usedOn(notebook, page)[use].name;
  };
  return html`<div class="page-part" role="group" aria-label=${title}>
    <label
      ><span>${title} of this page</span>
      <select class="choice" @change=${choose}>
        ${list.map((one) => html`<option value=${one.name} ?selected=${one.name === name}>${one.name}</option>`)}
      </select></label
    >
    <label><span>Its name</span> <input type="text" ${atMost(letters.part)} .value=${name} @change=${rename} /></label>
    <p class="page-part-words">
      <button
        type="button"
        class="word-button"
        @click=${() => act((now) => copyPart(now, page, use), { says: `${the} duplicated` })}
      >
        Duplicate it
      </button>
      ${
        list.length > 1
          ? html`<button
              type="button"
              class="word-button"
              @click=${() => act((now) => dropPart(now, use, name), { says: `${the} deleted` })}
            >
              Delete it
            </button>`
          : nothing
      }
      ${use === 'still' ? presetChoice(page, act) : nothing}
    </p>
  </div>`;
}

/** Begins a still as the library describes one, with the charge that goes with it. */
function presetChoice(page: string, act: PartsGiven['act']): unknown {
  const begin = (event: Event): void => {
    const select = event.target as HTMLSelectElement;
    const preset = STILL_PRESETS.find(({ name }) => name === select.value);
    select.value = '';
    if (preset === undefined) return;
    const called = presetName(preset.name);
    act(
      (now) => {
        const { still, charge, doublerCharges } = preset;
        const withStill = addPart(now, 'stills', called, still);
        const both = addPart(withStill, 'charges', called, { charge, doublerCharges });
        const using = usePart(both, page, 'still', both.stills.at(-1)!.name);
        return usePart(using, page, 'charge', both.charges.at(-1)!.name);
      },
      { says: 'a still begun' },
    );
  };
  return html`<label
    ><span class="visually-hidden">Begin another still from one described here</span>
    <select class="choice" @change=${begin}>
      <option value="" selected>Begin another still …</option>
      ${STILL_PRESETS.map(({ name, about }) => html`<option value=${name}>${presetName(name)}: ${about}</option>`)}
    </select></label
  >`;
}
