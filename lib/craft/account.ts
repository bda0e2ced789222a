// Where the pure alcohol of a charge has gone. It is counted as volume at 20 °C, V q, which adds up as masses do.

import { choiceFault, fieldFaults, listFault, refuse } from '../arguments.js';
import { checkRange, InputError } from '../errors.js';
import { proofGallonsFromPureAlcohol } from '../mixture/proof.js';
import type { CubicMetre } from '../units/quantities.js';
import { checkSpirit, type Spirit } from './spirit.js';

/** What a quantity of spirit is in the books. Source: words of the trade, common practice, no published source. */
export const ACCOUNT_PARTS = ['hearts', 'heads', 'tails', 'feints', 'spent'] as const;
/** 'heads' counts the foreshots as well; 'feints' is what is kept for the next run; 'spent' what stays in the kettle. */
export type AccountPart = (typeof ACCOUNT_PARTS)[number];

/** What went in and what was found of it. */
export interface Books {
  /** Everything that was charged: wash, low wines, feints of the run before. */
  readonly charged: readonly Spirit[];
  /** Everything that was measured afterwards. */
  readonly found: readonly { readonly part: AccountPart; readonly spirit: Spirit }[];
}

/** The account of one run or of several. Volumes of pure alcohol at 20 °C; 0.001 m³ is one litre (LPA). */
export interface Account {
  readonly charged_m3: CubicMetre;
  readonly parts_m3: Readonly<Record<AccountPart, CubicMetre>>;
  readonly found_m3: CubicMetre;
  /** Charged less found; below 0 where more was found than charged. */
  readonly gap_m3: CubicMetre;
  /** The gap as a share of what was charged. */
  readonly gapShare: number;
  /** The same four in US proof gallons. */
  readonly proofGallons: { readonly charged: number; readonly found: number; readonly gap: number };
}

/** Entries of an account: more is a slip. */
const MOST = 10_000;

/**
 * The account of pure alcohol: what was charged, where it was found, and the gap.
 *
 * Equation: gap = Σ V q (charged) − Σ V q (found).
 * @param books What was measured: `charged`, at least one spirit with pure alcohol in it, and `found`, each with its `part`: 'hearts', 'heads', 'tails', 'feints' or 'spent'; volumes [m³ at 20 °C], strengths 0..1.
 * @returns Volumes of pure alcohol [m³ at 20 °C], the gap as a share of what was charged, and US proof gallons.
 * @throws InputError when nothing was charged, a part is unknown, or a field is outside its range.
 * @example account({ charged: [{ volume_m3: 0.2, strength: 0.1 }], found: [{ part: 'hearts', spirit: { volume_m3: 0.02, strength: 0.9 } }] }).gap_m3 // → 0.002
 * Source: definition; 27 CFR 19.1 for the proof gallon.
 */
export function account(books: Books): Account {
  refuse(fieldFaults('books', books, ['charged', 'found']));
  refuse(listFault('books.charged', books.charged, 'spirits', 1, MOST));
  refuse(listFault('books.found', books.found, 'parts', 0, MOST));
  refuse(books.found.flatMap((one, i) => fieldFaults(`books.found[${String(i)}]`, one, ['part', 'spirit'])));
  const charged_m3 = total(books.charged.map((spirit, i) => pure(spirit, `books.charged[${String(i)}]`)));
  if (charged_m3 === 0) {
    throw new InputError({ argument: 'books.charged', value: books.charged, expected: 'something with alcohol in it' });
  }
  const parts_m3: Record<AccountPart, CubicMetre> = { hearts: 0, heads: 0, tails: 0, feints: 0, spent: 0 };
  books.found.forEach(({ part, spirit }, i) => {
    refuse(choiceFault(`books.found[${String(i)}].part`, part, ACCOUNT_PARTS));
    parts_m3[part] += pure(spirit, `books.found[${String(i)}].spirit`);
  });
  const found_m3 = total(Object.values(parts_m3));
  const gap_m3 = charged_m3 - found_m3;
  checkRange('books', gap_m3, -Number.MAX_VALUE, Number.MAX_VALUE, 'volumes that can be added up');
  const gallons = proofGallonsFromPureAlcohol;
  return {
    charged_m3,
    parts_m3,
    found_m3,
    gap_m3,
    gapShare: gap_m3 / charged_m3,
    proofGallons: {
      charged: gallons(charged_m3),
      found: gallons(found_m3),
      gap: Math.sign(gap_m3) * gallons(Math.abs(gap_m3)),
    },
  };
}

function pure(spirit: Spirit, argument: string): CubicMetre {
  checkSpirit(spirit, argument);
  return spirit.volume_m3 * spirit.strength;
}

function total(volumes: readonly CubicMetre[]): CubicMetre {
  return volumes.reduce((sum, volume) => sum + volume, 0);
}
