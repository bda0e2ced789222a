// Says, in the place of what cannot be shown, why it cannot, with a word that tries again where that may help.

import { html, nothing } from 'lit';

export function notLoaded(says: string, again?: () => void): unknown {
  return html`<p class="entry-trouble" role="status">
    ${says}
    ${again === undefined ? nothing : html`<button type="button" class="word-button" @click=${again}>Try again</button>`}
  </p>`;
}
