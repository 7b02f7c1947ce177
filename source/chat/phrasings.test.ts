/** A hundred ways to say what is seen, in each language, written down by hand with what is to be heard. Invented; no source. */
import { expect, it } from 'vitest';
import { describeSaid } from '../../test/fixtures/said-and-meant.ts';
import { spoken } from '../../test/fixtures/spoken.ts';
import { parseLine } from './parse-line.ts';

const known = {
  yarns: ['plum', 'mint', 'dark plum', 'row', 'left over', 'R5', '7', 'waste'],
  marks: [],
  knittedRows: 63,
  stripeRows: 2,
};

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
  piecesDone: 'p',
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
    fact === 'rehung'
      ? value
        ? 'rehung'
        : 'not-rehung'
      : fact === 'looseEdgeLoop'
        ? value
          ? 'loose'
          : 'firm'
        : `${short[fact]}=${value ?? 'none'}`,
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
    .split(/ (?=\w+=|ladder|loose|firm|rehung|not-rehung)/)
    .filter((part) => part !== '')
    .toSorted();

describeSaid('source/chat/phrasings.txt', (cases) => {
  it('is tried a hundred times', () => expect(cases.length).toBeGreaterThanOrEqual(100));

  it.each(cases)('%s', (said, meant) => {
    expect(heard(said)).toEqual(expected(meant));
  });
});
