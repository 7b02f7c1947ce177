/** The law of the one gate: whatever comes in by whatever place, nothing of it acts on the terminal by any place where text goes out. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commands } from '../../source/cli/commands.ts';
import { readLog } from '../../source/journal/read-log.ts';
import { harmless, harmlessJson } from '../../source/shared/plain-text.ts';
import { actsIn, hostile, hostileSigns, lay, type Place } from '../fixtures/hostile.ts';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

const typed = [
  ...[
    hostile,
    `note ${hostile}`,
    `mark ${hostile}`,
    `go ${hostile}`,
    `find ${hostile}`,
    `what is ${hostile}`,
  ],
  ...[`why ${hostile}`, `replan colour ${hostile} to ${hostile}`, `save ${hostile}/x`, `sheet ${hostile}`],
  ...[
    `weigh ${hostile} 3`,
    `pedal ${hostile}`,
    `language ${hostile}`,
    `help ${hostile}`,
    'notes',
    'marks',
    'bags',
  ],
  ...['next', 'where', 'again', 'plan', 'quit'],
].join('\n');

const inFolder = (folder: string, names: RegExp): readonly string[] =>
  readdirSync(folder)
    .filter((name) => names.test(name))
    .map((name) => join(folder, name));

/** Every command with every place that it reads from; `work` also reads what is typed. */
function runs({ folder }: Place): readonly (readonly string[])[] {
  const logs = inFolder(folder, /^(hostile|yarn|held)\.jsonl$/);
  /** Of a log that is refused each command says the same. */
  const refused = inFolder(folder, /^(name|program|unknown)\.jsonl$/);
  const briefs = inFolder(folder, /\.json$/);
  const inName = hostile.replaceAll('\0', '');
  return [
    ...logs.flatMap((log) => [
      ['replay', log],
      ['replay', log, '--json'],
      ['check', log],
      ['check', log, '--json'],
      ['record', log],
      ['record', log, '--json'],
      ['--log', log],
      ['work', '--json', '--log', log],
      ['work', '--like', log],
    ]),
    ...refused.flatMap((log) => [
      ['replay', log],
      ['check', log, '--json'],
      ['--log', log],
      ['work', '--json', '--log', log],
    ]),
    ...briefs.flatMap((brief) => [['plan', brief], ['plan', brief, '--json'], [brief]]),
    ...inFolder(folder, /^(dial|brief-name)\.json$/).flatMap((brief) => [
      ['steps', brief],
      ['steps', brief, '--json'],
      ['sheet', brief, '--out', join(folder, inName.replaceAll('/', ''))],
    ]),
    [
      'lesson',
      join(folder, 'hostile.jsonl'),
      join(folder, 'lines.txt'),
      '--out',
      join(folder, `copy${inName}`.replaceAll('/', '')),
    ],
    // What is added to the table comes here by itself; what more it reads has a row of its own.
    ...commands.map(({ name }) => [name, inName]),
    [inName, inName],
    [`--${inName}`],
    ['plan', 'demo/dice-bag.json', `--${inName}`],
    ['replay', 'demo/token-pouch.jsonl', '--speed', inName],
    ['rename', inName, inName],
    ['rename', '1', inName],
    ['discard', '1', '--yes'],
    ['restore'],
    ['party', ...briefs],
    ['party', join(folder, 'brief-name.json'), join(folder, 'dial.json')],
    ['shelf'],
    ['class', folder],
    ['class', folder, '--json'],
    ['shelf', '--json'],
    ['bags'],
    ['bags', '--json'],
    ['new', '--plain'],
    [],
  ];
}

describe('nothing from outside acts on the terminal', () => {
  it('though each log that is laid out is read to its end, or refused for the one thing that is wrong in it', () => {
    const place = { folder: emptyFolder(), home: emptyFolder() };
    lay(place);
    const read = (name: string) => readLog(readFileSync(join(place.folder, name))).fault?.code ?? null;
    expect(['hostile.jsonl', 'yarn.jsonl', 'name.jsonl', 'program.jsonl', 'unknown.jsonl'].map(read)).toEqual(
      [null, null, 'journal/damaged-line', 'journal/plan-differs', 'journal/unknown-event'],
    );
  });

  it('by the plain prompt, by any command, as JSON or on standard error', () => {
    const place = { folder: emptyFolder(), home: emptyFolder() };
    lay(place);
    const all = runs(place);
    const acted = all.flatMap((args) => {
      lay(place);
      const { stdout, stderr, status } = slantwise(args, { home: place.home, input: typed });
      expect(status, `${JSON.stringify(args)} ${stderr}`).toBeLessThanOrEqual(2);
      return [actsIn(stdout), actsIn(stderr)]
        .filter((found) => found !== null)
        .map((found) => ({ args, found }));
    });
    expect(acted).toEqual([]);
    console.info(`${all.length} runs, ${hostileSigns.length} sorts of sign in each place`);
  }, 300_000);
});

describe('the gate', () => {
  const anyText = fc.string({ unit: 'binary' });

  it('lets nothing through that acts, and leaves what is harmless as it is', () => {
    fc.assert(
      fc.property(fc.oneof(anyText, fc.constantFrom(...hostileSigns)), anyText, (one, other) => {
        const shown = harmless(one + other);
        expect(actsIn(shown)).toBeNull();
        expect(harmless(shown)).toBe(shown);
      }),
      { numRuns: 5000 },
    );
  });

  it('keeps JSON the same to whoever parses it', () => {
    fc.assert(
      fc.property(fc.jsonValue({ stringUnit: 'binary' }), (value) => {
        const text = harmlessJson({ value, hostile });
        expect(actsIn(text)).toBeNull();
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify({ value, hostile })));
      }),
    );
  });
});
