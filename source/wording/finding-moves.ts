/** What the hands do to set something right, a sentence a move, with the needles named in it. */

import type { Side } from '../bed/bed.ts';
import type { LoopRun, ReverseMove } from '../bed/move.ts';
import { type HandMove, isHandMove } from '../bed/move.ts';
import { endTailCm } from '../planning/tails.ts';
import type { MendMove } from '../session/mend/mend.ts';
import { type SayingsBy, sayBy } from './by-kind.ts';
import type { Words } from './words.ts';

/** A sentence for each move, and one for several rows, rounds or bars that are taken back alike. */
export function formatMoves(moves: readonly MendMove[], words: Words): readonly string[] {
  const sentences: string[] = [];
  for (let from = 0; from < moves.length; ) {
    const move = moves[from] as MendMove;
    const alike = runOf(moves, from, words);
    sentences.push(alike?.sentence ?? formatMendMove(move, words));
    from += alike?.length ?? 1;
  }
  return sentences;
}

function formatMendMove(move: MendMove, words: Words): string {
  if ('undo' in move) return sayBy('undo', reverseMoves, move, words);
  return isHandMove(move) ? formatHandMove(move, words) : sayBy('move', words.finding.moves, move);
}

/** Away from the bed there is one thing that a way asks for beyond the plan's own steps. */
const formatHandMove = (move: HandMove, words: Words): string =>
  move.move === 'release' ? words.slips.unpick : '';

interface Run {
  readonly length: number;
  readonly sentence: string;
}

function runOf(moves: readonly MendMove[], from: number, words: Words): Run | null {
  return rowsPulled(moves, from, words) ?? barsDrawn(moves, from, words);
}

/** Rows pulled out one after the other; in a cord the carriage has slipped between them. */
function rowsPulled(moves: readonly MendMove[], from: number, words: Words): Run | null {
  let rows = 0;
  let last: Pulled | null = null;
  let back: Side | null = null;
  let at = from;
  for (; at < moves.length; at++) {
    const move = moves[at] as MendMove;
    if (!('undo' in move)) break;
    if (move.undo === 'knit' && (last === null || last.yarn === move.yarn)) {
      last = move;
      rows++;
    } else if (move.undo !== 'slip' || last === null) break;
    back = move.back;
  }
  if (rows < 2 || last === null || back === null) return null;
  const yarn = last.yarn;
  const sentence = words.finding.unravelRows(rows, yarn, caughtOn(last.catches, words), back);
  return { length: at - from, sentence };
}

function barsDrawn(moves: readonly MendMove[], from: number, words: Words): Run | null {
  const next = moves.slice(from).findIndex((move) => barOf(move) === null);
  const length = next < 0 ? moves.length - from : next;
  if (length < 4) return null;
  const bars = moves.slice(from, from + length).reduce((sum, move) => sum + (barOf(move) ?? 0), 0);
  return {
    length,
    sentence: words.finding.unsewBarsOfBoth(bars / 2),
  };
}

const barOf = (move: MendMove): number | null =>
  'undo' in move && move.undo === 'hand' && move.what.move === 'bars' ? move.what.count : null;

type Pulled = Extract<ReverseMove, { readonly undo: 'knit' }>;

const reverseMoves: SayingsBy<'undo', ReverseMove, [words: Words]> = {
  work: ({ needles }, words) => words.finding.outOfWorkAgain(words.finding.needles(needles)),
  rest: ({ needles }, words) => words.finding.intoWorkAgain(words.finding.needles(needles)),
  stand: ({ back }, words) => words.finding.carriageStood(back),
  slip: ({ back }, words) => words.finding.carriageBack(back),
  counter: ({ rows }, words) => words.finding.counterBack(rows),
  'cast-on': (_, words) => words.finding.undoCastOn,
  feed: ({ parkedAt, yarn }, words) =>
    parkedAt === null ? words.finding.undoFeed(yarn) : words.finding.parkAgain(yarn, parkedAt),
  park: ({ yarn }, words) => words.finding.feedAgain(yarn),
  cut: ({ yarn, joinedAt }, words) => words.finding.joinAgain(yarn, endTailCm, joinedPlace(joinedAt, words)),
  knit: (move, words) => formatPullOut(move, words),
  transfer: (move, words) => formatSetBack(move, words),
  'take-off': ({ hangs, back }, words) => words.finding.hangOpenLoops(caughtOn(hangs, words), back ?? null),
  rehang: ({ left, right }, words) => words.finding.undoRehang(left, right),
  'pick-up': ({ of, left, right }, words) => words.finding.undoPickUp(of, left, right),
  'bind-off': ({ hangs }, words) => words.finding.undoBindOff(hungOn(hangs, words)),
  stray: ({ needle }, words) => words.finding.stray(needle),
  hand: ({ what }, words) => sayBy('move', words.finding.handsBack, what),
};

const joinedPlace = (place: 'feeder' | 'left' | 'right', words: Words): string =>
  place === 'feeder' ? words.finding.strandGoesToFeeder : words.finding.strandWaitsAt(place);

const hungOn = (runs: readonly LoopRun[], words: Words): string =>
  words.finding.oneOnEach(runs[0]?.first ?? '', runs.at(-1)?.last ?? '');

/** `Pull out the row of plum: one loop on each needle from L25 to R10, two on R10, none on L23 …` */
const formatPullOut = ({ yarn, catches, back }: Pulled, words: Words): string =>
  words.finding.unravelRow(yarn, caughtOn(catches, words), back);

function caughtOn(catches: readonly LoopRun[], words: Words): string {
  const exceptions = catches.flatMap(({ first, last, loops }) => {
    const where = first === last ? first : words.finding.eachOf(first, last);
    if (loops === 1) return [];
    return loops === 0 ? [words.finding.noneOn(where)] : [words.finding.togetherOn(loops, where)];
  });
  const [left, right] = [catches[0]?.first ?? '', catches.at(-1)?.last ?? ''];
  return words.amounts.list([words.finding.oneLoopEach(left, right), ...exceptions]);
}

function formatSetBack(move: Extract<ReverseMove, { readonly undo: 'transfer' }>, words: Words): string {
  const [from, to] = [words.finding.needles(move.from), words.finding.needles(move.to)];
  if (move.parts) return words.finding.partLoops(from, to, move.from.at(-1) ?? '');
  return move.rests.length === 0
    ? words.finding.loopsBack(from, to)
    : words.finding.loopsBackAndNeedlesOut(from, to, words.finding.needles(move.rests));
}
