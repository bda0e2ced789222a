// What goes between a sweep and its workers, as plain data: problems in batches, and what the reader kept of each run.

import { InputError, type PlainInputError } from '../../errors.js';
import { inputErrorFromPlain } from '../../plain-error.js';
import type { RunProblem } from '../problem.js';

/** Which function reads a run: one known to the worker by name, or an export of a module the worker can load. */
export interface SweepReading {
  readonly name: string;
  /** Address of the module that exports it; default the readers the worker knows. */
  readonly module?: string;
  /** Handed to the reader as it is; must be plain data. */
  readonly argument?: unknown;
}

/** To a worker. */
export interface SweepBatch {
  readonly kind: 'sweepBatch';
  readonly id: number;
  readonly read: SweepReading;
  readonly problems: readonly RunProblem[];
}

/** From a worker. */
export interface SweepKept {
  readonly kind: 'sweepKept';
  readonly id: number;
  readonly answers: readonly SentAnswer[];
}

/** What became of one problem, on its way. */
export type SentAnswer = { readonly kept: unknown } | { readonly failed: SentError };

interface SentError {
  readonly name: string;
  readonly message: string;
  readonly stack?: string;
  readonly input?: PlainInputError;
}

/** An error as plain data. */
export function sentError(error: unknown): SentError {
  if (!(error instanceof Error)) return { name: 'Error', message: String(error) };
  const { name, message, stack } = error;
  const input = error instanceof InputError ? { input: error.toPlain() } : {};
  return { name, message, ...(stack === undefined ? {} : { stack }), ...input };
}

/** The error that was sent. */
export function receivedError({ name, message, stack, input }: SentError): Error {
  if (input !== undefined) return inputErrorFromPlain(input);
  const error = new Error(message);
  error.name = name;
  if (stack !== undefined) error.stack = stack;
  return error;
}

export function isBatch(data: unknown): data is SweepBatch {
  return typeof data === 'object' && data !== null && (data as Partial<SweepBatch>).kind === 'sweepBatch';
}

export function isKept(data: unknown): data is SweepKept {
  return typeof data === 'object' && data !== null && (data as Partial<SweepKept>).kind === 'sweepKept';
}
