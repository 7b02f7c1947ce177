import type { Act } from '../steps/act.ts';
import type { ActByHand } from '../steps/act-by-hand.ts';
import { type SayingsBy, sayBy } from './by-kind.ts';

type Kind = Act['kind'];

/** What is said of acts of these kinds; left out, of all. */
export type ActWords<K extends Kind = Kind> = Pick<SayingsBy<'kind', Act>, K>;

/** What paper says in few words: all at the bed, and what is measured. */
export type ShortKind = Exclude<Kind, ActByHand['kind']> | 'measure-bag' | 'measure-rounds' | 'measure-cord';

/** What a topic says of one act. */
export const sayAct = (words: ActWords, act: Act): string => sayBy('kind', words, act);

/** The same of a topic that leaves some acts out; null of those. */
export const sayActOrNull = (words: Partial<ActWords>, act: Act): string | null =>
  (words[act.kind] as ((act: Act) => string) | undefined)?.(act) ?? null;
