/**
 * The prompt for other programs: a command a line, an object a line, the first before any command. An object says what was
 * answered, the bed, what is to be done next, and what stands offered, each offer with the question that would tell it from
 * the others.
 */

import type { HandMove, Move } from '../bed/move.ts';
import { type Offer, stillHolds } from '../chat/talk.ts';
import { sayNowIn } from '../screen/bench/bench-moves.ts';
import type { BenchState, BenchStore, Leaving } from '../screen/bench/bench-state.ts';
import { newLines, newsOf, pictureShown } from '../screen/bench/run-plain.ts';
import type { LineSource } from '../screen/parts/line-source.ts';
import type { HandStep, How, MendMove } from '../session/mend/mend.ts';
import { bedNow, currentStep, isFinished, stepsStanding } from '../session/session.ts';
import { harmlessJson } from '../shared/plain-text.ts';
import type { JsonGroup } from '../shared/result.ts';
import { rowAt } from '../steps/job.ts';
import { formatLook, formatRipBack } from '../wording/finding.ts';
import { sayAsked, sayShows, sayWholeMend } from '../wording/finding-answer.ts';
import { formatReplanChoice } from '../wording/replan.ts';
import type { Words } from '../wording/words.ts';

/** What `say` holds beside it all, and what is new since `before`. */
export function workJson(before: BenchState | null, state: BenchState, say: readonly string[]): JsonGroup {
  const fault = newLines(before, state).find(({ tone }) => tone === 'fault');
  const { question } = state.talk;
  const stands = stillHolds(state.talk, state.session);
  return {
    ok: fault === undefined,
    code: fault?.code ?? null,
    say,
    place: placeJson(state),
    now: nowJson(state),
    offers: stands ? state.talk.offers.map((offer, i) => offerJson(offer, i + 1, state)) : [],
    questions: stands && question !== null ? [sayAsked(question, state.words)] : [],
  };
}

/** The step that comes next, null once the bag is finished, and the bed as it is now. */
function placeJson({ session }: BenchState): JsonGroup {
  const { job } = session;
  const step = currentStep(session);
  const row = rowAt(job, stepsStanding(session));
  const bed = bedNow(session);
  return {
    step: step?.step ?? null,
    of: job.stepCount,
    phase: step?.phase ?? null,
    row,
    stripe: step?.stripe ?? null,
    left: bed?.left ?? null,
    right: bed?.right ?? null,
    stitches: bed?.stitches ?? 0,
    carriage: bed?.carriage ?? null,
    feeder: bed?.feeder ?? null,
    parked: [...(bed?.parked ?? [])].map(([yarn, end]) => ({ yarn, end })),
    counter: bed?.counter ?? null,
  };
}

function nowJson(state: BenchState): JsonGroup {
  const { session } = state;
  const { way } = session;
  const say = sayNowIn(state);
  const onWay = way?.steps[way.at];
  if (way && onWay) {
    return { say, moves: wayMoves(onWay), way: way.kind, of: way.steps.length, at: way.at + 1 };
  }
  const of = session.job.stepCount;
  const step = isFinished(session) ? null : currentStep(session);
  return { say, moves: step?.moves ?? [], way: null, of, at: step?.step ?? null };
}

function offerJson(offer: Offer, n: number, { words }: BenchState): JsonGroup {
  return {
    n,
    kind: kindOf(offer),
    say: sayOffer(offer, words),
    moves: stepsOf(offer)?.flatMap(wayMoves) ?? null,
    trace: sayTrace(offer, words),
    step: stepAfter(offer),
  };
}

const mendKinds: Readonly<Record<How, 'mend' | 'rip' | 'make-up'>> = {
  now: 'mend',
  rip: 'rip',
  'make-up': 'make-up',
};

function kindOf(offer: Offer): 'go' | 'mend' | 'make-up' | 'rip' | 'replan' {
  switch (offer.is) {
    case 'place':
      return 'go';
    case 'mend':
      return mendKinds[offer.remedy.mend.how];
    case 'way-back':
      return 'rip';
    case 'choice':
      return 'replan';
  }
}

function stepsOf(offer: Offer): readonly HandStep[] | null {
  if (offer.is === 'mend') return offer.remedy.mend.steps;
  return offer.is === 'way-back' ? offer.back.steps : null;
}

/** The step that comes next once the offer is taken to its end; null where the place stays. */
function stepAfter(offer: Offer): number | null {
  switch (offer.is) {
    case 'place':
      return offer.place.done + 1;
    case 'mend':
      return offer.remedy.mend.thenDone + 1;
    case 'way-back':
      return offer.back.toDone + 1;
    case 'choice':
      return null;
  }
}

/** The row counter is set last. */
const wayMoves = ({ moves, setsCounter, row }: HandStep): readonly JsonGroup[] => [
  ...moves.map(moveJson),
  ...(setsCounter ? [{ undo: 'counter', rows: row }] : []),
];

/** Hand work taken back is named as it is forward. */
function moveJson(move: Move | MendMove): JsonGroup {
  if (!('undo' in move) || move.undo !== 'hand') return { ...move };
  const { move: undo, ...fields }: HandMove = move.what;
  return { undo, ...fields };
}

function sayOffer(offer: Offer, words: Words): string {
  switch (offer.is) {
    case 'place':
      return formatLook(offer.place, words);
    case 'mend':
      return sayWholeMend(offer.remedy.mend, words);
    case 'way-back':
      return formatRipBack(offer.back, words);
    case 'choice':
      return formatReplanChoice(offer.choice, words);
  }
}

/** What will show of a slip that is kept; null where nothing does. */
const sayTrace = (offer: Offer, words: Words): string | null =>
  offer.is === 'mend' ? (sayShows(offer.remedy.mend, words)[0] ?? null) : null;

export async function runJson(
  store: BenchStore,
  source: LineSource,
  print: (text: string) => void,
): Promise<Leaving> {
  let told: BenchState | null = null;
  const tell = async (): Promise<void> => {
    const say = [...newsOf(told, store.get()), ...(await pictureShown(store))];
    print(harmlessJson(workJson(told, store.get(), say)));
    told = store.get();
  };
  await tell();
  for (;;) {
    const text = await source.next();
    if (text === null) return 'left';
    store.send({ is: 'line', text });
    await store.settled();
    // No key can be pressed here: what was asked of the maker is taken back, and the answer says so.
    if (store.get().assigning !== null) store.send({ is: 'no-switch-here' });
    await tell();
    const { end } = store.get();
    if (end !== null) return end;
  }
}
