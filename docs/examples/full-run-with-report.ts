// A full run from lighting up: step by step, jar by jar, limits that are passed, where the heat went, and what nobody set of the still.

import { completions, energyAccount, limitsOf, rowsAsCsv, solve, STILL_PRESETS, stepSummaries } from 'kettle-and-plate';

const preset = STILL_PRESETS.find(({ name }) => name === 'twelvePlates');
if (preset === undefined) throw new Error('no such still');
const { still, charge, doublerCharges, about } = preset;
const run = solve({
  still,
  charge,
  doublerCharges,
  sheet: [
    { reflux: 'total', until: [{ kind: 'firstVapour' }] },
    { reflux: 'total', until: [{ kind: 'duration', seconds: 1800 }] },
    { reflux: 3, until: [{ kind: 'spoutStrengthBelow', strength: 0.85 }] },
  ],
  jars: { kind: 'size', volume_m3: 0.04 },
});

console.log(`${about} ${run.ending.message}.`);
for (const { step, from_s, to_s, volume_m3, strength } of stepSummaries(run)) {
  const drawn =
    strength === null ? 'nothing drawn' : `${(1000 * volume_m3).toFixed(1)} L at ${(100 * strength).toFixed(1)} % vol`;
  console.log(`step ${String(step)}: ${(from_s / 60).toFixed(0)} to ${(to_s / 60).toFixed(0)} min, ${drawn}`);
}
run.jars.forEach(({ volume_m3, strength }, i) => {
  console.log(`jar ${String(i + 1)}: ${(1000 * volume_m3).toFixed(1)} L at ${(100 * strength).toFixed(1)} % vol`);
});
for (const { message, cure } of limitsOf(run)) console.log(`limit: ${message} ${cure}`);
const { supplied_J, condensed_J, lost_J, gap_J } = energyAccount(run);
console.log(
  `heat: ${(supplied_J / 3.6e6).toFixed(1)} kWh in, ${(condensed_J / 3.6e6).toFixed(1)} condensed, ${(lost_J / 3.6e6).toFixed(2)} lost, gap ${(gap_J / 3.6e6).toExponential(1)}`,
);
console.log(`nobody set ${String(completions(still).length)} values, among them:`);
for (const { path, reason } of completions(still).slice(0, 3)) console.log(`  ${path}: ${reason}`);
console.log(rowsAsCsv(run, ['time_s', 'spoutStrength']).split('\r\n').slice(0, 3).join('\n'));
