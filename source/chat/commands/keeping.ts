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
import { type ChatCommand, choice, plainIntent, withText } from './chat-command.ts';

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
  {
    name: 'note',
    aliases: [],
    example: 'note mint feels tighter here',
    follows: [],
    parse: withText('note TEXT', (text) => ({ kind: 'do', command: { do: 'note', text } })),
  },
  {
    name: 'notes',
    aliases: [],
    example: 'notes',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'notes' }, 'notes'),
  },
  {
    name: 'weigh',
    aliases: [],
    example: 'weigh plum 22 g',
    follows: [],
    parse: parseWeigh,
  },
  {
    name: 'measured',
    aliases: ['measure'],
    example: measuredUsage,
    follows: [],
    parse: parseMeasured,
  },
  {
    name: 'cord',
    aliases: [],
    example: cordUsage,
    follows: [],
    parse: parseCordLength,
  },
  {
    name: 'mark',
    aliases: [],
    example: 'mark before the rehang',
    follows: [],
    parse: withText('mark NAME', (name) => ({ kind: 'do', command: { do: 'mark', name } })),
  },
  {
    name: 'marks',
    aliases: [],
    example: 'marks',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'marks' }, 'marks'),
  },
  {
    name: 'bags',
    aliases: [],
    example: 'bags',
    follows: [],
    parse: plainIntent({ kind: 'bags' }, 'bags'),
  },
  {
    name: 'open',
    aliases: [],
    example: 'open 2',
    follows: [],
    parse: withText('open 2', (bag) => ({ kind: 'open', bag })),
  },
  {
    name: 'rename',
    aliases: [],
    example: 'rename Bag for the blue dice',
    follows: [],
    parse: withText('rename NAME', (name) => ({ kind: 'do', command: { do: 'rename', name } })),
  },
  {
    name: 'discard',
    aliases: [],
    example: 'discard 2',
    follows: [],
    parse: parseDiscard,
  },
  {
    name: 'restore',
    aliases: [],
    example: 'restore',
    follows: [],
    parse: plainIntent({ kind: 'restore' }, 'restore'),
  },
  {
    name: 'practice',
    aliases: ['practise'],
    example: 'practice',
    follows: [],
    parse: plainIntent({ kind: 'practice' }, 'practice'),
  },
  {
    name: 'new',
    aliases: [],
    example: 'new',
    follows: [],
    parse: plainIntent({ kind: 'new' }, 'new'),
  },
  {
    name: 'draw',
    aliases: [],
    example: 'draw strip',
    follows: pictures,
    parse: choice(pictures, (word) => ({ kind: 'draw', picture: word === 'off' ? null : word })),
  },
  {
    name: 'sheet',
    aliases: ['print'],
    example: 'sheet dice-bag.html',
    follows: [],
    parse: withText('sheet FILE.html', (out) => ({ kind: 'sheet', out })),
  },
  {
    name: 'tag',
    aliases: [],
    example: 'tag dice-bag-tag.html',
    follows: [],
    parse: withText('tag FILE.html', (out) => ({ kind: 'tag', out })),
  },
  {
    name: 'record',
    aliases: [],
    example: 'record',
    follows: [],
    parse: plainIntent({ kind: 'record' }, 'record'),
  },
  {
    name: 'keep',
    aliases: [],
    example: 'keep bed workroom',
    follows: ['bed', 'swatch', 'yarn', 'yarns'],
    parse: parseKeep,
  },
  {
    name: 'forget',
    aliases: [],
    example: 'forget bed workroom',
    follows: ['bed', 'swatch', 'yarn'],
    parse: parseForget,
  },
  {
    name: 'shelf',
    aliases: [],
    example: 'shelf',
    follows: [],
    parse: plainIntent({ kind: 'shelf' }, 'shelf'),
  },
  {
    name: 'party',
    aliases: [],
    example: 'party 4',
    follows: ['next'],
    parse: parseParty,
  },
  {
    name: 'another',
    aliases: ['match'],
    example: 'another larger',
    follows: ['larger', 'smaller', 'turned', 'in'],
    parse: parseMatch,
  },
  {
    name: 'save',
    aliases: [],
    example: 'save dice-bag.jsonl',
    follows: [],
    parse: withText('save FILE', (out) => ({ kind: 'save', out })),
  },
  {
    name: 'quit',
    aliases: ['exit', 'leave'],
    example: 'quit',
    follows: [],
    parse: plainIntent({ kind: 'quit' }, 'quit'),
  },
];
