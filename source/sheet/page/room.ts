import type { Plan } from '../../planning/plan.ts';
import { textWidth } from '../svg/text-width.ts';
import type { SheetContent } from './content.ts';

/** How large the pictures of the first page are, in mm, and how many hangings the bed shows. */
export interface Room {
  readonly lanes: number;
  readonly bagMm: number;
  readonly stripMm: number;
}

/** What a Letter page holds, with something in hand for fonts that run wide. */
const pageMm = 251;
const gapMm = 3.8;
const wanted = { bagMm: 74, stripMm: 42 };
const least = { bagMm: 50, stripMm: 30 };

/**
 * The pictures give way where the first page has much else to hold, so that it stays one page of A4 or Letter: first
 * the strip, then the bag, whose neighbour, the list of figures, takes its height as well.
 */
export function roomFor({ hangings }: Plan, content: SheetContent): Room {
  const { yarns, title, blanks, remarks, facts } = content;
  const forClass = blanks.length > 0;
  const lanes = Math.min(hangings.length, forClass ? 1 : 2);
  const besideMm =
    facts.length * 5.65 + remarks.reduce((sum, remark) => sum + 1.5 + 4 * linesOf(remark, 2.96, 92), 3);
  const fixedMm =
    11 +
    titleMm(title) +
    20.7 +
    yarns.reduce((sum, { name }) => sum + 1.2 + 4 * linesOf(name, 2.96, 50), 0) +
    7 +
    (15.5 + 11 * lanes + (hangings.length > lanes ? 5 : 0)) +
    (forClass ? 36 : 20.5) +
    5 * gapMm;
  const leftMm = pageMm - fixedMm;
  const stripMm = clamp(leftMm - Math.max(wanted.bagMm, besideMm), least.stripMm, wanted.stripMm);
  return { lanes, stripMm, bagMm: clamp(leftMm - stripMm, least.bagMm, wanted.bagMm) };
}

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(value, high));

const linesOf = (text: string, sizeMm: number, widthMm: number): number =>
  Math.ceil(textWidth(text, sizeMm * 0.88) / widthMm);

/** Titles come in four sizes, the longer the smaller. */
export function titleSize(title: string): {
  readonly name: 'short' | 'medium' | 'long' | 'longest';
  readonly points: number;
} {
  const length = [...title].length;
  if (length <= 28) return { name: 'short', points: 27 };
  if (length <= 60) return { name: 'medium', points: 19 };
  return length <= 120 ? { name: 'long', points: 14 } : { name: 'longest', points: 11.5 };
}

const mmPerPoint = 25.4 / 72;

function titleMm(title: string): number {
  const sizeMm = titleSize(title).points * mmPerPoint;
  return linesOf(title, sizeMm, 145) * sizeMm * 1.12;
}
