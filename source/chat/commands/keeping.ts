/** Commands about what is kept: notes, marks, weights, bags, drawings, files. */
import {
  cordUsage,
  measuredUsage,
  parseCordLength,
  parseMeasured,
  parseWeigh,
} from '../grammar/parse-measured.ts';
import { alone, type ChatCommand, choice, plainIntent, withText } from './chat-command.ts';

const pictures = ['strip', 'bag', 'fold', 'bed', 'graft', 'seam', 'cord', 'off'] as const;

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
    name: 'practice',
    aliases: ['practise'],
    example: 'practice',
    follows: [],
    parse: alone('practice', { kind: 'practice' }),
  },
  {
    name: 'new',
    aliases: [],
    example: 'new',
    follows: [],
    parse: alone('new', { kind: 'new' }),
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
    parse: alone('quit', { kind: 'quit' }),
  },
];
