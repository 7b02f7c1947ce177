import { Box, Static } from 'ink';
import { lazy, Suspense, useMemo, useRef, useSyncExternalStore } from 'react';
import type { Said } from '../../chat/talk.ts';
import { benchView } from '../../chat/view.ts';
import { usualPace } from '../../journal/pace.ts';
import { formatSaveStatus } from '../../wording/file-faults.ts';
import type { Words } from '../../wording/words.ts';
import { holdScreen } from '../parts/hold-screen.ts';
import { PromptRows } from '../parts/prompt-field.tsx';
import { inWindow, pagesOf } from '../parts/reading.ts';
import { TranscriptLine, transcriptLineRows, Wrapped, wrappedRows } from '../parts/rows.tsx';
import { BigEnough, useShownFrom, useWindowSize } from '../parts/window-size.tsx';
import { Bench } from './bench.tsx';
import type { BenchState, BenchStore, Leaving } from './bench-state.ts';
import { passesCounted } from './press-switch.ts';
import { belowBench, benchRoom, highestBench } from './rows/lay-out.ts';

/** Drawings are wanted seldom, and not at the start. */
const PictureView = lazy(() => import('./picture-view.tsx'));

interface Props {
  readonly store: Pick<BenchStore, 'subscribe' | 'get'>;
}

/** The whole screen: a transcript that scrolls away above, the bench and the prompt below it. */
export function BenchApp({ store }: Props) {
  const state = useSyncExternalStore(store.subscribe, store.get);
  const { session, lines, linesBefore, saving, settings, words, picture, prompt, pace, reading } = state;
  const { columns, rows, resizes } = useWindowSize();
  const { from, beginning, isBlank } = useShownFrom(linesBefore, linesBefore + lines.length, resizes, rows);
  const planned = useMemo(() => benchView(session, pace ?? usualPace), [session, pace]);
  const passes = passesCounted(state);
  const view = passes ? { ...planned, passes } : planned;
  const pages = reading && pagesOf(reading, { columns, rows });
  const page = pages?.[Math.min(reading?.at ?? 0, pages.length - 1)];
  const trouble = formatSaveStatus(saving, words);
  const troubleRows = trouble === null ? 0 : wrappedRows(`! ${trouble}`, columns);
  const room = benchRoom(rows) - troubleRows;
  const shown = lines.slice(from - linesBefore);
  const filled = useFilling(beginning, () => (isBlank ? blankRows(shown, columns, rows, room) : 0));
  const { ascii } = settings;
  const bench = <Bench {...{ view, columns, room, ascii, words }} large={settings.large} />;
  return (
    <>
      <Static key={beginning} items={[filled, ...shown]}>
        {(line, i) =>
          typeof line === 'number' ? (
            <Box key={i} height={line} />
          ) : (
            <TranscriptLine key={i} line={line} columns={columns} />
          )
        }
      </Static>
      <Box flexDirection="column">
        {page ? (
          Array.from(page.entries(), ([row, line]) => (
            <TranscriptLine key={row} line={line} columns={columns} />
          ))
        ) : picture ? (
          <Suspense fallback={bench}>
            <PictureView {...{ picture, view, columns, ascii, words }} room={highestBench(columns, room)} />
          </Suspense>
        ) : (
          bench
        )}
        {trouble === null ? null : <Wrapped bold text={`! ${trouble}`} width={columns} />}
        <PromptRows
          prompt={prompt}
          placeholder={
            pages
              ? words.bench.reading((reading?.at ?? 0) + 1, pages.length)
              : placeholder(view.finished, columns, ascii, words)
          }
        />
      </Box>
    </>
  );
}

/** Blank rows above what was said, so that the bench stands at the window's foot from the first press on. */
function blankRows(shown: readonly Said[], columns: number, rows: number, room: number): number {
  const said = shown.reduce((sum, line) => sum + transcriptLineRows(line, columns), 0);
  return Math.max(0, rows - said - Math.min(room, highestBench(columns, room)) - belowBench);
}

/** What is worked out once for each beginning stays: what was handed to `Static` must not change. */
function useFilling(beginning: number, work: () => number): number {
  const kept = useRef<{ beginning: number; rows: number } | null>(null);
  if (kept.current?.beginning !== beginning) kept.current = { beginning, rows: work() };
  return kept.current.rows;
}

function placeholder(finished: boolean, columns: number, ascii: boolean, { bench: say }: Words): string {
  if (finished) return say.typeToLeave;
  if (columns < 70) return say.keysShort;
  return ascii ? say.keysAscii : say.keys;
}

/** Shows the bench in the terminal until the maker leaves. Rejects when drawing fails. */
export const runBench = (store: BenchStore, beforeShown: () => void): Promise<Leaving> =>
  inWindow(
    (window) => store.send({ is: 'window', ...window }),
    () => guide(store, beforeShown),
  );

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
