/** What bags leave of the yarn on a shelf; all of it is invented. */
import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { valueIn } from '../../test/tools/result.ts';
import { emptyShelf, type Shelf } from '../planning/shelf.ts';
import type { Command } from '../session/command.ts';
import { type Session, startSession } from '../session/session.ts';
import { updateSession } from '../session/update-session.ts';
import { shelfNow, takenBy } from './shelf-now.ts';

const kept = (colour: string, grams: number | null) => ({
  colour,
  grams,
  metresPer100g: 190,
  pricePer100g: null,
  since: '2031-03-04T18:00:00.000Z',
});

const shelf: Shelf = {
  ...emptyShelf,
  yarns: { Plum: kept('#6B2D5C', 60), mint: kept('#9fd8c2', null), plumdark: kept('#000000', 9) },
};

const use = (startedAt: string, grams: number, colour = '#6b2d5c') => ({
  startedAt,
  taken: [{ yarn: 'plum', colour, grams }],
});

const leftOf = (...bags: readonly ReturnType<typeof use>[]) => shelfNow(shelf, bags).yarns.Plum?.grams;

describe('what is left of a yarn', () => {
  it('is what was kept less what the bags begun since have taken', () => {
    expect(leftOf()).toBe(60);
    expect(leftOf(use('2031-03-04T18:00:00.000Z', 15), use('2031-03-05T18:00:00.000Z', 20))).toBe(25);
    expect(leftOf(use('2031-03-04T17:59:59.999Z', 15))).toBe(60);
  });

  it('is never less than nothing, and not known of one that was never weighed', () => {
    expect(leftOf(use('2031-03-05T18:00:00.000Z', 61))).toBe(0);
    expect(shelfNow(shelf, [use('2031-03-05T18:00:00.000Z', 5)]).yarns.mint?.grams).toBeNull();
  });

  it('is not touched by a yarn of the same name in another colour', () => {
    expect(leftOf(use('2031-03-05T18:00:00.000Z', 20, '#6b2d5d'))).toBe(60);
  });
});

describe('what a bag has taken', () => {
  const brief = stripedBrief(20, 24, 60);
  const job = jobOf({
    ...brief,
    swatch: { ...brief.swatch, loopLengthMm: 17.1 },
    yarns: {
      plum: { ...brief.yarns.plum, grams: 60 },
      mint: { ...brief.yarns.mint, grams: 45 },
    },
  });
  const planned = job.plan.yarn.find(({ yarn }) => yarn === 'plum')?.grams ?? 0;
  const having = (...commands: readonly Command[]): Session =>
    commands.reduce((now, command) => valueIn(updateSession(now, command)), startSession(job));
  const plumOf = (session: Session) =>
    takenBy(session, 'now').taken.find(({ yarn }) => yarn === 'plum')?.grams;

  it('is nothing before the scales or the end tell', () => {
    expect(plumOf(having({ do: 'confirm', count: 30 }))).toBe(0);
  });

  it('is at least what the plan says once the bag is finished', () => {
    expect(planned).toBeGreaterThan(1);
    expect(plumOf(having({ do: 'go', done: job.stepCount }))).toBe(planned);
  });

  it('is what the scales say on the way, and at the end what they say even if it is less', () => {
    const weighed = { do: 'weigh', yarn: 'plum', grams: 59 } as const;
    expect(plumOf(having({ do: 'go', done: 30 }, weighed))).toBe(1);
    expect(plumOf(having({ do: 'go', done: 30 }, weighed, { do: 'go', done: job.stepCount }))).toBe(planned);
    expect(plumOf(having({ do: 'go', done: job.stepCount }, weighed))).toBe(1);
  });
});
