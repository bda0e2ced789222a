// What the picture of the still says in words: its sentence, its warnings, its note, its table.

import { clock, fixed, joined } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { PartMoment, StillMoment } from '../../rows/still-moment.js';
import type { PicturedStill, StillLayout } from './layout.js';

/** '5.3 % vol', or that there is nothing to measure. */
export function strengthOrNone(strength: number | null, units: UnitSystem): string {
  return strength === null ? 'dry' : units.strength.withUnit(strength);
}

export function vesselName(i: number, { doublers }: StillMoment): string {
  if (i === 0) return 'kettle';
  return doublers.length === 1 ? 'doubler' : `doubler ${String(i)}`;
}

/** 'total reflux', 'reflux 3.0 : 1', 'no reflux'. */
export function reflux({ refluxRatio }: StillMoment): string {
  if (refluxRatio === null || refluxRatio === 0) return 'no reflux';
  return refluxRatio === Infinity ? 'total reflux' : `reflux ${joined(`${fixed(refluxRatio, 1)}\u00a0:`, '1')}`;
}

/** What must not be, in words. */
export function warnings(moment: StillMoment): string[] {
  const found: string[] = [];
  if (!moment.kettle.covered) found.push('The kettle’s heating surface stands out of the liquid.');
  moment.doublers.forEach((doubler, i) => {
    const name = `${moment.doublers.length === 1 ? 'the ' : ''}${vesselName(i + 1, moment)}`;
    if (doubler.strength === null) found.push(`${name.charAt(0).toUpperCase()}${name.slice(1)} has run dry.`);
    else if (!doubler.covered) found.push(`The vapour pipe of ${name} ends above its liquid.`);
  });
  return found;
}

export function describeStill(still: PicturedStill, moment: StillMoment, units: UnitSystem): string {
  const { strength, temperature, volume } = units;
  const state = (name: string, part: PartMoment): string => {
    const holds =
      part.strength === null
        ? 'is dry'
        : `holds ${volume.withUnit(part.volume_m3)} of ${strength.withUnit(part.strength)}`;
    return `the ${name} ${holds} at ${temperature.withUnit(part.temperature_K)}${part.boiling ? ', boiling' : ''}`;
  };
  const parts = [moment.kettle, ...moment.doublers].map((part, i) => state(vesselName(i, moment), part));
  const top = moment.stages.at(-1);
  if (top !== undefined) {
    const name =
      still.column.kind === 'plates' ? (moment.stages.length === 1 ? 'plate' : 'top plate') : 'top of the packing';
    const liquid = top.strength === null ? 'is dry' : `stands at ${strength.withUnit(top.strength)}`;
    parts.push(`the ${name} ${liquid} and ${temperature.withUnit(top.temperature_K)}`);
  }
  if (moment.refluxRatio !== null) parts.push(reflux(moment));
  parts.push(
    spoutSentence(moment, units),
    ...warnings(moment).map((text) => text.slice(0, -1).replace(/^./u, (first) => first.toLowerCase())),
  );
  return `The still ${clock(moment.time_s)} after the start: ${parts.join('; ')}.`;
}

function spoutSentence(
  { distillate, spoutStrength, collectedVolume_m3, distillateRate_m3_s }: StillMoment,
  units: UnitSystem,
): string {
  const { strength, volume } = units;
  const collected = `${volume.withUnit(collectedVolume_m3)} collected`;
  if (spoutStrength === null || distillate.share === 0) return `nothing runs from the spout, ${collected}`;
  const rate = joined(volume.text(3600 * distillateRate_m3_s), volume.unit);
  return `the spout runs ${strength.withUnit(spoutStrength)}, ${rate} an hour, ${collected}`;
}

/** What is to scale, what is not. */
export function stillNote({ doublers, column }: PicturedStill, { column: place }: StillLayout): string {
  const sized = ['kettle'];
  if (doublers.length > 0) sized.push(doublers.length === 1 ? 'doubler' : 'doublers');
  if (column.kind !== 'none') sized.push(column.kind === 'plates' ? 'plates' : 'packing');
  const wider =
    place === null || place.widened < 1.05
      ? ''
      : ` The column is drawn ${fixed(place.widened, 1)} times as wide as it is.`;
  const sentence = `${sized.join(', ')} and jars are drawn to scale; pipes, head and condensers are not.`;
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}${wider} The broken line in the kettle is the top of its heating surface.`;
}
