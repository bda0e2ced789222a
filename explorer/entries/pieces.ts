// Kinds that show one of several pieces written for the notebook, each a file of its own: results in words, tables.
// A piece is loaded when an entry first shows it.

import { html, nothing } from 'lit';
import type { Common, Json } from '../state/notebook-record.js';
import type { Scenario } from '../state/scenario.js';
import type { Asks } from '../worker/questions.js';
import { choosing, type Choice } from './choice.js';
import {
  anyKind,
  good,
  shown,
  wrong,
  type Answered,
  type CautionName,
  type EntryKind,
  type Here,
  type Provided,
} from './entry.js';
import { inWords, plainWords } from './plain-words.js';

/** Which piece an entry shows. */
export interface PieceData {
  readonly show: string;
}

/** A piece: what it asks and what it shows. */
export interface Piece<Asked extends Asks = Asks> {
  readonly asks?: (scenario: Scenario, common: Common) => Asked;
  readonly asksLater?: (scenario: Scenario, common: Common) => Asks;
  readonly view: (here: Here<PieceData, Asked>, now: Answered<Asked>) => unknown;
  readonly notes?: (here: Here<PieceData, Asked>, now: Answered<Asked>) => unknown;
  readonly cautions?: readonly CautionName[];
  /** Results by name for other entries of the page. */
  readonly provides?: (here: Here<PieceData, Asked>, now: Answered<Asked>) => readonly Provided[];
  /** As plain text, where the view is made of elements that hold their words themselves. */
  readonly plain?: (here: Here<PieceData, Asked>, now: Answered<Asked>) => string;
}

/** A line of a list of pieces. */
export interface PieceLine extends Choice {
  readonly load: () => Promise<Piece>;
}

/** A piece in a list of pieces, which ask different things. */
export function anyPiece<Asked extends Asks>(piece: Piece<Asked>): Piece {
  return piece as unknown as Piece;
}

interface KindWords {
  readonly name: string;
  readonly title: string;
  readonly about: string;
  readonly choose: string;
}

const noAsks: Asks = {};

export function kindOfPieces({ name, title, about, choose }: KindWords, lines: readonly PieceLine[]): EntryKind {
  const loaded = new Map<string, Piece>();
  const pieceOf = ({ show }: PieceData): Piece => loaded.get(show)!;
  const lineOf = (show: Json | undefined): PieceLine | undefined => lines.find((line) => line.name === show);
  /** What a piece is drawn with; one that asks nothing waits for nothing. */
  const nowOf = (here: Here<PieceData>): Answered | undefined =>
    here.now ?? (pieceOf(here.data).asks === undefined ? { scenario: here.scenario, answers: {} } : undefined);
  const of = <Result>(
    here: Here<PieceData>,
    otherwise: Result,
    read: (piece: Piece, now: Answered) => Result,
  ): Result => {
    const now = nowOf(here);
    return now === undefined ? otherwise : read(pieceOf(here.data), now);
  };
  const drawn = (here: Here<PieceData>): unknown =>
    of<unknown>(here, html`<div class="entry-to-come"></div>`, (piece, now) => piece.view(here, now));
  return anyKind<PieceData, Asks>({
    name,
    title,
    about,
    start: { show: lines[0]!.name },
    check: (data) => {
      const { show } = (data ?? {}) as { show?: Json };
      return lineOf(show) === undefined
        ? wrong(`there is none called ${shown(show)}, only ${lines.map((line) => line.name).join(', ')}`)
        : good({ show: show as string });
    },
    label: ({ show }) => lineOf(show)!.title,
    prepare: ({ show }) =>
      loaded.has(show)
        ? undefined
        : lineOf(show)!
            .load()
            .then((piece) => void loaded.set(show, piece)),
    asks: (data, scenario, common) => pieceOf(data).asks?.(scenario, common) ?? noAsks,
    asksLater: (data, scenario, common) => pieceOf(data).asksLater?.(scenario, common) ?? noAsks,
    view: drawn,
    notes: (here) => of<unknown>(here, nothing, (piece, now) => piece.notes?.(here, now) ?? nothing),
    cautions: (data) => pieceOf(data).cautions ?? [],
    provides: (here) => of<readonly Provided[]>(here, [], (piece, now) => piece.provides?.(here, now) ?? []),
    edit: () =>
      Promise.resolve({
        edit: ({ data, change }) =>
          choosing(choose, lines, data.show, (show) =>
            change(() => ({ show }), { says: `${lineOf(show)!.title} chosen` }),
          ),
      }),
    words: (here) => of(here, '', (piece, now) => piece.plain?.(here, now) ?? plainWords(drawn(inWords(here)))),
  });
}
