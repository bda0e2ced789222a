// A choice in a sentence, set like a blank: a plain list of the browser's own.

import { html } from 'lit';

/** `options` as [value, text]; `act` gets the value chosen. No space follows it, so that a comma can. */
export function choiceOf<Value extends string>(
  label: string,
  options: readonly (readonly [Value, string])[],
  chosen: Value,
  act: (value: Value) => void,
): unknown {
  const changed = (event: Event): void => act((event.target as HTMLSelectElement).value as Value);
  return html`<select class="choice" aria-label=${label} @change=${changed}>
    ${options.map(([value, text]) => html`<option value=${value} ?selected=${value === chosen}>${text}</option>`)}
  </select>`;
}
