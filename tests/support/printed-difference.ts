// Two texts that should print the same numbers, compared number by number in units of the last digit printed.

/** What two printed texts differ by. */
export interface PrintedDifference {
  /** Numbers in them. */
  readonly numbers: number;
  /** How many differ by one in the last digit printed: it lay on the edge of rounding. */
  readonly byOne: number;
  /** What differs by more, or in words: the places of both texts. */
  readonly beyond: readonly string[];
}

interface Printed {
  readonly value: number;
  readonly decimals: number;
}

// Hours and minutes are one number; a thin space stands between thousands.
const hours = /(?<![\d.])(?:(\d+)\u00a0h(?:\u00a0| )(\d+)\u00a0min|(\d+)\u00a0h\b|(\d+):(\d\d)(?!\d))/gu;
const numeral = /\d[\d\u2009]*(?:\.\d+)?/gu;

export function printedDifference(one: string, other: string): PrintedDifference {
  const [first, second] = [inMinutes(one), inMinutes(other)];
  const [numbers, others] = [numbersOf(first), numbersOf(second)];
  const beyond: string[] = [];
  if (wordsOf(first) !== wordsOf(second)) {
    const lines = second.split('\n');
    first.split('\n').forEach((line, place) => {
      if (wordsOf(line) !== wordsOf(lines[place] ?? '')) beyond.push(`${line} | ${lines[place] ?? ''}`);
    });
    return { numbers: numbers.length, byOne: 0, beyond };
  }
  let byOne = 0;
  numbers.forEach((number, place) => {
    const apart = unitsApart(number, others[place]!);
    if (apart === 1) byOne += 1;
    if (apart > 1)
      beyond.push(`${String(number.value)} | ${String(others[place]!.value)} in: ${lineWith(first, place)}`);
  });
  return { numbers: numbers.length, byOne, beyond };
}

/** How many units of the last digit apart; the finer one's where one lost a zero. */
function unitsApart(one: Printed, other: Printed): number {
  const decimals = Math.max(one.decimals, other.decimals);
  return Math.round(Math.abs(one.value - other.value) * 10 ** decimals);
}

function inMinutes(text: string): string {
  return text.replace(
    hours,
    (_, h?: string, m?: string, whole?: string, h2?: string, m2?: string) =>
      `${String(60 * Number(h ?? whole ?? h2) + Number(m ?? m2 ?? 0))}\u00a0min`,
  );
}

function numbersOf(text: string): readonly Printed[] {
  return (text.match(numeral) ?? []).map((digits) => {
    const plain = digits.replaceAll('\u2009', '');
    return { value: Number(plain), decimals: plain.split('.')[1]?.length ?? 0 };
  });
}

function wordsOf(text: string): string {
  return text.replace(numeral, '#');
}

function lineWith(text: string, place: number): string {
  let before = 0;
  return text.split('\n').find((line) => (before += numbersOf(line).length) > place) ?? '';
}
