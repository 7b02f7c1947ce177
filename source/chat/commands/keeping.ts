/** Commands about what is kept: notes, marks, weights, bags, drawings, files. */
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, Intent } from '../grammar/intent.ts';
import { parseMatch } from '../grammar/parse-match.ts';
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
  row(
    'note',
    'note mint feels tighter here',
    withText('note TEXT', (text) => ({ kind: 'do', command: { do: 'note', text } })),
  ),
  alone('notes', { kind: 'show', what: 'notes' }),
  row('weigh', 'weigh plum 22 g', parseWeigh),
  row('measured', measuredUsage, parseMeasured, { aliases: ['measure'] }),
  row('cord', cordUsage, parseCordLength),
  row(
    'mark',
    'mark before the rehang',
    withText('mark NAME', (name) => ({ kind: 'do', command: { do: 'mark', name } })),
  ),
  alone('marks', { kind: 'show', what: 'marks' }),
  alone('bags', { kind: 'bags' }),
  row(
    'open',
    'open 2',
    withText('open 2', (bag) => ({ kind: 'open', bag })),
  ),
  row(
    'rename',
    'rename Bag for the blue dice',
    withText('rename NAME', (name) => ({ kind: 'do', command: { do: 'rename', name } })),
  ),
  row('discard', 'discard 2', parseDiscard),
  alone('restore', { kind: 'restore' }),
  alone('practice', { kind: 'practice' }, ['practise']),
  alone('new', { kind: 'new' }),
  row(
    'draw',
    'draw strip',
    choice(pictures, (word) => ({ kind: 'draw', picture: word === 'off' ? null : word })),
    { follows: pictures },
  ),
  row(
    'sheet',
    'sheet dice-bag.html',
    withText('sheet FILE.html', (out) => ({ kind: 'sheet', out })),
    { aliases: ['print'] },
  ),
  row(
    'tag',
    'tag dice-bag-tag.html',
    withText('tag FILE.html', (out) => ({ kind: 'tag', out })),
  ),
  alone('record', { kind: 'record' }),
  row('keep', 'keep bed workroom', parseKeep, { follows: ['bed', 'swatch', 'yarn', 'yarns'] }),
  row('forget', 'forget bed workroom', parseForget, { follows: ['bed', 'swatch', 'yarn'] }),
  alone('shelf', { kind: 'shelf' }),
  row('party', 'party 4', parseParty, { follows: ['next'] }),
  row('another', 'another larger', parseMatch, {
    aliases: ['match'],
    follows: ['larger', 'smaller', 'turned', 'in'],
  }),
  row(
    'save',
    'save dice-bag.jsonl',
    withText('save FILE', (out) => ({ kind: 'save', out })),
  ),
  alone('quit', { kind: 'quit' }, ['exit', 'leave']),
];
