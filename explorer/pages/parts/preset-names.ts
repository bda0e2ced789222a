// What the library's stills are called for people.

const names: Readonly<Record<string, string>> = {
  benchPot: 'Bench pot',
  benchPacking: 'Bench column',
  shedDoubler: 'Shed pot with a doubler',
  fourPlates: 'Four plates',
  twelvePlates: 'Twelve plates',
  doubleRetort: 'Pot with two retorts',
  spiritStill: 'Spirit still',
};

/** One that has no name here yet is called as the library calls it. */
export function presetName(name: string): string {
  return names[name] ?? name;
}
