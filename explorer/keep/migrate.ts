// From an older version of the format to the next, one step a version. A step takes a file that its own schema
// has checked and never throws.

import { readAddress } from '../state/address.js';
import { toFileNumbers } from './numbers.js';
import { formatName } from './format.js';
import type { FileV1, FileV2 } from './schema.js';

export interface Migrated {
  readonly file: FileV2;
  readonly page: string | undefined;
  readonly notes: readonly string[];
}

/** Version 1 is an address: one page and its numbers, in litres, per cent, kilowatts and kilopascals. */
export function fromVersion1({ address }: FileV1, pages: readonly string[], now: Date): Migrated {
  const { page, scenario, complaints } = readAddress(address, pages);
  return {
    file: {
      format: formatName,
      version: 2,
      written: now.toISOString(),
      name: '',
      numbers: toFileNumbers(scenario),
      pages: [],
      work: {},
    },
    page,
    notes: complaints,
  };
}
