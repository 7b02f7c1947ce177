/** What the hands do to set something right, a sentence a move, with the needles named in it. */
import { type BedMove, type HandMove, isHandMove } from '../../bed/move.ts';
import type { LoopRun, ReverseMove } from '../../bed/reverse-move.ts';
import type { Side } from '../../bed/side.ts';
import { endTailCm } from '../../planning/tails.ts';
import type { MendMove } from '../../session/mend.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';
import { sayYarn } from './yarns.ts';

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
  const yarn = sayYarn(last.yarn, words);
  const sentence = words.say`Pull out ${rows} rows of ${yarn} one by one, catching every loop: in the end ${caughtOn(last.catches, words)}. Bring the carriage back to the ${back} without knitting.`;
  return { length: at - from, sentence };
}

function barsDrawn(moves: readonly MendMove[], from: number, words: Words): Run | null {
  const next = moves.slice(from).findIndex((move) => barOf(move) === null);
  const length = next < 0 ? moves.length - from : next;
  if (length < 4) return null;
  const bars = moves.slice(from, from + length).reduce((sum, move) => sum + (barOf(move) ?? 0), 0);
  return {
    length,
    sentence: words.say`Draw the thread out from under the last ${bars / 2} bars on each side.`,
  };
}

const barOf = (move: MendMove): number | null =>
  'undo' in move && move.undo === 'hand' && move.what.move === 'bars' ? move.what.count : null;

type Pulled = Extract<ReverseMove, { readonly undo: 'knit' }>;

function formatBedMove(move: BedMove, words: Words): string {
  switch (move.move) {
    case 'work':
      return words.say`Bring ${needleList(move.needles, words)} into work.`;
    case 'rest':
      return words.say`Push ${needleList(move.needles, words)} out of work.`;
    case 'stand':
      return words.say`Put the carriage on the ${move.side}.`;
    case 'counter':
      return words.say`Row counter to ${move.rows}.`;
    case 'cast-on':
      return words.say`Cast on with ${sayYarn(move.yarn, words)}.`;
    case 'feed':
      return words.say`Thread ${sayYarn(move.yarn, words)} into the feeder.`;
    case 'park':
      return words.say`Take ${sayYarn(move.yarn, words)} out of the feeder and park it at the ${move.end} end.`;
    case 'cut':
      return words.say`Cut ${sayYarn(move.yarn, words)}, leaving ${endTailCm} cm.`;
    case 'knit':
      return words.say`Knit one row to the ${move.to}.`;
    case 'slip':
      return words.say`Set the carriage to slip and bring it across to the ${move.to}: nothing knits.`;
    case 'transfer':
      return words.say`With the tool, lift the loops of ${needleList(move.from, words)} and set them on ${needleList(move.to, words)}.`;
    case 'take-off':
      return move.to === undefined
        ? words.say`Take the work off the needles.`
        : words.say`Hold the work and pass the carriage once to the ${move.to} with nothing in the feeder: the work drops.`;
    case 'rehang':
      return words.say`Hang the loops from ${move.left} to ${move.right}.`;
    default:
      return exhaustive(move);
  }
}

function formatReverseMove(move: ReverseMove, words: Words): string {
  switch (move.undo) {
    case 'work':
      return words.say`Push ${needleList(move.needles, words)} back out of work.`;
    case 'rest':
      return words.say`Bring ${needleList(move.needles, words)} back into work.`;
    case 'stand':
      return words.say`The carriage stood on the ${move.back}.`;
    case 'slip':
      return words.say`Bring the carriage back to the ${move.back} without knitting.`;
    case 'counter':
      return words.say`Turn the row counter back to ${move.rows}.`;
    case 'cast-on':
      return words.say`Take the cast-on loops off the needles.`;
    case 'feed':
      return move.parkedAt === null
        ? words.say`Take ${sayYarn(move.yarn, words)} out of the feeder.`
        : words.say`Take ${sayYarn(move.yarn, words)} out of the feeder, back to its place at the ${move.parkedAt} end.`;
    case 'park':
      return words.say`Put ${sayYarn(move.yarn, words)} back into the feeder.`;
    case 'cut':
      return words.say`Join ${sayYarn(move.yarn, words)} again, leaving ${endTailCm} cm to hide; ${joinedPlace(move.joinedAt, words)}.`;
    case 'knit':
      return formatPullOut(move, words);
    case 'transfer':
      return formatSetBack(move, words);
    case 'take-off':
      return words.say`Hang the loops again from the waste rows: ${hungOn(move.hangs, words)}.`;
    case 'rehang':
      return words.say`Take the loops from ${move.left} to ${move.right} off again, a strand run through them.`;
    case 'stray':
      return words.say`Drop the loose loop off ${move.needle} and push the needle out of work.`;
    case 'hand':
      return formatHandBack(move.what, words);
    default:
      return exhaustive(move);
  }
}

