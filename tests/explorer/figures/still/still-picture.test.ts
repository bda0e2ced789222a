// The picture of the still as numbers: to scale, levels and dashes by the record, red only for what must not be.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PathMark, WordMark } from '../../../../explorer/figures/still/marks.js';
import { stillLayout } from '../../../../explorer/figures/still/layout.js';
import type { PictureSize } from '../../../../explorer/figures/still/layout.js';
import { stillPicture } from '../../../../explorer/figures/still/picture.js';
import type { StillPicture } from '../../../../explorer/figures/still/picture.js';
import type { StillMoment } from '../../../../explorer/rows/still-moment.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';
import { doubler, platedStill, pot } from '../../../support/train-problems.js';
import {
  barePot,
  coldPlates,
  flow,
  jar,
  packedTower,
  picturedCases,
  retorts,
  runLow,
  twelve,
} from './invented-moments.js';
import type { PicturedCase } from './invented-moments.js';

const wide: PictureSize = { width: 608, layout: 'wide', steady: false };
const narrow: PictureSize = { width: 350, layout: 'narrow', steady: false };
const { metric, us } = unitSystems;

const drawn = ({ still, moment }: PicturedCase, size = wide, units = metric): StillPicture =>
  stillPicture(still, moment, units, size);
const changed = (one: PicturedCase, changes: Partial<StillMoment>): PicturedCase => ({
  ...one,
  moment: { ...one.moment, ...changes },
});

describe.each(picturedCases)('the picture of $name', (one) => {
  for (const [size, units] of [
    [wide, metric],
    [wide, us],
    [narrow, metric],
    [narrow, us],
  ] as const) {
    const picture = drawn(one, size, units);

    it(`has a key of its own for each mark and draws only finite numbers, ${size.layout}, ${units.name}`, () => {
      const keys = picture.marks.map(({ kind, key }) => `${kind} ${key}`);
      expect(new Set(keys).size).toBe(keys.length);
      expect(JSON.stringify(picture.marks)).not.toMatch(/NaN|Infinity|null|undefined/u);
    });

    it(`stays within its width and height, ${size.layout}, ${units.name}`, () => {
      for (const [x, y] of picture.marks.flatMap(pointsOf)) {
        expect(x).toBeGreaterThanOrEqual(-0.5);
        expect(x).toBeLessThanOrEqual(size.width + 0.5);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(picture.height);
      }
    });
  }

  it('is described in one sentence with numbers, and has a table as wide as its head', () => {
    const { description, table } = drawn(one);
    expect(description).toMatch(/^The still .*\d.*\.$/u);
    expect(description).not.toMatch(/NaN|undefined|null/u);
    for (const row of table().rows) expect(row).toHaveLength(table().columns.length);
  });
});

