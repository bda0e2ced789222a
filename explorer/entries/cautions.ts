// The cautions of the notebook, each said once on a page, beside the first entry that shows what it is about.

import { stillCautions } from '../text/still-cautions.js';
import type { CautionName } from './entry.js';
import { caution } from './words.js';

export const cautions: Readonly<Record<CautionName, unknown>> = {
  spout: caution(stillCautions.spout),
  kettle: caution(stillCautions.kettle),
  heating: caution(stillCautions.heating),
  cooling: caution(stillCautions.cooling),
  vacuum: caution(stillCautions.vacuum),
  pouring: caution(stillCautions.pouring),
};
