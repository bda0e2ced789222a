// 'What nobody set': each value that the library completes the still with, its reason, and a word that makes it set; and
// what was set, with a word that leaves it to the library again.

import { html, nothing } from 'lit';
import '../../components/number/kp-blank.js';
import { numberWithUnit } from '../../components/number/number-spec.js';
import type { Input } from '../../state/inputs.js';
import { nobodySet, setByHand, type NobodySet } from '../../state/nobody-set.js';
import type { NumberSpecs } from '../../state/number-specs.js';
import { numberAt } from '../../state/paths.js';
import type { Scenario } from '../../state/scenario.js';

/** What can be done with one of them. */
export interface SetActs {
  readonly say: (path: string, value: unknown, label: string) => void;
  readonly takeBack: (path: string, label: string) => void;
  readonly blank: (path: Input['key']) => unknown;
}

export function nobodySetView(scenario: Scenario, specs: NumberSpecs, acts: SetActs): unknown {
  const completed = nobodySet(scenario.still);
  const numbers = completed.filter(({ input }) => input !== undefined);
  const others = completed.filter(({ input }) => input === undefined);
  const said = setByHand(scenario);
  return html`<h3>What nobody set</h3>
    <p>The library completes the still. Each value has its reason; set one, and it is yours.</p>
    <dl class="nobody-set">${numbers.map((one) => completion(one, one.input!, specs, acts))}</dl>
    ${others.length === 0 ? nothing : html`<p>${others.map(inWords).join(' ')}</p>`}
    <h3>What was set</h3>
    ${
      said.length === 0
        ? html`<p>Nothing but what makes it this still.</p>`
        : html`<ul class="set-by-hand">
            ${said.map((row) => setRow(row, scenario, specs, acts))}
          </ul>`
    }`;
}

function completion(
  { path, value, reason }: NobodySet,
  { key, label }: Input,
  specs: NumberSpecs,
  acts: SetActs,
): unknown {
  return html`<div data-path=${path}>
    <dt>${label}</dt>
    <dd>
      <b class="ink">${numberWithUnit(specs(key), value as number)}</b>: ${reason}.
      <button
        type="button"
        class="word-button"
        aria-label=${`Set it: ${label}`}
        @click=${() => acts.say(path, value, label)}
      >
        Set it
      </button>
    </dd>
  </div>`;
}

function setRow({ key, label }: Input, scenario: Scenario, specs: NumberSpecs, acts: SetActs): unknown {
  return html`<li data-path=${key}>
    ${label} ${acts.blank(key)}
    <button
      type="button"
      class="word-button"
      aria-label=${`Leave it to the library: ${label}, ${numberWithUnit(specs(key), numberAt(scenario, key)!)}`}
      @click=${() => acts.takeBack(key, label)}
    >
      Leave it to the library
    </button>
  </li>`;
}

/** What is no number, as a sentence. */
function inWords({ path, value, reason }: NobodySet): string {
  const names: Readonly<Record<string, string>> = {
    'still.doublers': 'Doublers',
    'still.column.kind': 'What stands on the kettle',
    'still.refluxCondenser.kind': 'Reflux condenser',
    'still.column.plateKind': 'Kind of the plates',
    'still.column.efficiencyFalls': 'Plates that are driven hard work worse',
  };
  const name = names[path] ?? path.replace(/^still\./u, '');
  return `${name}: ${valueInWords(value)}, ${reason}.`;
}

const words: Readonly<Record<string, string>> = {
  none: 'none',
  total: 'one that condenses everything',
  bubbleCap: 'bubble caps',
  sieve: 'sieve plates',
  valve: 'valve plates',
  back: 'back',
  over: 'over',
};

function valueInWords(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value) && value.length === 0) return 'none';
  return typeof value === 'string' ? (words[value] ?? value) : JSON.stringify(value);
}
