/** What makers say when something goes wrong (common practice, no source), and that each finds what to do now. */
import { describe, expect, it } from 'vitest';
import { answersTo, openMemoryBench } from '../../../test/fixtures/bench-in-memory.ts';
import { german, spoken } from '../../../test/fixtures/spoken.ts';
import { metric } from '../../shared/units.ts';
import { stepAt } from '../../steps/job.ts';
import { englishWords, wordsIn } from '../../wording/words.ts';
import { parseLine } from '../parse-line.ts';
import { troubleIn, troubles } from './trouble.ts';

const germanWords = wordsIn(german, metric);

describe('trouble', () => {
  it.each([
    ['I dropped a stitch', 'dropped-stitch'],
    ['a stitch has dropped', 'dropped-stitch'],
    ['there is a ladder', 'dropped-stitch'],
    ['the yarn broke', 'yarn'],
    ['a knot in the yarn', 'yarn'],
    ['the carriage jams', 'jam'],
    ['carriage is stuck', 'jam'],
    ['the hook split a loop', 'split-loop'],
    ['a doubled stitch did not knit off', 'doubled-stitch'],
    ['a weight has fallen', 'fallen-weight'],
    ['I knitted on', 'knitted-on'],
    ["I didn't stop", 'knitted-on'],
  ] as const)('%j is found without a command', (line, what) => {
    const parsed = parseLine(line, spoken());
    expect(parsed.ok ? parsed.value : parsed.fault).toEqual({ kind: 'trouble', what });
  });

  it.each(['the work fell off', 'everything fell'])('%j is looked for at its place', (line) => {
    expect(troubleIn(line, spoken())).toBe('fallen-work');
    const parsed = parseLine(line, spoken());
    expect(parsed.ok && parsed.value).toMatchObject({
      kind: 'find',
      told: { seen: { left: null, right: null } },
    });
  });

  it.each([
    ['mir ist eine Masche gefallen', 'dropped-stitch'],
    ['der Faden ist gerissen', 'yarn'],
    ['der Schlitten klemmt', 'jam'],
    ['alles abgefallen', 'fallen-work'],
    ['das Gewicht ist abgefallen', 'fallen-weight'],
    ['ich habe zu weit gestrickt', 'knitted-on'],
  ] as const)('%j is found in German', (line, what) => {
    expect(troubleIn(line, germanWords)).toBe(what);
  });

  it.each(['note the yarn broke here', 'L24 R21 45 stitches', 'next', 'replan shorter', 'what is a knot?'])(
    '%j is something else',
    (line) => {
      const parsed = parseLine(line, spoken());
      expect(parsed.ok && parsed.value.kind === 'trouble').toBe(false);
    },
  );

  it('has its title among its sayings, in every language, and two answers short enough for the screen', () => {
    for (const words of [englishWords, germanWords])
      for (const trouble of troubles) {
        const { title, now, help } = words.trouble[trouble];
        expect(troubleIn(title, words)).toBe(trouble);
        for (const edges of [null, ['L100', 'R100'] as const])
          for (const answer of [now, help])
            expect(answer({ edges, row: 120 }).length, title).toBeLessThanOrEqual(240);
      }
  });

  it('names the needles of this place, and lists what there is where nothing is said', () => {
    const { store } = openMemoryBench();
    answersTo(store, 'go row 3');
    const { job, done } = store.get().session;
    const { left, right } = stepAt(job, done).after;
    expect(answersTo(store, 'trouble fallen-work')[0]).toContain(` on ${left} to ${right}, purl side`);
    expect(answersTo(store, 'trouble')[0]).toMatch(/dropped stitch; broken or knotted yarn; jam;/);
  });
});
