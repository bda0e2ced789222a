// The layout of a notebook's file, version by version. Strict: a field that is not known here is refused, so
// that opening and keeping a file never drops anything.

import * as v from 'valibot';
import type { Json } from '../state/notebook-record.js';
import { counts, letters, type Letters } from '../state/limits.js';
import { formatName } from './format.js';

/** In an address and in the names of what is kept: small letters, digits, hyphens. */
const pageName = v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]*$/u), v.maxLength(60));
const entryName = v.pipe(v.string(), v.minLength(1), v.maxLength(60));
const words = ({ most }: Letters): v.GenericSchema<string> => v.pipe(v.string(), v.maxLength(most));
/** Checked for depth and names before: see plain-json.ts. */
const anything = v.pipe(v.unknown(), v.description('any JSON; the kind of the entry knows its shape'));

const oldNumbers = v.pipe(
  v.record(v.string(), v.pipe(v.number(), v.finite())),
  v.description('SI, with the unit in the name: chargeVolume_m3. A number left out is as it starts.'),
);

const ofLibrary = (what: string): v.GenericSchema =>
  v.pipe(v.unknown(), v.description(`${what}, in SI, as the library’s problem has it; see docs/guide/notebooks.md`));
const still = ofLibrary('a still as far as it is known');
const charge = ofLibrary('what is filled in');
const doublerCharges = ofLibrary('what each doubler is charged with');
const sheet = ofLibrary('steps of a run sheet');
const jars = ofLibrary('jars');
const asked = v.pipe(
  v.strictObject({ strength: v.number(), pressure_Pa: v.number() }),
  v.description('numbers that belong to no run'),
);

const partName = v.pipe(words(letters.part), v.minLength(1));
const stills = v.array(v.strictObject({ name: partName, still }));
const charges = v.array(v.strictObject({ name: partName, charge, doublerCharges }));
const sheets = v.array(v.strictObject({ name: partName, sheet, jars }));

const entry = v.strictObject({
  id: entryName,
  kind: entryName,
  data: anything,
  heading: v.optional(words(letters.heading)),
  close: v.optional(v.boolean()),
});

const page = v.strictObject({
  name: pageName,
  title: words(letters.title),
  promise: words(letters.promise),
  entries: v.pipe(v.array(entry), v.maxLength(counts.entries)),
});

const oldWork = v.strictObject({
  pencils: v.pipe(v.array(oldNumbers), v.maxLength(counts.pencils)),
  common: v.record(v.string(), anything),
  entries: v.record(v.string(), anything),
});

const work = v.strictObject({
  pencils: v.pipe(
    v.array(v.strictObject({ still, charge, doublerCharges, sheet, jars, asked })),
    v.maxLength(counts.pencils),
  ),
  common: v.record(v.string(), anything),
  entries: v.record(v.string(), anything),
  uses: v.optional(
    v.strictObject({ still: v.optional(partName), charge: v.optional(partName), sheet: v.optional(partName) }),
  ),
});

/** What is written now. */
export const version3 = v.strictObject({
  format: v.literal(formatName),
  version: v.literal(3),
  written: v.pipe(v.string(), v.isoTimestamp(), v.description('when it was written, UTC')),
  name: words(letters.notebookName),
  stills: v.pipe(stills, v.minLength(1), v.maxLength(counts.parts)),
  charges: v.pipe(charges, v.minLength(1), v.maxLength(counts.parts)),
  sheets: v.pipe(sheets, v.minLength(1), v.maxLength(counts.parts)),
  asked,
  pages: v.pipe(v.array(page), v.maxLength(counts.pages)),
  work: v.record(pageName, work),
});

/** One still, one charge and one sheet for the whole notebook, as thirteen numbers. */
export const version2 = v.strictObject({
  format: v.literal(formatName),
  version: v.literal(2),
  written: v.pipe(v.string(), v.isoTimestamp(), v.description('when it was written, UTC')),
  name: words(letters.notebookName),
  numbers: oldNumbers,
  pages: v.pipe(v.array(page), v.maxLength(counts.pages)),
  work: v.record(pageName, oldWork),
});

/** What the first explorer could keep: one address, with the page and its numbers in the units of addresses. */
export const version1 = v.strictObject({
  format: v.literal(formatName),
  version: v.literal(1),
  address: v.pipe(v.string(), v.maxLength(2000), v.description('what stands behind the # of an address')),
});

export type FileV1 = v.InferOutput<typeof version1>;
export type FileV2 = v.InferOutput<typeof version2>;
export type FileV3 = v.InferOutput<typeof version3>;
export type FileWork = FileV3['work'][string];

/** Data of an entry, once plain-json.ts has found nothing wrong with the file. */
export const asJson = (value: unknown): Json => value as Json;
