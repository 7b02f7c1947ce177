/** Whoever wants to hear of the changes of a store outside React. */
export interface Listeners {
  /** Gives how to stop listening. */
  readonly subscribe: (listener: () => void) => () => void;
  readonly tellAll: () => void;
}

export function createListeners(): Listeners {
  const listeners = new Set<() => void>();
  return {
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    tellAll: () => {
      for (const listener of listeners) listener();
    },
  };
}
