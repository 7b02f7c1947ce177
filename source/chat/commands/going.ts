/** Commands that move through the job: on, back, to a place, and out of a mistake. */

import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, Intent, Known } from '../grammar/intent.ts';
import { parseReplan, replanWords } from '../grammar/parse-measured.ts';
import { parsePlace, placeWords } from '../grammar/parse-place.ts';
import { parseFind } from '../grammar/parse-seen.ts';
import { seenWords } from '../grammar/seen-words.ts';
import { alone, type ChatCommand, row } from './chat-command.ts';

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
  row({ name: 'next', example: 'next 2', parse: parseNext, aliases: ['done', 'ok'] }),
  row({ name: 'back', example: 'back', parse: parseBack, aliases: ['undo'] }),
  alone('redo', { kind: 'do', command: { do: 'redo' } }),
  row({ name: 'go', example: 'go stripe 3', parse: parseTo('go'), follows: placeWords }),
  row({
    name: 'find',
    example: 'find L24 R21 mint carriage right',
    parse: parseFind,
    aliases: ['locate', 'see'],
    follows: seenWords,
  }),
  row({ name: 'rip', example: 'rip row 30', parse: parseTo('rip'), follows: placeWords }),
  row({
    name: 'replan',
    example: 'replan 20 stitches 9.8 cm 30 rows 10.5 cm',
    parse: parseReplan,
    follows: replanWords,
  }),
  row({ name: 'choose', example: 'choose 1', parse: parseChoose }),
  alone('stop', { kind: 'stop' }),
];
