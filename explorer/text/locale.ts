// How the reader writes a number: with a decimal point or a decimal comma, as their system says. Thousands stand
// apart by a thin space for everyone, so that no mark between digits can be taken for the other.

export type DecimalMark = '.' | ',';

/** Asked for most often, and known: to ask the browser's number formats takes some 10 ms before the first figure. */
const withPoint = /^en(-(AU|CA|GB|IE|IN|NZ|US))?$/u;

/** The mark of a locale; a point where it uses another, since the pages speak English. */
export function decimalMarkOf(locale: string): DecimalMark {
  return withPoint.test(locale) ? '.' : askedMarkOf(locale);
}

/** The same as the browser's number formats have it. */
export function askedMarkOf(locale: string): DecimalMark {
  const parts = new Intl.NumberFormat(locale).formatToParts(0.5);
  return parts.find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';
}

/** Absent where there is no page: then the pages' own English. */
const { navigator } = globalThis as { readonly navigator?: { readonly language: string } };

/** The reader's own: of the first language they ask pages for. */
export const decimalMark: DecimalMark = decimalMarkOf(navigator?.language ?? 'en');
