/** Commands that move through the job: on, back, to a place, and out of a mistake. */

import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, Intent } from '../intent.ts';
import { parsePlace, placeWords } from '../parse-place.ts';
import { parseReplan, replanWords } from '../parse-replan.ts';
import { parseFind, seenWords } from '../parse-seen.ts';
import { type ChatCommand, plainIntent } from './chat-command.ts';

const parseTo =
  (kind: 'go' | 'rip') =>
  (rest: string, words: Words): Result<Intent, ChatFault> => {
    const to = parsePlace(rest, kind, words);
    return to.ok ? succeed({ kind, to: to.value }) : to;
  };

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

export const moveCommands: readonly ChatCommand[] = [
  {
    name: 'next',
    aliases: ['done', 'ok'],
    usage: (words: Words) => words.say`next [how many]`,
    summary: (words: Words) => words.say`confirm the step on the screen, or several at once`,
    gist: (words: Words) => words.say`confirm this step`,
    example: 'next 2',
    follows: [],
    parse: parseNext,
  },
  {
    name: 'back',
    aliases: ['undo'],
    usage: (words: Words) => words.say`back [how many]`,
    summary: (words: Words) => words.say`take back the last step, jump, mend or change of plan`,
    gist: (words: Words) => words.say`take the last one back`,
    example: 'back',
    follows: [],
    parse: parseBack,
  },
  {
    name: 'redo',
    aliases: [],
    usage: () => 'redo',
    summary: (words: Words) => words.say`do again what was taken back`,
    gist: (words: Words) => words.say`do what was taken back`,
    example: 'redo',
    follows: [],
    parse: plainIntent({ kind: 'do', command: { do: 'redo' } }, 'redo'),
  },
  {
    name: 'go',
    aliases: [],
    usage: (words: Words) =>
      words.say`go PHASE, or go stripe / row / move / step / stitch / round / mark and its number or name`,
    summary: (words: Words) => words.say`jump to a place: it comes next`,
    gist: (words: Words) => words.say`jump to a place`,
    example: 'go stripe 3',
    follows: placeWords,
    parse: parseTo('go'),
  },
  {
    name: 'find',
    aliases: ['locate', 'see'],
    usage: (words: Words) =>
      words.say`find EDGES YARN, carriage SIDE, feeder YARN, row / stripes / stitches NUMBER; find and MORE`,
    summary: (words: Words) =>
      words.say`say what you see, as little as you know: where it is, or what went wrong`,
    gist: (words: Words) => words.say`say what you see`,
    example: 'find L24 R21 mint carriage right',
    follows: seenWords,
    parse: parseFind,
  },
  {
    name: 'rip',
    aliases: [],
    usage: (words: Words) => words.say`rip row / stripe / move / step / mark and its number or name`,
    summary: (words: Words) => words.say`the way back with the hands, so that this place comes next again`,
    gist: (words: Words) => words.say`the way back by hand`,
    example: 'rip row 30',
    follows: placeWords,
    parse: parseTo('rip'),
  },
  {
    name: 'replan',
    aliases: [],
    usage: (words: Words) =>
      words.say`replan shorter / longer / rows NUMBER; replan NUMBER stitches SIZE NUMBER rows SIZE; weighed YARN GRAMS; colour YARN to YARN`,
    summary: (words: Words) =>
      words.say`plan on from here: other length, measured piece, weighed yarn, new colour`,
    gist: (words: Words) => words.say`plan on from here`,
    example: 'replan 20 stitches 9.8 cm 30 rows 10.5 cm',
    follows: replanWords,
    parse: parseReplan,
  },
  {
    name: 'choose',
    aliases: [],
    usage: (words: Words) => words.say`choose [NUMBER]`,
    summary: (words: Words) => words.say`accept what find, rip or replan offers`,
    gist: (words: Words) => words.say`accept an offer`,
    example: 'choose 1',
    follows: [],
    parse: parseChoose,
  },
  {
    name: 'stop',
    aliases: [],
    usage: () => 'stop',
    summary: (words: Words) => words.say`leave a way back or a mend that is being guided`,
    gist: (words: Words) => words.say`leave a way back`,
    example: 'stop',
    follows: [],
    parse: plainIntent({ kind: 'stop' }, 'stop'),
  },
];
