/** What the hands do to set something right, a sentence a move, with the needles named in it. */
import type { Side } from '../bed/bed.ts';
import { type BedMove, type HandMove, isHandMove } from '../bed/move.ts';
import type { LoopRun, ReverseMove } from '../bed/reverse-move.ts';
import { endTailCm } from '../planning/tails.ts';
import type { MendMove } from '../session/mend/mend.ts';
import { exhaustive } from '../shared/result.ts';
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

export function formatMendMove(move: MendMove, words: Words): string {
  if ('undo' in move) return formatReverseMove(move, words);
  return isHandMove(move) ? formatHandMove(move, words) : formatBedMove(move, words);
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

function formatBedMove(move: BedMove, words: Words): string {
  switch (move.move) {
    case 'work':
      return words.finding.work(needleList(move.needles, words));
    case 'rest':
      return words.finding.rest(needleList(move.needles, words));
    case 'stand':
      return words.finding.stand(move.side);
    case 'counter':
      return words.finding.counter(move.rows);
    case 'cast-on':
      return words.finding.castOn(move.yarn);
    case 'feed':
      return words.finding.feed(move.yarn);
    case 'park':
      return words.finding.park(move.yarn, move.end);
    case 'cut':
      return words.finding.cutLeaving(move.yarn, endTailCm);
    case 'knit':
      return words.finding.knit(move.to);
    case 'slip':
      return words.finding.slip(move.to);
    case 'transfer':
      return words.finding.transfer(needleList(move.from, words), needleList(move.to, words));
    case 'take-off':
      return move.to === undefined ? words.finding.takeOff : words.finding.dropWork(move.to);
    case 'rehang':
      return words.finding.rehang(move.left, move.right);
    case 'pick-up':
      return words.finding.pickUp(move.of, move.left, move.right);
    case 'bind-off':
      return words.finding.bindOff(move.from, move.to);
    default:
      return exhaustive(move);
  }
}

function formatReverseMove(move: ReverseMove, words: Words): string {
  switch (move.undo) {
    case 'work':
      return words.finding.outOfWorkAgain(needleList(move.needles, words));
    case 'rest':
      return words.finding.intoWorkAgain(needleList(move.needles, words));
    case 'stand':
      return words.finding.carriageStood(move.back);
    case 'slip':
      return words.finding.carriageBack(move.back);
    case 'counter':
      return words.finding.counterBack(move.rows);
    case 'cast-on':
      return words.finding.undoCastOn;
    case 'feed':
      return move.parkedAt === null
        ? words.finding.undoFeed(move.yarn)
        : words.finding.parkAgain(move.yarn, move.parkedAt);
    case 'park':
      return words.finding.feedAgain(move.yarn);
    case 'cut':
      return words.finding.joinAgain(move.yarn, endTailCm, joinedPlace(move.joinedAt, words));
    case 'knit':
      return formatPullOut(move, words);
    case 'transfer':
      return formatSetBack(move, words);
    case 'take-off':
      return words.finding.hangFromWaste(hungOn(move.hangs, words));
    case 'rehang':
      return words.finding.undoRehang(move.left, move.right);
    case 'pick-up':
      return words.finding.undoPickUp(move.of, move.left, move.right);
    case 'bind-off':
      return words.finding.undoBindOff(hungOn(move.hangs, words));
    case 'stray':
      return words.finding.stray(move.needle);
    case 'hand':
      return formatHandBack(move.what, words);
    default:
      return exhaustive(move);
  }
}

const joinedPlace = (place: 'feeder' | 'left' | 'right', words: Words): string =>
  place === 'feeder' ? words.finding.strandGoesToFeeder : words.finding.strandWaitsAt(place);

/** `L25, L24 and L23`; a longer row of neighbours is told by its ends. */
function needleList(names: readonly string[], words: Words): string {
  return names.length > 4 ? words.finding.to(names[0] ?? '', names.at(-1) ?? '') : words.amounts.list(names);
}

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
  const [from, to] = [needleList(move.from, words), needleList(move.to, words)];
  if (move.parts) return words.finding.partLoops(from, to, move.from.at(-1) ?? '');
  return move.rests.length === 0
    ? words.finding.loopsBack(from, to)
    : words.finding.loopsBackAndNeedlesOut(from, to, needleList(move.rests, words));
}

function formatHandBack(what: HandMove, words: Words): string {
  switch (what.move) {
    case 'graft':
      return words.finding.graft(
        what.edge,
        drawnFrom(what.up, words.finding.upThrough),
        drawnFrom(what.down, words.finding.downThrough),
      );
    case 'wash':
      return words.finding.wash;
    case 'bars':
      return what.count === 1
        ? words.finding.bars(what.side)
        : words.finding.unsewBars(what.count, what.side);
    case 'draw-up':
      return words.finding.drawUp;
    case 'fasten':
      return what.corner ? words.finding.unpickCorner(what.corner) : words.finding.fasten;
    case 'thread':
      return words.finding.thread(what.eyelet);
    case 'release':
      return what.what === 'waste' ? words.finding.release : words.finding.ravelCordStaysOut;
    case 'measure':
      return words.finding.measure(what.lengthCm);
    default:
      return exhaustive(what);
  }
}

const drawnFrom = (loop: number | null, way: string): string => (loop === null ? '' : `, ${way} ${loop}`);
