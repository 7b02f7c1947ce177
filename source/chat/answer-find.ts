/** What is answered to what is seen: the place, or what would tell it, or what may have happened and how to mend it. */

import { type Diagnosis, diagnose, isFallen, type Remedy } from '../session/diagnose/diagnose.ts';
import { type OpenQuestion, type Question, questionOfPlaces } from '../session/diagnose/question.ts';
import { type Finding, locate, type Place, placeAtDone } from '../session/locate/locate.ts';
import { looksAt } from '../session/locate/looks-of.ts';
import { type Fact, facts, type Look, plainly, type Seen, type SeenFault } from '../session/locate/seen.ts';
import type { Session } from '../session/session.ts';
import { type Result, succeed } from '../shared/result.ts';
import { drawOfStep, stepAt } from '../steps/job.ts';
import { formatLook } from '../wording/finding.ts';
import {
  sayAsked,
  sayMany,
  sayMaybe,
  sayMend,
  sayNoSlip,
  sayOnly,
  sayPlaces,
  sayStories,
  sayTake,
} from '../wording/finding-answer.ts';
import { sayPlace } from '../wording/place.ts';
import type { Words } from '../wording/words.ts';
import type { Offer, Reply, Talk } from './talk.ts';

export interface Answer {
  readonly lines: readonly string[];
  readonly offers: readonly Offer[];
  readonly asked?: Question | null;
  readonly question?: OpenQuestion | null;
  /** Something went wrong, as it was told. */
  readonly tellsSlips?: boolean;
}

/** Longer lists help nobody. */
const placesListed = 4;

export function answerTo(
  session: Session,
  look: Look,
  moments: Talk['moments'],
  unsure: readonly Question[],
  words: Words,
): Result<Answer, SeenFault> {
  const seen = plainly(look);
  const { job, done } = session;
  const saysNothing = Object.values(look).every((value) => value === undefined);
  if (saysNothing && moments.length === 0) return succeed({ lines: [], offers: [], asked: null });
  const found = locate(job, seen, [...unsure.filter(isFact), ...untold(session)]);
  if (!found.ok) return found;
  const isHere =
    moments.length === 0 && !look.looseEdgeLoop && looksLike(session, seen) && !isFallen(job, look, done);
  if (isHere) return succeed(tellPlaces(session, found.value, true, words));
  const diagnosis = diagnose(job, { look, moments, unsure }, done);
  if (!diagnosis.ok) return diagnosis;
  const { stories } = diagnosis.value;
  if (stories.length > 0)
    return succeed(
      tellSlips(session, diagnosis.value, soundPlace(session, look, moments, found.value), words),
    );
  if (found.value.found !== 'none' && moments.length === 0)
    return succeed(tellPlaces(session, found.value, false, words));
  return succeed(
    fallenAllTheSame(session, look, unsure, words) ??
      swapped(session, seen, words) ??
      noSlip(session, seen, words),
  );
}

/** Work that has fallen must be caught, whatever else was read amiss: the first fact without which it is explained is left out. */
function fallenAllTheSame(
  session: Session,
  look: Look,
  unsure: readonly Question[],
  words: Words,
): Answer | null {
  const { job, done } = session;
  if (!isFallen(job, look, done)) return null;
  for (const fact of ['rowCounter', 'feeder', 'carriage', 'stitches'] as const) {
    if (look[fact] === undefined) continue;
    const found = diagnose(job, { look: { ...look, [fact]: undefined }, moments: [], unsure }, done);
    if (!found.ok || found.value.stories.length === 0) continue;
    const { lines, ...others } = tellSlips(session, found.value, null, words);
    return { ...others, lines: [words.slips.leftOut([words.finding.facts[fact]]), ...lines] };
  }
  return null;
}

/** What nobody can read off a bed without it. */
const untold = ({ job }: Session): readonly Fact[] =>
  job.plan.brief.bed.without.includes('counter') ? ['rowCounter'] : [];

const isFact = (question: Question): question is Fact => facts.some((fact) => fact === question);

/** The place that the program has is one of those that look as it was told. */
function looksLike({ job, done, way, adrift }: Session, seen: Seen): boolean {
  if (way || adrift) return false;
  const looks = looksAt(job, done);
  return facts.every((fact) => seen[fact] === undefined || seen[fact] === looks[fact]);
}

function tellPlaces(session: Session, finding: Finding, isHere: boolean, words: Words): Answer {
  if (finding.found === 'none') return { lines: [], offers: [] };
  if (finding.found === 'one') {
    const { place } = finding;
    if (isHere) return { lines: [words.finding.hereNow(sayPlace(session, words))], offers: [] };
    const many = standsForMany(session, place);
    return many
      ? { lines: [sayAsked(many, words)], offers: [], question: many }
      : { lines: sayOnly(place, words), offers: [goingTo(place)] };
  }
  const { places, count, tellApart } = finding;
  const next = questionOfPlaces(finding);
  const here = isHere ? [words.finding.hereToo(sayPlace(session, words))] : [];
  const asked: OpenQuestion | null = next === null ? null : { about: 'fact', fact: next };
  const question = asked === null ? [] : [sayAsked(asked, words)];
  const asks = { asked: next, question: asked };
  if (count > placesListed)
    return { lines: [sayMany(count, tellApart, words), ...here, ...question], offers: [], ...asks };
  const listed = places.filter((place) => !holds(place, session));
  const apart = places.flatMap((place) => {
    const many = standsForMany(session, place);
    return many ? [sayAsked(many, words)] : [];
  });
  return {
    lines: [...sayPlaces(listed, places, words), ...apart, ...here, ...question],
    offers: listed.map(goingTo),
    ...asks,
  };
}

