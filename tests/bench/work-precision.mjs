// Work against precision as a picture: time along one axis, error along the other, both in logarithms; a curve a solver, its name at its end.
// Lower and further left is better.

const WIDTH = 760;
const HEIGHT = 460;
const PLOT = { left: 64, right: WIDTH - 210, top: 34, bottom: HEIGHT - 54 };
const INK = '#1f4fa8';
const PENCIL = ['#5b6470', '#8a6d3b', '#3f7d5d', '#8a4b6b', '#6a5aa8', '#3d7f93', '#9a5b34', '#4f6f2f'];
const NAME_HEIGHT = 16;

/** SVG of solvers { name, own, points: [{ ms, error }] }. */
export function workPrecision(title, solvers) {
  const drawn = solvers
    .map((solver) => ({ ...solver, points: solver.points.filter(({ error }) => error > 0) }))
    .filter(({ points }) => points.length > 1);
  const all = drawn.flatMap(({ points }) => points);
  const x = logarithmic(
    all.map(({ error }) => error),
    PLOT.left,
    PLOT.right,
  );
  const y = logarithmic(
    all.map(({ ms }) => ms),
    PLOT.bottom,
    PLOT.top,
  );
  const curves = drawn.map((solver, i) => {
    const points = [...solver.points].sort((one, other) => one.error - other.error);
    const places = points.map(({ error, ms }) => [x.at(error), y.at(ms)]);
    return { ...solver, places, colour: solver.own ? INK : PENCIL[i % PENCIL.length] };
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" font-family="'Source Sans 3', 'Helvetica Neue', Arial, sans-serif" font-size="13">`,
    `<title>${escaped(title)}</title>`,
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="#fbfaf7"/>`,
    ...x.decades.map((decade) => gridLine(x.at(decade), PLOT.top, x.at(decade), PLOT.bottom)),
    ...y.decades.map((decade) => gridLine(PLOT.left, y.at(decade), PLOT.right, y.at(decade))),
    ...x.decades.map((decade) => text(x.at(decade), PLOT.bottom + 18, power(decade), { anchor: 'middle' })),
    ...y.decades.map((decade) => text(PLOT.left - 8, y.at(decade) + 4, String(decade), { anchor: 'end' })),
    text(PLOT.left, 20, 'time of a run, ms', { bold: true }),
    text(PLOT.right, HEIGHT - 14, 'error of the spout’s mole fraction', { anchor: 'end', bold: true }),
    ...curves.map(curve),
    ...names(curves),
    '</svg>\n',
  ].join('\n');
}

/** A scale over whole decades that holds the values. */
function logarithmic(values, from, to) {
  const low = Math.floor(Math.log10(Math.min(...values)));
  const high = Math.ceil(Math.log10(Math.max(...values)));
  return {
    at: (value) => from + ((Math.log10(value) - low) / (high - low)) * (to - from),
    decades: Array.from({ length: high - low + 1 }, (_none, i) => Number(`1e${low + i}`)),
  };
}

function curve({ places, colour, own }) {
  const line = places.map(([px, py]) => `${px.toFixed(1)},${py.toFixed(1)}`).join(' ');
  const dots = places.map(([px, py]) => `<circle cx="${px.toFixed(1)}" cy="${py.toFixed(1)}" r="2.6"/>`).join('');
  return `<polyline points="${line}" fill="none" stroke="${colour}" stroke-width="${own ? 2.6 : 1.3}"/><g fill="${colour}">${dots}</g>`;
}

/** Names beside the right-hand ends of the curves, moved apart where they would meet. */
function names(curves) {
  const placed = curves
    .map(({ name, places, colour, own }) => ({ name, colour, own, end: places.at(-1), y: places.at(-1)[1] }))
    .sort((one, other) => one.y - other.y);
  for (let i = 1; i < placed.length; i++) placed[i].y = Math.max(placed[i].y, placed[i - 1].y + NAME_HEIGHT);
  const below = Math.max(0, (placed.at(-1)?.y ?? 0) - PLOT.bottom);
  return placed.map(({ name, colour, own, end: [ex, ey], y }) => {
    const at = y - below;
    const lead = `<path d="M${(ex + 4).toFixed(1)} ${ey.toFixed(1)}L${PLOT.right + 8} ${at.toFixed(1)}" stroke="${colour}" stroke-width="0.6" stroke-dasharray="2 3" fill="none"/>`;
    return lead + text(PLOT.right + 12, at + 4, name, { colour, bold: own });
  });
}

function gridLine(x1, y1, x2, y2) {
  return `<path d="M${x1.toFixed(1)} ${y1.toFixed(1)}L${x2.toFixed(1)} ${y2.toFixed(1)}" stroke="#dedbd2" stroke-width="1"/>`;
}

function text(x, y, words, { anchor = 'start', bold = false, colour = '#2b2b2b' } = {}) {
  return `<text x="${x.toFixed(1)}" y="${y.toFixed(1)}" text-anchor="${anchor}" fill="${colour}"${bold ? ' font-weight="600"' : ''}>${escaped(words)}</text>`;
}

/** A power of ten as its exponent is written: 10⁻⁶. */
function power(decade) {
  const raised = { '-': '⁻', 0: '⁰', 1: '¹', 2: '²', 3: '³', 4: '⁴', 5: '⁵', 6: '⁶', 7: '⁷', 8: '⁸', 9: '⁹' };
  return `10${[...String(Math.round(Math.log10(decade)))].map((sign) => raised[sign]).join('')}`;
}

function escaped(words) {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
