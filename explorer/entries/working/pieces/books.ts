// The account of pure alcohol: what was charged, where it was found, and the gap.

import { html } from 'lit';
import {
  account,
  ACCOUNT_PARTS,
  carryUncertainty,
  proofGallonsFromPureAlcohol,
  type AccountPart,
  type Books,
} from '#lib/index.js';
import { byteOrderMark, csvOf } from '../../../components/figure/take/csv.js';
import { fileName, saveFile } from '../../../components/hand/hand-over.js';
import type { DataTable } from '../../../figures/figure.js';
import { fixed, percent } from '../../../text/format.js';
import { ink } from '../../words.js';
import { volumeInk } from '../amounts.js';
import { decimalsFor } from '../../../text/plus-minus.js';
import { plusMinusMeans } from '../most-of-it.js';
import { spiritOf } from '../spirits-of.js';
import { workingPiece, type Worked } from '../working.js';
import type { WorkingRow } from '../../../state/workings.js';

const choices = [
  ['charged', 'charged'],
  ['hearts', 'hearts'],
  ['heads', 'foreshots and heads'],
  ['tails', 'tails'],
  ['feints', 'feints for the next run'],
  ['spent', 'left in the kettle'],
] as const;

const words: Readonly<Record<string, string>> = Object.fromEntries(choices);

function booksOf(rows: readonly WorkingRow[]): Books {
  const parts: readonly string[] = ACCOUNT_PARTS;
  const part = ({ choice = 'charged' }: WorkingRow): string => choice;
  return {
    charged: rows.filter((row) => !parts.includes(part(row))).map(spiritOf),
    found: rows
      .filter((row) => parts.includes(part(row)))
      .map((row) => ({ part: part(row) as AccountPart, spirit: spiritOf(row) })),
  };
}

/** The lines with what each holds, in litres and per cent whatever the page shows. */
function linesAsTable(rows: readonly WorkingRow[]): DataTable {
  return {
    caption: 'The books',
    columns: [
      { title: 'part', unit: '' },
      { title: 'volume at 20 °C', unit: 'L' },
      { title: 'strength', unit: '% vol' },
      { title: 'pure alcohol', unit: 'L' },
    ],
    rows: rows.map((row) => {
      const { volume_m3, strength } = spiritOf(row);
      const part = words[row.choice ?? 'charged'] ?? 'charged';
      return [
        part,
        fixed(1000 * volume_m3, 3, '.'),
        fixed(100 * strength, 2, '.'),
        fixed(1000 * volume_m3 * strength, 4, '.'),
      ];
    }),
  };
}

/** US proof gallons, however the sign. */
const gallons = (pure_m3: number): number => proofGallonsFromPureAlcohol(Math.abs(pure_m3));

/** How sure each volume and strength is, by its path in the books. */
function sureOf(books: Books, volume: number, strength: number): Readonly<Record<string, number>> {
  const of = (path: string, volume_m3: number) => [
    [`${path}.volume_m3`, volume * volume_m3],
    [`${path}.strength`, strength],
  ];
  return Object.fromEntries([
    ...books.charged.flatMap(({ volume_m3 }, i) => of(`charged[${String(i)}]`, volume_m3)),
    ...books.found.flatMap(({ spirit }, i) => of(`found[${String(i)}].spirit`, spirit.volume_m3)),
  ]) as Readonly<Record<string, number>>;
}

