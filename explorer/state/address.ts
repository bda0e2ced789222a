// The scenario in the address, after the #, so that it is never sent: '#the-ceiling?v=1&plates=12&reflux=3'.
// Numbers stand in fixed units (L, % vol, %, kW, kPa), whatever units are shown. What cannot be read is
// reported, never guessed; a number left out is the starting value.

import { numberSpecs } from './number-specs.js';
import { parameters, startingScenario } from './parameters.js';
import type { ParameterKey, Scenario } from './scenario.js';
import { withoutZeros } from '../text/ends.js';
import { unitSystems } from '../text/unit-systems.js';

const version = '1';
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

/** The fragment of a page with its settings; only the page where all stand as they start. */
export function writeAddress(page: string, scenario: Scenario): string {
  const specs = numberSpecs(unitSystems.metric);
  const changed = parameters.filter(({ key }) => scenario[key] !== startingScenario[key]);
  if (changed.length === 0) return `#${page}`;
  const fields = changed.map(({ key, inAddress }) => `${inAddress}=${written(specs[key].toShown(scenario[key]))}`);
  return `#${page}?${[`v=${version}`, ...fields].join('&')}`;
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
  const written = fields.find(([key]) => key === 'v')?.[1];
  if (fields.length > 0 && written !== version) {
    const whose = written === undefined ? 'has no version' : `is of version ${written}`;
    complaints.push(`The address ${whose}; this notebook reads version ${version}, so its settings were left alone.`);
    return { page, scenario: startingScenario, complaints };
  }
  const settings: Partial<Record<ParameterKey, number>> = {};
  for (const [name_, text] of fields) {
    if (name_ === 'v') continue;
    const reading = readField(name_, text);
    if (typeof reading === 'string') complaints.push(reading);
    else settings[reading.key] = reading.value;
  }
  return { page, scenario: { ...startingScenario, ...settings }, complaints };
}

function readField(name: string, text: string): { key: ParameterKey; value: number } | string {
  const row = parameters.find(({ inAddress }) => inAddress === name);
  if (row === undefined) return `The address sets ‘${name}’, which no page knows.`;
  const spec = numberSpecs(unitSystems.metric)[row.key];
  const shown = /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  const si = spec.fromShown(shown);
  const inRange = si >= row.low * (1 - roundOff) && si <= row.high * (1 + roundOff);
  const whole = row.quantity !== 'plates' || Number.isInteger(shown);
  if (inRange && whole) return { key: row.key, value: si };
  const range = `${spec.digits(spec.low)} to ${spec.digits(spec.high)}${spec.suffix(2)}`;
  return `The address gives ‘${text}’ for the ${row.label}; it would have to be ${range}.`;
}