describe('everything that has a size', () => {
  it('is drawn at one scale, as large as fits', () => {
    const { scale, vessels, column, floor } = stillLayout(twelve.still, twelve.moment.jars, metric, wide);
    const { kettle, column: plates } = twelve.still;
    if (plates.kind !== 'plates') throw new Error('plates');
    expect(vessels[0]!.width / kettle.diameter_m).toBeCloseTo(scale, 6);
    const height_m = kettle.volume_m3 / (Math.PI * (kettle.diameter_m / 2) ** 2);
    expect((floor - vessels[0]!.brim) / height_m).toBeCloseTo(scale, 6);
    expect((column!.bottom - column!.top) / (plates.count * plates.spacing_m)).toBeCloseTo(scale, 6);
    expect(column!.width / plates.diameter_m).toBeCloseTo(scale, 6);
    const bar = pathOf(drawn(twelve), 'scale');
    const [left, right] = [bar.d.match(/^M([\d.]+)/u)![1]!, bar.d.match(/H([\d.]+)$/u)![1]!];
    const metres = Number(textOf(drawn(twelve), 'scale').replace(/\u00a0m$/u, ''));
    expect((Number(right) - Number(left)) / metres).toBeCloseTo(scale, 0);
  });

  it('says so where a slim column had to be drawn wider than it is', () => {
    const still = platedStill(60);
    const moment = {
      ...twelve.moment,
      stages: Array.from({ length: 60 }, (_, i) => ({ ...twelve.moment.stages[5]!, number: i + 1 })),
    };
    const { column, scale } = stillLayout(still, moment.jars, metric, wide);
    expect(column!.widened).toBeGreaterThan(1.5);
    expect(column!.width).toBeCloseTo(column!.widened * 0.1 * scale, 6);
    expect(stillPicture(still, moment, metric, wide).note).toMatch(/drawn \d\.\d times as wide as it is/u);
    expect(drawn(twelve).note).not.toMatch(/times as wide/u);
  });

  it('is legible from a bench still to a distillery, at both widths', () => {
    for (const volume_m3 of [0.02, 0.2, 5]) {
      const kettle = { ...pot().kettle, volume_m3, diameter_m: Math.cbrt((4 * volume_m3) / Math.PI) };
      for (const size of [wide, narrow]) {
        const { vessels } = stillLayout({ ...pot(), kettle }, [jar(1, 'underSpout')], metric, size);
        expect(vessels[0]!.width).toBeGreaterThan(90);
      }
    }
  });

  it('fits whatever the still and the jars: any vessels, any column, any jar', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const spread = (low: number, high: number): fc.Arbitrary<number> => share.map((at) => low * (high / low) ** at);
    const stills = fc.record({
      kettle_m3: spread(0.01, 10),
      doubler_m3: spread(0.005, 2),
      doublers: fc.integer({ min: 0, max: 3 }),
      plates: fc.integer({ min: 0, max: 60 }),
      jar_m3: spread(1e-4, 1),
      jars: fc.integer({ min: 1, max: 40 }),
    });
    fc.assert(
      fc.property(stills, fc.constantFrom(wide, narrow), (any, size) => {
        const across = (volume_m3: number): number => Math.cbrt((4 * volume_m3) / Math.PI);
        const base = any.plates === 0 ? pot() : platedStill(any.plates);
        const still = {
          ...base,
          kettle: { ...base.kettle, volume_m3: any.kettle_m3, diameter_m: across(any.kettle_m3) },
          doublers: Array.from({ length: any.doublers }, () => ({
            ...doubler,
            volume_m3: any.doubler_m3,
            diameter_m: across(any.doubler_m3),
          })),
        };
        const jars = Array.from({ length: any.jars }, (_, i) => ({
          ...jar(i + 1, i === 0 ? 'underSpout' : 'waiting'),
          size_m3: any.jar_m3,
        }));
        const { height, spout, vessels, vapourPipe, coolerTop, coolerBottom } = stillLayout(still, jars, metric, size);
        expect(height).toBeLessThanOrEqual(size.layout === 'wide' ? 701 : 581);
        expect(spout[0]).toBeLessThan(size.width);
        expect(coolerTop).toBeLessThan(coolerBottom);
        for (const vessel of vessels) expect(vapourPipe).toBeLessThan(vessel.neck);
      }),
      { numRuns: 60 },
    );
  });
});

describe('levels', () => {
  it('stand where the record says, to scale', () => {
    const { scale, floor } = stillLayout(barePot.still, barePot.moment.jars, metric, wide);
    expect(startOf(pathOf(drawn(barePot), 'vessel 0 surface'))[1]).toBeCloseTo(floor - 0.61 * scale, 1);
    const retort = stillLayout(retorts.still, retorts.moment.jars, metric, wide);
    expect(startOf(pathOf(drawn(retorts), 'vessel 1 surface'))[1]).toBeCloseTo(retort.floor - 0.18 * retort.scale, 1);
  });

  it('draw no liquid on dry plates', () => {
    expect(pathOf(drawn(coldPlates), 'plates liquid').d).toBe('');
    expect(pathOf(drawn(twelve), 'plates liquid').d.match(/z/gu)).toHaveLength(12);
  });

  it('fill the jar under the spout and keep the filled ones in their order to its right', () => {
    const picture = drawn(barePot);
    const centres = [3, 1, 2].map((number) => wordOf(picture, `jar ${String(number)} strength`).x);
    expect(centres).toEqual([...centres].sort((a, b) => a - b));
    const half = drawn(changed(barePot, { jars: [jar(1, 'underSpout', 0.5)] }));
    const full = drawn(changed(barePot, { jars: [jar(1, 'underSpout', 1)] }));
    const [low, high] = [half, full].map((one) => startOf(pathOf(one, 'jar 1 surface'))[1]);
    expect(high).toBeLessThan(low!);
  });

  it('say how many jars are not drawn where there is no room for them', () => {
    const jars = [...Array.from({ length: 30 }, (_, i) => jar(i + 1, 'filled')), jar(31, 'underSpout', 0.2)];
    const picture = drawn(changed(barePot, { jars }), narrow);
    const shown = picture.marks.filter(({ key }) => /^jar \d+ strength$/u.test(key)).length;
    expect(textOf(picture, 'jars')).toContain(`; ${String(31 - shown)} not drawn`);
    expect(picture.marks.some(({ key }) => key === 'jar 30 strength')).toBe(true);
  });
});

