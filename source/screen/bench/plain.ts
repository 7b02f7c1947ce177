/** The bench without a screen: reads commands line by line and prints plain text, one instruction a step. */
import { answer, type Line } from '../../chat/line.ts';
import { sayWayStep } from '../../chat/way.ts';
import { sayNow } from '../../chat/wording/place.ts';
import { sayNoPedalHere } from '../../chat/wording/settings.ts';
import { unitsFor } from '../../shared/units.ts';
import { rowAt } from '../../steps/job.ts';
import type { LineSource } from '../parts/line-source.ts';
import type { Leaving } from './bench-keys.ts';
import type { BenchStore } from './bench-state.ts';

/** Runs until the input ends or the maker leaves. Never prompts and never repeats itself. */
export async function runPlain(
  store: BenchStore,
  source: LineSource,
  print: (text: string) => void,
): Promise<Leaving> {
  let printed = 0;
  let done = -1;
  let onWay = store.get().way;
  let told: string | null = null;
  const show = (): void => {
    const { lines, linesBefore, session, settings, trouble, way } = store.get();
    for (const line of lines.slice(printed - linesBefore)) if (isTold(line)) print(line.text);
    printed = linesBefore + lines.length;
    if (trouble !== null && trouble !== told) print(trouble);
    told = trouble;
    if (session.done !== done || way !== onWay) {
      print((way && sayWayStep(way)) ?? sayNow(session, unitsFor(settings.units)));
    }
    done = session.done;
    onWay = way;
  };
  // Keys cannot be told here before a line ends: what was asked of the maker is taken back.
  const refusePedal = (): void => {
    if (store.get().assigning === null) return;
    store.assign(null);
    printed = store.get().linesBefore + store.get().lines.length;
    store.say(answer(sayNoPedalHere()));
  };
  const tellPicture = async (): Promise<void> => {
    const { picture, session, settings } = store.get();
    if (picture === null) return;
    const { drawPicture } = await import('./pictures.ts');
    const { plan } = session.job;
    const look = { columns: 78, rows: 40, colour: 'none', glyphs: 'ascii', words: true } as const;
    const rowsDone = rowAt(session.job, session.done);
    for (const line of drawPicture(picture, plan, { ...look, rowsDone, units: unitsFor(settings.units) }))
      print(line);
    store.draw(null);
  };
  show();
  for (;;) {
    const line = await source.next();
    if (line === null) return 'left';
    const how = store.submit(line);
    const leaves = how !== null && store.mayLeave();
    await store.untilDone();
    refusePedal();
    show();
    await tellPicture();
    if (leaves) return how;
  }
}

/** What was typed or confirmed is known already: only what is new is told. */
const isTold = (line: Line): boolean => line.tone !== 'typed' && line.tone !== 'done';
