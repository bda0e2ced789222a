// What a page runs on in the address, after the #, so that it is never sent: '#the-ceiling?v=2&plates=12&reflux=3'.
// Numbers stand in fixed units (L, % vol, %, kW, kPa), whatever units are shown; a part that differs in more than
// numbers stands there whole. What cannot be read is reported, never guessed; what is left out is as the page starts.

import { fromOldNumbers } from './flat-numbers.js';
import { inputNamed, inputs, type Input, type Path } from './inputs.js';
import { numberSpecs } from './number-specs.js';
import { faultInPart, partsInAddress, type PartName } from './parts-check.js';
import { newNotebook } from './notebook-record.js';
import { scenarioOn } from './page-scenario.js';
import { saidAt, withValue } from './paths.js';
import { sameNumbers, startingScenario, type Scenario } from './scenario.js';
import { withoutZeros } from '../text/ends.js';
import { unitSystems } from '../text/unit-systems.js';

const version = '2';
const versions: readonly string[] = ['1', version];
/** Most decimals of a number in the address, and digits that mean something in it. */
const decimals = 10;
const digits = 12;
/** What writing and reading may add to a limit, relative. */
const roundOff = 1e-9;

/** What an address says. */
export interface Address<Page extends string> {
  /** Undefined where the address names no page that exists. */
  readonly page: Page | undefined;
  readonly scenario: Scenario;
  /** One sentence for each part that was not used. */
  readonly complaints: readonly string[];
}

/** What a page runs on in a new notebook. */
export function startOf(page: string | undefined): Scenario {
  return page === undefined ? startingScenario : scenarioOn(newNotebook, page);
}

/** The fragment of a page with its settings; only the page where all stand as they start. */
export function writeAddress(page: string, scenario: Scenario): string {
  const start = startOf(page);
  const specs = numberSpecs(unitSystems.metric);
  const fields: string[] = [];
  for (const name of partsInAddress) {
    const rows = inputs.filter(
      ({ key }) => partOf(key) === name && differs(key, saidAt(scenario, key), saidAt(start, key)),
    );
    const numbers = rows.map(({ key }) => [key, saidAt(scenario, key)] as const);
    const reached = numbers.reduce((set, [key, value]) => withValue(set, key, value), start);
    const byNumbers =
      numbers.every(([, value]) => typeof value === 'number') && sameNumbers(reached[name], scenario[name]);
    if (byNumbers && rows.every((row) => inLimits(row, saidAt(scenario, row.key) as number)))
      fields.push(
        ...rows.map((row) => `${row.name}=${written(specs(row.key).toShown(saidAt(scenario, row.key) as number))}`),
      );
    else fields.push(`${name}=${encodeURIComponent(JSON.stringify(scenario[name]))}`);
  }
  return fields.length === 0 ? `#${page}` : `#${page}?${[`v=${version}`, ...fields].join('&')}`;
}

function partOf(path: Path): string {
  return /^\w+/u.exec(path)![0];
}

/** Whether something else is said at a path, for those who read it in an address. */
function differs(path: Path, one: unknown, other: unknown): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one !== other && typeof one !== 'object';
  const { toShown } = numberSpecs(unitSystems.metric)(path);
  return written(toShown(one)) !== written(toShown(other));
}

function inLimits({ low, high }: Input, si: number): boolean {
  return si >= low * (1 - roundOff) && si <= high * (1 + roundOff);
}

/** A number without exponent and without zeros that say nothing. */
function written(shown: number): string {
  return withoutZeros(Number(shown.toPrecision(digits)).toFixed(decimals));
}

/** Reads a fragment, with or without its #. */
export function readAddress<Page extends string>(fragment: string, pages: readonly Page[]): Address<Page> {
  const [name = '', query = ''] = fragment.replace(/^#/, '').split('?', 2);
  const complaints: string[] = [];
  const page = pages.find((known) => known === name);
  if (page === undefined && name !== '') complaints.push(`There is no page called ‘${name}’.`);
  const fields = [...new URLSearchParams(query)];
  const says = fields.find(([key]) => key === 'v')?.[1];
  const start = startOf(page);
  if (fields.length > 0 && !versions.includes(says ?? '')) {
    const whose = says === undefined ? 'has no version' : `is of version ${says}`;
    complaints.push(`The address ${whose}; this notebook reads version ${version}, so its settings were left alone.`);
    return { page, scenario: start, complaints };
  }
  const numbers = new Map<Path, number>();
  let scenario = start;
  for (const [key, text] of fields) {
    if (key === 'v' || key === pageInAddress) continue;
    const whole = says === version && /^[[{]/u.test(text);
    const part = whole ? partsInAddress.find((one) => one === key) : undefined;
    const reading = part === undefined ? readNumber(key, text) : readPart(part, text);
    if (typeof reading === 'string') complaints.push(reading);
    else if ('part' in reading) scenario = { ...scenario, [reading.part]: reading.value };
    else numbers.set(reading.path, reading.value);
  }
  if (says !== version && fields.length > 0) return { page, scenario: fromOldNumbers(numbers, start), complaints };
  for (const [path, value] of numbers) scenario = withValue(scenario, path, value);
  return { page, scenario, complaints };
}

/** Key of a page of the reader's own that comes with its address; keeping reads it. */
export const pageInAddress = 'own';

function readNumber(name: string, text: string): { path: Path; value: number } | string {
  const row = inputNamed(name);
  if (row === undefined) return `The address sets ‘${name}’, which no page knows.`;
  const spec = numberSpecs(unitSystems.metric)(row.key);
  const shown = /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  const si = spec.fromShown(shown);
  const whole = row.quantity !== 'plates' || Number.isInteger(shown);
  if (inLimits(row, si) && whole) return { path: row.key, value: si };
  const range = `${spec.digits(spec.low)} to ${spec.digits(spec.high)}${spec.suffix(2)}`;
  return `The address gives ‘${text}’ for the ${row.label}; it would have to be ${range}.`;
}

function readPart(part: PartName, text: string): { part: PartName; value: unknown } | string {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return `What the address says of the ${part} is not complete, so it was left alone.`;
  }
  const why = faultInPart(part, value);
  return why === undefined ? { part, value } : `What the address says of the ${part} cannot be used: ${why}.`;
}
