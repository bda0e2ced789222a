// What is said of a formula that took too long, and when it is tried again. No mathjs here: the page needs this.

import { limits } from './limits.js';
import type { FormulaFault, FormulaLine } from './sheet.js';

export const stoppedFault: FormulaFault = {
  kind: 'stopped',
  wrong: `It took too long (more than ${String(limits.time_ms / 1000)} s) or too much memory, and was stopped`,
  right: 'change it, and it is tried again',
  at: null,
  instead: null,
};

/** What a curve is called while it is worked on. */
export function curveKey(id: string): string {
  return `curve of ${id}`;
}

/** All text that a line is computed from: its own and that of every line whose name it mentions, and so on. */
export function textBehind(lines: readonly FormulaLine[], id: string): string {
  const named = new Map<string, FormulaLine>();
  for (const line of lines) {
    const name = nameAtStart(line.text);
    if (name !== null && !named.has(name)) named.set(name, line);
  }
  const first = lines.find((line) => line.id === id);
  const behind = new Set<FormulaLine>(first === undefined ? [] : [first]);
  for (const line of behind) {
    for (const [word] of line.text.matchAll(/[\p{L}_$][\p{L}\d_$]*/gu)) {
      const mentioned = named.get(word);
      if (mentioned !== undefined) behind.add(mentioned); // a set may grow while it is walked
    }
  }
  return JSON.stringify([...behind].map(({ text }) => text));
}

/** The name a line gives, however wrong the rest of it is. */
export function nameAtStart(text: string): string | null {
  return /^\s*([\p{L}_$][\p{L}\d_$]*)\s*(?:\([^()]*\)\s*)?=(?!=)/u.exec(text)?.[1] ?? null;
}
