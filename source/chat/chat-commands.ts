/** The grammar of the prompt as a table: help, completion and "did you mean" all come out of it. */
import { languageChoices } from '../languages/languages.ts';
import { type PedalAct, settingsTable } from '../settings/settings.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatChoice, say } from '../shared/say.ts';
import { helpTopicNames } from './help-topic-names.ts';
import type { ChatFault, Intent } from './intent.ts';
import { parsePlace, placeWords } from './parse-place.ts';
import { parseReplan, replanWords } from './parse-replan.ts';
import { parseFind, seenWords } from './parse-seen.ts';
import { reasons } from './reasons.ts';
import { parseWeigh } from './weigh.ts';
import { words } from './words.ts';

export interface ChatCommand {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly usage: () => string;
  readonly summary: () => string;
  /** What it does in at most 28 characters, for a table in two columns. */
  readonly gist: () => string;
  /** A line that works when typed. */
  readonly example: string;
  /** First words that may follow, for completion. */
  readonly follows: readonly string[];
  readonly parse: (rest: string) => Result<Intent, ChatFault>;
}

const plainIntent = (intent: Intent) => (): Result<Intent, ChatFault> => succeed(intent);

const withText =
  (usage: () => string, make: (text: string) => Intent) =>
  (rest: string): Result<Intent, ChatFault> =>
    rest === '' ? fail({ code: 'chat/needs-more', usage: usage() }) : succeed(make(rest));

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

/** What is to be done now is no word of the trade. */
const asksForStep = /^(?:now|next|do i do(?: now| next)?|jetzt|nun|kommt jetzt|mache ich jetzt)\?*$/i;

function parseWords(rest: string): Result<Intent, ChatFault> {
  if (asksForStep.test(rest)) return succeed({ kind: 'again' });
  return succeed({ kind: 'words', about: rest === '' ? null : rest });
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
      ? fail({ code: 'chat/not-a-choice', word: rest === '' ? say`nothing` : rest, choices: words })
      : succeed(make(word));
  };
}

function parseWindow(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: 'window 100' });
  const { check, allowed } = settingsTable.pressWindowMs;
  return check(Number(rest))
    ? succeed({ kind: 'set', change: { name: 'pressWindowMs', value: Number(rest) } })
    : fail({ code: 'chat/not-a-choice', word: rest, choices: [say`the whole numbers ${allowed()}`] });
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
  summary: () => string,
  gist: () => string,
): ChatCommand => ({
  name,
  aliases: [],
  usage: () => say`${name} on, or ${name} off`,
  summary,
  gist,
  example: `${name} on`,
  follows: onOff,
  parse: choice(onOff, (word) => ({ kind: 'set', change: { name: setting, value: word === 'on' } })),
});

