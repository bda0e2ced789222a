import { describe, expect, it, vi } from 'vitest';
import { startingScenario } from '../../../explorer/state/scenario.js';
import { withValue } from '../../../explorer/state/paths.js';
import { createStore } from '../../../explorer/state/store.js';

interface State {
  readonly scenario: typeof startingScenario;
  readonly units: string;
}

function start() {
  return createStore<State>({ scenario: startingScenario, units: 'metric' });
}

describe('the store', () => {
  it('keeps the identity of what did not change', () => {
    const store = start();
    store.set({ units: 'us' });
    expect(store.get().scenario).toBe(startingScenario);
  });

  it('stays the same record and tells nobody when the same values are set again', () => {
    const store = start();
    const before = store.get();
    const told = vi.fn();
    store.subscribe(told);
    store.set({ units: 'metric' });
    store.set({ scenario: withValue(startingScenario, 'charge.strength', startingScenario.charge.strength) });
    expect(store.get()).toBe(before);
    expect(told).not.toHaveBeenCalled();
  });

  it('tells every subscriber once, with the state before, until it is told to stop', () => {
    const store = start();
    const told = vi.fn();
    const stop = store.subscribe(told);
    const before = store.get();
    store.set({ scenario: withValue(startingScenario, 'charge.strength', 0.4) });
    expect(told).toHaveBeenCalledExactlyOnceWith(store.get(), before);
    stop();
    store.set({ units: 'us' });
    expect(told).toHaveBeenCalledOnce();
  });

  it('does not let the scenario it was given be changed through it', () => {
    const scenario = withValue(startingScenario, 'charge.strength', 0.4);
    expect(startingScenario.charge.strength).toBe(0.095);
    expect(scenario).not.toBe(startingScenario);
  });
});
