/** The bench without a screen: reads commands line by line and prints plain text, one instruction a step. */
import type { Said } from '../../chat/talk.ts';
import type { SaveStatus } from '../../journal/fault.ts';
import { rowAt } from '../../steps/job.ts';
import { formatSaveStatus } from '../../wording/file-faults.ts';
import type { LineSource } from '../parts/line-source.ts';
import { sayNowIn } from './bench-moves.ts';
import type { BenchState, BenchStore, Leaving } from './bench-state.ts';

type Print = (text: string) => void;

/** Runs until the input ends or the maker leaves. Never prompts and never repeats itself. */
export async function runPlain(store: BenchStore, source: LineSource, print: Print): Promise<Leaving> {
  let printed: BenchState | null = null;
  const show = (): void => {
    for (const text of newsOf(printed, store.get())) print(text);
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
    for (const text of await pictureShown(store)) print(text);
    const { end } = store.get();
    if (end !== null) return end;
  }
}

/** What is new since the state that was printed last. */
export function newsOf(before: BenchState | null, state: BenchState): readonly string[] {
  const { session, saving } = state;
  const trouble = before && isAlike(before.saving, saving) ? null : formatSaveStatus(saving, state.words);
  const hasMoved = session.done !== before?.session.done || session.way !== before.session.way;
  return [
    ...newLines(before, state)
      .filter(isTold)
      .map(({ text }) => text),
    ...(trouble === null ? [] : [trouble]),
    ...(hasMoved ? [sayNowIn(state)] : []),
  ];
}

const isAlike = (one: SaveStatus, other: SaveStatus): boolean =>
  one.state === 'unsaved' &&
  other.state === 'unsaved' &&
  one.trouble === other.trouble &&
  one.waiting === other.waiting;

export function newLines(before: BenchState | null, { lines, linesBefore }: BenchState): readonly Said[] {
  const said = before ? before.linesBefore + before.lines.length : 0;
  return lines.slice(Math.max(0, said - linesBefore));
}

/** What was typed or confirmed is known already: only what is new is told. */
const isTold = (line: Said): boolean => line.tone !== 'typed' && line.tone !== 'done';

/** The rows of the picture that was asked for, which is then taken as shown. */
export async function pictureShown(store: BenchStore): Promise<readonly string[]> {
  const { picture, session, words } = store.get();
  if (picture === null) return [];
  const { drawPicture } = await import('./pictures.ts');
  const look = { columns: 78, rows: 40, colour: 'none', glyphs: 'ascii', words: true } as const;
  const { job, done } = session;
  const options = { ...look, rowsDone: rowAt(job, done) };
  store.send({ is: 'picture-shown' });
  return drawPicture(picture, job.plan, options, words);
}
