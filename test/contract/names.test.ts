/**
 * Every name that a maker types or another program reads, in one list for the eye of a reader: taken from the tables that
 * the program works by, so that none can be left out. A change shows as a change of `names.approved.txt` (`vitest -u`).
 */
import { expect, it } from 'vitest';
import { chatCommands } from '../../source/chat/commands/chat-commands.ts';
import { aloneWords, steeringWords } from '../../source/chat/first-run/read-line.ts';
import { troubles } from '../../source/chat/grammar/trouble.ts';
import { flagOf } from '../../source/cli/command.ts';
import { commands } from '../../source/cli/commands.ts';
import { describedSchema } from '../../source/cli/schema.ts';
import { logFields } from '../../source/journal/notation.ts';
import { benchKeys, largeKey } from '../../source/screen/bench/update-bench.ts';
import { terminalKeys } from '../../source/screen/parts/hold-screen.ts';
import { editKeys, promptKeys } from '../../source/screen/parts/prompt.ts';
import { playerKeys } from '../../source/screen/player/update-player.ts';
import { settingsTable } from '../../source/settings/settings.ts';
import { metric } from '../../source/shared/units.ts';
import { reasons, tradeWords } from '../../source/wording/explain.ts';
import { inGerman, typed } from '../../source/wording/german.ts';
import { englishWords, wordsIn } from '../../source/wording/words.ts';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

/** Words that follow a command are cut where they are lists of their own further down. */
const mostFollowing = 24;

const promptLines = chatCommands.map(({ name, aliases, follows }) => {
  const also = aliases.length === 0 ? '' : ` (${aliases.join(', ')})`;
  return follows.length === 0 || follows.length > mostFollowing
    ? name + also
    : `${name}${also}: ${follows.join(', ')}`;
});

const shellLines = commands.map(({ name, takes, options, choices }) =>
  [name, ...takes, ...options.map(flagOf), ...(choices ? [`(${choices.join(', ')})`] : [])].join(' '),
);

const settingLines = Object.entries(settingsTable).map(
  ([name, setting]) => `${name}: ${JSON.stringify(setting.default)} when not set`,
);

type Schema = Readonly<Record<string, unknown>>;
const inner = (schema: Schema, key: string): readonly Schema[] => {
  const found = schema[key];
  if (found === undefined || typeof found === 'boolean') return [];
  return (Array.isArray(found) ? found : [found]) as readonly Schema[];
};

/** `bed.place: centre, end`, a line for every field of a brief. */
function briefLines(schema: Schema, at: string): readonly string[] {
  const choices = schema.enum as readonly unknown[] | undefined;
  const here = at === '' ? [] : [choices ? `${at}: ${choices.join(', ')}` : at];
  return [...new Set([...here, ...fieldsOf(schema, at).flatMap(([path, field]) => briefLines(field, path))])];
}

/** What stands inside a schema, by its path; the ways of saying one thing at its own. */
function fieldsOf(schema: Schema, at: string): readonly (readonly [string, Schema])[] {
  const fields = Object.entries((schema.properties ?? {}) as Readonly<Record<string, Schema>>);
  return [
    ...fields.map(([key, field]) => [at === '' ? key : `${at}.${key}`, field] as const),
    ...inner(schema, 'items').map((item) => [`${at}[]`, item] as const),
    ...inner(schema, 'additionalProperties').map((item) => [`${at}.NAME`, item] as const),
    ...inner(schema, 'anyOf').map((one) => [at, one] as const),
  ];
}

const logLines = [...logFields].map(([kind, fields]) =>
  fields.length === 0 ? kind : `${kind}: ${fields.join(', ')}`,
);

/** Keys that are names of yarns, or numbers of stripes. */
const namedByMaker = new Set(['parked', 'yarns', 'stripeS']);
/** Listed by themselves. */
const apart = new Set(['brief', 'plan', 'figures']);