export const chatCommands: readonly ChatCommand[] = [
  {
    name: 'next',
    aliases: ['n', 'done', 'ok'],
    usage: () => say`next [how many]`,
    summary: () => say`confirm the step on the screen, or several at once`,
    gist: () => say`confirm this step`,
    example: 'next 2',
    follows: [],
    parse: parseNext,
  },
  {
    name: 'back',
    aliases: ['b', 'undo'],
    usage: () => 'back',
    summary: () => say`take back the last step, jump, mend or change of plan`,
    gist: () => say`take the last one back`,
    example: 'back',
    follows: [],
    parse: plainIntent({ kind: 'do', command: { do: 'take-back' } }),
  },
  {
    name: 'redo',
    aliases: [],
    usage: () => 'redo',
    summary: () => say`do again what was taken back`,
    gist: () => say`do what was taken back`,
    example: 'redo',
    follows: [],
    parse: plainIntent({ kind: 'do', command: { do: 'redo' } }),
  },
  {
    name: 'go',
    aliases: ['jump', 'goto'],
    usage: () => say`go PHASE, or go stripe / row / move / step / mark and its number or name`,
    summary: () => say`jump to a place: it comes next`,
    gist: () => say`jump to a place`,
    example: 'go stripe 3',
    follows: placeWords,
    parse: parseTo('go'),
  },
  {
    name: 'find',
    aliases: ['locate', 'see'],
    usage: () =>
      say`find EDGES YARN, carriage SIDE, feeder YARN, row / stripes / stitches NUMBER; find and MORE`,
    summary: () => say`say what you see, as little as you know: where it is, or what went wrong`,
    gist: () => say`say what you see`,
    example: 'find L24 R21 mint carriage right',
    follows: seenWords,
    parse: parseFind,
  },
  {
    name: 'rip',
    aliases: [],
    usage: () => say`rip row / stripe / move / step / mark and its number or name`,
    summary: () => say`the way back with the hands, so that this place comes next again`,
    gist: () => say`the way back by hand`,
    example: 'rip row 30',
    follows: placeWords,
    parse: parseTo('rip'),
  },
  {
    name: 'replan',
    aliases: [],
    usage: () =>
      say`replan shorter / longer / rows NUMBER; replan NUMBER stitches SIZE NUMBER rows SIZE; weighed YARN GRAMS; colour YARN to YARN`,
    summary: () => say`plan on from here: other length, measured piece, weighed yarn, new colour`,
    gist: () => say`plan on from here`,
    example: 'replan 20 stitches 9.8 cm 30 rows 10.5 cm',
    follows: replanWords,
    parse: parseReplan,
  },
  {
    name: 'take',
    aliases: [],
    usage: () => say`take [NUMBER]`,
    summary: () => say`accept what find, rip or replan offers`,
    gist: () => say`accept an offer`,
    example: 'take 1',
    follows: [],
    parse: parseTake,
  },
  {
    name: 'stop',
    aliases: [],
    usage: () => 'stop',
    summary: () => say`leave a way back or a mend that is being guided`,
    gist: () => say`leave a way back`,
    example: 'stop',
    follows: [],
    parse: plainIntent({ kind: 'stop' }),
  },
  {
    name: 'where',
    aliases: ['w', 'here'],
    usage: () => 'where',
    summary: () => say`where you are, and what the bed should look like`,
    gist: () => say`where you are`,
    example: 'where',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'where' }),
  },
  {
    name: 'plan',
    aliases: ['p'],
    usage: () => 'plan',
    summary: () => say`the whole plan: size, yarn, needles, tails`,
    gist: () => say`the whole plan`,
    example: 'plan',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'plan' }),
  },
  {
    name: 'words',
    aliases: ['word', 'what', "what's", 'was'],
    usage: () => say`words, or words and a word; or ask what is a swatch?`,
    summary: () => say`the words of the trade, and what each means`,
    gist: () => say`what a word means`,
    example: 'words swatch',
    follows: words.map(({ id }) => id),
    parse: parseWords,
  },
  {
    name: 'why',
    aliases: ['warum', 'wieso'],
    usage: () => say`why, or why and what you wonder about`,
    summary: () => say`the craft and the formulas, with the numbers of this bag`,
    gist: () => say`why it is so`,
    example: 'why tail',
    follows: reasons.map(({ id }) => id),
    parse: (rest) => succeed({ kind: 'why', about: rest === '' ? null : rest }),
  },
  {
    name: 'cautions',
    aliases: [],
    usage: () => 'cautions',
    summary: () => say`all cautions, and the step at which each comes`,
    gist: () => say`all cautions`,
    example: 'cautions',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'cautions' }),
  },
  {
    name: 'note',
    aliases: [],
    usage: () => say`note TEXT`,
    summary: () => say`keep a remark at this step`,
    gist: () => say`keep a remark`,
    example: 'note mint feels tighter here',
    follows: [],
    parse: withText(
      () => say`note TEXT`,
      (text) => ({ kind: 'do', command: { do: 'note', text } }),
    ),
  },
  {
    name: 'notes',
    aliases: [],
    usage: () => 'notes',
    summary: () => say`the remarks kept so far`,
    gist: () => say`read the remarks`,
    example: 'notes',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'notes' }),
  },
  {
    name: 'weigh',
    aliases: [],
    usage: () => say`weigh YARN GRAMS`,
    summary: () => say`keep what is left of a yarn by the scales; at the end it tells what the bag took`,
    gist: () => say`what is left of a yarn`,
    example: 'weigh plum 22 g',
    follows: [],
    parse: parseWeigh,
  },
  {
    name: 'mark',
    aliases: [],
    usage: () => say`mark NAME`,
    summary: () => say`name this place, to go back to it`,
    gist: () => say`name this place`,
    example: 'mark before the re-seat',
    follows: [],
    parse: withText(
      () => say`mark NAME`,
      (name) => ({ kind: 'do', command: { do: 'mark', name } }),
    ),
  },
  {
    name: 'marks',
    aliases: [],
    usage: () => 'marks',
    summary: () => say`the places named so far`,
    gist: () => say`the named places`,
    example: 'marks',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'marks' }),
  },
  {
    name: 'again',
    aliases: ['speak'],
    usage: () => 'again',
    summary: () => say`say the instruction once more`,
    gist: () => say`repeat the instruction`,
    example: 'again',
    follows: [],
    parse: plainIntent({ kind: 'again' }),
  },
  {
    name: 'bags',
    aliases: [],
    usage: () => 'bags',
    summary: () => say`what is on the go and finished`,
    gist: () => say`on the go, and finished`,
    example: 'bags',
    follows: [],
    parse: plainIntent({ kind: 'bags' }),
  },
  {
    name: 'new',
    aliases: [],
    usage: () => 'new',
    summary: () => say`plan a bag of your own; this one is saved, and waits`,
    gist: () => say`plan a bag of your own`,
    example: 'new',
    follows: [],
    parse: plainIntent({ kind: 'new' }),
  },
  {
    name: 'draw',
    aliases: [],
    usage: () => say`draw strip / bag / fold / bed, or draw off`,
    summary: () => say`a drawing in place of the counters; it grows with the work`,
    gist: () => say`a drawing of the work`,
    example: 'draw strip',
    follows: pictures,
    parse: choice(pictures, (word) => ({ kind: 'draw', picture: word === 'off' ? null : word })),
  },
  {
    name: 'sheet',
    aliases: ['print'],
    usage: () => say`sheet FILE.html, or .svg, or .md`,
    summary: () => say`write the plan as a sheet to print`,
    gist: () => say`the plan on a sheet`,
    example: 'sheet dice-bag.html',
    follows: [],
    parse: withText(
      () => say`sheet FILE.html`,
      (out) => ({ kind: 'sheet', out }),
    ),
  },
  {
    name: 'save',
    aliases: [],
    usage: () => say`save FILE`,
    summary: () => say`write the whole log to another file and go on there, when its disk makes trouble`,
    gist: () => say`the log to another file`,
    example: 'save dice-bag.jsonl',
    follows: [],
    parse: withText(
      () => say`save FILE`,
      (out) => ({ kind: 'save', out }),
    ),
  },
  {
    name: 'pedal',
    aliases: ['switch'],
    usage: () => say`pedal confirm / back / again / pass, or pedal off`,
    summary: () => say`give a foot switch something to do: type it, then press the switch`,
    gist: () => say`assign a foot switch`,
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
    usage: () => say`window MILLISECONDS`,
    summary: () => say`presses of one switch closer together than this count as one`,
    gist: () => say`presses that count as one`,
    example: 'window 100',
    follows: [],
    parse: parseWindow,
  },
  switchCommand(
    'large',
    'largeView',
    () => say`big letters, to be read from across the bed`,
    () => say`big letters`,
  ),
  switchCommand(
    'bell',
    'bell',
    () => say`ring once for a step, twice for a shaping move, three times for a colour`,
    () => say`ring at each step`,
  ),
  switchCommand(
    'speech',
    'speech',
    () => say`speak each instruction aloud`,
    () => say`speak each step`,
  ),
  {
    name: 'care',
    aliases: [],
    usage: () => say`care low / usual / high`,
    summary: () => say`how long to look before a new yarn, a re-seat or the closing row`,
    gist: () => say`how long to look twice`,
    example: 'care high',
    follows: ['low', 'usual', 'high'],
    parse: choice(['low', 'usual', 'high'], (value) => ({ kind: 'set', change: { name: 'caution', value } })),
  },
  {
    name: 'units',
    aliases: [],
    usage: () => say`units cm, or units in`,
    summary: () => say`centimetres, grams and metres, or inches, ounces and yards`,
    gist: () => say`centimetres or inches`,
    example: 'units cm',
    follows: ['cm', 'in'],
    parse: choice(['cm', 'in'], (value) => ({ kind: 'set', change: { name: 'units', value } })),
  },
  {
    name: 'language',
    aliases: [],
    usage: () => say`language ${formatChoice(languageChoices)}`,
    summary: () => say`the language of all sentences; auto follows the system`,
    gist: () => say`the language of sentences`,
    example: 'language de',
    follows: languageChoices,
    parse: choice(languageChoices, (value) => ({ kind: 'set', change: { name: 'language', value } })),
  },
  {
    name: 'help',
    aliases: ['h', '?', 'hilfe'],
    usage: () => say`help, help all, or help and a command or topic`,
    summary: () => say`what can be typed, and the keys`,
    gist: () => say`what fits now, and topics`,
    example: 'help go',
    follows: ['all', ...helpTopicNames],
    parse: (rest) => succeed({ kind: 'help', topic: rest === '' ? null : rest }),
  },
  {
    name: 'quit',
    aliases: ['q', 'exit', 'leave'],
    usage: () => 'quit',
    summary: () => say`leave; everything is saved, and you come back to this step`,
    gist: () => say`leave, and come back later`,
    example: 'quit',
    follows: [],
    parse: plainIntent({ kind: 'leave' }),
  },
];

export const findCommand = (word: string): ChatCommand | undefined =>
  chatCommands.find((command) => command.name === word || command.aliases.includes(word));
