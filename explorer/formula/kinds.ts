// Kinds of quantity that have a name here: the SI unit they are kept in and the unit they are shown in. Shares of
// volume, mass and amount are bare numbers that say what they are a share of.

import type { ShownSystem } from './sheet.js';

/** How a kind is kept and shown; units are names of units.ts, combined with * / ^. */
export interface Kind {
  /** In words, for messages: 'a volume'. */
  readonly words: string;
  /** SI unit; '' for a bare number. */
  readonly si: string;
  /** Units it is shown in. */
  readonly shown: Readonly<Record<ShownSystem, string>>;
}

const everywhere = (unit: string): Kind['shown'] => ({ metric: unit, us: unit, imperial: unit });

/** '% vol' and 'proof' are not units but ways to show a share of volume: see shown.ts. */
export const kinds = {
  number: { words: 'a number', si: '', shown: everywhere('') },
  percent: { words: 'a share', si: '', shown: everywhere('%') },
  strength: {
    words: 'a strength',
    si: '',
    shown: { metric: '% vol', us: 'proof', imperial: '% vol' },
  },
  massShare: { words: 'a mass fraction', si: '', shown: everywhere('% mass') },
  moleShare: { words: 'a mole fraction', si: '', shown: everywhere('') },
  proof: { words: 'a US proof', si: '', shown: everywhere('proof') },
  volume: { words: 'a volume', si: 'm^3', shown: { metric: 'L', us: 'US_gal', imperial: 'imp_gal' } },
  temperature: { words: 'a temperature', si: 'K', shown: { metric: '°C', us: '°F', imperial: '°C' } },
  pressure: { words: 'a pressure', si: 'Pa', shown: { metric: 'kPa', us: 'psi', imperial: 'kPa' } },
  power: { words: 'a power', si: 'W', shown: { metric: 'kW', us: 'BTU/h', imperial: 'kW' } },
  energy: { words: 'an amount of heat', si: 'J', shown: { metric: 'kWh', us: 'BTU', imperial: 'kWh' } },
  time: { words: 'a time', si: 's', shown: everywhere('h') },
  mass: { words: 'a mass', si: 'kg', shown: { metric: 'kg', us: 'lb', imperial: 'kg' } },
  length: { words: 'a length', si: 'm', shown: { metric: 'm', us: 'ft', imperial: 'm' } },
  amount: { words: 'an amount of substance', si: 'mol', shown: everywhere('mol') },
  density: { words: 'a density', si: 'kg/m^3', shown: everywhere('kg/m^3') },
  molarHeat: { words: 'a heat per mole', si: 'J/mol', shown: everywhere('kJ/mol') },
  flow: { words: 'a flow', si: 'm^3/s', shown: { metric: 'L/h', us: 'US_gal/h', imperial: 'imp_gal/h' } },
} as const satisfies Readonly<Record<string, Kind>>;

export type KindName = keyof typeof kinds;

/** Whether a kind is a bare number. */
export function isBare(kind: KindName): boolean {
  return kinds[kind].si === '';
}
