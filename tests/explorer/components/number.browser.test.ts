// The battery for number blanks, on one blank of each kind.

import { numberSpecs } from '../../../explorer/state/number-specs.js';
import { startingScenario } from '../../../explorer/state/parameters.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { numberLaws } from './number-laws.js';

const metric = numberSpecs(unitSystems.metric);
const us = numberSpecs(unitSystems.us);

numberLaws({ name: 'plates', spec: metric.plates, start: startingScenario.plates, good: ['7', 7], tooMuch: '61' });
numberLaws({
  name: 'litres',
  spec: metric.chargeVolume,
  start: startingScenario.chargeVolume,
  good: ['87.5', metric.chargeVolume.fromShown(87.5)],
  tooMuch: '12000',
});
numberLaws({
  name: 'US proof',
  spec: us.chargeStrength,
  start: us.chargeStrength.fromShown(20),
  good: ['33.5', us.chargeStrength.fromShown(33.5)],
  tooMuch: '201',
});
numberLaws({
  name: 'reflux',
  spec: metric.reflux,
  start: startingScenario.reflux,
  good: ['4.25', 4.25],
  tooMuch: '99',
});
