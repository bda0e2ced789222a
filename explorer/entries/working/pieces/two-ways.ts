// The kettle in two ways: by its thermometer and by what has come over. Where both cannot be right, which reading is the
// likeliest to be off, and by how much.

import { html } from 'lit';
import {
  carryUncertainty,
  compareReadings,
  kettleFromTemperature,
  leftInKettle,
  type Carried,
  type Suspect,
} from '#lib/index.js';
import { fixed, joined } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import { degreesText, strengthInk } from '../amounts.js';
import { workingPiece, type Worked } from '../working.js';
import { readAt, sureOf, thermometer, type Read } from './still-gauges.js';

interface Balance {
  readonly filled_m3: number;
  readonly filled: number;
  readonly drawn_m3: number;
  readonly drawn: number;
}

const balance = ({ filled_m3, filled, drawn_m3, drawn }: Balance) =>
  leftInKettle({ volume_m3: filled_m3, strength: filled }, [{ volume_m3: drawn_m3, strength: drawn }]);
const byThermometer = (read: Read) => kettleFromTemperature(thermometer(read));

/** Causes told. */
const mostTold = 3;
/** Beyond so many standard uncertainties a reading is no cause. */
const likely = 60;

function answer(worked: Worked): unknown {
  const { values, units } = worked;
  const asked: Balance = {
    filled_m3: values.filledVolume,
    filled: values.filledStrength,
    drawn_m3: values.drawnVolume,
    drawn: values.drawnStrength,
  };
  const left = balance(asked);
  if (!left.found) return html`<p class="red">${left.message}</p>`;
  const sure = {
    filled_m3: values.sureVolume * asked.filled_m3,
    filled: values.sureStrength,
    drawn_m3: values.sureVolume * asked.drawn_m3,
    drawn: values.sureStrength,
  };
  const one = carryUncertainty(balance, asked, sure).strength!;
  const said = html`By what has come over the kettle holds ${strengthInk(one, units)}`;
  const read = readAt(values.kettleReading, worked, true);
  const found = byThermometer(read);
  if (!found.found) return html`<p>${said}; its thermometer tells nothing, as said above.</p>`;
  const sureRead = sureOf(worked, found.modelError_K);
  const other = carryUncertainty(byThermometer, read, sureRead).strength!;
  // What is typed is what a reading is sure to, two standard uncertainties.
  const { agree, suspects } = compareReadings(halved(other), halved(one));
  const both = html`${said}, by its thermometer ${strengthInk(other, units)}.`;
  if (agree) return html`<p>${both} <b>These agree.</b></p>`;
  const moves: Readonly<Record<string, number>> = { ...sure, ...sureRead };
  const causes = suspects.filter(({ uncertainties }) => Math.abs(uncertainties) < likely).slice(0, mostTold);
  return html`<p>${both} <b class="red">These cannot both be right.</b></p>
    ${
      causes.length === 0
        ? html`<p>No single reading explains it: look for a leak, for something else in the charge, or for a slip.</p>`
        : html`<p>One of these alone would explain it, the likeliest first:</p>
            <ol>
              ${causes.map((cause) => html`<li>${causeSaid(cause, moves, worked.says('over'), units)}</li>`)}
            </ol>`
    }`;
}

const halved = ({ value, uncertainty, from }: Carried): Carried => ({
  value,
  uncertainty: uncertainty / 2,
  from: Object.fromEntries(Object.entries(from).map(([path, part]) => [path, part / 2])),
});

/** 'The thermometer reads 0.9 °C too low.' */
function causeSaid(
  { path, uncertainties }: Suspect,
  moves: Readonly<Record<string, number>>,
  plates: boolean,
  units: UnitSystem,
): string {
  // Half of what is typed is one standard uncertainty; a reading that would have to be higher is too low.
  const by = (uncertainties * moves[path]!) / 2;
  const low = by > 0;
  const size = Math.abs(by);
  const strength = joined(fixed((units.strength.unit === 'proof' ? 200 : 100) * size, 1), units.strength.unit);
  switch (path) {
    case 'shown_K':
      return `The kettle’s thermometer reads ${degreesText(size, units, 1)} too ${low ? 'low' : 'high'}.`;
    case 'air_Pa': {
      const over = plates ? ', or what stands over the kettle is' : '';
      return `The air’s pressure is ${units.pressure.withUnit(size)} ${low ? 'higher' : 'lower'} than said${over}.`;
    }
    case 'model_K':
      return `The liquid boils ${degreesText(size, units, 1)} ${low ? 'hotter' : 'colder'} than ethanol and water: something else is in it.`;
    case 'filled':
      return `The charge was ${strength} ${low ? 'stronger' : 'weaker'} than said.`;
    case 'drawn':
      return `What came over is ${strength} ${low ? 'stronger' : 'weaker'} than said.`;
    case 'drawn_m3':
      return `What came over is ${units.volume.withUnit(size)} ${low ? 'more' : 'less'} than said.`;
    default:
      return `The charge was ${units.volume.withUnit(size)} ${low ? 'more' : 'less'} than said.`;
  }
}

export const twoWays = workingPiece({
  sentences: [
    [
      'Charged were ',
      { blank: 'filledVolume' },
      ' at ',
      { blank: 'filledStrength' },
      '; ',
      { blank: 'drawnVolume' },
      ' at ',
      { blank: 'drawnStrength' },
      ' have come over, all counted at 20 °C. Volumes are sure to ',
      { blank: 'sureVolume' },
      ', strengths to ',
      { blank: 'sureStrength' },
      '.',
    ],
  ],
  answer,
  notes: () =>
    html`<p>
      What hangs on plates and in pipes counts as in the kettle. It is stronger than the kettle, so early in a run over
      many plates the balance says too much.
    </p>`,
});
