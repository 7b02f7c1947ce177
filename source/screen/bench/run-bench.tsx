import { BigEnough } from '../parts/big-enough.tsx';
import { holdScreen } from '../parts/hold-screen.ts';
import { BenchApp } from './bench-app.tsx';
import type { BenchState, BenchStore, Leaving } from './bench-state.ts';

/** Shows the bench in the terminal until the maker leaves. Rejects when drawing fails. */
export const runBench = (store: BenchStore): Promise<Leaving> =>
  holdScreen<Leaving, BenchState>({
    store,
    screen: (
      <BigEnough tooSmall={(...size) => store.get().words.bench.tooSmall(...size)}>
        <BenchApp store={store} />
      </BigEnough>
    ),
    interrupted: 'interrupted',
    wantsKinds,
  });

/**
 * Only a foot switch needs to know how long it is held, and media keys and chords arrive only when they are asked for:
 * terminals of those who have no switch are left as they are.
 */
const wantsKinds = ({ assigning, settings }: BenchState): boolean =>
  assigning !== null || Object.keys(settings.pedals).length > 0;
