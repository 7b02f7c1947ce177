/** What can be typed after `slantwise`. Each row runs; what it runs is loaded only when it is asked for. */
import type { Asked, CliCommand, CliOption } from './command.ts';
import { isTerminal } from './outcome.ts';
import { type Shell, shells } from './shell-completion.ts';

const json: CliOption = { name: 'json', takes: null, summary: ({ cli }) => cli.does.json };
const coloursTurned: CliOption = {
  name: 'colours-turned',
  takes: null,
  summary: ({ party }) => party.turned,
};
const plain: CliOption = { name: 'plain', takes: null, summary: ({ cli }) => cli.does.plain };

const first = ({ operands: [operand = ''] }: Asked): string => operand;
const documents = () => import('./manual.ts');
const sitting = async () => (await import('./sit-down.ts')).sitDown;
const plans = () => import('./plan.ts');
/** A log by its file, or by the number or name of its bag. */
const firstLog = async (asked: Asked): Promise<string> =>
  (await import('../files/log-list.ts')).logNamed(first(asked), asked.words);
const likeIn = async ({ given, words }: Asked): Promise<string | undefined> => {
  const like = given.get('like');
  return like === undefined ? like : (await import('../files/log-list.ts')).logNamed(like, words);
};
const inHand = () => import('./bags-in-hand.ts');

