/** The grammar of the prompt as a table: help, completion and "did you mean" all come out of it. */
import { type PedalAct, settingsTable } from '../settings/settings.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { ChatFault, Intent } from './intent.ts';
import { parsePlace, placeWords } from './parse-place.ts';
import { parseReplan, replanWords } from './parse-replan.ts';
import { parseFind, seenWords } from './parse-seen.ts';

export interface ChatCommand {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly usage: string;
  readonly summary: string;
  /** A line that works when typed. */
  readonly example: string;
  /** First words that may follow, for completion. */
  readonly follows: readonly string[];
  readonly parse: (rest: string) => Result<Intent, ChatFault>;
}

const plainIntent = (intent: Intent) => (): Result<Intent, ChatFault> => succeed(intent);

const withText =
  (usage: string, make: (text: string) => Intent) =>
  (rest: string): Result<Intent, ChatFault> =>
    rest === '' ? fail({ code: 'chat/needs-more', usage }) : succeed(make(rest));

const parseTo =
  (kind: 'go' | 'rip') =>
  (rest: string): Result<Intent, ChatFault> => {
    const to = parsePlace(rest, kind);
    return to.ok ? succeed({ kind, to: to.value }) : to;
  };

function parseTake(rest: string): Result<Intent, ChatFault> {
  if (rest !== '' && !/^[1-9]\d*$/.test(rest)) {
    return fail({ code: 'chat/not-a-count', word: rest, usage: 'take 2' });
  }
  return succeed({ kind: 'take', number: rest === '' ? null : Number(rest) });
}

function parseNext(rest: string): Result<Intent, ChatFault> {
  const wanted = rest === '' ? 1 : Number(rest);
  if (!Number.isInteger(wanted) || wanted < 1) {
    return fail({ code: 'chat/not-a-count', word: rest, usage: 'next 4' });
  }
  return succeed({ kind: 'do', command: { do: 'confirm', count: wanted } });
}

/** A command that takes one word out of a few; none at all where `bare` has an answer. */
function choice<Word extends string>(
  words: readonly Word[],
  make: (word: Word) => Intent,
  bare: Intent | null = null,
) {
  return (rest: string): Result<Intent, ChatFault> => {
    if (rest === '' && bare) return succeed(bare);
    const begun = words.filter((word) => word.startsWith(rest.toLowerCase()));
    const word =
      words.find((one) => one === rest.toLowerCase()) ?? (begun.length === 1 ? begun[0] : undefined);
    return word === undefined || rest === ''
      ? fail({ code: 'chat/not-a-choice', word: rest === '' ? 'nothing' : rest, choices: words })
      : succeed(make(word));
  };
}

function parseWindow(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: 'window 100' });
  const { check, allowed } = settingsTable.pressWindowMs;
  return check(Number(rest))
    ? succeed({ kind: 'set', change: { name: 'pressWindowMs', value: Number(rest) } })
    : fail({ code: 'chat/not-a-choice', word: rest, choices: [`the whole numbers ${allowed}`] });
}

const onOff = ['on', 'off'] as const;
const pictures = ['strip', 'bag', 'fold', 'bed', 'off'] as const;
const pedalWords = ['confirm', 'back', 'again', 'pass', 'off'] as const;
const pedalActs: Readonly<Record<(typeof pedalWords)[number], PedalAct | 'off'>> = {
  confirm: 'confirm',
  back: 'take-back',
  again: 'speak',
  pass: 'pass',
  off: 'off',
};

const switchCommand = (
  name: 'large' | 'bell' | 'speech',
  setting: 'largeView' | 'bell' | 'speech',
  summary: string,
): ChatCommand => ({
  name,
  aliases: [],
  usage: `${name} on, or ${name} off`,
  summary,
  example: `${name} on`,
  follows: onOff,
  parse: choice(onOff, (word) => ({ kind: 'set', change: { name: setting, value: word === 'on' } })),
});

