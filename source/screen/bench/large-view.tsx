import { Box, Text } from 'ink';
import type { BenchView } from '../../chat/view.ts';
import { say } from '../../shared/say.ts';
import { bigHeight, bigLetters } from './big-letters.ts';
import { PhaseRow } from './phase-row.tsx';
import { Wrapped, wrappedRows } from './wrapped.tsx';

interface Props {
  readonly view: BenchView;
  readonly columns: number;
  /** Rows that it may fill. */
  readonly room: number;
  readonly ascii: boolean;
}

/** Rows of window that the large view needs. */
export const largeViewRows = 20;

/** Phases, the action, and a blank row behind each of the two big texts. */
const fixedRows = 1 + bigHeight + 2;
/** The text keeps this height when it is shorter, so that nothing jumps from step to step. */
const usualTextRows = 3;

/**
 * The row count and the next action in letters to be read across the bed, and the instruction with its caution below them.
 * Where a long text leaves no room the count is written small: the text is never cut for it.
 */
export function LargeView({ view, columns, room, ascii }: Props) {
  const ink = ascii ? '#' : '\u2588';
  const [row] = view.counters;
  const count = row ? say`row ${row.at}` : '';
  const caution = view.caution === null ? null : `! ${view.caution}`;
  const textRows = wrappedRows(view.now, columns) + (caution === null ? 0 : wrappedRows(caution, columns));
  const countIsBig = fixedRows + bigHeight + textRows <= room;
  const textRoom = room - fixedRows - (countIsBig ? bigHeight : 1);
  return (
    <Box flexDirection="column">
      <PhaseRow view={view} wide={columns >= 76} />
      {countIsBig ? <BigText text={count} width={columns - 1} ink={ink} /> : <Text bold>{count}</Text>}
      <Box height={1} flexShrink={0} />
      <BigText text={view.shout} width={columns - 1} ink={ink} />
      <Box height={1} flexShrink={0} />
      <Box
        flexDirection="column"
        height={Math.min(textRoom, Math.max(usualTextRows, textRows))}
        overflow="hidden"
      >
        <Wrapped bold text={view.now} width={columns} />
        {caution === null ? null : <Wrapped color="yellow" text={caution} width={columns} />}
      </Box>
    </Box>
  );
}

/** Big letters where they fit, else the words in bold. */
function BigText({
  text,
  width,
  ink,
}: {
  readonly text: string;
  readonly width: number;
  readonly ink: string;
}) {
  const lines = bigLetters(text, width, ink) ?? ['', '', text.toUpperCase(), '', ''];
  return (
    <Box flexDirection="column">
      {lines.map((line, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows of one picture
        <Text key={i} bold wrap="truncate-end">
          {line === '' ? ' ' : line}
        </Text>
      ))}
    </Box>
  );
}
