import type { Plan } from '../../planning/plan.ts';
import type { SheetContent } from './content.ts';

/** How large the pictures of the first page are, in mm, and how many seatings the bed shows. */
export interface Room {
  readonly lanes: number;
  readonly bagMm: number;
  readonly stripMm: number;
}

/** The pictures give way where the first page has much else to hold, so that it stays one page on Letter. */
export function roomFor({ seatings }: Plan, { yarns, title, blanks, remarks }: SheetContent): Room {
  const forClass = blanks.length > 0;
  const lanes = Math.min(seatings.length, forClass ? 1 : 2);
  const excessMm =
    (lanes - 1) * 11 +
    (seatings.length > lanes ? 5 : 0) +
    Math.max(0, yarns.length - 3) * 5 +
    Math.max(0, remarks.length - 1) * 8 +
    (title.length > 60 ? 8 : 0) +
    (forClass ? 24 : 0);
  const bagGivesMm = Math.min(excessMm, forClass ? 20 : 10);
  return { lanes, bagMm: 74 - bagGivesMm, stripMm: 42 - Math.min(10, excessMm - bagGivesMm) };
}
