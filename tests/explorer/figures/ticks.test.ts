// Our axes and curves against those of d3-scale and d3-shape, a general-purpose library.

import { scaleLinear } from 'd3-scale';
import { curveLinear, curveMonotoneX, line } from 'd3-shape';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pathThrough } from '../../../explorer/components/figure/path.js';
import { roundDomain, roundTicks } from '../../../explorer/figures/ticks.js';

const extent = fc
  .tuple(
    fc.double({ min: -1e4, max: 1e4, noNaN: true }),
    fc.integer({ min: -5, max: 4 }),
    fc.double({ min: 1, max: 10, noNaN: true }),
  )
  .map(([low, power, wide]): [number, number] => [low, low + wide * 10 ** power]);
const count = fc.integer({ min: 2, max: 8 });

describe('a round axis', () => {
  it('has the domain, the ticks and the words of d3-scale', () => {
    fc.assert(
      fc.property(extent, count, count, (range, steps, ticks) => {
        const judge = scaleLinear(range, [0, 1]).nice(steps);
        const domain = roundDomain(range, steps);
        expect(domain).toEqual(judge.domain());
        const ours = roundTicks(domain, ticks);
        expect(ours.ticks.map((tick) => tick + 0)).toEqual(judge.ticks(ticks).map((tick) => tick + 0));
        const text = judge.tickFormat(ticks);
        expect(ours.ticks.map((tick) => (tick + 0).toFixed(ours.decimals).replace(/^-(0\.?0*)$/u, '$1'))).toEqual(
          ours.ticks.map((tick) =>
            text(tick + 0)
              .replace('\u2212', '-')
              .replaceAll(',', ''),
          ),
        );
      }),
    );
  });
});

describe('a curve', () => {
  const points = fc.array(
    fc.tuple(
      fc.double({ min: 0, max: 40, noNaN: true }),
      fc.oneof(fc.double({ min: 0, max: 300, noNaN: true }), fc.constant(NaN)),
    ),
    { maxLength: 20 },
  );
  it.each([
    ['straight', false, curveLinear],
    ['smooth', true, curveMonotoneX],
  ] as const)('%s goes where d3-shape leads it, gaps and single points too', (_name, smooth, curve) => {
    const judge = line()
      .curve(curve)
      .defined(([, y]) => !Number.isNaN(y))
      .digits(2);
    fc.assert(
      fc.property(points, (steps) => {
        let x = 0;
        const rising = steps.map(([width, y]): [number, number] => [(x += width), y]);
        expect(pathThrough(rising, smooth)).toBe(judge(rising) ?? '');
      }),
    );
  });
});
