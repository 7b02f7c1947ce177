/** A colour for a yarn by the word in its name, in English or German; otherwise one that none beside it has. */
const named: readonly (readonly [hex: string, names: readonly string[]])[] = [
  ['#6b2d5c', ['plum', 'pflaume']],
  ['#9fd8c2', ['mint', 'minze']],
  ['#b3262e', ['red', 'rot']],
  ['#d9722b', ['orange']],
  ['#a8502f', ['rust', 'rost']],
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

/** `beside` are the colours of the yarns before it. The first two of the table are told apart easily. */
export function usualColour(name: string, beside: readonly string[]): string {
  const free = named.find(([hex]) => !beside.includes(hex))?.[0] ?? '#6b2d5c';
  const word = name
    .toLowerCase()
    .split(/[\s-]+/)
    .find((one) => byName.has(one));
  return (word && byName.get(word)) ?? free;
}
