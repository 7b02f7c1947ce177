import { BigEnough } from '../parts/big-enough.tsx';
import { holdScreen } from '../parts/hold-screen.ts';
import { BenchApp } from './bench-app.tsx';
import type { BenchState, BenchStore, Leaving } from './bench-state.ts';

/** Shows the bench in the terminal until the maker leaves. Rejects when drawing fails. */
export async function runBench(store: BenchStore, beforeShown: () => void): Promise<Leaving> {
  const measure = (): void =>
    store.send({ is: 'window', columns: process.stdout.columns || 80, rows: process.stdout.rows || 24 });
  measure();
  process.stdout.on('resize', measure);
  try {
    return await guide(store, beforeShown);
  } finally {
    process.stdout.off('resize', measure);
  }
}

const guide = (store: BenchStore, beforeShown: () => void): Promise<Leaving> =>
  holdScreen<Leaving, BenchState>({
    store,
    beforeShown,
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
