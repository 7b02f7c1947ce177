/**
 * How far 100 g go by the name of a yarn's weight: usual labels, a rule of thumb. Names as the trade uses them, British ply
 * and American weight beside each other; German ones where they differ. A blank may stand for each dash.
 */
const metresPer100g: readonly (readonly [metres: number, names: readonly string[]])[] = [
  [800, ['lace', '2-ply', '2-fädig', 'lacegarn']],
  [600, ['light-fingering', '3-ply', '3-fädig']],
  [420, ['fingering', 'sock-yarn', 'sock', '4-ply', '4-fädig', '4-fach', 'sockengarn', 'sockenwolle']],
  [330, ['sport', '5-ply', '6-fädig']],
  [230, ['dk', 'double-knit', 'double-knitting', 'light-worsted', '8-ply', '8-fädig']],
  [190, ['worsted']],
  [170, ['aran', '10-ply']],
  [120, ['chunky', 'bulky', '12-ply']],
  [70, ['super-bulky', 'super-chunky']],
];

/** The longest name first, so that `super-bulky` is not taken for `bulky`. */
const named = metresPer100g
  .flatMap(([metres, names]) => names.map((name) => [name, metres] as const))
  .toSorted(([one], [other]) => other.length - one.length)
  .map(([name, metres]) => ({
    pattern: new RegExp(
      String.raw`(?<![\p{L}\p{N}])${name.replaceAll('-', String.raw`[\s-]+`)}(?:\s+(?:weight|yarn|garn))?(?![\p{L}\p{N}])`,
      'iu',
    ),
    metres,
  }));

/** The usual metres to 100 g of the weight that is named in a text, and the text without it; null where none is. */
export function weightNamed(text: string): { readonly metres: number; readonly rest: string } | null {
  const found = named.find(({ pattern }) => pattern.test(text));
  return found ? { metres: found.metres, rest: text.replace(found.pattern, ' ') } : null;
}
