/**
 * The player: the bench at the place where it is played, and a row of its own: the bar, elapsed and total, the speed, and
 * whether it plays.
 */
import { Box } from 'ink';
import { lazy, Suspense, useMemo, useSyncExternalStore } from 'react';
import { lastLines } from '../../chat/say-done.ts';
import { benchView } from '../../chat/view.ts';
import { type Player, type PlayerView, viewPlayer } from '../../journal/player.ts';
import type { Words } from '../../wording/words.ts';
import { Bench } from '../bench/bench.tsx';
import { holdScreen } from '../parts/hold-screen.ts';
import { PromptRow } from '../parts/prompt-field.tsx';
import { LabelledRow, labelWidth, Text, TranscriptLine, Wrapped, wrappedRows } from '../parts/rows.tsx';
import { createStore, type Store } from '../parts/store.ts';
import { BigEnough, useWindowSize } from '../parts/window-size.tsx';
import {
  type PlayerEffect,
  type PlayerEnd,
  type PlayerMessage,
  type PlayerMessageLine,
  type PlayerState,
  type PlayerStore,
  startPlayerState,
  updatePlayerScreen,
  waitOf,
} from './update-player.ts';

/** The keys, as many as fit in one row. */
const keysRow = (width: number, { player: { keys } }: Words): string =>
  keys.find((text) => text.length <= width) ?? keys.at(-1) ?? '';

/** Wanted at the end alone: the finished bag. */
const PictureView = lazy(() => import('../bench/picture-view.tsx'));

interface Props {
  readonly store: Pick<PlayerStore, 'subscribe' | 'get'>;
}

/** A higher window shows no more: what is drawn once need not be drawn again when the window is made lower. */
const highest = 26;

/** Rows of what was said; a remark stands in their place, so that the bench keeps its own. */
const lineRows = 3;
const lowWindow = 20;

/** Rows of the player's own: a blank one, the progress, the prompt. */
const ownRows = 3;

/**
 * The bench as it was, the last lines above it and the player's own rows below. All of it is redrawn, since lines that
 * have scrolled away could not be taken back; so it must stay lower than the window.
 */
function PlayerApp({ store }: Props) {
  const { player, message: answer, prompt, words } = useSyncExternalStore(store.subscribe, store.get);
  const { columns, rows } = useWindowSize();
  const height = Math.min(rows - 1, highest);
  const view = viewPlayer(player);
  const bench = useMemo(() => benchView(view.session), [view.session]);
  const { recording, shown } = player;
  const lines = useMemo(() => lastLines(recording, shown, highest, words), [recording, shown, words]);
  const note = noteHere(view);
  const message = answer && sayAnswer(answer, words);
  const width = columns - labelWidth;
  const remarks = [note, view.saying, message].filter((text) => text !== null);
  const remarkRows = remarks.reduce((sum, text) => sum + wrappedRows(text, width), 0);
  const room = height - ownRows - Math.max(height < lowWindow ? 0 : lineRows, remarkRows);
  return (
    <Box flexDirection="column" height={height} overflow="hidden" justifyContent="flex-end">
      <Box
        flexDirection="column"
        flexGrow={1}
        flexShrink={1}
        flexBasis={0}
        overflow="hidden"
        justifyContent="flex-end"
      >
        {lines.map((line, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no identity but their place
          <Box key={i} flexShrink={0}>
            <TranscriptLine line={line} columns={columns} />
          </Box>
        ))}
      </Box>
      <Box flexDirection="column" flexShrink={0}>
        {rows > 12 ? <Text> </Text> : null}
        {bench.finished ? (
          <Suspense fallback={<Bench {...{ view: bench, columns, room, words }} />}>
            <PictureView picture="bag" view={bench} ascii={false} stays {...{ columns, room, words }} />
          </Suspense>
        ) : (
          <Bench {...{ view: bench, columns, room, words }} />
        )}
        {note === null ? null : <Remark label={words.player.note} text={note} width={width} />}
        {view.saying === null ? null : (
          <Remark label={words.player.lesson} text={view.saying} width={width} />
        )}
        <LabelledRow label={words.player.play}>
          <Text wrap="truncate-end">{progressRow(view, width - 1, words)}</Text>
        </LabelledRow>
        {message === null ? null : (
          <LabelledRow label="">
            <Wrapped text={message} width={width} />
          </LabelledRow>
        )}
        <PromptRow line={prompt.line} placeholder={keysRow(columns - 3, words)} />
      </Box>
    </Box>
  );
}

