/**
 * What is left on the shelf: the grams that were kept, less what the bags begun since then have taken. A yarn is taken by name
 * and colour. A bag has taken what the scales say; where a finished one was not weighed at its end, at least what its plan says.
 */
import type { KeptYarn, Shelf } from '../planning/shelf.ts';
import { usedYarn } from '../session/measured.ts';
import { isFinished, type Session } from '../session/session.ts';

interface TakenYarn {
  readonly yarn: string;
  readonly colour: string;
  readonly grams: number;
}

/** What one bag has taken. */
export interface BagUse {
  /** ISO 8601 in UTC. */
  readonly startedAt: string;
  readonly taken: readonly TakenYarn[];
}

export function takenBy(session: Session, startedAt: string): BagUse {
  const weighed = new Map(usedYarn(session).map((used) => [used.yarn, used]));
  const { plan } = session.job;
  const taken = [...plan.brief.yarns].map(([yarn, { colour }]) => {
    const planned = isFinished(session) ? (plan.yarn.find((need) => need.yarn === yarn)?.grams ?? 0) : 0;
    const used = weighed.get(yarn);
    if (used?.usedGrams == null) return { yarn, colour, grams: planned };
    return { yarn, colour, grams: used.atEnd ? used.usedGrams : Math.max(used.usedGrams, planned) };
  });
  return { startedAt, taken };
}

/** The shelf with what is left of each yarn; a yarn that was never weighed stays so. */
export const shelfNow = (shelf: Shelf, bags: readonly BagUse[]): Shelf => ({
  ...shelf,
  yarns: Object.fromEntries(
    Object.entries(shelf.yarns).map(([name, yarn]) => [
      name,
      { ...yarn, grams: gramsLeft(name, yarn, bags) },
    ]),
  ),
});

function gramsLeft(name: string, { grams, colour, since }: KeptYarn, bags: readonly BagUse[]): number | null {
  if (grams === null) return null;
  const own = bags
    .filter(({ startedAt }) => startedAt >= since)
    .flatMap(({ taken }) => taken)
    .filter((one) => isSame(one.yarn, name) && isSame(one.colour, colour));
  return Math.max(
    0,
    own.reduce((left, one) => left - one.grams, grams),
  );
}

const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/** What a bag that is thrown away had taken is written off, once its log no longer tells of it. */
export const writeOff = (shelf: Shelf, bag: BagUse): Shelf => shelfNow(shelf, [bag]);
