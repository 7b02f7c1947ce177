import { holdScreen } from '../parts/hold-screen.ts';
import { BenchApp } from './bench-app.tsx';
import { createBenchKeys, type Leaving } from './bench-keys.ts';
import type { BenchStore } from './bench-state.ts';

/** Shows the bench in the terminal until the maker leaves. Rejects when drawing fails. */
export const runBench = (store: BenchStore): Promise<Leaving> =>
  holdScreen<Leaving>(({ leave, suspend, field }) => {
    const askToLeave = (how: Leaving): void => {
      if (store.mayLeave()) leave(how);
    };
    const keys = createBenchKeys({ store, leave: askToLeave, suspend });
    return {
      onKey: keys.onKey,
      screen: <BenchApp store={store} keys={keys} field={field} />,
      reportKinds: wantsKinds(store),
      onReader: (reader) => store.subscribe(() => reader.reportKinds(wantsKinds(store))),
    };
  }, 'interrupted');

/**
 * Only a foot switch needs to know how long it is held, and media keys and chords arrive only when they are asked for:
 * terminals of those who have no switch are left as they are.
 */
const wantsKinds = (store: BenchStore): boolean => {
  const { assigning, settings } = store.get();
  return assigning !== null || Object.keys(settings.pedals).length > 0;
};