const sayAnswer = (answer: PlayerMessageLine, { player }: Words): string =>
  'told' in answer ? answer.told : player.fault(answer.fault);

/** The note that was made at this very place; null where none was. */
function noteHere({ session }: PlayerView): string | null {
  const note = session.notes.last;
  return note && note.done === session.done ? note.text : null;
}

interface RemarkProps {
  readonly label: string;
  readonly text: string;
  readonly width: number;
}

const Remark = ({ label, ...text }: RemarkProps) => (
  <LabelledRow label={label}>
    <Wrapped bold {...text} />
  </LabelledRow>
);

/** `0:07`, `12:30`, `1:04:10`. */
export function formatClock(ms: number): string {
  const seconds = Math.floor(ms / 1000);
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  const two = (number: number): string => String(number).padStart(2, '0');
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`;
}

/** A bar of `width` cells, brackets included, full only when all has been played. */
export function formatBar(part: number, width: number): string {
  const cells = Math.max(0, width - 2);
  const full = Math.floor(Math.min(1, part) * cells);
  return `[${'#'.repeat(full)}${'-'.repeat(cells - full)}]`;
}

const widestBar = 40;
const narrowestBar = 5;
/** Kept for the words beside the bar, whatever they are: a bar that shrank would seem to jump back. */
const roomForWords = 42;

export function progressRow(view: PlayerView, width: number, { player: say }: Words): string {
  const { elapsedMs, totalMs, speed, ended } = view;
  const part = ended ? 1 : totalMs === 0 ? 0 : Math.min(elapsedMs / totalMs, 1 - Number.EPSILON);
  const time = say.time(formatClock(elapsedMs), formatClock(totalMs));
  const text = `${time}  ${say.speed(speed)}  ${say.state(view)}`;
  const bar = Math.min(widestBar, width - roomForWords);
  return bar < narrowestBar ? text : `${formatBar(part, bar)}  ${text}`;
}

/** The viewer's clock: what the player is told of time. */
interface PlayerClock {
  readonly elapsedMs: () => number;
  /** Runs the action after so long; what it returns cancels it. */
  readonly wake: (action: () => void, afterMs: number) => () => void;
}

const systemPlayerClock: PlayerClock = {
  elapsedMs: () => performance.now(),
  wake: (action, afterMs) => {
    const timer = setTimeout(action, afterMs);
    return () => clearTimeout(timer);
  },
};

interface PlayerScreen {
  readonly words: Words;
  /** Said at the beginning. */
  readonly message?: string;
  readonly clock?: PlayerClock;
}

/** Shows a player in the terminal until the viewer leaves. Rejects when drawing fails. */
export async function runPlayer(
  player: Player,
  { words, message, clock = systemPlayerClock }: PlayerScreen,
): Promise<PlayerEnd> {
  let cancel = (): void => undefined;
  const wakeAfter = (afterMs: number | null): void => {
    cancel();
    if (afterMs !== null)
      cancel = clock.wake(() => store.send({ is: 'tick', nowMs: clock.elapsedMs() }), afterMs);
  };
  const store: Store<PlayerState, PlayerMessage> = createStore<PlayerState, PlayerMessage, PlayerEffect>(
    startPlayerState({
      player,
      words,
      seenMs: clock.elapsedMs(),
      message: message === undefined ? null : { told: message },
    }),
    updatePlayerScreen,
    { wake: ({ afterMs }) => wakeAfter(afterMs) },
  );
  wakeAfter(waitOf(player));
  try {
    return await holdScreen<PlayerEnd, PlayerState>({
      store: { ...store, send: (told) => store.send({ ...told, nowMs: clock.elapsedMs() }) },
      screen: (
        <BigEnough tooSmall={words.bench.tooSmall}>
          <PlayerApp store={store} />
        </BigEnough>
      ),
      interrupted: 'interrupted',
    });
  } finally {
    wakeAfter(null);
  }
}
