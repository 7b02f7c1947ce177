/** What the hands do to set something right, a sentence a move, with the needles named in it. */
import type { BedMove, HandMove } from '../../bed/move.ts';
import type { LoopRun, ReverseMove } from '../../bed/reverse-move.ts';
import { endTailCm } from '../../planning/tails.ts';
import type { MendMove } from '../../session/mend.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { formatList, say } from '../../shared/say.ts';
import { sayYarn } from './yarns.ts';

export const formatMendMove = (move: MendMove): string =>
  'undo' in move ? formatReverseMove(move) : formatBedMove(move);

function formatBedMove(move: BedMove): string {
  switch (move.move) {
    case 'work':
      return say`Bring ${needleList(move.needles)} into work.`;
    case 'rest':
      return say`Push ${needleList(move.needles)} out of work.`;
    case 'stand':
      return say`Put the carriage on the ${move.side}.`;
    case 'cast-on':
      return say`Cast on with ${sayYarn(move.yarn)}.`;
    case 'feed':
      return say`Thread ${sayYarn(move.yarn)} into the feeder.`;
    case 'park':
      return say`Take ${sayYarn(move.yarn)} out of the feeder and park it at the ${move.end} end.`;
    case 'cut':
      return say`Cut ${sayYarn(move.yarn)}, leaving ${endTailCm} cm.`;
    case 'knit':
      return say`Knit one row to the ${move.to}.`;
    case 'slip':
      return say`Set the carriage to slip and bring it across to the ${move.to}: nothing knits.`;
    case 'transfer':
      return say`With the tool, lift the loops of ${needleList(move.from)} and set them on ${needleList(move.to)}.`;
    case 'take-off':
      return say`Take the work off the needles.`;
    case 'rehang':
      return say`Hang the loops from ${move.left} to ${move.right}.`;
    default:
      return exhaustive(move);
  }
}

function formatReverseMove(move: ReverseMove): string {
  switch (move.undo) {
    case 'work':
      return say`Push ${needleList(move.needles)} back out of work.`;
    case 'rest':
      return say`Bring ${needleList(move.needles)} back into work.`;
    case 'stand':
      return say`The carriage stood on the ${move.back}.`;
    case 'slip':
      return say`Bring the carriage back to the ${move.back} without knitting.`;
    case 'cast-on':
      return say`Take the cast-on loops off the needles.`;
    case 'feed':
      return move.parkedAt === null
        ? say`Take ${sayYarn(move.yarn)} out of the feeder.`
        : say`Take ${sayYarn(move.yarn)} out of the feeder, back to its place at the ${move.parkedAt} end.`;
    case 'park':
      return say`Put ${sayYarn(move.yarn)} back into the feeder.`;
    case 'cut':
      return say`Join ${sayYarn(move.yarn)} again, leaving ${endTailCm} cm to hide; ${joinedPlace(move.joinedAt)}.`;
    case 'knit':
      return formatPullOut(move.yarn, move.catches, move.back);
    case 'transfer':
      return formatSetBack(move);
    case 'take-off':
      return say`Hang the loops again from the waste rows: ${hungOn(move.hangs)}.`;
    case 'rehang':
      return say`Take the loops from ${move.left} to ${move.right} off again, a strand run through them.`;
    case 'stray':
      return say`Drop the loose loop off ${move.needle} and push the needle out of work.`;
    case 'hand':
      return formatHandBack(move.what);
    default:
      return exhaustive(move);
  }
}

const joinedPlace = (place: 'feeder' | 'left' | 'right'): string =>
  place === 'feeder' ? say`it goes back into the feeder` : say`it waits at the ${place} end`;

/** `L25, L24 and L23`; a longer row of neighbours is told by its ends. */
function needleList(names: readonly string[]): string {
  return names.length > 4 ? say`${names[0] ?? ''} to ${names.at(-1) ?? ''}` : formatList(names);
}

const hungOn = (runs: readonly LoopRun[]): string =>
  say`one on each needle from ${runs[0]?.first ?? ''} to ${runs.at(-1)?.last ?? ''}`;

/** `Pull out the row of plum: one loop on each needle from L25 to R10, two on R10, none on L23 …` */
function formatPullOut(yarn: string, catches: readonly LoopRun[], back: string): string {
  const exceptions = catches.flatMap(({ first, last, loops }) => {
    const where = first === last ? first : say`each from ${first} to ${last}`;
    if (loops === 1) return [];
    return loops === 0 ? [say`none on ${where}, which stays in work`] : [say`${loops} together on ${where}`];
  });
  const [left, right] = [catches[0]?.first ?? '', catches.at(-1)?.last ?? ''];
  const caught = [say`one loop on each needle from ${left} to ${right}`, ...exceptions];
  return say`Pull out the row of ${sayYarn(yarn)} gently, catching every loop: ${formatList(caught)}. Bring the carriage back to the ${back} without knitting.`;
}

function formatSetBack(move: Extract<ReverseMove, { readonly undo: 'transfer' }>): string {
  const [from, to] = [needleList(move.from), needleList(move.to)];
  if (move.parts)
    return say`Set the loops of ${from} out again on ${to}, parting the stitches that share ${move.from.at(-1) ?? ''}.`;
  return move.rests.length === 0
    ? say`Set the loops of ${from} back on ${to}.`
    : say`Set the loops of ${from} back on ${to}. Push ${needleList(move.rests)} out of work.`;
}

function formatHandBack(what: HandMove): string {
  switch (what.move) {
    case 'graft':
      return say`${what.edge}: draw the thread back out${drawnFrom(what.up, say`up through`)}${drawnFrom(what.down, say`down through`)}.`;
    case 'wash':
      return say`What has been washed stays so.`;
    case 'bars':
      return what.count === 1
        ? say`Draw the thread out from under the last bar on the ${what.side}.`
        : say`Draw the thread out from under the last ${what.count} bars on the ${what.side}.`;
    case 'draw-up':
      return say`Ease the drawn-up thread.`;
    case 'fasten':
      return say`Undo the fastening.`;
    case 'thread':
      return say`Draw the cord back out of eyelet ${what.eyelet}.`;
    case 'release':
      return what.what === 'waste'
        ? say`The waste rows are out and not put back: hold the open loops on a spare strand.`
        : say`The ravel cord is out and not put back: hold the open loops on a spare strand.`;
    case 'measure':
      return say`Measure ${what.lengthCm} cm again.`;
    default:
      return exhaustive(what);
  }
}

const drawnFrom = (loop: number | null, way: string): string => (loop === null ? '' : `, ${way} ${loop}`);
