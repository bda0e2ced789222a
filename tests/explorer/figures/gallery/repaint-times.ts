// How long a repaint takes: figure function and painting together, in place and with its sheets made
// anew, and for comparison the same curves rebuilt whole by Observable Plot.

import { lineY, plot } from '@observablehq/plot';
import { FigurePainter } from '../../../../explorer/components/figure/figure-painter.js';
import type { Drawing, FigureSize } from '../../../../explorer/figures/figure.js';
import type { Case } from '../cases.js';

const turns = 100;

/** Median, and the tenth that a busy machine disturbs least; ms. */
interface Spent {
  readonly median: number;
  readonly quick: number;
}

export async function repaintTimes(cases: readonly Case[]): Promise<string> {
  const lines: string[] = [];
  let sum: Spent = { median: 0, quick: 0 };
  for (const one of cases) {
    const size: FigureSize = { width: one.pair ? 432 : 608, layout: 'wide' };
    const painter = new FigurePainter(`time-${one.name.replaceAll(' ', '-')}`);
    const place = document.createElement('div');
    place.style.cssText = 'position: absolute; left: -9999px';
    place.append(painter.svg);
    document.body.append(place);
    const inPlace = await timed(() => painter.paint(one.figure(one.rows as never, size), size));
    const anew = await timed((turn) => {
      const wider = { ...size, width: size.width + (turn % 2) };
      painter.paint(one.figure(one.rows as never, wider), wider);
    });
    const whole = await timed(() => {
      place.replaceChildren(...byPlot(one.figure(one.rows as never, size), size));
    });
    place.remove();
    sum = { median: sum.median + inPlace.median, quick: sum.quick + inPlace.quick };
    lines.push(`${one.name}: ${ms(inPlace)} in place, ${ms(anew)} with new sheets, ${ms(whole)} whole by Plot`);
  }
  return `${lines.join('; ')}; all in place ${ms(sum)}`;
}

function byPlot(drawing: Drawing, size: FigureSize): (SVGElement | HTMLElement)[] {
  return drawing.panels.map((panel) =>
    plot({
      width: size.width,
      height: panel.height,
      x: { domain: [...drawing.x.domain] },
      y: { domain: [...panel.y.domain], grid: true },
      marks: panel.marks
        .filter((mark) => mark.kind === 'curve')
        .map(({ x, y }) => lineY(Array.from(x), { x: Array.from(x), y: Array.from(y), sort: null, z: null })),
    }),
  );
}

// Style and layout are forced after each turn, as they would be in the frame.
async function timed(work: (turn: number) => void): Promise<Spent> {
  const times: number[] = [];
  for (let turn = 0; turn < turns; turn++) {
    await new Promise(requestAnimationFrame);
    const start = performance.now();
    work(turn);
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return { median: times[turns >> 1]!, quick: times[Math.floor(turns / 10)]! };
}

function ms({ median, quick }: Spent): string {
  return `${median.toFixed(1)} ms (${quick.toFixed(1)})`;
}
