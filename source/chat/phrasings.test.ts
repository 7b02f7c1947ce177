/** A hundred ways to say what is seen, in each language, written down by hand with what is to be heard. Invented; no source. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { german, speak, spoken } from '../../test/fixtures/spoken.ts';
import { parseLine } from './parse-line.ts';

const known = {
  yarns: ['plum', 'mint', 'dark plum', 'row', 'left over', 'R5', '7', 'waste'],
  marks: [],
  knittedRows: 63,
  stripeRows: 2,
};

const [english = '', german_ = ''] = readFileSync('source/chat/phrasings.txt', 'utf8').split(/^# de$/m);
const casesIn = (text: string): readonly (readonly [string, string])[] =>
  text
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => {
      const [said = '', heard = ''] = line.split(' | ');
      return [said, heard.trim()] as const;
    });

const short: Readonly<Record<string, string>> = {
  left: 'l',
  right: 'r',
  carriage: 'c',
  lastColour: 'y',
  feeder: 'f',
  stitches: 'n',
  wasteRows: 'w',
  stripesCounted: 's',
  rowCounter: 'k',
  rowsOfColour: 'h',
};

/** What was heard, in the words of the list, in the order of the alphabet. */
function heard(line: string): readonly string[] {
  const parsed = parseLine(line, spoken(), known);
  if (!parsed.ok) return [parsed.fault.code];
  // What to do about a dropped stitch is told at once.
  if (parsed.value.kind === 'trouble') return ['ladder'];
  if (parsed.value.kind !== 'find') return [parsed.value.kind];
  const { seen, moment, ladder, leftOut } = parsed.value.told;
  const facts = Object.entries(seen).map(([fact, value]) =>
    fact === 'looseEdgeLoop' ? (value ? 'loose' : 'firm') : `${short[fact]}=${value ?? 'none'}`,
  );
  const by = moment && (moment.by === 'rows-down' ? 'down' : moment.by);
  return [
    ...facts,
    ...(moment ? [`${by}=${moment.number}`] : []),
    ...(ladder ? ['ladder'] : []),
    ...leftOut.map((word) => `out=${word}`),
  ].toSorted();
}

const expected = (text: string): readonly string[] =>
  text
    .split(/ (?=\w+=|ladder|loose|firm)/)
    .filter((part) => part !== '')
    .toSorted();

describe.each([
  ['English', english, null],
  ['German', german_, german],
])('%s', (_, text, language) => {
  beforeAll(() => speak(language));
  afterAll(() => speak(null));
  const cases = casesIn(text);

  it('is tried a hundred times', () => expect(cases.length).toBeGreaterThanOrEqual(100));

  it.each(cases)('%s', (said, meant) => {
    expect(heard(said)).toEqual(expected(meant));
  });
});
