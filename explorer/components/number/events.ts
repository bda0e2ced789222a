// The events numbers send, upwards only. Nothing is sent when a property is set from outside.

import type { NumberFault } from './number-spec.js';

/** A gesture gave a number a new value, SI. */
export interface NumberChange {
  readonly key: string;
  readonly value: number;
}
/** A number came into focus; `touch` when by a finger. */
export interface NumberFocus {
  readonly key: string;
  readonly touch: boolean;
}
/** The text in a blank cannot be used, or can again (null). */
export interface NumberFaultReport {
  readonly key: string;
  readonly fault: NumberFault | null;
}

declare global {
  interface HTMLElementEventMap {
    'kp-change': CustomEvent<NumberChange>;
    'kp-number-focus': CustomEvent<NumberFocus>;
    'kp-fault': CustomEvent<NumberFaultReport>;
    'kp-done': CustomEvent<null>;
    'kp-type': CustomEvent<{ readonly key: string }>;
    'kp-put-back': CustomEvent<{ readonly key: string }>;
  }
}

/** Sends an event that rises through the page. */
export function send<Name extends keyof HTMLElementEventMap>(
  from: HTMLElement,
  name: Name,
  detail: HTMLElementEventMap[Name] extends CustomEvent<infer Detail> ? Detail : never,
): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}
