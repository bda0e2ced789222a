// Runs of the full model for the benchmark: 20 plates of 0.65 with losses, energy and metal, 120 L at 9.5 % vol, 5.5 kW, an output every
// minute; and a pot with a doubler. Stills are invented.

const RUN = {
  charge: { kind: 'volume', volume_m3: 0.12, strength: 0.095 },
  doublerCharges: [],
  heat: { kind: 'power', power_W: 5500 },
  outputs: { kind: 'every', interval_s: 60 },
};
const DOUBLER = {
  volume_m3: 0.02,
  diameter_m: 0.25,
  dipDepth_m: 0.1,
  heatLoss_W_K: 1.5,
  metal_J_K: 1500,
  overflow: 'back',
};

/** A 150 L kettle under so many plates with a total condenser. */
export function platedStill(plates) {
  return {
    kettle: {
      volume_m3: 0.15,
      diameter_m: 0.5,
      heatingSurfaceHeight_m: 0.1,
      power_W: 5500,
      heatLoss_W_K: 3,
      metal_J_K: 8000,
    },
    doublers: [],
    column: {
      kind: 'plates',
      count: plates,
      plateKind: 'sieve',
      diameter_m: 0.1,
      spacing_m: 0.15,
      weirHeight_m: 0.012,
      openAreaShare: 0.1,
      holeDiameter_m: 0.003,
      holdUp: { kind: 'volume', volume_m3: 1e-4 },
      efficiency: 0.65,
      efficiencyFalls: false,
      heatLoss_W_K: 0.15,
      metal_J_K: 600,
      drop_Pa: 300,
    },
    head: { heatLoss_W_K: 0, metal_J_K: 0, film_m3: 1e-4 },
    refluxCondenser: { kind: 'total', holdUp: { kind: 'volume', volume_m3: 4e-5 }, subcooling_K: 0 },
    productCondenser: {
      holdUp: { kind: 'volume', volume_m3: 1e-5 },
      flow_kg_s: 0.1,
      inlet_K: 288.15,
      transfer_W_K: 300,
    },
    air: { pressure_Pa: 101325, temperature_K: 293.15 },
  };
}

const after = (hours) => [{ kind: 'duration', seconds: 3600 * hours }];

/** Three hours at 3 : 1 from the first vapour. */
export function fromVapour(tolerance, activity, plates = 20) {
  const sheet = [{ reflux: 3, until: after(3) }];
  return { ...RUN, activity, tolerance, still: platedStill(plates), start: 'firstVapour', sheet };
}

/** From cold: three hours of heating up, filling and equalising at total reflux, and three at 3 : 1. */
export function fromCold(tolerance, activity, plates = 20) {
  const sheet = [
    { reflux: 'total', until: after(3) },
    { reflux: 3, until: after(3) },
  ];
  return { ...RUN, activity, tolerance, still: platedStill(plates), start: 'cold', sheet };
}

/** A pot with a doubler, both cold, for four hours. */
export function potAndDoubler(tolerance, activity) {
  const still = {
    ...platedStill(1),
    doublers: [DOUBLER],
    column: { kind: 'none' },
    refluxCondenser: { kind: 'none' },
    productCondenser: {
      holdUp: { kind: 'volume', volume_m3: 5e-5 },
      flow_kg_s: 0.1,
      inlet_K: 288.15,
      transfer_W_K: 300,
    },
  };
  const doublerCharges = [{ charge: { kind: 'volume', volume_m3: 0.008, strength: 0.3 } }];
  const sheet = [{ reflux: 'none', until: after(4) }];
  return { ...RUN, activity, tolerance, still, doublerCharges, start: 'cold', sheet };
}
