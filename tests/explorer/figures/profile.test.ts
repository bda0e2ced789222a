// Profiles up a column as numbers: plates upright, what is now in ink, what was before in pencil, dry plates left out.

import { describe, expect, it } from 'vitest';
import { columnStrength, columnTemperature } from '../../../explorer/figures/column-profile.js';
import type { Drawing, FigureSize, Mark } from '../../../explorer/figures/figure.js';
import { profile } from './profile-cases.js';

const wide: FigureSize = { width: 432, layout: 'wide' };

describe.each([
  { name: 'strength', figure: columnStrength, key: 'liquid' },
  { name: 'temperature', figure: columnTemperature, key: 'temperature' },
])('the profile of $name', ({ figure, key }) => {
  it('puts plates on the vertical axis, from what the column stands on to its top', () => {
    const drawing = figure(profile, wide);
    expect(drawing.panels[0]!.y.domain).toEqual([0, 12]);
    expect(curve(drawing, key).y).toEqual(profile.moments[0]!.stage);
  });

  it('draws now in ink with a dot a plate, over before in pencil with its time', () => {
    const { marks, names } = figure(profile, wide).panels[0]!;
    const curves = marks.flatMap((mark) => (mark.kind === 'curve' ? [mark.hand] : []));
    expect(curves[0]).toBe('pencil');
    expect(curves.at(-1)).toBe('ink');
    expect(marks.filter(({ kind }) => kind === 'dot')).toHaveLength(13);
    expect(names.find(({ hand }) => hand === 'pencil')!.text).toBe('at 2 h 1 min');
  });

  it('leaves out dry plates, and a pencil line of a single one', () => {
    const [now, before] = profile.moments;
    const only = <Row extends { readonly stage: readonly number[] }>(row: Row, count: number): Row =>
      Object.fromEntries(
        Object.entries(row).map(([name, value]) => [name, Array.isArray(value) ? value.slice(0, count) : value]),
      ) as Row;
    const drawing = figure({ ...profile, moments: [only(now!, 5), only(before!, 1)] }, wide);
    expect(curve(drawing, key).x).toHaveLength(5);
    expect(drawing.panels[0]!.marks.filter((mark) => mark.kind === 'curve' && mark.hand === 'pencil')).toEqual([]);
    expect(drawing.table().rows.at(-1)).toEqual(['12', 'dry', 'dry']);
  });

  it('keeps its axes while the cursor moves between hot moments', () => {
    const [now, before] = profile.moments;
    const [one, other] = [now!, before!].map((moment) => figure({ ...profile, moments: [moment] }, wide).x.domain);
    expect(one).toEqual(other);
  });
});

function curve(drawing: Drawing, key: string): Extract<Mark, { kind: 'curve' }> {
  const found = drawing.panels[0]!.marks.find((mark) => mark.kind === 'curve' && mark.key === key);
  if (found?.kind !== 'curve') throw new Error(`no curve '${key}'`);
  return found;
}
