// Writing what is asked, and how we would answer it.

import { html } from 'lit';
import { live } from 'lit/directives/live.js';
import { atMost } from '../../components/field/at-most.js';
import { letters } from '../../state/limits.js';
import type { Here } from '../entry.js';
import type { OwnWordsData } from './kind.js';

export function edit({ id, data, change }: Here<OwnWordsData>): unknown {
  const field = (label: string, key: keyof OwnWordsData): unknown => {
    const type = (event: Event): void => {
      const text = (event.target as HTMLTextAreaElement).value;
      change((before) => ({ ...before, [key]: text }), { says: 'prompt written', together: `own-words:${id}:${key}` });
    };
    return html`<label class="edit-field">
      <span>${label}</span>
      <textarea
        rows="3"
        data-in-history
        ${atMost(key === 'ours' ? letters.ownWords : letters.question)}
        .value=${live(data[key])}
        @input=${type}
      ></textarea>
    </label>`;
  };
  return [field('What is asked', 'prompt'), field('How we would say it, to compare with', 'ours')];
}
