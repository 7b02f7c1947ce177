/** A bench as other programs read it: what was answered, the bed, what is to be done next, and what stands offered. */
import type { HandMove, Move } from '../bed/move.ts';
import { type Offer, stillHolds } from '../chat/talk.ts';
import { counterAfter, movesOf, type Way, type WayStep } from '../chat/way.ts';
import { sayOffer, sayQuestions, sayTrace } from '../chat/wording/offers.ts';
import { bedNow } from '../chat/wording/place.ts';
import { sayNowIn } from '../screen/bench/bench-moves.ts';
import type { BenchState } from '../screen/bench/bench-state.ts';
import { newLines } from '../screen/bench/run-plain.ts';
import type { Mend, MendMove } from '../session/mend.ts';
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
    questions: stands ? sayQuestions(state.talk, state.words) : [],
  };
}

/**
 * The step that comes next, null once the bag is finished, and the bed before it. What hangs on the bed in the middle of a
 * mend is not what the plan says of any place: it is null then, rather than untrue.
 */
function placeJson({ session, way }: BenchState): Json {
  const { job, done } = session;
  const step = currentStep(session);
  const row = rowAt(job, done);
  return {
    step: step?.step ?? null,
    of: job.stepCount,
    phase: step?.phase ?? null,
    row,
    stripe: step?.stripe ?? null,
    ...(way?.kind === 'mend' ? unknownBed : plannedBed(session)),
    counter: row,
  };
}

const unknownBed = {
  left: null,
  right: null,
  stitches: null,
  carriage: null,
  feeder: null,
  parked: null,
} as const;

function plannedBed(session: BenchState['session']): Record<keyof typeof unknownBed, unknown> {
  const bed = bedNow(session);
  return {
    left: bed?.left ?? null,
    right: bed?.right ?? null,
    stitches: bed?.stitches ?? 0,
    carriage: bed?.carriage ?? null,
    feeder: bed?.feeder ?? null,
    parked: [...(bed?.parked ?? [])].map(([yarn, end]) => ({ yarn, end })),
  };
}

const ways: Readonly<Record<Way['kind'], 'rip' | 'mend'>> = { back: 'rip', mend: 'mend' };

function nowJson(state: BenchState): Json {
  const { way, session } = state;
  const say = sayNowIn(state);
  const onWay = way?.steps[way.at];
  if (way && onWay) {
    return { say, moves: wayMoves(onWay), way: ways[way.kind], of: way.steps.length, at: way.at + 1 };
  }
  const of = session.job.stepCount;
  const step = isFinished(session) ? null : currentStep(session);
  return { say, moves: step?.moves ?? [], way: null, of, at: step?.step ?? null };
}

function offerJson(offer: Offer, n: number, { words }: BenchState): Json {
  const { takes } = offer;
  return {
    n,
    kind: kindOf(offer),
    say: sayOffer(offer, words),
    moves: takes.kind === 'begin' ? takes.way.steps.flatMap(wayMoves) : null,
    trace: sayTrace(offer, words),
    step: stepAfter(offer),
  };
}

const mendKinds: Readonly<Record<Mend['how'], 'mend' | 'rip' | 'make-up'>> = {
  now: 'mend',
  rip: 'rip',
  'make-up': 'make-up',
};

function kindOf(offer: Offer): 'go' | 'mend' | 'make-up' | 'rip' | 'replan' {
  switch (offer.is) {
    case 'place':
      return 'go';
    case 'mend':
      return mendKinds[offer.mend.how];
    case 'way-back':
      return 'rip';
    case 'choice':
      return 'replan';
  }
}

/** The step that comes next once the offer is taken to its end; null where the place stays. */
function stepAfter(offer: Offer): number | null {
  switch (offer.is) {
    case 'place':
      return offer.place.done + 1;
    case 'mend':
      return offer.mend.thenDone + 1;
    case 'way-back':
      return offer.back.toDone + 1;
    case 'choice':
      return null;
  }
}

/** The row counter is turned back last. */
function wayMoves(step: WayStep): readonly Json[] {
  const rows = counterAfter(step);
  return [...movesOf(step).map(moveJson), ...(rows === null ? [] : [{ undo: 'counter', rows }])];
}

/** Hand work taken back is named as it is forward. */
function moveJson(move: Move | MendMove): Json {
  if (!('undo' in move) || move.undo !== 'hand') return { ...move };
  const { move: undo, ...fields }: HandMove = move.what;
  return { undo, ...fields };
}
