// The page docs/theory/measured-runs.md: measured runs of reference/runs against the library, in plain numbers. The library is handed in, so that
// the command that writes the page and the test that compares it use the same code.

import { readFileSync } from 'node:fs';

const ATMOSPHERE = 101325;
const ZERO = 273.15;

/** Rows of a CSV with a header of # lines; numbers as numbers. */
export function rowsOf(name) {
  const text = readFileSync(new URL(name, import.meta.url), 'utf8');
  const [head, ...lines] = text.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
  const names = head.split(',');
  return lines.map((line) =>
    Object.fromEntries(line.split(',').map((cell, k) => [names[k], /^[\d.]+$/.test(cell) ? Number(cell) : cell])),
  );
}

const sum = (values) => values.reduce((a, b) => a + b, 0);
const mean = (values) => sum(values) / values.length;
const rms = (values) => Math.sqrt(mean(values.map((value) => value * value)));

/** A quantile by straight lines between the sorted values. */
function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  const place = share * (sorted.length - 1);
  const k = Math.floor(place);
  return sorted[k] + (place - k) * ((sorted[k + 1] ?? sorted[k]) - sorted[k]);
}

/** Each heat-up: boiling point of its charge, and the heat the model puts into it up to the temperature it was called hot at, or to the boil. */
export function heatUps(lib) {
  const model = lib.activityModel('redlich-kister');
  return rowsOf('wash-still-heat-up-2014.csv').map((row) => {
    const { ethanol_mol, water_mol } = lib.amountsFromVolume(row.volume_L / 1000, row.strength_percent / 100);
    const amount_mol = ethanol_mol + water_mol;
    const x = ethanol_mol / amount_mol;
    const boils_C = lib.bubblePoint(x, ATMOSPHERE, model).temperature_K - ZERO;
    const to_K = ZERO + Math.min(row.end_C, boils_C);
    const heat = lib.liquidEnthalpy(x, to_K, model) - lib.liquidEnthalpy(x, ZERO + row.start_C, model);
    return { ...row, boils_C, heat_J: amount_mol * heat };
  });
}

/** Times if every run had had the one heat that fits them all, and how far that misses. */
export function oneHeat(runs) {
  const power_W = sum(runs.map((run) => run.heat_J)) / sum(runs.map((run) => 60 * run.time_min));
  const off = runs.map((run) => run.heat_J / (60 * power_W) / run.time_min - 1);
  return { power_W, off };
}

/** Runs of one volume and nearly one strength, from one temperature: what the record itself repeats to. */
function repeats(runs) {
  const same = runs.filter((run) => run.volume_L === 2000 && run.strength_percent >= 6.5 && run.strength_percent <= 7);
  return same.map((run) => run.time_min).sort((a, b) => a - b);
}

/** Each product: stages it takes at total reflux and least reflux over the charge it came from, and the share of the alcohol kept. */
export function products(lib) {
  const slice = lib.createEthanolWater().curve('redlich-kister').at(ATMOSPHERE);
  return rowsOf('spirit-still-products-2015.csv').map((row) => {
    const from = lib.moleFractionFromStrength(row.charge_strength);
    const to = lib.moleFractionFromStrength(row.product_strength);
    const stages = lib.stagesAtTotalReflux(slice, from, to);
    const least = lib.minimumReflux(slice, from, to);
    return { ...row, stages: stages.stages, reflux: least.reflux, kept: row.product_pure_L / row.charge_pure_L };
  });
}

const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
const between = (values, digits) => `${Math.min(...values).toFixed(digits)} to ${Math.max(...values).toFixed(digits)}`;

