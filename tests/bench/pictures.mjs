// Work against precision, drawn from the tables of the page: the picture cannot say anything else than the numbers beside it.

import { workPrecision } from './work-precision.mjs';

/** Which sections are drawn, under which name; `own` begins the name of our solver. */
const PICTURES = [
  { section: 'Yardstick problem', file: 'benchmarks-yardstick.svg', own: 'bdf5', run: null },
  { section: 'Full model', file: 'benchmarks-full-model.svg', own: 'solve', run: '20 plates' },
  { section: 'Full model', file: 'benchmarks-from-cold.svg', own: 'solve', run: '20 plates from cold' },
];

/** The line of Markdown that shows a picture of this section, for the section to put in its text. */
export function pictureLines(section) {
  return PICTURES.filter((picture) => picture.section === section).map(
    ({ file, run }) => `![Time of a run against its error${run === null ? '' : `, ${run}`}](${file})`,
  );
}

/** Pictures of a page, as [file, SVG]; none of sections that it has not. */
export function picturesOf(page) {
  return PICTURES.flatMap(({ section, file, own, run }) => {
    const text = page.split(/^## /m).find((part) => part.startsWith(`${section}\n`));
    const rows = text === undefined ? [] : rowsOf(text).filter((row) => run === null || row.run === run);
    if (rows.length === 0) return [];
    const names = [...new Set(rows.map(({ solver }) => solver))];
    const solvers = names.map((name) => ({
      name,
      own: name === own,
      points: rows
        .filter(({ solver }) => solver === name)
        .map(({ median, error }) => ({ ms: Number(median), error: Number(error) })),
    }));
    return [[file, workPrecision(`${section}${run === null ? '' : `, ${run}`}: time against error`, solvers)]];
  });
}

/** Rows of the first table of a section, by the names in its head. */
function rowsOf(text) {
  const lines = text.split('\n');
  const begin = lines.findIndex((line) => line.startsWith('|'));
  const cells = (line) => line.split('|').map((cell) => cell.trim());
  const names = cells(lines[begin]);
  const end = lines.findIndex((line, i) => i > begin && !line.startsWith('|'));
  return lines
    .slice(begin + 2, end)
    .map((line) => Object.fromEntries(cells(line).map((cell, i) => [names[i], cell])))
    .filter(({ error }) => error !== undefined);
}