export const chatCommands: readonly ChatCommand[] = [
  {
    name: 'next',
    aliases: ['n', 'done', 'ok'],
    usage: 'next [how many]',
    summary: 'confirm the step on the screen, or several at once',
    example: 'next 2',
    follows: [],
    parse: parseNext,
  },
  {
    name: 'back',
    aliases: ['b', 'undo'],
    usage: 'back',
    summary: 'take back the last step, jump, mend or change of plan',
    example: 'back',
    follows: [],
    parse: plainIntent({ kind: 'do', command: { do: 'take-back' } }),
  },
  {
    name: 'redo',
    aliases: [],
    usage: 'redo',
    summary: 'do again what was taken back',
    example: 'redo',
    follows: [],
    parse: plainIntent({ kind: 'do', command: { do: 'redo' } }),
  },
  {
    name: 'go',
    aliases: ['jump', 'goto'],
    usage: 'go PHASE, or go stripe / row / move / step / mark and its number or name',
    summary: 'jump to a place: it comes next',
    example: 'go stripe 3',
    follows: placeWords,
    parse: parseTo('go'),
  },
  {
    name: 'find',
    aliases: ['locate', 'see'],
    usage: 'find EDGES YARN, carriage SIDE, feeder YARN, row / stripes / stitches NUMBER; find and MORE',
    summary: 'say what you see, as little as you know: where it is, or what went wrong',
    example: 'find L24 R21 mint carriage right',
    follows: seenWords,
    parse: parseFind,
  },
  {
    name: 'rip',
    aliases: [],
    usage: 'rip row / stripe / move / step / mark and its number or name',
    summary: 'the way back with the hands, so that this place comes next again',
    example: 'rip row 30',
    follows: placeWords,
    parse: parseTo('rip'),
  },
  {
    name: 'replan',
    aliases: [],
    usage:
      'replan shorter / longer / rows NUMBER; replan NUMBER stitches SIZE NUMBER rows SIZE; weighed YARN GRAMS; colour YARN to YARN',
    summary: 'plan on from here: other length, measured piece, weighed yarn, new colour',
    example: 'replan 20 stitches 9.8 cm 30 rows 10.5 cm',
    follows: replanWords,
    parse: parseReplan,
  },
  {
    name: 'take',
    aliases: [],
    usage: 'take [NUMBER]',
    summary: 'accept what find, rip or replan offers',
    example: 'take 1',
    follows: [],
    parse: parseTake,
  },
  {
    name: 'stop',
    aliases: [],
    usage: 'stop',
    summary: 'leave a way back or a mend that is being guided',
    example: 'stop',
    follows: [],
    parse: plainIntent({ kind: 'stop' }),
  },
  {
    name: 'where',
    aliases: ['w', 'here'],
    usage: 'where',
    summary: 'where you are, and what the bed should look like',
    example: 'where',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'where' }),
  },
  {
    name: 'plan',
    aliases: ['p'],
    usage: 'plan',
    summary: 'the whole plan: size, yarn, needles, tails',
    example: 'plan',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'plan' }),
  },
  {
    name: 'note',
    aliases: [],
    usage: 'note TEXT',
    summary: 'keep a remark at this step',
    example: 'note mint feels tighter here',
    follows: [],
    parse: withText('note TEXT', (text) => ({ kind: 'do', command: { do: 'note', text } })),
  },
  {
    name: 'notes',
    aliases: [],
    usage: 'notes',
    summary: 'the remarks kept so far',
    example: 'notes',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'notes' }),
  },
  {
    name: 'mark',
    aliases: [],
    usage: 'mark NAME',
    summary: 'name this place, to go back to it',
    example: 'mark before the re-seat',
    follows: [],
    parse: withText('mark NAME', (name) => ({ kind: 'do', command: { do: 'mark', name } })),
  },
  {
    name: 'marks',
    aliases: [],
    usage: 'marks',
    summary: 'the places named so far',
    example: 'marks',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'marks' }),
  },
  {
    name: 'again',
    aliases: ['speak'],
    usage: 'again',
    summary: 'say the instruction once more',
    example: 'again',
    follows: [],
    parse: plainIntent({ kind: 'again' }),
  },
  {
    name: 'bags',
    aliases: [],
    usage: 'bags',
    summary: 'what is on the go and finished',
    example: 'bags',
    follows: [],
    parse: plainIntent({ kind: 'bags' }),
  },
  {
    name: 'draw',
    aliases: [],
    usage: 'draw strip / bag / fold / bed, or draw off',
    summary: 'a drawing in place of the counters; it grows with the work',
    example: 'draw strip',
    follows: pictures,
    parse: choice(pictures, (word) => ({ kind: 'draw', picture: word === 'off' ? null : word })),
  },
  {
    name: 'sheet',
    aliases: ['print'],
    usage: 'sheet FILE.html, or .svg, or .md',
    summary: 'write the plan as a sheet to print',
    example: 'sheet dice-bag.html',
    follows: [],
    parse: withText('sheet FILE.html', (out) => ({ kind: 'sheet', out })),
  },
  {
    name: 'save',
    aliases: [],
    usage: 'save FILE',
    summary: 'write the whole log to another file and go on there, when its disk makes trouble',
    example: 'save dice-bag.jsonl',
    follows: [],
    parse: withText('save FILE', (out) => ({ kind: 'save', out })),
  },
  {
    name: 'pedal',
    aliases: ['switch'],
    usage: 'pedal confirm / back / again / pass, or pedal off',
    summary: 'give a foot switch something to do: type it, then press the switch',
    example: 'pedal confirm',
    follows: pedalWords,
    parse: choice(pedalWords, (word) => ({ kind: 'pedal', act: pedalActs[word] }), {
      kind: 'pedal',
      act: null,
    }),
  },
  {
    name: 'window',
    aliases: [],
    usage: 'window MILLISECONDS',
    summary: 'presses of one switch closer together than this count as one',
    example: 'window 100',
    follows: [],
    parse: parseWindow,
  },
  switchCommand('large', 'largeView', 'big letters, to be read from across the bed'),
  switchCommand('bell', 'bell', 'ring once for a step, twice for a shaping move, three times for a colour'),
  switchCommand('speech', 'speech', 'speak each instruction aloud'),
  {
    name: 'care',
    aliases: [],
    usage: 'care low / usual / high',
    summary: 'how long to look before a new yarn, a re-seat or the closing row',
    example: 'care high',
    follows: ['low', 'usual', 'high'],
    parse: choice(['low', 'usual', 'high'], (value) => ({ kind: 'set', change: { name: 'caution', value } })),
  },
  {
    name: 'units',
    aliases: [],
    usage: 'units cm, or units in',
    summary: 'centimetres, grams and metres, or inches, ounces and yards',
    example: 'units cm',
    follows: ['cm', 'in'],
    parse: choice(['cm', 'in'], (value) => ({ kind: 'set', change: { name: 'units', value } })),
  },
  {
    name: 'help',
    aliases: ['h', '?'],
    usage: 'help [command]',
    summary: 'what can be typed, and the keys',
    example: 'help go',
    follows: [],
    parse: (rest) => succeed({ kind: 'help', topic: rest === '' ? null : rest }),
  },
  {
    name: 'quit',
    aliases: ['q', 'exit', 'leave'],
    usage: 'quit',
    summary: 'leave; everything is saved, and you come back to this step',
    example: 'quit',
    follows: [],
    parse: plainIntent({ kind: 'leave' }),
  },
];

export const findCommand = (word: string): ChatCommand | undefined =>
  chatCommands.find((command) => command.name === word || command.aliases.includes(word));
