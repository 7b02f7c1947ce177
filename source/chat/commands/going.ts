/** Commands that move through the job: on, back, to a place, and out of a mistake. */

import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, Intent, Known } from '../grammar/intent.ts';
import { parsePlace, placeWords } from '../grammar/parse-place.ts';
import { parseReplan, replanWords } from '../grammar/parse-replan.ts';
import { parseFind } from '../grammar/parse-seen.ts';
import { seenWords } from '../grammar/seen-words.ts';
import { type ChatCommand, plainIntent } from './chat-command.ts';

const parseTo =
  (kind: 'go' | 'rip') =>
  (rest: string, words: Words, { marks }: Known): Result<Intent, ChatFault> => {
    const to = parsePlace(rest, kind, words);
    if (to.ok) return succeed({ kind, to: to.value });
    const mark = markIn(rest, marks);
    return mark === null ? to : succeed({ kind, to: { at: 'mark', name: mark } });
  };

/** A mark by its name alone, or by a part of it that no other has. */
function markIn(rest: string, marks: readonly string[]): string | null {
  const typed = rest.toLowerCase();
  const whole = marks.find((name) => name.toLowerCase() === typed);
  const partly = typed === '' ? [] : marks.filter((name) => name.toLowerCase().includes(typed));
  return whole ?? (partly.length === 1 ? (partly[0] ?? null) : null);
}

function parseChoose(rest: string): Result<Intent, ChatFault> {
  if (rest !== '' && !/^[1-9]\d*$/.test(rest)) {
    return fail({ code: 'chat/not-a-count', word: rest, usage: 'choose 2' });
  }
  return succeed({ kind: 'choose', number: rest === '' ? null : Number(rest) });
}

function parseNext(rest: string): Result<Intent, ChatFault> {
  const wanted = rest === '' ? 1 : Number(rest);
  if (!Number.isInteger(wanted) || wanted < 1) {
    return fail({ code: 'chat/not-a-count', word: rest, usage: 'next 4' });
  }
  return succeed({ kind: 'do', command: { do: 'confirm', count: wanted } });
}

/** So many commands are taken back; a row of the work comes out otherwise. */
function parseBack(rest: string): Result<Intent, ChatFault> {
  const times = rest === '' ? 1 : Number(rest);
  if (Number.isInteger(times) && times > 0) {
    return succeed({ kind: 'do', command: { do: 'back' }, ...(times === 1 ? {} : { times }) });
  }
  const isRow = /rows?\b/i.test(rest);
  const instead = isRow ? ['rip', ...(/\d/.test(rest) ? [rest] : ['last', 'row'])].join(' ') : null;
  return fail({ code: 'chat/takes-nothing', command: 'back', rest, instead });
}

export const goCommands: readonly ChatCommand[] = [
  {
    name: 'next',
    aliases: ['done', 'ok'],
    example: 'next 2',
    follows: [],
    parse: parseNext,
  },
  {
    name: 'back',
    aliases: ['undo'],
    example: 'back',
    follows: [],
    parse: parseBack,
  },
  {
    name: 'redo',
    aliases: [],
    example: 'redo',
    follows: [],
    parse: plainIntent({ kind: 'do', command: { do: 'redo' } }, 'redo'),
  },
  {
    name: 'go',
    aliases: [],
    example: 'go stripe 3',
    follows: placeWords,
    parse: parseTo('go'),
  },
  {
    name: 'find',
    aliases: ['locate', 'see'],
    example: 'find L24 R21 mint carriage right',
    follows: seenWords,
    parse: parseFind,
  },
  {
    name: 'rip',
    aliases: [],
    example: 'rip row 30',
    follows: placeWords,
    parse: parseTo('rip'),
  },
  {
    name: 'replan',
    aliases: [],
    example: 'replan 20 stitches 9.8 cm 30 rows 10.5 cm',
    follows: replanWords,
    parse: parseReplan,
  },
  {
    name: 'choose',
    aliases: [],
    example: 'choose 1',
    follows: [],
    parse: parseChoose,
  },
  {
    name: 'stop',
    aliases: [],
    example: 'stop',
    follows: [],
    parse: plainIntent({ kind: 'stop' }, 'stop'),
  },
];
