import { Box } from 'ink';
import { lazy, Suspense, useMemo } from 'react';
import type { BenchView } from '../../chat/view.ts';
import type { drawStrip } from '../../sheet/terminal/draw-strip.ts';
import type { Words } from '../../wording/words.ts';
import { colourDepth, FinishedRows, Rows, Text } from '../parts/rows.tsx';
import { benchRows } from './rows/bench-rows.ts';
import { type Brush, brushFor } from './rows/row.ts';

/** Drawings are not wanted at the start. */
const SideStrip = lazy(async () => {
  const { drawStrip } = await import('../../sheet/terminal/draw-strip.ts');
  return { default: (props: StripProps) => <Strip {...props} draw={drawStrip} /> };
});

type DrawStrip = typeof drawStrip;

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

interface StripProps {
  readonly view: BenchView;
  readonly size: { readonly columns: number; readonly rows: number };
  readonly brush: Brush;
  readonly words: Words;
}

/** The strip as it grows, at the right of a wide window; drawn again when a row is done, not at every step. */
function Strip({ view, size, brush, words, draw }: StripProps & { readonly draw: DrawStrip }) {
  const { plan } = view;
  const { columns, rows } = size;
  const rowsDone = view.finished ? plan.rows : view.rows.at;
  const lines = useMemo(() => {
    const { depth: colour, ascii } = brush;
    return draw(plan, { columns, rows, colour, glyphs: ascii ? 'ascii' : 'unicode', rowsDone }, words);
  }, [plan, columns, rows, brush, rowsDone, words, draw]);
  return <FinishedRows rows={['', ...lines]} />;
}
