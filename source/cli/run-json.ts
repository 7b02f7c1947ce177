/** The prompt for other programs: a command a line, an object a line, the first before any command. */
import type { BenchState, BenchStore, Leaving } from '../screen/bench/bench-state.ts';
import { newsOf, pictureShown } from '../screen/bench/run-plain.ts';
import type { LineSource } from '../screen/parts/line-source.ts';
import { harmlessJson } from '../shared/plain-text.ts';
import { workJson } from './work-json.ts';

export async function runJson(
  store: BenchStore,
  source: LineSource,
  print: (text: string) => void,
): Promise<Leaving> {
  let told: BenchState | null = null;
  const tell = async (): Promise<void> => {
    const say = [...newsOf(told, store.get()), ...(await pictureShown(store))];
    print(harmlessJson(workJson(told, store.get(), say)));
    told = store.get();
  };
  await tell();
  for (;;) {
    const text = await source.next();
    if (text === null) return 'left';
    store.send({ is: 'line', text });
    await store.settled();
    // No key can be pressed here: what was asked of the maker is taken back, and the answer says so.
    if (store.get().assigning !== null) store.send({ is: 'no-switch-here' });
    await tell();
    const { end } = store.get();
    if (end !== null) return end;
  }
}
