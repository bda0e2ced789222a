// The battery for number blanks, on one blank of each kind.

import { numberSpecs } from '../../../explorer/state/number-specs.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { numberLaws } from './number-laws.js';

const metric = numberSpecs(unitSystems.metric);
const us = numberSpecs(unitSystems.us);
const litres = metric('charge.volume_m3');
const proof = us('charge.strength');

numberLaws({ name: 'plates', spec: metric('still.column.count'), start: 12, good: ['7', 7], tooMuch: '61' });
numberLaws({
  name: 'litres',
  spec: litres,
  start: 0.12,
  good: ['87.5', litres.fromShown(87.5)],
  tooMuch: '12000',
});
numberLaws({
  name: 'US proof',
  spec: proof,
  start: proof.fromShown(20),
  good: ['33.5', proof.fromShown(33.5)],
  tooMuch: '201',
});
numberLaws({
  name: 'reflux',
  spec: metric('sheet[2].reflux'),
  start: 3,
  good: ['4.25', 4.25],
  tooMuch: '99',
});
