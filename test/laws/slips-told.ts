/** The maker's slips as the program tells them, and what it tells the hands, as other programs read it. */
import { passOfRow } from '../../source/session/diagnose/slip-moment.ts';
import type { HandStep } from '../../source/session/mend/mend.ts';
import type { ShapingSlip, Slip as SlipTold } from '../../source/session/mend/slip.ts';
import type { Job } from '../../source/steps/job.ts';
import type { Move } from './loop-bed.ts';
import type { Shaping, Slip } from './maker.ts';

const shapingTold: Readonly<Record<Shaping, ShapingSlip>> = {
  'increase omitted': 'increase-missing',
  'decrease omitted': 'decrease-missing',
  'increase doubled': 'increase-doubled',
  'decrease doubled': 'decrease-doubled',
  'move omitted': 'move-missing',
  'move doubled': 'move-doubled',
  'move mirrored': 'move-mirrored',
  'needle left in work': 'needle-left-working',
  'needle left out of work': 'needle-left-out-of-work',
};

export function slipTold(job: Job, slip: Slip): SlipTold {
  switch (slip.kind) {
    case 'rows more':
      return { is: 'rows-too-many', rows: slip.rows, step: passOfRow(job, slip.row) };
    case 'rows fewer':
      return { is: 'rows-too-few', rows: slip.rows, step: passOfRow(job, slip.row) };
    case 'dropped':
      return { is: 'work-dropped', step: passOfRow(job, slip.row) };
    case 'stripe yarn':
      return { is: 'stripe-in-other-yarn', stripe: slip.stripe, used: slip.used };
    case 'yarns swapped':
      return { is: 'yarns-swapped', stripe: slip.stripe, used: slip.used };
    case 'rehang forgotten':
      return { is: 'rehang-missing', row: slip.row };
    case 'rehang aside':
      return { is: 'rehang-shifted', row: slip.row, by: slip.by };
    default:
      return { is: shapingTold[slip.kind], move: slip.move };
  }
}

export const handMoves = ({ moves, setsCounter, row }: HandStep): readonly Move[] => [
  ...moves.map((move) => ('undo' in move && move.undo === 'hand' ? { undo: move.what.move } : move) as Move),
  ...(setsCounter ? [{ undo: 'counter', rows: row }] : []),
];
