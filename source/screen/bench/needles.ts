/** Needles as they look: what each holds, and the signs for it. */
import type { NeedleLook } from '../../chat/glance.ts';
import type { BedStrip } from '../../chat/view.ts';

export function lookOf({ left, right, empty, doubled }: BedStrip, place: number): NeedleLook {
  if (left === null || right === null || place < left || place > right) return 'out';
  if (place === empty) return 'empty';
  return place === doubled ? 'two' : 'loop';
}

const signs: Readonly<Record<NeedleLook, readonly [string, string]>> = {
  loop: ['●', 'O'],
  empty: ['○', '_'],
  two: ['●●', 'OO'],
  out: ['·', '.'],
};

/** Two loops are two signs. */
export const signOf = (look: NeedleLook, ascii: boolean): string => signs[look][ascii ? 1 : 0];