/** The keys of each object in `json` by where it stands. */
function collect(json: unknown, at: string, found: Map<string, Set<string>>): void {
  if (Array.isArray(json)) for (const one of json) collect(one, `${at}[]`, found);
  else if (typeof json === 'object' && json !== null) {
    const key = at.split('.').at(-1) ?? '';
    const keys = found.get(at) ?? new Set<string>();
    found.set(at, keys);
    for (const [name, value] of Object.entries(json)) {
      const isOurs = !namedByMaker.has(key);
      keys.add(isOurs ? name : 'NAME');
      if (isOurs && apart.has(name) && at !== '') continue;
      collect(value, at === '' ? name : `${at}.${isOurs ? name : 'NAME'}`, found);
    }
  }
}

function jsonLines(title: string, output: string): readonly string[] {
  const found = new Map<string, Set<string>>();
  // One object over many lines, or one a line.
  const texts = output.startsWith('{\n') ? [output] : output.trim().split('\n');
  for (const text of texts) collect(JSON.parse(text), title, found);
  return [...found].map(([at, keys]) => `${at}: ${[...keys].join(', ')}`);
}

const worked = 'next 30\nfind row 6 carriage left\nrip last row\nchoose 1\nreplan\nquit\n';

function printedJson(): readonly string[] {
  const home = emptyFolder();
  const brief = 'demo/dice-bag.json';
  const log = 'demo/token-pouch.jsonl';
  const printed = (title: string, args: readonly string[], input = ''): readonly string[] =>
    jsonLines(title, slantwise(args, { home, input }).stdout);
  return [
    ...printed('plan', ['plan', brief, '--json']),
    ...printed('steps', ['steps', brief, '--json']),
    ...printed('work', ['work', brief, '--json'], worked),
    ...printed('replay', ['replay', log, '--json']),
    ...printed('record', ['record', log, '--json']),
    ...printed('check', ['check', log, '--json']),
    ...printed('bags', ['bags', '--json']),
  ];
}

const sections = (): readonly (readonly [string, readonly string[]])[] => [
  ['Commands of the prompt (aliases): words that follow', promptLines],
  ['Topics of help', [Object.keys(englishWords.help.topics).join(', ')]],
  ['Words that are explained', tradeWords.map(({ id, names }) => `${id}: ${names(englishWords)}`)],
  ['Why', reasons.map(({ id, names }) => `${id}: ${names(englishWords)}`)],
  ['Trouble', [troubles.join(', ')]],
  ['Typed in German', Object.entries(typed).map(([german, english]) => `${german} = ${english}`)],
  [
    'At the first questions',
    [steeringWords.join(', '), ...[...aloneWords].map(([word, wish]) => `${word} = ${wish}`)],
  ],
  ['Commands of the shell', shellLines],
  ['Settings', settingLines],
  ['Fields of a brief', briefLines(describedSchema(englishWords), '')],
  ['Lines of a log; each also has afterMs, stepsDone and sum', logLines],
  ['JSON that is printed', printedJson()],
  ['Keys of the bench on an empty prompt', [...benchKeys].map(([key, act]) => `${key} = ${act}`)],
  ['Keys of the bench at any time', [`${largeKey} = large letters`]],
  ['Keys of the player on an empty prompt', [...playerKeys].map(([key, act]) => `${key} = ${act}`)],
  ['Keys of every screen', [...terminalKeys].map(([key, act]) => `${key} = ${act}`)],
  ['Keys of the prompt', [[...promptKeys.keys(), ...editKeys.keys()].join(', ')]],
];

it('every name is one that a reader has seen', async () => {
  const text = sections().map(([title, lines]) => `# ${title}\n${lines.join('\n')}\n`);
  await expect(text.join('\n')).toMatchFileSnapshot('names.approved.txt');
});

const german = wordsIn(inGerman, metric);

it.each([englishWords, german])(
  'every field of a brief has a line on what it is, and no line is without its field',
  (words) => {
    const found = new Set<string>();
    const look = (schema: Schema, at: string): void => {
      expect(schema.description, at).toMatch(/^[A-ZÄÖÜ].*\.$/);
      found.add(at === '' ? 'brief' : at);
      for (const [path, field] of fieldsOf(schema, at)) look(field, path);
    };
    look(describedSchema(words), '');
    expect([...found].toSorted()).toEqual(Object.keys(words.fields).toSorted());
  },
);