/** The page as Markdown. */
export function measuredPage(lib) {
  const runs = heatUps(lib);
  const washes = runs.filter((run) => run.run === 1);
  const lowWines = runs.filter((run) => run.run === 2);
  const overBoil = (of) => of.map((run) => run.end_C - run.boils_C);
  const powers = runs.map((run) => run.heat_J / (60 * run.time_min) / 1000);
  const { power_W, off } = oneHeat(runs);
  const flat = mean(runs.map((run) => run.time_min));
  const flatOff = runs.map((run) => flat / run.time_min - 1);
  const same = repeats(runs);
  const within = (of, limit) => of.filter((value) => Math.abs(value) <= limit).length;
  const all = products(lib);
  const passes = [1, 2, 3].map((pass) => all.filter((row) => row.passes === pass));
  const top = lib.azeotrope(ATMOSPHERE, lib.activityModel('redlich-kister'));
  const ceiling = 100 * lib.strengthFromMoleFraction(top.moleFraction);
  const strongest = 100 * Math.max(...all.map((row) => row.product_strength));
  const name = ['first', 'second', 'third or later'];
  return `# Measured runs

What practice has written down, against the model. Written by \`npm run measured\` from \`reference/runs/\`; a test compares it. Pressure of the air: 101.325 kPa, as no record gives its own.

**No comparison with a whole measured batch run exists yet**: none was found that gives charge, times, strengths and temperatures in a table one may use. Two records of practice say something about two parts of a run.

## Heating up: ${runs.length} charges of a wash still

\`reference/runs/wash-still-heat-up-2014.csv\`: volume, strength, temperature at the start and at the end, minutes. ${washes.length} were washes, ${lowWines.length} what a first run had brought over.

**The temperature at which it was called hot** against the boiling point of the charge:

${table(
  ['charge', 'runs', 'strength, % vol', 'end less boiling point, mean', 'scatter (1 σ)', 'within 2 K'],
  [
    ['wash', washes],
    ['low wines', lowWines],
  ].map(([label, of]) => {
    const d = overBoil(of);
    const off = mean(d);
    return [
      label,
      of.length,
      between(
        of.map((run) => run.strength_percent),
        1,
      ),
      `${off < 0 ? '−' : '+'}${Math.abs(off).toFixed(1)} K`,
      `${rms(d.map((value) => value - off)).toFixed(1)} K`,
      `${within(d, 2)} of ${of.length}`,
    ];
  }),
)}

Nobody wrote down whether the end was the first vapour, the first drop or a mark on the thermometer, so the mean difference says little of the model. That stronger charges were called hot at lower temperatures, from ${Math.max(...washes.map((run) => run.end_C))} °C down to ${Math.min(...lowWines.map((run) => run.end_C))} °C, it follows.

**The time.** The heat the model puts into each charge over the minutes it took is ${quantile(powers, 0.5).toFixed(0)} kW in the middle, ${quantile(powers, 0.25).toFixed(0)} to ${quantile(powers, 0.75).toFixed(0)} kW in half of the runs, ${between(powers, 0)} kW in all. The still's heat is not on record. If all had had the same, ${(power_W / 1000).toFixed(0)} kW into the liquid, the times would be missed by ${(100 * rms(off)).toFixed(0)} % (root mean square); ${within(off, 0.25)} of ${runs.length} lie within 25 %. Saying ${flat.toFixed(0)} min for each, whatever the charge, misses by ${(100 * rms(flatOff)).toFixed(0)} %. The record repeats itself no better: ${same.length} charges of 2000 L at 6.5 to 7 % vol took ${same.join(', ')} min.

So the heat a charge takes explains part of the time; how far the heat was turned up is not on record and explains the rest. This record can neither confirm nor refute the model's heats, which rest on measured heat capacities to about 2 % ([strength.md](strength.md)).

## Where strength tops out: ${all.length} products of a spirit still

\`reference/runs/spirit-still-products-2015.csv\`: charge, product and their strengths; a product is what was kept of a run.

${table(
  [
    'pass',
    'runs',
    'charge, % vol',
    'product, % vol',
    'share of the alcohol kept, mean',
    'ideal stages at total reflux',
    'least reflux over the charge',
  ],
  passes.map((of, k) => [
    name[k],
    of.length,
    between(
      of.map((row) => 100 * row.charge_strength),
      0,
    ),
    between(
      of.map((row) => 100 * row.product_strength),
      0,
    ),
    `${(100 * mean(of.map((row) => row.kept))).toFixed(0)} %`,
    between(
      of.map((row) => row.stages),
      1,
    ),
    between(
      of.map((row) => row.reflux),
      1,
    ),
  ]),
)}

The strongest product has ${strongest.toFixed(0)} % vol. The model's azeotrope is at ${ceiling.toFixed(1)} % vol; none of the ${all.length} reaches it, and ${all.filter((row) => row.product_strength === 0.94).length} of them stop at 94. While the charges have from ${Math.min(...all.map((row) => 100 * row.charge_strength)).toFixed(0)} to ${Math.max(...all.map((row) => 100 * row.charge_strength)).toFixed(0)} % vol, the products differ by ${(100 * (Math.max(...all.map((row) => row.product_strength)) - Math.min(...all.map((row) => row.product_strength)))).toFixed(0)} % vol, as they must where plates and reflux set the strength. Over the charges as filled the model asks for ${between(
    all.map((row) => row.stages),
    1,
  )} ideal stages at total reflux, the kettle counted, and for no less than ${between(
    all.map((row) => row.reflux),
    1,
  )} as reflux ratio. With real plates, and less than everything sent back, that is some ten plates or more.

What it cannot tell: plates, reflux, heat and times are not on record, so the model could be given numbers that meet each product and would learn nothing; strengths are rounded to 1 % vol, which at the top is more than one ideal stage; the product is a mean over what was kept, the spout stood above and below it; heads, tails and loss are one number; and one still of one distillery is one still.

## What was looked for

Measured batch distillations of ethanol and water with a table and a licence that allows its use, on 2026-11-28, in copies of public pages, of documentation and of source repositories that could be searched: laboratory batch rectification, simple distillation as a teaching experiment, pot stills for wine, fruit and cane spirit, packed columns for pisco, stills for farm fuel, experiments of the nineteenth century, data sets of statistics packages. Journals behind a fee were not read. What looked right but could not be used:

- Heller & Einfalt, Beverages 8 (2022) 20, CC BY: repeated runs of a fruit-spirit column with six measured quantities; no table in the copy.
- Douady, Puentes, Awad & Esteban-Decloux, J. Inst. Brew. 125 (2019) 268, open to read: a wine run in a copper still; no table in the copy, licence not stated.
- Oh, Kang & Park, World J. Chem. Educ. 10 (2022) 131: simple distillations by 23 groups of students, open to read; the copy ends with the abstract.
- N. E. Shriner, Cyclic distillation for energy conservation in spirit production, dissertation, Michigan State University 2018, open to read: spirit over plates, run in cycles and as usual; the copy ends with the abstract.
- J. Chem. Eng. Japan 7 (1974) 271: batch rectification of ethanol and water with furfural; abstract only.

They are where to look next. A run log of one's own that may be published would do as well: a file in \`reference/runs/\` with its header, and a section here.
`;
}