/** The first is meant where none is named. */
export const commands: readonly [CliCommand, ...CliCommand[]] = [
  {
    name: 'work',
    takes: ['[BRIEF]'],
    summary: ({ cli }) => cli.does.work,
    options: [
      { name: 'log', takes: 'FILE', summary: ({ cli }) => cli.does.log },
      { name: 'like', takes: 'LOG', summary: ({ cli }) => cli.does.like },
      { name: 'new', takes: null, summary: ({ cli }) => cli.does.fresh },
      { name: 'practice', takes: null, summary: ({ cli }) => cli.does.practice },
      plain,
      json,
    ],
    saysSettings: true,
    run: async (asked) =>
      (await sitting())(asked, {
        brief: asked.operands[0] ?? null,
        log: asked.given.get('log'),
        like: await likeIn(asked),
        fresh: asked.given.has('new'),
        mayAsk: !asked.given.has('practice') && !asked.given.has('json') && isTerminal(),
        json: asked.given.has('json'),
      }),
  },
  {
    name: 'new',
    takes: [],
    summary: ({ cli }) => cli.does.new,
    options: [plain],
    saysSettings: true,
    run: async (asked) => (await sitting())(asked, { fresh: true, mayAsk: true, asksFirst: true }),
  },
  {
    name: 'open',
    takes: ['BAG'],
    summary: ({ cli }) => cli.does.open,
    options: [plain],
    saysSettings: true,
    run: async (asked) => (await import('./sit-down.ts')).openBag(asked, first(asked)),
  },
  {
    name: 'rename',
    takes: ['BAG', 'NAME'],
    summary: ({ cli }) => cli.does.rename,
    options: [],
    run: async (asked) => (await inHand()).renameBag(asked),
  },
  {
    name: 'discard',
    takes: ['BAG'],
    summary: ({ cli }) => cli.does.discard,
    options: [{ name: 'yes', takes: null, summary: ({ cli }) => cli.does.yes }],
    run: async (asked) => (await inHand()).discardBag(asked),
  },
  {
    name: 'restore',
    takes: [],
    summary: ({ cli }) => cli.does.restore,
    options: [],
    run: async (asked) => (await inHand()).restoreBag(asked),
  },
  {
    name: 'plan',
    takes: ['BRIEF', '[BRIEF...]'],
    summary: ({ cli }) => cli.does.plan,
    options: [
      json,
      { name: 'from-yarn', takes: null, summary: ({ cli }) => cli.does.fromYarn },
      coloursTurned,
    ],
    run: async ({ operands, given, words }) =>
      (await plans()).printPlan(operands, {
        json: given.has('json'),
        fromYarn: given.has('from-yarn'),
        coloursTurned: given.has('colours-turned'),
        words,
      }),
  },
  {
    name: 'steps',
    takes: ['BRIEF'],
    summary: ({ cli }) => cli.does.steps,
    options: [json],
    run: async (asked) => (await plans()).printSteps(first(asked), asked.given.has('json'), asked.words),
  },
  {
    name: 'sheet',
    takes: ['BRIEF', '[BRIEF...]'],
    summary: ({ cli }) => cli.does.sheet,
    options: [
      { name: 'out', takes: 'FILE', summary: ({ cli }) => cli.does.out, required: true },
      { name: 'class', takes: null, summary: ({ cli }) => cli.does.class },
      { name: 'paper', takes: 'PAPER', summary: ({ cli }) => cli.does.paper },
      { name: 'tag', takes: null, summary: ({ cli }) => cli.does.tag },
      { name: 'fibre', takes: 'TEXT', summary: ({ cli }) => cli.does.fibre },
      { name: 'care', takes: 'TEXT', summary: ({ cli }) => cli.does.care },
    ],
    run: async (asked) =>
      (await import('./sheet.ts')).writeSheet(asked.operands, {
        out: asked.given.get('out') ?? '',
        forClass: asked.given.has('class'),
        paper: asked.given.get('paper'),
        ...(['tag', 'fibre', 'care'].some((name) => asked.given.has(name))
          ? { tag: { fibre: asked.given.get('fibre') ?? null, care: asked.given.get('care') ?? null } }
          : {}),
        words: asked.words,
      }),
  },
  {
    name: 'schema',
    takes: [],
    summary: ({ cli }) => cli.does.schema,
    options: [],
    run: async () => (await import('./schema.ts')).printSchema(),
  },
  {
    name: 'replay',
    takes: ['LOG'],
    summary: ({ cli }) => cli.does.replay,
    options: [{ name: 'speed', takes: 'TIMES', summary: ({ cli }) => cli.does.speed }, json],
    run: async (asked) =>
      (await import('./replay.ts')).replay(await firstLog(asked), {
        json: asked.given.has('json'),
        speed: asked.given.get('speed'),
        words: asked.words,
      }),
  },
  {
    name: 'lesson',
    takes: ['LOG', 'LINES'],
    summary: ({ cli }) => cli.does.lesson,
    options: [{ name: 'out', takes: 'COPY', summary: ({ cli }) => cli.does.copy, required: true }],
    run: async ({ operands: [log = '', lines = ''], given, words }) =>
      (await import('./teaching.ts')).writeLesson(log, lines, given.get('out') ?? '', words),
  },
  {
    name: 'record',
    takes: ['LOG'],
    summary: ({ cli }) => cli.does.record,
    options: [json],
    run: async (asked) =>
      (await import('./record.ts')).printRecord(await firstLog(asked), asked.given.has('json'), asked.words),
  },
  {
    name: 'check',
    takes: ['LOG'],
    summary: ({ cli }) => cli.does.check,
    options: [json],
    run: async (asked) => (await inHand()).check(await firstLog(asked), asked.given.has('json'), asked.words),
  },
  {
    name: 'bags',
    takes: [],
    summary: ({ cli }) => cli.does.bags,
    options: [json],
    run: async ({ given, words }) => (await inHand()).listBags(given.has('json'), words),
  },
  {
    name: 'class',
    takes: ['FOLDER'],
    summary: ({ cli }) => cli.does.pupils,
    options: [json],
    run: async (asked) =>
      (await import('./teaching.ts')).printClass(first(asked), asked.given.has('json'), asked.words),
  },
  {
    name: 'party',
    takes: ['[BRIEF...]'],
    summary: ({ party }) => party.outside,
    options: [coloursTurned],
    run: async (asked) => (await import('./own-party.ts')).partyCommand(asked),
  },
  {
    name: 'shelf',
    takes: [],
    summary: ({ shelf }) => shelf.outside,
    options: [json],
    run: async (asked) => (await import('./own-shelf.ts')).printShelf(asked),
  },
  {
    name: 'completion',
    takes: ['SHELL'],
    choices: shells,
    summary: ({ cli }) => cli.does.completion,
    options: [],
    run: async (asked) => (await documents()).printCompletion(asked, first(asked) as Shell),
  },
  {
    name: 'manual',
    takes: [],
    summary: ({ cli }) => cli.does.manual,
    options: [],
    run: async (asked) => (await documents()).printManual(asked),
  },
];
