/** What has been read so far of what is seen at the bench, and what every part of the reading asks. */
import type { SlipMoment } from '../../session/diagnose/question.ts';
import type { Look } from '../../session/locate/seen.ts';
import type { ChatFault, Known } from './intent.ts';
import type { Token } from './seen-words.ts';

export interface Reading {
  readonly known: Known;
  readonly seen: { -readonly [F in keyof Look]: Look[F] };
  readonly needles: string[];
  readonly leftOut: string[];
  moment: SlipMoment | null;
  askRow: number | null;
  ladder: boolean;
  fault: ChatFault | null;
}

export const startReading = (known: Known): Reading => ({
  known,
  seen: {},
  needles: [],
  leftOut: [],
  moment: null,
  askRow: null,
  ladder: false,
  fault: null,
});

export const isNothing = (word: string | undefined): boolean => /^(empty|nothing|none)$/.test(word ?? '');
export const isSide = (word: string | undefined): word is 'left' | 'right' =>
  word === 'left' || word === 'right';

/** The `n`th token from `i` that is not `in` or `on`. */
export function after(clause: readonly Token[], i: number, n: number): Token | undefined {
  return clause.slice(i + 1).filter(({ text, kind }) => kind !== 'word' || (text !== 'in' && text !== 'on'))[
    n - 1
  ];
}

export function leaveOut(reading: Reading, token: Token): number {
  reading.leftOut.push(token.typed);
  return 1;
}

export function setEmpty(reading: Reading, taken: number): number {
  reading.seen.left = null;
  reading.seen.right = null;
  return taken;
}
