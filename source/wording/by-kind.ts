/** What is said of each kind of a thing: an entry a kind, so that one that is forgotten does not compile. */
import type { Act } from '../steps/act.ts';
import type { ActByHand } from '../steps/act-by-hand.ts';

/** The members of a union whose `key` may be `kind`. */
type OfKind<One, Key extends keyof One, Kind> = One extends unknown
  ? Kind extends One[Key]
    ? One
    : never
  : never;

/** By the value of `key`: a function of the thing itself, and of whatever else it takes to say it. */
export type SayingsBy<
  Key extends string,
  One extends Readonly<Record<Key, string>>,
  Rest extends readonly unknown[] = [],
> = { readonly [Kind in One[Key]]: (one: OfKind<One, Key, Kind>, ...rest: Rest) => string };

export function sayBy<
  Key extends string,
  One extends Readonly<Record<Key, string>>,
  Rest extends readonly unknown[],
>(key: Key, sayings: SayingsBy<Key, One, Rest>, one: One, ...rest: Rest): string {
  return (sayings[one[key]] as (one: One, ...rest: Rest) => string)(one, ...rest);
}

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
