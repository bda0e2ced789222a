// Types of killed.mjs, which is plain JavaScript because it also runs as a command.

import type { Page } from 'playwright';

export interface Typed {
  /** What was typed before the kill. */
  readonly text: string;
  /** When the page had each letter of it, ms. */
  readonly moments: readonly number[];
  readonly killed_ms: number;
}

export interface Killable {
  readonly typeAndKill: (enough: (page: Page, typed: () => string) => Promise<void>) => Promise<Typed>;
  readonly reopened: () => Promise<string>;
  readonly remove: () => Promise<void>;
}

export function killable(address: string): Promise<Killable>;
export function lost_ms(typed: Typed, there: string): number;
