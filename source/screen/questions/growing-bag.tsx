import { useMemo } from 'react';
import { type Interview, planIn } from '../../chat/first-run/interview.ts';
import { slantsOf } from '../../planning/choose-size.ts';
import { drawBag } from '../../sheet/terminal/draw-bag.ts';
import { drawSlants } from '../../sheet/terminal/draw-slants.ts';
import { colourDepth, FinishedRows } from '../parts/rows.tsx';

interface Props {
  readonly interview: Interview;
  readonly columns: number;
  readonly rows: number;
}

/** The bag as the answers have it so far, and what is usual for the rest; pale until its yarns are known. Or what is to be chosen from. */
export default function GrowingBag({ interview, columns, rows }: Props) {
  const lines = useMemo(() => {
    const planned = planIn(interview);
    if (!planned.ok) return [];
    const plan = planned.value;
    const look = { columns: columns - 1, rows, colour: colourDepth(process.env), glyphs: 'unicode' } as const;
    if (interview.at === 'slant') return drawSlants(plan, slantsOf(plan.brief), look, interview.words);
    const rowsDone = interview.answers.first ? plan.rows : 0;
    return drawBag(plan, { ...look, rowsDone }, interview.words);
  }, [interview, columns, rows]);
  return <FinishedRows rows={lines} />;
}
