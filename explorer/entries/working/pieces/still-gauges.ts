// What the workings of the gauges share: air, what stands over the kettle, the thermometer's own check.

import { thermometerOffset, type ThermometerReading } from '#lib/index.js';
import type { Worked, WorkingPart } from '../working.js';

export const sureGauges: readonly WorkingPart[] = [
  'The thermometer is sure to ',
  { blank: 'sureBoiling' },
  ', the barometer to ',
  { blank: 'surePressure' },
  '.',
];

export const checkedClause: WorkingPart = {
  clause: 'checked',
  put: 'The thermometer was checked in boiling water',
  parts: ['In boiling water the thermometer shows ', { blank: 'waterReading' }, ' in the same air. '],
};

export const platesClause: WorkingPart = {
  clause: 'over',
  put: 'Plates or a doubler stand over the kettle',
  parts: ['Plates or doublers put ', { blank: 'overPressure' }, ' on top of it. '],
};

/** What is uncertain, by the paths of `Read`, in words. */
export const gaugesSay = {
  shown_K: 'the thermometer',
  air_Pa: 'the barometer',
  model_K: 'the equilibrium itself',
};

/** A thermometer's reading with everything that is known of it. */
export interface Read {
  readonly shown_K: number;
  readonly air_Pa: number;
  readonly over_Pa: number;
  /** What it showed in boiling water; null where nobody looked. */
  readonly water_K: number | null;
  readonly model_K: number;
}

export function readAt(shown_K: number, { values, says }: Worked, underPlates: boolean): Read {
  return {
    shown_K,
    air_Pa: values.airPressure,
    over_Pa: underPlates && says('over') ? values.overPressure : 0,
    water_K: says('checked') ? values.waterReading : null,
    model_K: 0,
  };
}

/** As the library takes it. */
export function thermometer({ shown_K, air_Pa, over_Pa, water_K, model_K }: Read): ThermometerReading {
  const offset_K = water_K === null ? 0 : Math.max(-20, Math.min(20, thermometerOffset(water_K, air_Pa)));
  return { reading_K: shown_K, air_Pa, over_Pa, offset_K, model_K };
}

/** How sure the readings are; the model's own as two of its standard errors, like the rest. */
export function sureOf({ values }: Worked, modelError_K: number): Readonly<Record<string, number>> {
  return { shown_K: values.sureBoiling, air_Pa: values.surePressure, model_K: 2 * modelError_K };
}
