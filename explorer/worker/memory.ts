// Answers by the content of their question, the latest of them, up to so many bytes.

import type { Answer } from './questions.js';

interface Kept {
  readonly answer: Answer;
  readonly bytes: number;
}

export class AnswerMemory {
  readonly #most_bytes: number;
  /** The longest unused first. */
  readonly #kept = new Map<string, Kept>();
  #bytes = 0;

  constructor(most_bytes: number) {
    this.#most_bytes = most_bytes;
  }

  /** The very same answer again, which then is the latest. */
  get(key: string): Answer | undefined {
    const found = this.#kept.get(key);
    if (found === undefined) return undefined;
    this.#kept.delete(key);
    this.#kept.set(key, found);
    return found.answer;
  }

  put(key: string, answer: Answer): void {
    this.#forget(key);
    const bytes = bytesOf(answer) + bytesOf(key);
    this.#kept.set(key, { answer, bytes });
    this.#bytes += bytes;
    for (const oldest of this.#kept.keys()) {
      if (this.#bytes <= this.#most_bytes) break;
      this.#forget(oldest);
    }
  }

  #forget(key: string): void {
    this.#bytes -= this.#kept.get(key)?.bytes ?? 0;
    this.#kept.delete(key);
  }
}

/** About what plain data take up. */
export function bytesOf(value: unknown): number {
  if (typeof value === 'string') return 2 * value.length;
  if (typeof value !== 'object' || value === null) return 8;
  if (ArrayBuffer.isView(value)) return value.byteLength;
  if (Array.isArray(value)) return value.reduce((sum: number, one) => sum + bytesOf(one), 16);
  return Object.values(value).reduce((sum: number, one) => sum + 16 + bytesOf(one), 16);
}
