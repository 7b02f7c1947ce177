/** Answers to what is seen at the bench: the place, or what would tell it, or what may have happened and how to mend it. */

import { diagnose } from '../session/diagnose/diagnose.ts';
import type { Diagnosis } from '../session/diagnose/slip.ts';
import type { Look } from '../session/diagnose/suspect.ts';
import { type Finding, locate, type Place } from '../session/locate/locate.ts';
import { looksAt } from '../session/locate/looks-of.ts';
import { checkSeen, facts, type Seen, type SeenFault, yarnsSeen } from '../session/locate/seen.ts';
import type { Mend } from '../session/mend.ts';
import type { Session } from '../session/session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { stepAt } from '../steps/job.ts';
import type { Words } from '../wording/words.ts';
import type { ChatFault, Intent } from './intent.ts';
import { answer } from './line.ts';
import { type Offer, offer, type Reply, stillHolds, type Talk } from './talk.ts';
import type { HandWork, WayStep } from './way.ts';
import { formatDiagnosis } from './wording/finding.ts';
import {
  formatFact,
  sayHere,
  sayHereToo,
  sayLoose,
  sayMany,
  sayMend,
  sayNoSlip,
  sayOnly,
  sayPlaces,
  sayQuestion,
  sayTake,
} from './wording/finding-answer.ts';

type FindIntent = Extract<Intent, { readonly kind: 'find' }>;
type Offers = {
  readonly lines: readonly string[];
  readonly offers: readonly Offer[];
  readonly askedLoose?: string | null;
};

/** Longer lists help nobody. */
const placesListed = 4;
const diagnosesListed = 2;

export function replyToFind(
  session: Session,
  intent: FindIntent,
  before: Talk,
  words: Words,
): Result<Reply, ChatFault | SeenFault> {
  const { job } = session;
  const goesOn = intent.more && before.seen !== null && stillHolds(before, session);
  if (intent.more && !goesOn) return fail({ code: 'chat/nothing-found-before' });
  const told = { ...(goesOn ? before.seen : {}), ...intent.seen };
  const unsure = goesOn ? [...before.unsure, ...(intent.unsure && before.asked ? [before.asked] : [])] : [];
  const { looseEdgeLoop, ...plain } = spelt(session, told);
  const checked = checkSeen(job, plain);
  if (!checked.ok) return checked;
  const found = locate(job, checked.value, unsure);
  if (!found.ok) return found;
  const seen: Look = { ...checked.value, looseEdgeLoop };
  const isHere = looksLike(session, checked.value);
  const saysNothing = facts.every((fact) => checked.value[fact] === undefined);
  const places = saysNothing ? noOffers : tellPlaces(session, found.value, isHere, words);
  const slips = isHere ? noOffers : tellSlips(session, seen, found.value, places.offers.length, words);
  const asked = found.value.found === 'several' ? found.value.bestQuestion : null;
  const lines = [...places.lines, ...slips.lines, ...(asked ? [sayQuestion(asked, words)] : [])];
  const offers = [...places.offers, ...slips.offers];
  const askedLoose = slips.askedLoose ?? null;
  return succeed(offer(session, answer(...lines), { seen: told, unsure, asked, askedLoose, offers }));
}

const noOffers: Offers = { lines: [], offers: [] };

/** Yarns in the spelling of the brief. */
function spelt({ job }: Session, look: Look): Look {
  const known = yarnsSeen(job);
  const spell = (yarn: string): string =>
    known.find((one) => one.toLowerCase() === yarn.toLowerCase()) ?? yarn;
  const { lastColour, feeder } = look;
  return {
    ...look,
    ...(lastColour ? { lastColour: spell(lastColour) } : {}),
    ...(feeder ? { feeder: spell(feeder) } : {}),
  };
}

/** The place that the program has is one of those that look as it was told. */
function looksLike({ job, done }: Session, seen: Seen): boolean {
  const looks = looksAt(job, done);
  return facts.every((fact) => seen[fact] === undefined || seen[fact] === looks[fact]);
}

