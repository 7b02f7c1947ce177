/**
 * What goes wrong at the bench. A slip is told by what the hands did otherwise than the plan and by where: everything it
 * leaves to see, and every way to set it right, follows from carrying it out on the bed (common practice).
 */

export const shapingSlips = [
  'increase-missing',
  'decrease-missing',
  'increase-doubled',
  'decrease-doubled',
  'move-missing',
  'move-doubled',
  /** Increased at the trailing edge and decreased at the leading one: left and right swapped. */
  'move-mirrored',
  /** The needle emptied by the decrease stayed in work and takes a loop of its own. */
  'needle-left-working',
  /** The needle uncovered by the increase went out of work: no eyelet there. */
  'needle-left-out-of-work',
] as const;
export type ShapingSlip = (typeof shapingSlips)[number];

export type Slip =
  /** At shaping move `move`, from 1. */
  | { readonly is: ShapingSlip; readonly move: number }
  /** So many rows knitted too many after the step `step`, a pass or what followed it; or left out up to and with it. */
  | { readonly is: 'rows-too-many' | 'rows-too-few'; readonly rows: number; readonly step: number }
  /** A whole stripe in another yarn, from 1. */
  | { readonly is: 'stripe-in-other-yarn'; readonly stripe: number; readonly used: string }
  /** From this stripe on two yarns have changed places. */
  | { readonly is: 'yarns-swapped'; readonly stripe: number; readonly used: string }
  /** Only the row of this pass took another yarn. */
  | { readonly is: 'row-in-other-yarn'; readonly step: number; readonly used: string }
  /** After this row the work was not hung again, or hung so many needles too far to the right. */
  | { readonly is: 'rehang-missing'; readonly row: number }
  | { readonly is: 'rehang-shifted'; readonly row: number; readonly by: number }
  /** The pass of this step found the feeder empty, and everything fell. */
  | { readonly is: 'work-dropped'; readonly step: number }
  | { readonly is: 'stitch-dropped' }
  /** The carriage was brought across without knitting. */
  | { readonly is: 'carriage-wrong-side' }
  | { readonly is: 'wrong-yarn-in-feeder'; readonly held: string | null };

const shaping: ReadonlySet<string> = new Set(shapingSlips);
export const isShapingSlip = (slip: Slip): slip is Extract<Slip, { readonly move: number }> =>
  shaping.has(slip.is);

type FieldsOf<S> = { readonly [F in Exclude<keyof S, 'is'>]: 'number' | 'text' | 'text or null' };
type Kinds = { readonly [K in Slip['is']]: FieldsOf<Extract<Slip, { readonly is: K }>> };
const atMove = { move: 'number' } as const;

/** Every kind of slip and its own facts, as a log may hold it; the compiler asks for a row when one is added. */
export const slipKinds: Kinds = {
  'increase-missing': atMove,
  'decrease-missing': atMove,
  'increase-doubled': atMove,
  'decrease-doubled': atMove,
  'move-missing': atMove,
  'move-doubled': atMove,
  'move-mirrored': atMove,
  'needle-left-working': atMove,
  'needle-left-out-of-work': atMove,
  'rows-too-many': { rows: 'number', step: 'number' },
  'rows-too-few': { rows: 'number', step: 'number' },
  'stripe-in-other-yarn': { stripe: 'number', used: 'text' },
  'yarns-swapped': { stripe: 'number', used: 'text' },
  'row-in-other-yarn': { step: 'number', used: 'text' },
  'rehang-missing': { row: 'number' },
  'rehang-shifted': { row: 'number', by: 'number' },
  'work-dropped': { step: 'number' },
  'stitch-dropped': {},
  'carriage-wrong-side': {},
  'wrong-yarn-in-feeder': { held: 'text or null' },
};

/** Whether what a log holds is a slip, with its own facts and no others. */
export function isSlip(value: unknown): value is Slip {
  if (typeof value !== 'object' || value === null || !('is' in value)) return false;
  const { is, ...facts } = value as Record<string, unknown>;
  const fields = typeof is === 'string' && Object.hasOwn(slipKinds, is) ? slipKinds[is as Slip['is']] : null;
  if (!fields || Object.keys(facts).length !== Object.keys(fields).length) return false;
  return Object.entries(fields).every(([name, kind]) => {
    const fact = facts[name];
    if (kind === 'number') return Number.isSafeInteger(fact);
    return typeof fact === 'string' || (fact === null && kind === 'text or null');
  });
}
