/** Reads what can be seen at the bench: in any order, as little as is known, with small typed left out or in. */

import { ravelCord } from '../planning/brief.ts';
import type { Look } from '../session/diagnose/suspect.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Words } from '../wording/words.ts';
import type { ChatFault, Intent } from './intent.ts';

/** Words that may follow `find`. */
export const seenWords: readonly string[] = [
  'and',
  'carriage',
  'row',
  'stripes',
  'feeder',
  'stitches',
  'waste',
  'empty',
  'loose',
];

const fillers: ReadonlySet<string> = new Set(
  'on,at,the,in,is,are,with,edge,edges,last,colour,side,from,to'.split(','),
);

type CountFact = 'rowCounter' | 'stripesCounted' | 'stitches' | 'wasteRows';
const countWords: Readonly<Record<string, CountFact>> = {
  row: 'rowCounter',
  rows: 'rowCounter',
  counter: 'rowCounter',
  stripe: 'stripesCounted',
  stripes: 'stripesCounted',
  stitch: 'stitches',
  stitches: 'stitches',
  loops: 'stitches',
  waste: 'wasteRows',
};

const ownWords: ReadonlySet<string> = new Set([
  ...seenWords,
  ...fillers,
  ...Object.keys(countWords),
  ...'left,right,firm,unsure,nothing'.split(','),
  ravelCord,
]);

type Seeing = { -readonly [F in keyof Look]: Look[F] };
type Told = ChatFault | null;

const isNeedle = (word: string | undefined): word is string => /^[lr][1-9]\d{0,3}$/i.test(word ?? '');
const isNumber = (word: string | undefined): word is string => /^\d+$/.test(word ?? '');
const isNothing = (word: string | undefined): boolean => /^(empty|nothing|none)$/i.test(word ?? '');

/** `find L24 R21 mint carriage right`; after `and` it adds to what was said last, and `unsure` passes by a question. */
export function parseFind(rest: string, words: Words): Result<Intent, ChatFault> {
  const typed = rest
    .split(/[\s,]+/)
    .map((word) => words.understand(word, ownWords))
    .filter((word) => word !== '' && !fillers.has(word.toLowerCase()));
  const more = /^and$/i.test(typed[0] ?? '');
  const unsure = typed.length === (more ? 2 : 1) && /^unsure$/i.test(typed.at(-1) ?? '');
  const read = unsure ? succeed({}) : readSeen(typed.filter((word) => !/^and$/i.test(word)));
  return read.ok ? succeed({ kind: 'find', more: more || unsure, seen: read.value, unsure }) : read;
}

function readSeen(typed: readonly string[]): Result<Look, ChatFault> {
  const seen: Seeing = {};
  const needles: string[] = [];
  const yarnWords: string[] = [];
  for (let i = 0; i < typed.length; ) {
    const taken = readFact(typed.slice(i), seen);
    if (typeof taken === 'object') return fail(taken);
    const word = typed[i] ?? '';
    if (taken === 0 && isNeedle(word)) needles.push(word.toUpperCase());
    else if (taken === 0) yarnWords.push(word);
    i += Math.max(1, taken);
  }
  const fault = placeNeedles(needles, seen);
  if (fault) return fail(fault);
  if (yarnWords.length > 0) seen.lastColour = yarnWords.join(' ');
  return succeed(seen);
}

/** How many typed the fact at the front takes; 0 where it is a bare needle or part of a yarn's name. */
function readFact([first = '', second, third]: readonly string[], seen: Seeing): number | ChatFault {
  const word = first.toLowerCase();
  if (word === 'left' || word === 'right') return readEdge(word, second, seen);
  if (word === 'carriage') return readCarriage(second, seen);
  if (word === 'feeder') return readFeeder(second, seen);
  if (word === 'loose' || word === 'firm') return setLoose(word === 'loose', seen);
  if (isNothing(word)) return setEmpty(seen);
  return readCount(word, second, third, seen);
}

function readEdge(side: 'left' | 'right', needle: string | undefined, seen: Seeing): number | ChatFault {
  if (!isNeedle(needle)) return { code: 'chat/left-of-what', word: side };
  seen[side] = needle.toUpperCase();
  return 2;
}

function readCarriage(side: string | undefined, seen: Seeing): number | ChatFault {
  const word = side?.toLowerCase();
  const found = (['left', 'right'] as const).find((one) => word && one.startsWith(word));
  if (!found) return { code: 'chat/not-a-side', word: side ?? null };
  seen.carriage = found;
  return 2;
}

function readFeeder(yarn: string | undefined, seen: Seeing): number | ChatFault {
  if (yarn === undefined) return { code: 'chat/needs-more', usage: 'find feeder mint' };
  seen.feeder = isNothing(yarn) ? null : yarn;
  return 2;
}

function setLoose(isLoose: boolean, seen: Seeing): number {
  seen.looseEdgeLoop = isLoose;
  return 1;
}

function setEmpty(seen: Seeing): number {
  seen.left = null;
  seen.right = null;
  return 1;
}

/** `row 34` and `34 rows` alike; a waste yarn's name is no count. */
function readCount(
  word: string,
  second: string | undefined,
  third: string | undefined,
  seen: Seeing,
): number | ChatFault {
  if (isNumber(word)) {
    const fact = countWords[second?.toLowerCase() ?? ''];
    if (!fact) return { code: 'chat/count-of-what', word };
    seen[fact] = Number(word);
    return fact === 'wasteRows' && /^rows?$/i.test(third ?? '') ? 3 : 2;
  }
  const fact = countWords[word];
  if (!fact) return 0;
  const number = /^(rows?|counter)$/i.test(second ?? '') ? third : second;
  if (!isNumber(number)) {
    return word === 'waste' ? 0 : { code: 'chat/not-a-count', word: number ?? null, usage: `${word} 8` };
  }
  seen[fact] = Number(number);
  return number === second ? 2 : 3;
}

/** Two edges tell by themselves which is which; one alone does not. */
function placeNeedles(needles: readonly string[], seen: Seeing): Told {
  const [one, other] = needles.toSorted((a, b) => across(a) - across(b));
  if (one === undefined) return null;
  if (needles.length > 2) return { code: 'chat/too-many-needles', needles };
  if (other !== undefined) {
    seen.left = one;
    seen.right = other;
  } else if (seen.left !== undefined && seen.right === undefined) seen.right = one;
  else if (seen.right !== undefined && seen.left === undefined) seen.left = one;
  else return { code: 'chat/which-edge', needle: one };
  return null;
}

/** Counted to the right from the middle of the bed. */
const across = (needle: string): number => (needle.startsWith('L') ? -1 : 1) * Number(needle.slice(1));