describe('streams', () => {
  it('stand still while nothing has passed, whatever the clock says', () => {
    const later = drawn(changed(twelve, { time_s: twelve.moment.time_s + 1 }));
    const paths = (picture: StillPicture): unknown => picture.marks.filter((mark) => mark.kind === 'path');
    expect(paths(later)).toEqual(paths(drawn(twelve)));
  });

  it('move along by what has passed, and not for who wants no motion', () => {
    const on = changed(twelve, { reflux: flow(0.66, 0.402) });
    const along = (one: PicturedCase, size = wide): number => pathOf(drawn(one, size), 'reflux').dashes!.along;
    expect(along(on)).not.toBe(along(twelve));
    const steady = { ...wide, steady: true };
    expect(along(on, steady)).toBe(along(twelve, steady));
  });

  it('have longer dashes the more vapour there is, and none where there is none', () => {
    const dash = (share: number): number | undefined =>
      maybePath(drawn(changed(barePot, { head: { temperature_K: 366, vapour: flow(share) } })), 'vapour pipe vapour')
        ?.dashes?.dash;
    expect(dash(1)).toBeGreaterThan(dash(0.6)!);
    expect(dash(0)).toBeUndefined();
  });

  it('show neither distillate nor reflux before there is any', () => {
    const keys = drawn(coldPlates).marks.flatMap((mark) => (mark.kind === 'path' ? [mark.key] : []));
    expect(keys).not.toContain('reflux');
    expect(keys).not.toContain('distillate');
    expect(textOf(drawn(coldPlates), 'spout runs')).toBe('nothing runs');
  });
});

describe('red', () => {
  const redIn = (picture: StillPicture): boolean =>
    picture.warnings.length > 0 || picture.marks.some((mark) => mark.kind === 'path' && mark.look === 'warning');

  it('is kept for what must not be', () => {
    for (const one of [barePot, twelve, coldPlates, packedTower]) expect(redIn(drawn(one))).toBe(false);
  });

  it('marks a kettle below its heating surface, in words as well', () => {
    const picture = drawn(runLow);
    expect(redIn(picture)).toBe(true);
    expect(picture.warnings).toEqual(['The kettle’s heating surface stands out of the liquid.']);
    expect(picture.description).toContain('the kettle’s heating surface stands out of the liquid');
  });

  it('marks a doubler whose vapour pipe ends above its liquid', () => {
    expect(drawn(retorts).warnings).toEqual(['The vapour pipe of doubler 2 ends above its liquid.']);
  });
});

describe('words', () => {
  it('give temperature and strength in the units in use', () => {
    expect(textOf(drawn(barePot), 'vessel 0 1')).toBe('94.1\u00a0°C');
    expect(textOf(drawn(barePot, wide, us), 'vessel 0 1')).toBe('201.3\u00a0°F');
    expect(textOf(drawn(barePot), 'spout')).toBe('spout 45.0\u00a0%\u00a0vol');
    expect(textOf(drawn(barePot, wide, us), 'scale')).toMatch(/ft$/u);
  });

  it('tell total reflux, a ratio and none apart', () => {
    const ratio = (refluxRatio: number): string => textOf(drawn(changed(twelve, { refluxRatio })), 'reflux');
    expect([Infinity, 3, 0].map(ratio)).toEqual(['total reflux', 'reflux 3.0\u00a0:\u00a01', 'no reflux']);
  });

  it('put every part of the still into the table', () => {
    const names = drawn(packedTower)
      .table()
      .rows.map(([name]) => name);
    expect(names).toEqual([
      'kettle',
      ...[1, 2, 3, 4, 5, 6].map((i) => `packing, stage ${String(i)}`),
      'partial condenser',
      'head',
      'condenser',
      'spout',
      'jar 1',
      'jar 2',
      'jar 3',
    ]);
  });
});

function pathOf(picture: StillPicture, key: string): PathMark {
  const found = maybePath(picture, key);
  if (found === undefined) throw new Error(`no path '${key}'`);
  return found;
}

function maybePath(picture: StillPicture, key: string): PathMark | undefined {
  return picture.marks.find((mark): mark is PathMark => mark.kind === 'path' && mark.key === key);
}

function wordOf(picture: StillPicture, key: string): WordMark {
  const found = picture.marks.find((mark): mark is WordMark => mark.kind === 'words' && mark.key === key);
  if (found === undefined) throw new Error(`no words '${key}'`);
  return found;
}

function textOf(picture: StillPicture, key: string): string {
  return wordOf(picture, key)
    .parts.map(({ text }) => text)
    .join('');
}

function startOf({ d }: PathMark): [number, number] {
  const [, x, y] = /^M(\S+) ([\d.-]+)/u.exec(d)!;
  return [Number(x), Number(y)];
}

/** Absolute points that a mark names: of a path where its lines begin and go, of words where they stand. */
function pointsOf(mark: StillPicture['marks'][number]): [number, number][] {
  if (mark.kind === 'words') return [[mark.x, mark.y]];
  return [...mark.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/gu)].map(([, x, y]) => [Number(x), Number(y)]);
}
