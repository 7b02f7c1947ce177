import { Box, Text } from 'ink';
import type { BenchView } from '../../chat/view.ts';
import { bigLetters } from './big-letters.ts';
import { PhaseRow } from './phase-row.tsx';

interface Props {
  readonly view: BenchView;
  readonly columns: number;
  readonly ascii: boolean;
}

/** Rows of window that the large view needs. */
export const largeViewRows = 20;

/** The row count and the next action in letters to be read across the bed, and the instruction below them. */
export function LargeView({ view, columns, ascii }: Props) {
  const ink = ascii ? '#' : '\u2588';
  const [row] = view.counters;
  return (
    <Box flexDirection="column">
      <Box paddingBottom={1}>
        <PhaseRow view={view} wide={columns >= 76} />
      </Box>
      <BigText text={row ? `row ${row.at}` : ''} width={columns - 1} ink={ink} />
      <Box height={1} flexShrink={0} />
      <BigText text={view.shout} width={columns - 1} ink={ink} />
      <Box height={1} flexShrink={0} />
      <Box minHeight={3}>
        <Text bold>{view.now}</Text>
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