/** A bed that looks the same through many steps: the rounds of the cord, and the work in the lap. */
function standsForMany({ job }: Session, { done, through }: Place): OpenQuestion | null {
  if (through - done < 5 || done === 0) return null;
  const { phase } = stepAt(job, Math.max(1, done));
  const part = phase === 'cord' && stepAt(job, done).after.left !== null ? 'cord' : 'hand';
  const draw = phase === 'cord' ? drawOfStep(job, Math.max(1, done)) : 'only';
  // The rounds of a second cord are counted on from the first.
  const round = (draw === 'second' ? job.plan.cord.rounds : 0) + 40;
  return { about: 'many-steps', from: done + 1, through: through + 1, part, draw, round };
}

const holds = ({ done, through }: Place, session: Session): boolean =>
  done <= session.done && session.done <= through;

const goingTo = (place: Place): Offer => ({
  is: 'place',
  place,
  takes: { kind: 'do', command: { do: 'go', done: place.done } },
});

/** The one place that looks just so with nothing wrong: who knits on without a press is there. */
function soundPlace(
  { job, done }: Session,
  look: Look,
  moments: Talk['moments'],
  found: Finding,
): Place | null {
  return found.found === 'one' && moments.length === 0 && !isFallen(job, look, done) ? found.place : null;
}

function tellSlips(session: Session, diagnosis: Diagnosis, sound: Place | null, words: Words): Answer {
  const { stories, remedies, question, open, elsewhere } = diagnosis;
  const { job } = session;
  const offers: Offer[] = [];
  const lines: string[] = [];
  const places = elsewhere.slice(0, placesListed).map((done) => placeAtDone(job, done));
  for (const place of places.length === 0 && question === null && sound ? [sound] : places) {
    offers.push(goingTo(place));
    lines.push(...sayOnly(place, words, offers.length));
  }
  if (sound && offers.length === 0) lines.push(sayMaybe(sound, words));
  lines.push(...sayStories(job, stories, lines.length === 0, words));
  for (const remedy of remedies) {
    offers.push({ is: 'mend', remedy, takes: mending(remedy) });
    lines.push(...sayMend(remedy.mend, offers.length, remedies.length === 1, words));
  }
  if (remedies.length > 0) lines.push(sayTake(offers.length - remedies.length + 1, offers.length, words));
  if (open !== null) lines.push(sayAsked(open, words));
  return { lines, offers, asked: question, question: open, tellsSlips: true };
}

const mending = ({ story, mend }: Remedy): Reply => ({
  kind: 'do',
  command: {
    do: 'mend',
    mistakes: story.slips,
    place: story.done,
    how: mend.how,
    thenDone: mend.thenDone,
  },
});

/** What was read fits once left and right change places. */
function swapped(session: Session, seen: Seen, words: Words): Answer | null {
  const { left, right, carriage } = seen;
  if (!left && !right) return null;
  const mirrored = { ...seen, left: otherHalf(right), right: otherHalf(left) };
  const tries: readonly Seen[] = [
    { ...seen, left: right, right: left },
    { ...seen, left: otherHalf(left), right: otherHalf(right) },
    mirrored,
    ...(carriage
      ? [{ ...mirrored, carriage: carriage === 'left' ? ('right' as const) : ('left' as const) }]
      : []),
  ];
  for (const one of tries) {
    const found = locate(session.job, one);
    if (found.ok && found.value.found === 'one')
      return { lines: [words.finding.swapped(formatLook(found.value.place, words))], offers: [] };
  }
  return null;
}

const halves: Readonly<Record<string, string>> = { L: 'R', R: 'L' };

const otherHalf = <N extends string | null | undefined>(name: N): N =>
  (name ? name.replace(/^[LR]/, (half) => halves[half] ?? half) : name) as N;

/** Nothing explains it: which single thing, left out, would leave one place. */
function noSlip({ job }: Session, seen: Seen, words: Words): Answer {
  const doubtful = facts.flatMap((fact) => {
    const { [fact]: told, ...others } = seen;
    const found = told === undefined ? null : locate(job, others);
    return found?.ok && found.value.found === 'one' ? [{ fact, place: found.value.place }] : [];
  });
  const places = doubtful.slice(0, placesListed);
  return {
    lines: sayNoSlip(
      places.map(({ fact, place }) => ({ name: words.finding.facts[fact], place })),
      words,
    ),
    offers: [],
  };
}