const joinedPlace = (place: 'feeder' | 'left' | 'right', words: Words): string =>
  place === 'feeder' ? words.say`it goes back into the feeder` : words.say`it waits at the ${place} end`;

/** `L25, L24 and L23`; a longer row of neighbours is told by its ends. */
function needleList(names: readonly string[], words: Words): string {
  return names.length > 4 ? words.say`${names[0] ?? ''} to ${names.at(-1) ?? ''}` : words.amounts.list(names);
}

const hungOn = (runs: readonly LoopRun[], words: Words): string =>
  words.say`one on each needle from ${runs[0]?.first ?? ''} to ${runs.at(-1)?.last ?? ''}`;

/** `Pull out the row of plum: one loop on each needle from L25 to R10, two on R10, none on L23 …` */
const formatPullOut = ({ yarn, catches, back }: Pulled, words: Words): string =>
  words.say`Pull out the row of ${sayYarn(yarn, words)} gently, catching every loop: ${caughtOn(catches, words)}. Bring the carriage back to the ${back} without knitting.`;

function caughtOn(catches: readonly LoopRun[], words: Words): string {
  const exceptions = catches.flatMap(({ first, last, loops }) => {
    const where = first === last ? first : words.say`each from ${first} to ${last}`;
    if (loops === 1) return [];
    return loops === 0
      ? [words.say`none on ${where}, which stays in work`]
      : [words.say`${loops} together on ${where}`];
  });
  const [left, right] = [catches[0]?.first ?? '', catches.at(-1)?.last ?? ''];
  return words.amounts.list([words.say`one loop on each needle from ${left} to ${right}`, ...exceptions]);
}

function formatSetBack(move: Extract<ReverseMove, { readonly undo: 'transfer' }>, words: Words): string {
  const [from, to] = [needleList(move.from, words), needleList(move.to, words)];
  if (move.parts)
    return words.say`Set the loops of ${from} out again on ${to}, parting the stitches that share ${move.from.at(-1) ?? ''}.`;
  return move.rests.length === 0
    ? words.say`Set the loops of ${from} back on ${to}.`
    : words.say`Set the loops of ${from} back on ${to}. Push ${needleList(move.rests, words)} out of work.`;
}

function formatHandBack(what: HandMove, words: Words): string {
  switch (what.move) {
    case 'graft':
      return words.say`${what.edge}: draw the thread back out${drawnFrom(what.up, words.say`up through`)}${drawnFrom(what.down, words.say`down through`)}.`;
    case 'wash':
      return words.say`What has been washed stays so.`;
    case 'bars':
      return what.count === 1
        ? words.say`Draw the thread out from under the last bar on the ${what.side}.`
        : words.say`Draw the thread out from under the last ${what.count} bars on the ${what.side}.`;
    case 'draw-up':
      return words.say`Ease the drawn-up thread.`;
    case 'fasten':
      return words.say`Undo the fastening.`;
    case 'thread':
      return words.say`Draw the cord back out of eyelet ${what.eyelet}.`;
    case 'release':
      return what.what === 'waste'
        ? words.say`The waste rows are out and not put back: hold the open loops on a spare strand.`
        : words.say`The ravel cord is out and not put back: hold the open loops on a spare strand.`;
    case 'measure':
      return words.say`Measure ${what.lengthCm} cm again.`;
    default:
      return exhaustive(what);
  }
}

const drawnFrom = (loop: number | null, way: string): string => (loop === null ? '' : `, ${way} ${loop}`);
