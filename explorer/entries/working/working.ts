// The contract of a working: a small computation with numbers of its own, typed into its sentence, and an answer in words.
// A working is one file in pieces/ and one line in list.ts. Its numbers are rows of the table in state/working-numbers.ts.

import { html, nothing } from 'lit';
import { numberWithUnit } from '../../components/number/number-spec.js';
import { specOf } from '../../state/number-specs.js';
import { workingNumbers, type WorkingNumberName, type WorkingValues } from '../../state/working-numbers.js';
import { valuesOf, workingsIn, workingsName, type WorkingRow, type Workings } from '../../state/workings.js';
import type { Common, Json } from '../../state/notebook-record.js';
import type { Scenario } from '../../state/scenario.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { Asks } from '../../worker/questions.js';
import type { CautionName, Here, Later, Provided } from '../entry.js';
import { anyPiece, type Piece, type PieceData } from '../pieces.js';
import { plainWords } from '../plain-words.js';
import './kp-working.js';
import type { WorkingsChangedEvent } from './events.js';

/** Words, a number to be set, or a clause that can be put in or left out. */
export type WorkingPart =
  | string
  | { readonly blank: WorkingNumberName }
  | {
      /** Name under which it is remembered whether it stands. */
      readonly clause: string;
      /** The word to press that puts it in. */
      readonly put: string;
      readonly parts: readonly (string | { readonly blank: WorkingNumberName })[];
      /** What stands in its place while it is left out. */
      readonly instead?: string;
      /** Whether it stands before anyone has put it in or left it out. */
      readonly stands?: boolean;
    };

/** A list of rows that the reader lengthens and shortens. */
export interface WorkingList {
  readonly name: string;
  /** What one row is called: 'spirit'. */
  readonly row: string;
  readonly parts: readonly (string | { readonly blank: WorkingNumberName } | { readonly choice: true })[];
  readonly choices?: readonly (readonly [name: string, words: string])[];
  /** Rows before anyone has touched it. Invented. */
  readonly start: readonly WorkingRow[];
}

/** A row that can be put in by a press. */
export interface OfferedRow {
  /** 'Jar 3: 1.0 L at 78.2 % vol'. */
  readonly words: string;
  readonly row: WorkingRow;
}

/** What a working computes with. */
export interface Worked {
  readonly values: WorkingValues;
  /** Whether a clause stands. */
  readonly says: (clause: string) => boolean;
  readonly rows: readonly WorkingRow[];
  readonly units: UnitSystem;
}

export interface Working {
  /** What it asks once the page stands, where it offers rows of the page's run. */
  readonly asksLater?: (scenario: Scenario, common: Common) => Asks;
  /** Words to press that put rows in, from the answers that have come. */
  readonly offers?: (answers: Later['answers'], units: UnitSystem) => readonly OfferedRow[];
  /** Each paragraph a list of words and numbers. */
  readonly sentences: readonly (readonly WorkingPart[])[];
  readonly list?: WorkingList;
  readonly answer: (worked: Worked) => unknown;
  readonly notes?: (worked: Worked) => unknown;
  readonly cautions?: readonly CautionName[];
  readonly provides?: (worked: Worked) => readonly Provided[];
}

/** A working as a piece that an entry can show. */
export function workingPiece(working: Working): Piece {
  const worked = ({ common, units }: Here<PieceData>): Worked => workedOf(working, workingsIn(common), units);
  return anyPiece({
    ...(working.asksLater === undefined ? {} : { asksLater: working.asksLater }),
    view: (here) => view(here, working, worked(here)),
    notes: (here) => working.notes?.(worked(here)) ?? nothing,
    cautions: working.cautions ?? [],
    provides: (here) => working.provides?.(worked(here)) ?? [],
    plain: (here) => [plainSentences(working, worked(here)), plainWords(working.answer(worked(here)))].join('\n'),
  });
}

function workedOf(working: Working, workings: Workings, units: UnitSystem): Worked {
  return {
    values: valuesOf(workings),
    says: (clause) => clauseStands(working, workings, clause),
    rows: rowsOf(working, workings),
    units,
  };
}

/** Whether a clause stands in the sentences of a working. */
export function clauseStands({ sentences }: Working, { said }: Workings, name: string): boolean {
  const part = sentences.flat().find((one) => typeof one === 'object' && 'clause' in one && one.clause === name);
  const start = typeof part === 'object' && 'clause' in part && part.stands === true;
  return Object.hasOwn(said, name) ? said[name]! : start;
}

/** The rows of its list, as the reader has them or as it starts. */
export function rowsOf({ list }: Working, { rows }: Workings): readonly WorkingRow[] {
  if (list === undefined) return [];
  return Object.hasOwn(rows, list.name) ? rows[list.name]! : list.start;
}

function view(here: Here<PieceData>, working: Working, worked: Worked): unknown {
  const changed = ({ detail }: WorkingsChangedEvent): void => {
    const next = detail.next(workingsIn(here.common));
    here.setCommon(workingsName, next as unknown as Json, {
      says: detail.says,
      ...(detail.together === undefined ? {} : { together: `working ${detail.together}` }),
    });
  };
  return html`<kp-working
      .working=${working}
      .workings=${workingsIn(here.common)}
      .units=${here.units}
      .name=${here.id}
      .offered=${working.offers?.(here.later?.answers ?? {}, here.units) ?? []}
      @kp-workings=${changed}
    ></kp-working>
    <div class="working-answer">${working.answer(worked)}</div>`;
}

/** Its sentences with their numbers, as plain text. */
function plainSentences(working: Working, { values, says, rows, units }: Worked): string {
  const number = (name: WorkingNumberName, value: number): string =>
    numberWithUnit(specOf({ ...workingNumbers[name], key: name }, units), value);
  const words = (parts: readonly WorkingPart[]): string =>
    parts
      .map((part) => {
        if (typeof part === 'string') return part;
        if ('blank' in part) return number(part.blank, values[part.blank]);
        return says(part.clause) ? words(part.parts) : (part.instead ?? '');
      })
      .join('');
  const { list } = working;
  const listed = rows.map((row) =>
    (list?.parts ?? [])
      .map((part) => {
        if (typeof part === 'string') return part;
        if ('choice' in part) return list!.choices!.find(([name]) => name === row.choice)?.[1] ?? '';
        return number(part.blank, row.numbers[part.blank] ?? workingNumbers[part.blank].start);
      })
      .join(''),
  );
  return [...working.sentences.map(words), ...listed].map((line) => line.trim()).join('\n');
}
