import type { BenchView } from '../../chat/view.ts';
import { drawStrip } from '../../sheet/terminal/draw-strip.ts';
import type { Words } from '../../wording/words.ts';
import { FinishedRows } from '../parts/rows.tsx';
import type { Brush } from './row.ts';

interface Props {
  readonly view: BenchView;
  readonly size: { readonly columns: number; readonly rows: number };
  readonly brush: Brush;
  readonly words: Words;
}

/** The strip as it grows, at the right of a wide window. */
export default function SideStrip({ view, size, brush, words }: Props) {
  const lines = drawStrip(
    view.plan,
    {
      ...size,
      colour: brush.depth,
      glyphs: brush.ascii ? 'ascii' : 'unicode',
      rowsDone: view.finished ? view.plan.rows : view.rows.at,
    },
    words,
  );
  return <FinishedRows rows={['', ...lines]} />;
}
