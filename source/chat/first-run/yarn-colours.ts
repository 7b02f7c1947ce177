/** A colour for a yarn by the word in its name, in English or German; otherwise one of two that are told apart easily. */
const named: readonly (readonly [hex: string, names: readonly string[]])[] = [
  ['#6b2d5c', ['plum', 'pflaume']],
  ['#9fd8c2', ['mint', 'minze']],
  ['#b3262e', ['red', 'rot']],
  ['#d9722b', ['orange']],
  ['#e3c23b', ['yellow', 'gelb']],
  ['#3f8f4f', ['green', 'grün']],
  ['#2f5fa8', ['blue', 'blau']],
  ['#27325c', ['navy', 'marine']],
  ['#2f7d7d', ['teal', 'petrol']],
  ['#7a4fa0', ['purple', 'violet', 'lila', 'violett']],
  ['#dd8fae', ['pink', 'rosa']],
  ['#7a5236', ['brown', 'braun']],
  ['#efe3c4', ['cream', 'creme', 'ecru']],
  ['#d9b36c', ['sand', 'beige']],
  ['#9a9a9a', ['grey', 'gray', 'grau']],
  ['#262626', ['black', 'schwarz']],
  ['#f2efe6', ['white', 'weiß', 'weiss', 'natur']],
];

const byName: ReadonlyMap<string, string> = new Map(
  named.flatMap(([hex, names]) => names.map((name) => [name, hex] as const)),
);

const [[dark], [light]] = named as readonly [readonly [string, unknown], readonly [string, unknown]];

/** `beside` is the colour of the other yarn; null where there is none. */
export function usualColour(name: string, beside: string | null): string {
  const word = name
    .toLowerCase()
    .split(/[\s-]+/)
    .find((one) => byName.has(one));
  return (word && byName.get(word)) ?? (beside === null || beside === light ? dark : light);
}