function tellPlaces(session: Session, finding: Finding, isHere: boolean, words: Words): Offers {
  if (finding.found === 'none') return noOffers;
  if (finding.found === 'one') {
    const { place } = finding;
    return isHere
      ? { lines: [sayHere(session, words)], offers: [] }
      : { lines: sayOnly(place, words), offers: [goingTo(place)] };
  }
  const { places, count, tellApart } = finding;
  const here = isHere ? [sayHereToo(session, words)] : [];
  if (count > placesListed) return { lines: [sayMany(count, tellApart, words), ...here], offers: [] };
  const listed = places.filter((place) => !holds(place, session));
  return { lines: [...sayPlaces(listed, places, words), ...here], offers: listed.map(goingTo) };
}

const holds = ({ done, through }: Place, session: Session): boolean =>
  done <= session.done && session.done <= through;

const goingTo = (place: Place): Offer => ({
  is: 'place',
  place,
  takes: { kind: 'do', command: { do: 'go', done: place.done } },
});

function tellSlips(
  session: Session,
  seen: Look,
  finding: Finding,
  offeredBefore: number,
  words: Words,
): Offers {
  const found = diagnose(session.job, seen, session.done);
  const fits = (found.ok ? found.value : []).filter(
    ({ place }) => finding.found === 'none' || holds(place, session),
  );
  if (fits.length === 0) return finding.found === 'none' ? noSlip(session, seen, words) : noOffers;
  const told = fits.slice(0, fits[0]?.slip === 'sides-swapped' ? 1 : diagnosesListed);
  const lines: string[] = [];
  const offers: Offer[] = [];
  for (const diagnosis of told) {
    lines.push(formatDiagnosis(diagnosis, words));
    for (const mend of diagnosis.mends) {
      offers.push({ is: 'mend', mend, takes: mending(session, diagnosis, mend) });
      lines.push(...sayMend(mend, offeredBefore + offers.length, told.length > 1, words));
    }
  }
  if (offers.length > 0) lines.push(sayTake(offeredBefore + 1, offeredBefore + offers.length, words));
  const stray = told.find(({ slip }) => slip === 'needle-left-working')?.needle;
  const askedLoose = stray && told.length > 1 && seen.looseEdgeLoop === undefined ? stray : null;
  if (askedLoose !== null) lines.push(sayLoose(askedLoose, words));
  return { lines, offers, askedLoose };
}

/** Nothing explains it: which single thing, left out, would leave one place. */
function noSlip({ job }: Session, { looseEdgeLoop: _, ...seen }: Look, words: Words): Offers {
  const doubtful = facts.flatMap((fact) => {
    const { [fact]: told, ...others } = seen;
    const found = told === undefined ? null : locate(job, others);
    return found?.ok && found.value.found === 'one' ? [{ fact, place: found.value.place }] : [];
  });
  const places = doubtful.slice(0, placesListed);
  return {
    lines: sayNoSlip(
      places.map(({ fact, place }) => ({ name: formatFact(fact, words), place })),
      words,
    ),
    offers: places.map(({ place }) => goingTo(place)),
  };
}

/** The steps of a mend to be guided through; the log keeps it with the last of them. */
function mending({ job }: Session, { slip, number, place }: Diagnosis, mend: Mend): Reply {
  const planned = Math.max(0, mend.afterDone - place.through);
  const work: readonly HandWork[] = [
    ...Array.from(
      { length: planned },
      (_, i) => ({ is: 'plan', plan: job.plan, step: stepAt(job, place.through + 1 + i) }) as const,
    ),
    ...mend.steps.map((step) => ({ is: 'mend', step }) as const),
  ];
  const command = { do: 'mend', slip, move: number, how: mend.how, done: mend.thenDone } as const;
  const steps: readonly WayStep[] = work.map((hands, i) => ({
    hands,
    command: i === work.length - 1 ? command : null,
  }));
  return steps.length === 0
    ? { kind: 'do', command }
    : { kind: 'begin', way: { kind: 'mend', steps, at: 0 } };
}
