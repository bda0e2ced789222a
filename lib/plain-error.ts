// InputErrors that were sent as plain data, from a worker or out of a file, made errors again.

import { InputError, type PlainInputError } from './errors.js';

/**
 * The InputError that was sent as plain data.
 *
 * @param plain What toPlain() of an InputError gave.
 * @returns An InputError with the same code, message and faults.
 * @throws InputError when it is something else.
 * @example inputErrorFromPlain(structuredClone(new InputError({ argument: 'volume_m3', value: NaN, expected: 'a volume' }).toPlain())).code // → 'notFinite'
 * Source: this project's error contract (DEVELOPERS.md).
 */
export function inputErrorFromPlain(plain: PlainInputError): InputError {
  if (!isPlainInputError(plain)) {
    throw new InputError({ argument: 'plain', value: plain, expected: 'what toPlain() of an InputError gives' });
  }
  const error = new InputError(...plain.faults);
  error.message = plain.message;
  return error;
}

/**
 * Whether data is what toPlain() of an InputError gives.
 *
 * @param data Anything, such as what came from a worker.
 * @returns Whether it can be made an InputError again.
 * @example isPlainInputError(new Error('of another kind')) // → false
 * Source: this project's error contract (DEVELOPERS.md).
 */
export function isPlainInputError(data: unknown): data is PlainInputError {
  if (typeof data !== 'object' || data === null) return false;
  const { name, message, faults } = data as Partial<Record<keyof PlainInputError, unknown>>;
  return name === 'InputError' && typeof message === 'string' && Array.isArray(faults) && faults.every(isFault);
}

function isFault(data: unknown): boolean {
  if (typeof data !== 'object' || data === null) return false;
  const { argument, expected } = data as Partial<Record<'argument' | 'expected', unknown>>;
  return typeof argument === 'string' && typeof expected === 'string';
}
