/**
 * The words that tell what can be seen at the bench, as a maker or the program writes them: small ones that are passed over, those that
 * count something, names of needles and yarns.
 */

import { isNeedleName } from '../../bed/needles.ts';
import { ravelCord } from '../../planning/brief.ts';
import type { SlipMoment } from '../../session/diagnose/slip-moment.ts';
import type { Look } from '../../session/locate/seen.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, Known } from './intent.ts';

/** Words that may follow `find`. */
export const seenWords: readonly string[] = [
  'and',
  'carriage',
  'row',
  'stripes',
  'feeder',
  'stitches',
  'waste',
  'finished',
  'empty',
  'loose',
  'move',
];

export const fillers: ReadonlySet<string> = new Set(
  [
    "a,an,the,this,that,my,it,its,is,are,was,be,am,im,i,i’m,i'm,we,see,have,has,had,got,there,here,now,with",
    'on,at,in,of,to,by,for,and,but,from,under,below,edge,edges,side,sides,colour,color,yarn,yarns',
    'shows,show,showing,reads,says,stands,standing,hangs,hang,hanging,holds,hold,needle,needles',
    'outermost,end,ends,last,newest,outer,both,so,far,knitted,done,machine,bed,loop,still,think',
    'looks,like,comes,next,plus,then,only,again,just,far,top,whole,thing,can,count,go,goes,first',
  ].flatMap((words) => words.split(',')),
);

export type CountFact =
  | 'rowCounter'
  | 'stripesCounted'
  | 'stitches'
  | 'wasteRows'
  | 'rowsOfColour'
  | 'piecesDone';
export const countWords: Readonly<Record<string, CountFact>> = {
  row: 'rowCounter',
  rows: 'rowCounter',
  counter: 'rowCounter',
  stripe: 'stripesCounted',
  stripes: 'stripesCounted',
  stitch: 'stitches',
  stitches: 'stitches',
  loops: 'stitches',
  sts: 'stitches',
  rc: 'rowCounter',
  waste: 'wasteRows',
  finished: 'piecesDone',
};

const grammar: ReadonlySet<string> = new Set([
  ...seenWords,
  ...fillers,
  ...Object.keys(countWords),
  ...'left,right,firm,rehung,not,leading,trailing,before,after,unsure,nothing,no,none,since,down,move,parked,counter,off,fell,fallen,dropped,floor,stitch,everything,all,work,knitting,one,thread,threaded,came,slid,cord,cords,section,sections'.split(
    ',',
  ),
  ravelCord,
]);

export const isNumber = (word: string | undefined): word is string => /^\d+$/.test(word ?? '');

const spelt = (fromFive: string): Readonly<Record<string, string>> =>
  Object.fromEntries(fromFive.split(',').map((word, i) => [word, String(i + 5)]));

/** `one` is left to `one stitch fell`. */
const numberWords: Readonly<Record<string, string>> = {
  two: '2',
  three: '3',
  four: '4',
  zwei: '2',
  drei: '3',
  vier: '4',
  ...spelt('five,six,seven,eight,nine,ten,eleven,twelve'),
  ...spelt('fünf,sechs,sieben,acht,neun,zehn,elf,zwölf'),
};

export interface Token {
  readonly kind: 'word' | 'yarn' | 'needle' | 'number';
  /** A word in small letters and in English; a yarn as the brief spells it. */
  readonly text: string;
  readonly typed: string;
}

/** The line in clauses, at commas and full stops; names of yarns first, the longest that fits. */
export function clausesOf(rest: string, known: Known, language: Words): readonly (readonly Token[])[] {
  const pieces = rest.replace(/[–—]/g, '-').split(/[,;.!?()]+(?=\s|$)|\s-\s/);
  return pieces.map((piece) => tokensOf(piece, known, language)).filter((tokens) => tokens.length > 0);
}

