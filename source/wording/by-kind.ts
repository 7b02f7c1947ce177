/** What is said of each kind of a thing: an entry a kind, so that one that is forgotten does not compile. */

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
