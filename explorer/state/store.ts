// The one owner of what the reader chose. Whoever wants to know subscribes; nothing else holds a copy.

/** A record that changes only as a whole. */
export interface Store<State extends object> {
  readonly get: () => State;
  /** Sets some fields; without a real change the same record stays and nobody is told. */
  readonly set: (change: Partial<State>) => void;
  /** Calls `listener` after each change; returns the way to stop it. */
  readonly subscribe: (listener: (state: State, before: State) => void) => () => void;
}

export function createStore<State extends object>(initial: State): Store<State> {
  const listeners = new Set<(state: State, before: State) => void>();
  let state = initial;
  return {
    get: () => state,
    set: (change) => {
      const fields = Object.keys(change) as (keyof State)[];
      if (fields.every((field) => Object.is(state[field], change[field]))) return;
      const before = state;
      state = { ...state, ...change };
      for (const listener of listeners) listener(state, before);
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
