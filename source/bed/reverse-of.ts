import { exhaustive } from '../shared/result.ts';
import { needlesNamed } from './apply-move.ts';
import type { Bed, Needle } from './bed.ts';
import type { LoopRun, ReverseMove } from './move.ts';
import { isHandMove, type Move } from './move.ts';
import { formatNeedle } from './needles.ts';

/**
 * The move that takes `move` back, when it was made on `bed`: applied to the bed that `move` leaves, it gives `bed`
 * again, loop for loop. Null for a move that leaves nothing to undo, such as measuring.
 */
export function reverseOf(bed: Bed, move: Move): ReverseMove | null {
  if (isHandMove(move))
    return move.move === 'measure' || move.move === 'wash' ? null : { undo: 'hand', what: move };
  switch (move.move) {
    case 'work':
      return {
        undo: 'work',
        needles: move.needles.filter((_, i) => !needlesAt(bed, move.needles)[i]?.working),
      };
    case 'rest':
      return {
        undo: 'rest',
        needles: move.needles.filter((_, i) => needlesAt(bed, move.needles)[i]?.working),
      };
    case 'stand':
      return { undo: 'stand', back: bed.carriage };
    case 'slip':
      return { undo: 'slip', back: bed.carriage };
    case 'counter':
      return { undo: 'counter', rows: bed.counter ?? 0 };
    case 'cast-on':
      return { undo: 'cast-on' };
    case 'feed':
      return { undo: 'feed', yarn: move.yarn, parkedAt: bed.parked.get(move.yarn) ?? null };
    case 'park':
      return { undo: 'park', yarn: move.yarn };
    case 'cut':
      return { undo: 'cut', yarn: move.yarn, joinedAt: bed.parked.get(move.yarn) ?? 'feeder' };
    case 'knit':
      return { undo: 'knit', yarn: bed.feeder ?? '', back: bed.carriage, catches: loopRuns(bed) };
    case 'transfer':
      return {
        undo: 'transfer',
        from: move.to,
        to: move.from,
        lifts: needlesAt(bed, move.from).map((needle) => needle.loopCount),
        parts: move.to.some(
          (name, i) => !move.from.includes(name) && (needlesAt(bed, move.to)[i]?.loopCount ?? 0) > 0,
        ),
        rests: move.to.filter((_, i) => !needlesAt(bed, move.to)[i]?.working),
      };
    case 'take-off':
      return {
        undo: 'take-off',
        hangs: loopRuns(bed),
        offBefore: bed.loopsOff,
        ...(move.to === undefined ? {} : { back: bed.carriage }),
      };
    case 'rehang':
      return { undo: 'rehang', left: move.left, right: move.right };
    case 'pick-up':
      return { undo: 'pick-up', of: move.of, left: move.left, right: move.right };
    case 'bind-off':
      return { undo: 'bind-off', hangs: loopRuns(bed) };
    default:
      return exhaustive(move);
  }
}

function needlesAt(bed: Bed, names: readonly string[]): readonly Needle[] {
  const places = needlesNamed(bed, names);
  return places.ok ? places.value.map((place) => bed.needles[place] as Needle) : [];
}

/** The working needles, neighbours that hold alike told together. */
export function loopRuns({ needles }: Bed): readonly LoopRun[] {
  const runs: LoopRun[] = [];
  let from = 0;
  for (let place = 1; place <= needles.length; place++) {
    const one = needles[from] as Needle;
    if (alike(one, needles[place])) continue;
    if (one.working) {
      const [first, last] = [formatNeedle(needles.length, from), formatNeedle(needles.length, place - 1)];
      runs.push({ first, last, loops: one.loopCount, yarn: one.yarn });
    }
    from = place;
  }
  return runs;
}

const alike = (one: Needle, other: Needle | undefined): boolean =>
  one.working === other?.working && one.loopCount === other.loopCount && one.yarn === other.yarn;
