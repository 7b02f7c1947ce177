/** The bench without a screen: reads commands line by line and prints plain text, one instruction a step. */
import { createInterface } from 'node:readline';
import type { Line } from '../chat/line.ts';
import { sayNow } from '../chat/wording/place.ts';
import { unitsFor } from '../shared/units.ts';
import { stepAt } from '../steps/job.ts';
import type { BenchStore } from './bench-store.ts';

/** Runs until the input ends or the maker leaves. Never prompts and never repeats itself. */
export async function runPlain(
  store: BenchStore,
  input: NodeJS.ReadableStream,
  print: (text: string) => void,
): Promise<void> {
  let printed = 0;
  let done = -1;
  const show = (): void => {
    const { lines, session } = store.get();
    for (const line of lines.slice(printed)) if (isTold(line)) print(line.text);
    printed = lines.length;
    if (session.done !== done) print(sayNow(session));
    done = session.done;
  };
  const tellPicture = async (): Promise<void> => {
    const { picture, session, settings } = store.get();
    if (picture === null) return;
    const { drawPicture } = await import('./pictures.ts');
    const { plan } = session.job;
    const look = { columns: 78, rows: 40, colour: 'none', glyphs: 'ascii', words: true } as const;
    const rowsDone = done === 0 ? 0 : stepAt(session.job, done).row;
    for (const line of drawPicture(picture, plan, { ...look, rowsDone, units: unitsFor(settings.units) }))
      print(line);
    store.draw(null);
  };
  show();
  for await (const line of createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })) {
    const leaves = store.submit(line);
    show();
    await tellPicture();
    if (leaves) return;
  }
}

/** What was typed or confirmed is known already: only what is new is told. */
const isTold = (line: Line): boolean => line.tone !== 'typed' && line.tone !== 'done';
