/** Finding the place, over random bags: against all places looked through one by one on a bed with every move made. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Finding, locate } from '../../source/session/locate/locate.ts';
import { type Fact, facts, type Looks, type Seen } from '../../source/session/locate/seen.ts';
import type { Job } from '../../source/steps/job.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';
import { seenPlaces } from './seen-places.ts';

const edgesColourCarriage: readonly Fact[] = ['left', 'right', 'lastColour', 'carriage'];

const pick = (looks: Looks, known: readonly Fact[]): Seen =>
  Object.fromEntries(known.map((fact) => [fact, looks[fact]]));

const matches = (looks: Looks, seen: Seen): boolean =>
  facts.every((fact) => seen[fact] === undefined || seen[fact] === looks[fact]);

function find(job: Job, seen: Seen): Finding {
  return valueIn(locate(job, seen));
}

const countOf = (finding: Finding): number =>
  finding.found === 'several' ? finding.count : finding.found === 'one' ? 1 : 0;

/** Stretches of steps that look alike and match, by looking at each. */
function bruteCount(places: readonly Looks[], seen: Seen): number {
  const starts = places.filter((looks, i) => {
    const before = places[i - 1];
    return matches(looks, seen) && !(before && matches(before, { ...looks }));
  });
  return starts.length;
}

const holds = (finding: Finding, done: number): boolean => {
  if (finding.found === 'none') return false;
  const places = finding.found === 'one' ? [finding.place] : finding.places;
  return places.some((place) => place.done <= done && done <= place.through);
};

const overPlaces = (check: (job: Job, places: readonly Looks[], done: number) => void, runs: number): void =>
  fc.assert(
    fc.property(briefFile(), fc.nat(), (file, at) => {
      const job = jobOf(file);
      check(job, seenPlaces(job), at % (job.stepCount + 1));
    }),
    { numRuns: tries(runs) },
  );

describe('what can be seen at a place', () => {
  it('is what the bed shows when every move is made', () => {
    overPlaces((job, places) => {
      for (const [done, looks] of places.entries()) {
        const finding = find(job, looks);
        expect(countOf(finding)).toBeGreaterThan(0);
        expect({ done, held: countOf(finding) > 12 || holds(finding, done) }).toEqual({ done, held: true });
      }
    }, 20);
  });
});

describe('locating', () => {
  it('finds exactly the places that look so, and the true one among them', () => {
    const someFacts = fc.subarray([...facts], { minLength: 1 });
    fc.assert(
      fc.property(briefFile(), fc.nat(), someFacts, (file, at, known) => {
        const job = jobOf(file);
        const places = seenPlaces(job);
        const done = at % places.length;
        const seen = pick(places[done] as Looks, known);
        const finding = find(job, seen);
        expect(countOf(finding)).toBe(bruteCount(places, seen));
        if (countOf(finding) <= 12) expect(holds(finding, done)).toBe(true);
      }),
      { numRuns: tries(150) },
    );
  });

  it('answers with one step from edges, colour and carriage wherever no other place looks so', () => {
    let ones = 0;
    overPlaces((job, places, done) => {
      const seen = pick(places[done] as Looks, edgesColourCarriage);
      const finding = find(job, seen);
      const alike = bruteCount(places, seen);
      if (alike === 1) ones++;
      expect(finding.found === 'one').toBe(alike === 1);
      if (finding.found === 'one') expect(holds(finding, done)).toBe(true);
    }, 200);
    expect(ones).toBeGreaterThan(tries(200) / 20);
  });

  it('always answers with one step once the row counter and all else is told, while work hangs', () => {
    overPlaces((job, places) => {
      for (const [done, looks] of places.entries()) {
        if (looks.left === null) continue;
        const finding = find(job, looks);
        expect({ done, count: countOf(finding), holds: holds(finding, done) }).toEqual({
          done,
          count: 1,
          holds: true,
        });
      }
    }, 60);
  });

  it('leaves at most the feeder or a stitch to look at once edges, colour, carriage and row counter are told', () => {
    overPlaces((job, places) => {
      for (const looks of places) {
        if (looks.left === null || looks.wasteRows > 0 || looks.rowCounter === 0) continue;
        const finding = find(job, pick(looks, [...edgesColourCarriage, 'rowCounter', 'wasteRows']));
        expect(finding.found).not.toBe('none');
        if (finding.found === 'several')
          // Rows of the hem, and which section or cord it is, are counted too.
          expect(['feeder', 'stitches', 'rowsOfColour', 'piecesDone']).toEqual(
            expect.arrayContaining([...finding.tellApart]),
          );
      }
    }, 60);
  });

  it('comes to the true place by asking its best question again and again', () => {
    overPlaces((job, places, done) => {
      const truth = places[done] as Looks;
      const known: Fact[] = [];
      let finding = find(job, {});
      while (finding.found === 'several' && finding.tellApart[0]) {
        known.push(finding.tellApart[0]);
        const next = find(job, pick(truth, known));
        expect(countOf(next)).toBeLessThan(countOf(finding));
        finding = next;
      }
      expect(countOf(finding)).toBe(bruteCount(places, truth));
    }, 100);
  });

  it('asks the question that leaves fewest places, judged by trying every answer', () => {
    let judged = 0;
    overPlaces((job, places, done) => {
      const seen = pick(places[done] as Looks, ['carriage', 'lastColour', 'left']);
      const finding = find(job, seen);
      if (finding.found !== 'several' || finding.count > 12 || !finding.tellApart[0]) return;
      const leaves = (fact: Fact): number =>
        finding.places.reduce(
          (sum, { looks }) => sum + countOf(find(job, { ...seen, [fact]: looks[fact] })),
          0,
        );
      const asked = leaves(finding.tellApart[0]);
      const others = facts.filter((fact) => seen[fact] === undefined).map(leaves);
      expect(asked).toBeLessThanOrEqual(Math.min(...others));
      judged++;
    }, 150);
    expect(judged).toBeGreaterThan(0);
  });

  it('does not ask what the maker cannot tell', () => {
    let asked = 0;
    overPlaces((job, places, done) => {
      const seen = pick(places[done] as Looks, ['carriage']);
      const finding = locate(job, seen, ['rowCounter', 'stripesCounted']);
      if (!finding.ok || finding.value.found !== 'several') return;
      expect(finding.value.tellApart).not.toContain('rowCounter');
      expect(finding.value.tellApart).not.toContain('stripesCounted');
      asked++;
    }, 50);
    expect(asked).toBeGreaterThan(10);
  });

  it('takes needle names in either case and refuses what the bed or the bag does not have', () => {
    const job = jobOf(fc.sample(briefFile(), { seed: 3, numRuns: 1 })[0]);
    expect(find(job, { left: 'r1' })).toEqual(find(job, { left: 'R1' }));
    expect(locate(job, { left: 'L999' })).toMatchObject({ fault: { code: 'seen/needle-off-bed' } });
    expect(locate(job, { lastColour: 'gold' })).toMatchObject({ fault: { code: 'seen/unknown-yarn' } });
    expect(locate(job, { rowCounter: -1 })).toMatchObject({ fault: { code: 'seen/not-a-count' } });
  });
});
