/** Commands about what is kept: notes, marks, weights, bags, drawings, files. */

import type { MatchWish } from '../../journal/match.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import { readSize } from '../first-run/read-size.ts';
import { readYarn, usualColour } from '../first-run/read-yarn.ts';
import type { ChatFault, Intent } from '../grammar/intent.ts';
import {
  cordUsage,
  measuredUsage,
  parseCordLength,
  parseMeasured,
  parseWeigh,
} from '../grammar/parse-measured.ts';
import { alone, type ChatCommand, choice, row, withText } from './chat-command.ts';

/** `discard`, `discard 2`; with `yes` behind it, it is meant. */
function parseDiscard(rest: string): Result<Intent, ChatFault> {
  const sure = /(?:^|\s)(?:yes|ja)$/i.exec(rest);
  const bag = (sure ? rest.slice(0, sure.index) : rest).trim();
  return succeed({ kind: 'discard', bag: bag === '' ? null : bag, sure: sure !== null });
}

/** `party`, `party 4`, `party next`. */
function parseParty(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return succeed({ kind: 'party', what: 'tally' });
  if (/^(?:next|weiter)$/i.test(rest)) return succeed({ kind: 'party', what: 'next' });
  return /^[1-9]\d{0,2}$/.test(rest)
    ? succeed({ kind: 'party', what: Number(rest) })
    : fail({ code: 'chat/not-a-count', word: rest, usage: 'party 4' });
}

const kinds = ['bed', 'swatch', 'yarn', 'yarns'] as const;

/** `keep bed workroom`, `keep yarns`: what, and what stands behind it. */
function whatToKeep(rest: string, words: Words): readonly [(typeof kinds)[number] | undefined, string] {
  const [word = '', ...more] = rest.split(/\s+/);
  const meant = words.understand(word, new Set(kinds)).toLowerCase();
  return [kinds.find((kind) => kind === meant), more.join(' ')];
}

function parseKeep(rest: string, words: Words): Result<Intent, ChatFault> {
  const [what, text] = whatToKeep(rest, words);
  if (what === undefined || (text === '') !== (what === 'yarns'))
    return fail({ code: 'chat/needs-more', usage: 'keep bed workroom' });
  return succeed({ kind: 'keep', what, text });
}

function parseForget(rest: string, words: Words): Result<Intent, ChatFault> {
  const [what, name] = whatToKeep(rest, words);
  if (what === undefined || what === 'yarns' || name === '')
    return fail({ code: 'chat/needs-more', usage: 'forget bed workroom' });
  return succeed({ kind: 'forget', what, name });
}

const pictures = ['strip', 'bag', 'fold', 'bed', 'hem', 'graft', 'seam', 'cord', 'off'] as const;

export const keepCommands: readonly ChatCommand[] = [
  row({
    name: 'note',
    example: 'note mint feels tighter here',
    parse: withText('note TEXT', (text) => ({ kind: 'do', command: { do: 'note', text } })),
  }),
  alone('notes', { kind: 'show', what: 'notes' }),
  row({ name: 'weigh', example: 'weigh plum 22 g', parse: parseWeigh }),
  row({ name: 'measured', example: measuredUsage, parse: parseMeasured, aliases: ['measure'] }),
  row({ name: 'cord', example: cordUsage, parse: parseCordLength }),
  row({
    name: 'mark',
    example: 'mark before the rehang',
    parse: withText('mark NAME', (name) => ({ kind: 'do', command: { do: 'mark', name } })),
  }),
  alone('marks', { kind: 'show', what: 'marks' }),
  alone('bags', { kind: 'bags' }),
  row({ name: 'open', example: 'open 2', parse: withText('open 2', (bag) => ({ kind: 'open', bag })) }),
  row({
    name: 'rename',
    example: 'rename Bag for the blue dice',
    parse: withText('rename NAME', (name) => ({ kind: 'do', command: { do: 'rename', name } })),
  }),
  row({ name: 'discard', example: 'discard 2', parse: parseDiscard }),
  alone('restore', { kind: 'restore' }),
  alone('practice', { kind: 'practice' }, ['practise']),
  alone('new', { kind: 'new' }),
  row({
    name: 'draw',
    example: 'draw strip',
    parse: choice(pictures, (word) => ({ kind: 'draw', picture: word === 'off' ? null : word })),
    follows: pictures,
  }),
  row({
    name: 'sheet',
    example: 'sheet dice-bag.html',
    parse: withText('sheet FILE.html', (out) => ({ kind: 'sheet', out })),
    aliases: ['print'],
  }),
  row({
    name: 'tag',
    example: 'tag dice-bag-tag.html',
    parse: withText('tag FILE.html', (out) => ({ kind: 'tag', out })),
  }),
  alone('record', { kind: 'record' }),
  row({
    name: 'keep',
    example: 'keep bed workroom',
    parse: parseKeep,
    follows: ['bed', 'swatch', 'yarn', 'yarns'],
  }),
  row({
    name: 'forget',
    example: 'forget bed workroom',
    parse: parseForget,
    follows: ['bed', 'swatch', 'yarn'],
  }),
  alone('shelf', { kind: 'shelf' }),
  row({ name: 'party', example: 'party 4', parse: parseParty, follows: ['next'] }),
  row({
    name: 'another',
    example: 'another larger',
    parse: parseMatch,
    aliases: ['match'],
    follows: ['larger', 'smaller', 'turned', 'in'],
  }),
  row({
    name: 'save',
    example: 'save dice-bag.jsonl',
    parse: withText('save FILE', (out) => ({ kind: 'save', out })),
  }),
  alone('quit', { kind: 'quit' }, ['exit', 'leave']),
];

// Another bag like this one: `another`, `another larger`, `another turned`, `another in sand and slate`, `another 16 by 20`.

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