function answer({ rows, values, units }: Worked): unknown {
  const books = booksOf(rows);
  if (books.charged.every(({ volume_m3, strength }) => volume_m3 * strength === 0)) {
    return html`<p>Nothing with alcohol in it was charged, so there is nothing to account for.</p>`;
  }
  const { parts_m3, charged_m3, found_m3, gap_m3, gapShare } = account(books);
  const carried = carryUncertainty(account, books, sureOf(books, values.sureVolume, values.sureStrength));
  const gap = carried.gap_m3!;
  const within = Math.abs(gap_m3) <= gap.uncertainty;
  const decimals = Math.min(3, Math.max(1, decimalsFor(1000 * gap.uncertainty)));
  const row = (name: string, pure_m3: number, total = false): unknown =>
    html`<tr class=${total ? 'total' : ''}>
      <th scope="row">${name}</th>
      <td class="ink">${fixed(1000 * pure_m3, decimals)}</td>
      <td class="ink">${fixed(Math.sign(pure_m3) * gallons(pure_m3), decimals)}</td>
      <td class="ink">${percent(pure_m3 / charged_m3, 1)}</td>
    </tr>`;
  const save = (extension: 'csv' | 'json', text: string, type: string): void =>
    saveFile(fileName('The books', extension), new Blob([text], { type }));
  const there = ACCOUNT_PARTS.filter((part) => parts_m3[part] > 0);
  return html`<div class="wide-table" role="region" aria-label="Account of pure alcohol" tabindex="0">
      <table class="figures-table">
        <thead>
          <tr>
            <th scope="col">pure alcohol</th>
            <th scope="col">LPA</th>
            <th scope="col">US proof gallons</th>
            <th scope="col">of the charge</th>
          </tr>
        </thead>
        <tbody>
          ${row('charged', charged_m3)} ${there.map((part) => row(words[part]!, parts_m3[part]))}
          ${row('found in all', found_m3, true)} ${row('gap', gap_m3, true)}
        </tbody>
      </table>
    </div>
    <p class="words-to-press">
      <button
        type="button"
        class="word-button"
        @click=${() => save('csv', byteOrderMark + csvOf(linesAsTable(rows)), 'text/csv')}
      >
        Save as CSV
      </button>
      <button
        type="button"
        class="word-button"
        @click=${() => save('json', JSON.stringify({ books, account: account(books) }, null, 2), 'application/json')}
      >
        Save as JSON
      </button>
    </p>
    <p>
      Found are ${volumeInk(found_m3, units)} of ${volumeInk(charged_m3, units)} of pure alcohol.
      ${
        within
          ? html`The gap of ${volumeInk(gap, units)} is within what the measurements are sure to:
              <b>the books close.</b>`
          : gap_m3 > 0
            ? html`<b>${volumeInk(gap, units)} are missing</b>, ${ink(percent(gapShare, 1))} of the charge. Where it
                usually hides: on the plates and in the condenser, in the foreshots that were thrown away, in vapour
                that left at the spout, in volumes read warm and taken as of 20 °C, in a charge whose strength was
                guessed.`
            : html`<b
                  >${volumeInk({ value: found_m3 - charged_m3, uncertainty: gap.uncertainty }, units)} more were found
                  than charged.</b
                >
                The charge was stronger or larger than said, feints of an earlier run were left out, or a volume was
                read warm.`
      }
    </p>`;
}

export const booksOfRun = workingPiece({
  sentences: [
    [
      'Volumes are sure to ',
      { blank: 'sureVolume' },
      ', strengths to ',
      { blank: 'sureStrength' },
      '. Strengths are true ones, at 20 °C.',
    ],
  ],
  list: {
    name: 'books',
    row: 'line',
    parts: [
      { choice: true },
      ': ',
      { blank: 'jarVolume' },
      ', measured at ',
      { blank: 'jarTemperature' },
      ', of ',
      { blank: 'jarStrength' },
      ' ',
    ],
    choices,
    start: [
      { choice: 'charged', numbers: { jarVolume: 0.11, jarStrength: 0.1 } },
      { choice: 'charged', numbers: { jarVolume: 0.004, jarStrength: 0.27 } },
      { choice: 'heads', numbers: { jarVolume: 0.0007, jarStrength: 0.9 } },
      { choice: 'hearts', numbers: { jarVolume: 0.0092, jarStrength: 0.86 } },
      { choice: 'tails', numbers: { jarVolume: 0.0035, jarStrength: 0.5 } },
      { choice: 'spent', numbers: { jarVolume: 0.1, jarStrength: 0.011 } },
    ],
  },
  answer,
  notes: () =>
    html`<p>${plusMinusMeans}</p>
      <p>LPA are litres of pure alcohol at 20 °C; a US proof gallon is half a gallon of it at 60 °F (27 CFR 19.1).</p>
      <p>
        These are books of your own. What has to be declared, and how it is measured, the duty rules of your country
        say.
      </p>`,
  provides: ({ rows }) => {
    const books = booksOf(rows);
    const there = books.charged.some(({ volume_m3, strength }) => volume_m3 * strength > 0);
    const gap = there ? account(books).gap_m3 : null;
    return [{ name: 'gap', label: 'pure alcohol missing in the books', quantity: 'volume', value: gap }];
  },
});
