/** The shape of a topic that has something to say of each act. */
import type { Act } from '../steps/step.ts';

export type HandKind =
  | 'lay-graft'
  | 'graft-start'
  | 'graft-pair'
  | 'graft-end'
  | 'fasten-graft'
  | 'pull-ravel-cord'
  | 'fold-seam'
  | 'bars'
  | 'fasten-seam'
  | 'hide-ends'
  | 'wash'
  | 'measure-bag'
  | 'measure-rounds'
  | 'measure-cord'
  | 'sew-cord'
  | 'thread-eyelets'
  | 'tie';
/** At the bed, or away from it. */
export type BedKind = Exclude<Act['kind'], HandKind>;

export type ActWords<Kind extends Act['kind'] = Act['kind']> = {
  readonly [K in Kind]: (act: Extract<Act, { readonly kind: K }>) => string;
};

/** What a topic says of one act. */
export const wordsFor = (words: ActWords, act: Act): string => (words[act.kind] as (act: Act) => string)(act);
