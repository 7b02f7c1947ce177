/** Another bag like this one, as it is typed: `another`, `another larger`, `another turned`, `another in sand and slate`, `another 16 by 20`. */
import type { MatchWish } from '../../journal/match.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import { readSize } from '../first-run/read-size.ts';
import { readYarn, usualColour } from '../first-run/read-yarn.ts';
import type { ChatFault, Intent } from './intent.ts';

const named: ReadonlyMap<string, MatchWish> = new Map<string, MatchWish>([
  ['', { is: 'same' }],
  ['larger', { is: 'larger' }],
  ['bigger', { is: 'larger' }],
  ['größer', { is: 'larger' }],
  ['smaller', { is: 'smaller' }],
  ['kleiner', { is: 'smaller' }],
  ['turned', { is: 'turned' }],
  ['getauscht', { is: 'turned' }],
]);

export function parseMatch(rest: string, words: Words): Result<Intent, ChatFault> {
  const wish = named.get(rest.toLowerCase()) ?? colours(rest) ?? size(rest, words);
  return wish
    ? succeed({ kind: 'another', wish })
    : fail({
        code: 'chat/not-a-choice',
        word: rest,
        choices: ['larger', 'smaller', 'turned', 'in …'],
      });
}

function colours(rest: string): MatchWish | null {
  const [, list] = /^in\s+(.+)$/iu.exec(rest) ?? [];
  const read = list?.split(/\s*,\s*|\s+(?:and|und)\s+/u).map(readYarn) ?? [];
  const yarns = read.flatMap((yarn) => (yarn.ok ? [yarn.value] : []));
  if (yarns.length === 0 || yarns.length < read.length) return null;
  return {
    is: 'yarns',
    yarns: yarns.map(({ name, colour, metresPer100g, grams }) => ({
      name,
      colour: colour ?? usualColour(name, []),
      metresPer100g,
      grams,
    })),
  };
}

function size(rest: string, { units }: Words): MatchWish | null {
  const read = readSize(rest, units.length);
  return read.ok && 'depthCm' in read.value ? { is: 'size', ...read.value } : null;
}
