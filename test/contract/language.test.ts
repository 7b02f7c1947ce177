/** The built program in the language of the system or of the settings; its JSON is the same in all of them. */
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { slantwise as run } from '../tools/slantwise.ts';

const home = mkdtempSync(join(tmpdir(), 'slantwise-language-'));
const settingsFile = join(home, 'config/slantwise/settings.json');

beforeAll(() => mkdirSync(join(home, 'config/slantwise'), { recursive: true }));
afterAll(() => rmSync(home, { recursive: true, force: true }));

function slantwise(locale: string, args: readonly string[], settings: string | null = null) {
  rmSync(settingsFile, { force: true });
  if (settings !== null) writeFileSync(settingsFile, settings);
  return run(args, { home, locale });
}

const german = 'de_DE.UTF-8';
const english = 'en_GB.UTF-8';

describe('a German system', () => {
  it('gets a German plan', () => {
    const { status, stdout } = slantwise(german, ['plan', 'demo/token-pouch.json']);
    expect(status).toBe(0);
    expect(stdout).toContain(
      '\nGRÖSSE\n  Beutel    4,6 cm ± 0,2 cm breit und 5,1 cm ± 0,2 cm tief, flach und genäht,\n',
    );
  });

  it('gets the usage in German', () => {
    expect(slantwise(german, ['--help']).stdout).toContain(
      'Rückgabewert: 0 erledigt, 1 falsche Eingabe, 2 falscher Aufruf, 70 eigener Fehler, 130 unterbrochen.\n',
    );
  });

  it('is told in German what is wrong, with the same status', () => {
    expect(slantwise(german, ['plan'])).toEqual({
      status: 2,
      stdout: '',
      stderr:
        'slantwise: BRIEF fehlt. Aufruf: slantwise plan BRIEF [BRIEF...] [--json] [--from-yarn] [--colours-turned]\n',
    });
    expect(slantwise(german, ['plan', 'nowhere.json'])).toMatchObject({
      status: 1,
      stderr: expect.stringContaining('nowhere.json gibt es nicht'),
    });
  });

  it.each([
    ['plan', 'demo/leftovers-bag.json', '--json'],
    ['plan', 'demo/dice-bag.json', '--from-yarn', '--json'],
    ['plan', 'nowhere.json', '--json'],
    ['plan', '--json'],
    ['steps', 'demo/rulebook-bag.json', '--json'],
    ['schema'],
    ['check', 'demo/token-pouch.jsonl', '--json'],
    ['replay', 'demo/token-pouch.jsonl', '--json'],
    ['record', 'demo/token-pouch.jsonl', '--json'],
    ['--version'],
  ])('gets the same from %s %s %s', (...args) => {
    expect(slantwise(german, args)).toEqual(slantwise(english, args));
  });
});

describe('the setting of the language', () => {
  const plan = ['plan', 'demo/token-pouch.json'];

  it('goes before the system', () => {
    const asked = slantwise(english, plan, '{"language": "de"}');
    expect(asked).toEqual(slantwise(german, plan));
    expect(slantwise(german, plan, '{"language": "en"}')).toEqual(slantwise(english, plan));
  });

  const sentence =
    'The settings ask for the language fr, which is not here, so this is English: set language to auto, en or de.';

  it('that is not here is told in one sentence, and all is English', () => {
    expect(slantwise(german, plan, '{"language": "fr"}')).toEqual({
      ...slantwise(english, plan),
      stderr: `slantwise: ${sentence}\n`,
    });
  });

  it('that is not here is told at the bench, once', () => {
    const { stdout, stderr } = slantwise(german, ['--plain', 'demo/token-pouch.json'], '{"language": "fr"}');
    expect(stdout.split(sentence)).toHaveLength(2);
    expect(stderr).toBe('');
  });

  it('in a file that cannot be read is told by whichever command comes first', () => {
    const { stderr } = slantwise(english, plan, '{"language": "de"');
    expect(stderr).toBe(
      `slantwise: The settings could not be read. They are kept as ${settingsFile}.unreadable-1, and the usual ones are used.\n`,
    );
    expect(existsSync(`${settingsFile}.unreadable-1`)).toBe(true);
  });
});
