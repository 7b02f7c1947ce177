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
import type { ChatFault, Intent } from './intent.ts';
import { answer } from './line.ts';
import { offer, type Reply, stillHolds, type Talk } from './talk.ts';
import type { WayStep } from './way.ts';
import { formatDiagnosis, formatMendStep } from './wording/finding.ts';
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
import { sayStep } from './wording/steps.ts';

type FindIntent = Extract<Intent, { readonly kind: 'find' }>;
type Offers = { readonly lines: readonly string[]; readonly replies: readonly Reply[] };

/** Longer lists help nobody. */
const placesListed = 4;
const diagnosesListed = 2;

export function replyToFind(
  session: Session,
  intent: FindIntent,
  before: Talk,
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
  const places = saysNothing ? noOffers : tellPlaces(session, found.value, isHere);
  const slips = isHere ? noOffers : tellSlips(session, seen, found.value, places.replies.length);
  const asked = found.value.found === 'several' ? found.value.bestQuestion : null;
  const lines = [...places.lines, ...slips.lines, ...(asked ? [sayQuestion(asked)] : [])];
  const offers = [...places.replies, ...slips.replies];
  return succeed(offer(session, answer(...lines), { seen: told, unsure, asked, offers }));
}

const noOffers: Offers = { lines: [], replies: [] };

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

function tellPlaces(session: Session, finding: Finding, isHere: boolean): Offers {
  if (finding.found === 'none') return noOffers;
  if (finding.found === 'one') {
    const { place } = finding;
    return isHere
      ? { lines: [sayHere(session)], replies: [] }
      : { lines: sayOnly(place), replies: [goingTo(place)] };
  }
  const { places, count, tellApart } = finding;
  const here = isHere ? [sayHereToo(session)] : [];
  if (count > placesListed) return { lines: [sayMany(count, tellApart), ...here], replies: [] };
  const listed = places.filter((place) => !holds(place, session));
  return { lines: [...sayPlaces(listed, places), ...here], replies: listed.map(goingTo) };
}

const holds = ({ done, through }: Place, session: Session): boolean =>
  done <= session.done && session.done <= through;

const goingTo = ({ done }: Place): Reply => ({ kind: 'do', command: { do: 'jump', done } });

function tellSlips(session: Session, seen: Look, finding: Finding, offeredBefore: number): Offers {
  const found = diagnose(session.job, seen, session.done);
  const fits = (found.ok ? found.value : []).filter(
    ({ place }) => finding.found === 'none' || holds(place, session),
  );
  if (fits.length === 0) return finding.found === 'none' ? noSlip(session, seen) : noOffers;
  const told = fits.slice(0, fits[0]?.slip === 'sides-swapped' ? 1 : diagnosesListed);
  const lines: string[] = [];
  const replies: Reply[] = [];
  for (const diagnosis of told) {
    lines.push(formatDiagnosis(diagnosis));
    for (const mend of diagnosis.mends) {
      replies.push(mending(session, diagnosis, mend));
      lines.push(...sayMend(mend, offeredBefore + replies.length, told.length > 1));
    }
  }
  if (replies.length > 0) lines.push(sayTake(offeredBefore + 1, offeredBefore + replies.length));
  const stray = told.find(({ slip }) => slip === 'needle-left-working')?.needle;
  if (stray && told.length > 1 && seen.looseEdgeLoop === undefined) lines.push(sayLoose(stray));
  return { lines, replies };
}

/** Nothing explains it: which single thing, left out, would leave one place. */
function noSlip({ job }: Session, { looseEdgeLoop: _, ...seen }: Look): Offers {
  const doubtful = facts.flatMap((fact) => {
    const { [fact]: told, ...others } = seen;
    const found = told === undefined ? null : locate(job, others);
    return found?.ok && found.value.found === 'one' ? [{ fact, place: found.value.place }] : [];
  });
  const places = doubtful.slice(0, placesListed);
  return {
    lines: sayNoSlip(places.map(({ fact, place }) => ({ name: formatFact(fact), place }))),
    replies: places.map(({ place }) => goingTo(place)),
  };
}

/** The steps of a mend to be guided through; the log keeps it with the last of them. */
function mending({ job }: Session, { slip, number, place }: Diagnosis, mend: Mend): Reply {
  const planned = Math.max(0, mend.afterDone - place.through);
  const texts = [
    ...Array.from({ length: planned }, (_, i) => sayStep(job.plan, stepAt(job, place.through + 1 + i))),
    ...mend.steps.map(formatMendStep),
  ];
  const command = { do: 'mend', slip, move: number, how: mend.how, done: mend.thenDone } as const;
  const steps: readonly WayStep[] = texts.map((text, i) => ({
    text,
    command: i === texts.length - 1 ? command : null,
  }));
  return steps.length === 0
    ? { kind: 'do', command }
    : { kind: 'begin', way: { kind: 'mend', steps, at: 0 } };
}
