/** A bench as other programs read it: what was answered, the bed, what is to be done next, and what stands offered. */
import type { HandMove, Move } from '../bed/move.ts';
import { type Offer, stillHolds } from '../chat/talk.ts';
import { sayOffer, sayQuestions, sayTrace } from '../chat/wording/offers.ts';
import { sayNowIn } from '../screen/bench/bench-moves.ts';
import type { BenchState } from '../screen/bench/bench-state.ts';
import { newLines } from '../screen/bench/run-plain.ts';
import { bedNow } from '../session/bed-now.ts';
import type { HandStep, How, MendMove } from '../session/mend.ts';
import { currentStep, isFinished } from '../session/session.ts';
import { rowAt } from '../steps/job.ts';

type Json = Readonly<Record<string, unknown>>;

/** What `say` holds beside it all, and what is new since `before`. */
export function workJson(before: BenchState | null, state: BenchState, say: readonly string[]): Json {
  const fault = newLines(before, state).find(({ tone }) => tone === 'fault');
  const stands = stillHolds(state.talk, state.session);
  return {
    ok: fault === undefined,
    code: fault?.code ?? null,
    say,
    place: placeJson(state),
    now: nowJson(state),
    offers: stands ? state.talk.offers.map((offer, i) => offerJson(offer, i + 1, state)) : [],
    questions: stands ? sayQuestions(state.talk) : [],
  };
}

/** The step that comes next, null once the bag is finished, and the bed as it is now. */
function placeJson({ session }: BenchState): Json {
  const { job, done } = session;
  const step = currentStep(session);
  const row = rowAt(job, done);
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

function nowJson(state: BenchState): Json {
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

function offerJson(offer: Offer, n: number, { words }: BenchState): Json {
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
const wayMoves = ({ moves, setsCounter, row }: HandStep): readonly Json[] => [
  ...moves.map(moveJson),
  ...(setsCounter ? [{ undo: 'counter', rows: row }] : []),
];

/** Hand work taken back is named as it is forward. */
function moveJson(move: Move | MendMove): Json {
  if (!('undo' in move) || move.undo !== 'hand') return { ...move };
  const { move: undo, ...fields }: HandMove = move.what;
  return { undo, ...fields };
}
