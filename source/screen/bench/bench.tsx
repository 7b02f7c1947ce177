import { Box } from 'ink';
import { lazy, Suspense, useMemo } from 'react';
import type { BenchView } from '../../chat/view.ts';
import type { Words } from '../../wording/words.ts';
import { colourDepth, Rows } from '../parts/rows.tsx';
import { Text } from '../parts/text.tsx';
import { benchRows } from './bench-rows.ts';
import { brushFor } from './row.ts';

/** Drawings are not wanted at the start. */
const SideStrip = lazy(() => import('./side-strip.tsx'));

interface Props {
  readonly view: BenchView;
  readonly columns: number;
  /** Rows of the window that it may fill. */
  readonly room: number;
  readonly large?: boolean;
  readonly ascii?: boolean;
  readonly words: Words;
}

/** What to do now, and where the work is. As high as the window lets it be, whatever the step. */
export function Bench({ view, columns, room, large = false, ascii = false, words }: Props) {
  const depth = colourDepth(process.env);
  const brush = useMemo(() => brushFor(view.plan, depth, ascii), [view.plan, depth, ascii]);
  const { layout, above, below } = useMemo(
    () => benchRows(view, { columns, room, large }, brush, words),
    [view, columns, room, large, brush, words],
  );
  const { strip, width } = layout;
  if (!strip) return <Rows rows={[...above, ...below]} depth={depth} />;
  return (
    <Box flexDirection="column">
      <Rows rows={above} depth={depth} />
      <Box>
        <Box width={width + 2} flexShrink={0}>
          <Rows rows={below} depth={depth} />
        </Box>
        <Suspense fallback={<Text> </Text>}>
          <SideStrip view={view} size={strip} brush={brush} words={words} />
        </Suspense>
      </Box>
    </Box>
  );
}
