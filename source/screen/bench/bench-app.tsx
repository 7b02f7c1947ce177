import { Box, Static, Text } from 'ink';
import { lazy, Suspense, useMemo, useSyncExternalStore } from 'react';
import { benchView } from '../../chat/view.ts';
import { say } from '../../shared/say.ts';
import { unitsFor } from '../../shared/units.ts';
import type { BenchKeys } from '../bench-keys.ts';
import type { BenchStore } from '../bench-state.ts';
import type { FieldStream } from '../keys/field-stream.ts';
import { Bench } from './bench.tsx';
import { LargeView, largeViewRows } from './large-view.tsx';
import { PromptRows } from './prompt-rows.tsx';
import { TranscriptLine } from './transcript-line.tsx';
import { useShownFrom, useWindowSize } from './use-window-size.ts';
import { Wrapped, wrappedRows } from './wrapped.tsx';

/** Drawings are wanted seldom, and not at the start. */
const PictureView = lazy(() => import('./picture-view.tsx'));

/** Rows that are not the bench's: a blank one, the choices, the prompt, and one to stay lower than the window. */
const otherRows = 4;

interface Props {
  readonly store: BenchStore;
  readonly keys: BenchKeys;
  readonly field: FieldStream;
}

/** The whole screen: a transcript that scrolls away above, the bench and the prompt below it. */
export function BenchApp({ store, keys, field }: Props) {
  const { session, lines, linesBefore, trouble, settings, picture, way } = useSyncExternalStore(
    store.subscribe,
    store.get,
  );
  const prompt = useSyncExternalStore(keys.subscribe, keys.prompt);
  const { columns, rows, resizes } = useWindowSize();
  const { from, beginning } = useShownFrom(linesBefore, linesBefore + lines.length, resizes, rows);
  const units = unitsFor(settings.units);
  const { language } = settings;
  // biome-ignore lint/correctness/useExhaustiveDependencies: in another language it has other words
  const view = useMemo(() => benchView(session, units, way), [session, units, way, language]);
  const room = rows - otherRows - (trouble === null ? 0 : wrappedRows(`! ${trouble}`, columns));
  const large = settings.largeView && rows >= largeViewRows;
  return (
    <>
      <Static key={beginning} items={lines.slice(from - linesBefore)}>
        {(line, i) => <TranscriptLine key={i} line={line} columns={columns} />}
      </Static>
      <Box flexDirection="column">
        <Text> </Text>
        {picture ? (
          <Suspense fallback={<Text> </Text>}>
            <PictureView
              picture={picture}
              plan={session.job.plan}
              view={view}
              columns={columns}
              rows={rows}
              units={units}
              ascii={settings.ascii}
            />
          </Suspense>
        ) : large ? (
          <LargeView view={view} columns={columns} room={room} ascii={settings.ascii} />
        ) : (
          <Bench view={view} columns={columns} rows={rows} room={room} />
        )}
        {trouble === null ? null : <Wrapped color="yellow" text={`! ${trouble}`} width={columns} />}
        <PromptRows prompt={prompt} field={field} placeholder={placeholder(view.finished, columns)} />
      </Box>
    </>
  );
}

function placeholder(finished: boolean, columns: number): string {
  if (finished) return say`The bag is finished: type quit to leave`;
  return columns < 70
    ? say`Enter confirms; help shows more`
    : say`Enter confirms, Left takes back; or type a command, such as help`;
}
