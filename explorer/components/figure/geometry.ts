// Where things stand in a figure: plot rectangles under one another, titles above them, the row of the
// x axis title at the foot. All px, from the top left of the figure.

import type { Drawing, FigureSize } from '../../figures/figure.js';

/** Room of tick labels inside a narrow figure. */
export const tickRoom = 28;
const titleToPlot = 20;
const plotToNextTitle = 31;
const firstTitle = 10;
const plotToAxisTitle = 36;
const foot = 48;
/** Between the text column and the margin. */
export const marginGap = 56;

export interface Geometry {
  /** Left of the plot rectangles, and their width. */
  readonly left: number;
  readonly width: number;
  readonly panels: readonly { readonly titleY: number; readonly top: number; readonly bottom: number }[];
  readonly axisTitleY: number;
  readonly height: number;
}

export function figureSize(hostWidth: number, layout: FigureSize['layout']): FigureSize {
  return { layout, width: Math.max(120, Math.round(layout === 'wide' ? hostWidth : hostWidth - tickRoom)) };
}

export function geometryOf(drawing: Drawing, size: FigureSize): Geometry {
  const left = size.layout === 'wide' ? 0 : tickRoom;
  let titleY = firstTitle;
  const panels = drawing.panels.map((panel) => {
    const top = titleY + titleToPlot;
    const bottom = top + panel.height;
    const placed = { titleY, top, bottom };
    titleY = bottom + plotToNextTitle;
    return placed;
  });
  const bottom = panels.at(-1)?.bottom ?? 0;
  return {
    left,
    width: size.width - drawing.rightRoom,
    panels,
    axisTitleY: bottom + plotToAxisTitle,
    height: bottom + foot,
  };
}
