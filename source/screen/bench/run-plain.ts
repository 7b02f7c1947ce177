/** The bench without a screen: reads commands line by line and prints plain text, one instruction a step. */
import type { Line } from '../../chat/line.ts';
import { formatSaveStatus } from '../../chat/wording/file-faults.ts';
import { rowAt } from '../../steps/job.ts';
import type { LineSource } from '../parts/line-source.ts';
import { sayNowIn } from './bench-moves.ts';
import type { BenchState, BenchStore, Leaving } from './bench-state.ts';

type Print = (text: string) => void;

/** Runs until the input ends or the maker leaves. Never prompts and never repeats itself. */
export async function runPlain(store: BenchStore, source: LineSource, print: Print): Promise<Leaving> {
  let printed: BenchState | null = null;
  const show = (): void => {
    printNews(printed, store.get(), print);
    printed = store.get();
  };
  show();
  for (;;) {
    const text = await source.next();
    if (text === null) return 'left';
    store.send({ is: 'line', text });
    await store.settled();
    // Keys cannot be told here before a line ends: what was asked of the maker is taken back.
    if (store.get().assigning !== null) {
      printed = store.get();
      store.send({ is: 'no-switch-here' });
    }
    show();
    await showPicture(store, print);
    const { end } = store.get();
    if (end !== null) return end;
  }
}

/** What is new since the state that was printed last. */
function printNews(before: BenchState | null, state: BenchState, print: Print): void {
  const { lines, linesBefore, session, saving, way } = state;
  const said = before ? before.linesBefore + before.lines.length : 0;
  for (const line of lines.slice(Math.max(0, said - linesBefore))) if (isTold(line)) print(line.text);
  const trouble = formatSaveStatus(saving);
  if (trouble !== null && (!before || trouble !== formatSaveStatus(before.saving))) print(trouble);
  if (session.done !== before?.session.done || way !== before.way) print(sayNowIn(state));
}

/** What was typed or confirmed is known already: only what is new is told. */
const isTold = (line: Line): boolean => line.tone !== 'typed' && line.tone !== 'done';

async function showPicture(store: BenchStore, print: Print): Promise<void> {
  const { picture, session, words } = store.get();
  if (picture === null) return;
  const { drawPicture } = await import('./pictures.ts');
  const look = { columns: 78, rows: 40, colour: 'none', glyphs: 'ascii', words: true } as const;
  const { job, done } = session;
  const options = { ...look, rowsDone: rowAt(job, done), units: words.units };
  for (const line of drawPicture(picture, job.plan, options)) print(line);
  store.send({ is: 'picture-shown' });
}
