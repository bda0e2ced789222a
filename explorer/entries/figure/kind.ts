// A figure drawn from the numbers of the page, or two side by side, with what can be laid over them.

import { html, nothing } from 'lit';
import '../../components/figure/kp-figure.js';
import type { Json } from '../../state/notebook-record.js';
import type { Asks } from '../../worker/questions.js';
import { anyKind, good, shown, wrong, type Answered, type Checked, type Here } from '../entry.js';
import { figureLines } from './list.js';
import { layButton } from './laying-over.js';
import type { Drawn, FigureData, FigureLine, FigurePiece } from './piece.js';

const loaded = new Map<string, FigurePiece>();

export const figure = anyKind<FigureData, Asks>({
  name: 'figure',
  title: 'Figure',
  about: 'a curve drawn from the numbers of the page',
  start: { figures: [figureLines[0]!.name] },
  check,
  label: ({ figures }) => figures.map((name) => lineOf(name)!.title).join(' and '),
  prepare: ({ figures }) => {
    const missing = figures.filter((name) => !loaded.has(name));
    if (missing.length === 0) return undefined;
    return Promise.all(missing.map(async (name) => loaded.set(name, await lineOf(name)!.load()))).then(() => undefined);
  },
  asks: ({ figures }, scenario, common) =>
    Object.assign({}, ...figures.map((name) => pieceOf(name).asks(scenario, common))) as Asks,
  view,
  notes: (here) => each(here, 'notes'),
  cautions: ({ figures }) => figures.flatMap((name) => pieceOf(name).cautions ?? []),
  edit: async () => await import('./edit.js'),
  words: (here) => {
    const { now } = here;
    if (now === undefined) return '';
    const size = { width: 608, layout: 'wide' } as const;
    return here.data.figures
      .map((name) => {
        const drawn = pieceOf(name).draw(here, now);
        return drawn.figure(drawn.rows as never, size).description;
      })
      .join('\n');
  },
});

function pieceOf(name: string): FigurePiece {
  return loaded.get(name)!;
}

function lineOf(name: Json): FigureLine | undefined {
  return figureLines.find((line) => line.name === name);
}

function check(data: Json): Checked<FigureData> {
  const { figures } = (data ?? {}) as { figures?: Json };
  if (!Array.isArray(figures) || figures.length < 1 || figures.length > 2)
    return wrong('a figure entry needs `figures`, a list of one or two names');
  const unknown = (figures as readonly Json[]).find((name) => lineOf(name) === undefined);
  if (unknown !== undefined) return wrong(`there is no figure called ${shown(unknown)}`);
  return good({ figures: figures as readonly string[] });
}

function view(here: Here<FigureData>): unknown {
  const { figures } = here.data;
  const { now } = here;
  const pair = figures.length > 1;
  if (now === undefined) return html`<div class="figure-to-come"></div>`;
  const drawn = figures.map((name) => oneFigure(here, now, name, pair));
  const over = [...new Set(figures.flatMap((name) => pieceOf(name).over ?? []))];
  const words = each(here, 'words');
  return html`${pair ? html`<div class="figure-pair wide">${drawn}</div>` : drawn}
  ${
    over.length === 0 && words === nothing
      ? nothing
      : html`<p class="words-to-press">${over.map((name) => layButton(name, here))} ${words}</p>`
  }
  ${each(here, 'below')}`;
}

function oneFigure(here: Here<FigureData>, now: Answered, name: string, pair: boolean): unknown {
  const piece = pieceOf(name);
  const { figure: draw, rows }: Drawn = here.rows(name, () => piece.draw(here, now));
  return html`<kp-figure
    class=${pair ? '' : 'setup-figure'}
    data-figure=${here.mark(name)}
    .figure=${draw}
    .rows=${rows}
    .cursorX=${piece.cursor?.x(here, now) ?? null}
    .pencils=${piece.keeps === true ? here.kept.length : -1}
    ?pair=${pair}
    @cursor-moved=${({ detail }: CustomEvent<{ x: number }>) => {
      if (piece.cursor !== undefined) here.moveCursor(piece.cursor.moved(here, detail.x));
    }}
  ></kp-figure>`;
}

/** What the figures of an entry add, once where both add the same. */
function each(here: Here<FigureData>, part: 'words' | 'below' | 'notes'): unknown {
  const { now } = here;
  if (now === undefined) return nothing;
  const parts = new Set(here.data.figures.map((name) => pieceOf(name)[part]));
  const drawn = [...parts].map((one) => one?.(here, now) ?? nothing).filter((one) => one !== nothing);
  return drawn.length === 0 ? nothing : drawn;
}
