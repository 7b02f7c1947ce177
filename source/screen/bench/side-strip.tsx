import { useMemo } from 'react';
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

/** The strip as it grows, at the right of a wide window; drawn again when a row is done, not at every step. */
export default function SideStrip({ view, size, brush, words }: Props) {
  const { plan } = view;
  const { columns, rows } = size;
  const rowsDone = view.finished ? plan.rows : view.rows.at;
  const lines = useMemo(() => {
    const { depth: colour, ascii } = brush;
    return drawStrip(plan, { columns, rows, colour, glyphs: ascii ? 'ascii' : 'unicode', rowsDone }, words);
  }, [plan, columns, rows, brush, rowsDone, words]);
  return <FinishedRows rows={['', ...lines]} />;
}