function tokensOf(piece: string, { yarns }: Known, language: Words): readonly Token[] {
  const said = piece
    .replace(/\b([lr]\d{1,4})\s*(?:-|\.{2,}|…|\/|&)\s*(?=[lr]\d)/gi, '$1 ')
    .replace(/\b([lr])\s+(?=\d{1,4}\b)/gi, '$1')
    .split(/\s+/)
    .map((word) => ({ word: word.replace(/^["'“”„(]+|["'“”)?!.,;:]+$/g, ''), isQuoted: /^["“„]/.test(word) }))
    .filter(({ word }) => word !== '');
  const words = said.map(({ word }) => word);
  const names = [...yarns, ravelCord]
    .map((name) => ({ name, words: name.toLowerCase().split(/\s+/) }))
    .toSorted((a, b) => b.words.length - a.words.length);
  const tokens: Token[] = [];
  for (let i = 0; i < words.length; ) {
    const name = names.find(({ words: own }) =>
      own.every((word, at) => words[i + at]?.toLowerCase() === word),
    );
    if (name && (name.words.length > 1 || said[i]?.isQuoted || isYarnHere(name.name, words, i, language))) {
      tokens.push({ kind: 'yarn', text: name.name, typed: words.slice(i, i + name.words.length).join(' ') });
      i += name.words.length;
    } else tokens.push(...wordTokens(words[i++] ?? '', language));
  }
  return tokens.map((token, i) =>
    token.text === 'one' && tokens[i + 1]?.text === 'row' ? { ...token, kind: 'number', text: '1' } : token,
  );
}

/**
 * A yarn may be called `row` or `R5`: it is meant where the word says nothing else, right behind the feeder or the colour, and
 * where it is told to be in the feeder or on the needles.
 */
function isYarnHere(name: string, words: readonly string[], at: number, { understand }: Words): boolean {
  const word = name.toLowerCase();
  const hasMeaning = grammar.has(word) || isNeedleName(word) || isNumber(word);
  if (!hasMeaning) return true;
  const before = words
    .slice(0, at)
    .map((one) => one.toLowerCase())
    .filter((one) => !/^(is|the|in|of|a)$/.test(one))
    .at(-1);
  const alone = words.length === 1 && !isNumber(word) && !isNeedleName(word) && !grammarAlone.has(word);
  const behind = words.slice(at + 1, at + 5).map((one) => understand(one, grammar).toLowerCase());
  const isSomewhere = /^(?:is )?(?:in|on) (?:the )?(?:feeder|needles)\b/.test(behind.join(' '));
  return alone || isSomewhere || before === 'feeder' || before === 'colour' || before === 'yarn';
}

/** Whether a word speaks of the bench rather than begins a command. */
export function isSeeingWord(typed: string, language: Words, { yarns }: Known): boolean {
  const word = language.understand(typed.replace(/['’]s$/i, ''), grammar).toLowerCase();
  return grammar.has(word) || yarns.some((yarn) => yarn.toLowerCase() === word);
}

/** Words that say something by themselves. */
const grammarAlone: ReadonlySet<string> = new Set([
  'empty',
  'nothing',
  'none',
  'loose',
  'firm',
  'rehung',
  'unsure',
]);

/** What says as much as other words; among them the letters of patterns for the machine (common practice, no source). */
const inOtherWords: Readonly<Record<string, readonly string[]>> = {
  col: ['carriage', 'left'],
  cor: ['carriage', 'right'],
  leftmost: ['left'],
  rightmost: ['right'],
};

function wordTokens(typed: string, { understand }: Words): readonly Token[] {
  const own = understand(typed.replace(/['’]s$/i, ''), grammar);
  const others = inOtherWords[own.toLowerCase()];
  if (others) return others.map((text) => ({ kind: 'word', text, typed }));
  if (own === ravelCord) return [{ kind: 'yarn', text: ravelCord, typed }];
  const text = own.toLowerCase();
  if (isNeedleName(text)) return [{ kind: 'needle', text: text.toUpperCase(), typed }];
  const counted = isNumber(text) ? text : numberWords[text];
  if (counted !== undefined) return [{ kind: 'number', text: counted, typed }];
  return [{ kind: 'word', text, typed }];
}

/** What has been read so far of what is seen at the bench, and what every part of the reading asks. */
export interface SeenSoFar {
  readonly known: Known;
  readonly seen: { -readonly [F in keyof Look]: Look[F] };
  readonly needles: string[];
  readonly leftOut: string[];
  moment: SlipMoment | null;
  askRow: number | null;
  ladder: boolean;
  bareYarn: boolean;
  fault: ChatFault | null;
}

export const nothingSeenYet = (known: Known): SeenSoFar => ({
  known,
  seen: {},
  needles: [],
  leftOut: [],
  moment: null,
  askRow: null,
  ladder: false,
  bareYarn: false,
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

export function leaveOut(reading: SeenSoFar, token: Token): number {
  reading.leftOut.push(token.typed);
  return 1;
}

export function setEmpty(reading: SeenSoFar, taken: number): number {
  reading.seen.left = null;
  reading.seen.right = null;
  return taken;
}
