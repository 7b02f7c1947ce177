/**
 * The hands: a planned step as they make it, from the outermost loops and with what is in the feeder, and the slips among it
 * (common practice).
 */
import { type Bed, edgesOf, opposite } from '../../bed/bed.ts';
import { type BedMove, isHandMove } from '../../bed/move.ts';
import { formatNeedle, parseNeedle } from '../../bed/needles.ts';
import { type Job, rowAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { isShapingSlip, type Slip } from '../mend/slip.ts';
import { setIn, setOut } from './settle.ts';
import { isUnhung, passesUpTo } from './slip-moment.ts';

type Part = (bed: Bed) => readonly BedMove[] | null;

export const plannedMoves = ({ moves }: Pick<Step, 'moves'>): readonly BedMove[] =>
  moves.filter((move): move is BedMove => !isHandMove(move));

/** The yarn that was taken where `due` should have been. */
export function yarnFor(job: Job, slips: readonly Slip[], { stripe }: Step, due: string): string {
  for (const slip of slips)
    if (slip.is === 'stripe-in-other-yarn' && slip.stripe === stripe) return slip.used;
  for (const slip of slips) {
    if (slip.is !== 'yarns-swapped' || (stripe ?? 0) < slip.stripe) continue;
    const first = job.plan.stripes[slip.stripe - 1]?.yarn;
    if (due === first) return slip.used;
    if (due === slip.used) return first ?? due;
  }
  return due;
}

export class Hands {
  private readonly omitted: ReadonlySet<number>;

  constructor(
    private readonly job: Job,
    private readonly slips: readonly Slip[],
  ) {
    this.omitted = new Set(
      slips.flatMap((slip) => (slip.is === 'rows-too-few' ? passesUpTo(job, slip.step, slip.rows) : [])),
    );
  }

  /** Parts in order, each as it is made on the bed that the ones before it have left; null where it cannot be. */
  movesOf(step: Step): readonly Part[] {
    const { act } = step;
    switch (act.kind) {
      case 'increase':
      case 'decrease':
        return this.shape(act.kind, act.number);
      case 'pass':
      case 'closing-pass':
        return this.omitted.has(step.step) ? [] : [(bed) => this.pass(bed, step)];
      case 'thread':
        return [(bed) => this.thread(bed, step, yarnFor(this.job, this.slips, step, act.yarn))];
      case 'thread-waste':
        return isUnhung(this.slips, step) ? [] : [(bed) => this.thread(bed, step, act.yarn)];
      case 'waste-rows':
        return isUnhung(this.slips, step) ? [] : step.moves.map(() => (bed) => this.across(bed, 'knit'));
      case 'take-off':
        return isUnhung(this.slips, step) ? [] : [(bed) => this.across(bed, 'take-off')];
      case 'set-needles-again':
        return isUnhung(this.slips, step) ? [] : [() => this.needlesAgain(step)];
      case 'rehang':
        return isUnhung(this.slips, step) ? [] : [() => this.rehang(step)];
      case 'cut-graft-tail':
        return [(bed) => (bed.feeder === null ? [] : [{ move: 'cut', yarn: bed.feeder }])];
      default:
        return isUnhung(this.slips, step) ? [] : [() => plannedMoves(step)];
    }
  }

  private shape(part: 'increase' | 'decrease', number: number): readonly Part[] {
    const { crawl, edgeStitches } = this.job.plan.brief;
    const trailing = opposite(crawl);
    const increase = (bed: Bed) => setOut(bed, crawl, edgeStitches);
    const decrease = (bed: Bed) => setIn(bed, trailing, edgeStitches);
    const usual = part === 'increase' ? increase : decrease;
    const slip = this.slips.find((one) => isShapingSlip(one) && one.move === number);
    switch (slip?.is) {
      case undefined:
        return [usual];
      case 'move-missing':
        return [];
      case 'increase-missing':
      case 'decrease-missing':
        return slip.is.startsWith(part) ? [] : [usual];
      case 'increase-doubled':
      case 'decrease-doubled':
        return slip.is.startsWith(part) ? [usual, usual] : [usual];
      case 'move-doubled':
        return part === 'increase' ? [increase] : [decrease, increase, decrease];
      case 'move-mirrored':
        return part === 'increase'
          ? [(bed) => setOut(bed, trailing, edgeStitches)]
          : [(bed) => setIn(bed, crawl, edgeStitches)];
      case 'needle-left-working':
        return part === 'increase' ? [usual] : [(bed) => decrease(bed)?.slice(0, 1) ?? null];
      case 'needle-left-out-of-work':
        return part === 'increase' ? [usual, (bed) => this.restUncovered(bed)] : [usual];
      default:
        return [usual];
    }
  }

  private restUncovered(bed: Bed): readonly BedMove[] | null {
    const { crawl, edgeStitches } = this.job.plan.brief;
    const edge = edgesOf(bed)[crawl];
    if (edge === null) return null;
    const place = edge + (crawl === 'left' ? edgeStitches : -edgeStitches);
    return [{ move: 'rest', needles: [formatNeedle(bed.needles.length, place)] }];
  }

  private pass(bed: Bed, { step }: Step): readonly BedMove[] {
    const across = { move: 'knit', to: opposite(bed.carriage) } as const;
    const other = this.slips.find((slip) => slip.is === 'row-in-other-yarn' && slip.step === step);
    if (other?.is === 'row-in-other-yarn') return [...this.change(bed, step, other.used), across];
    if (!this.slips.some((slip) => slip.is === 'work-dropped' && slip.step === step)) return [across];
    const empty: readonly BedMove[] = bed.feeder === null ? [] : [{ move: 'cut', yarn: bed.feeder }];
    return [...empty, { move: 'take-off', to: across.to }];
  }

  private thread(bed: Bed, step: Step, yarn: string): readonly BedMove[] {
    return this.change(bed, step.step, yarn);
  }

  /** What is in the feeder goes to its parking place, or is cut where it is not needed again; then `yarn` comes in. */
  private change(bed: Bed, step: number, yarn: string): readonly BedMove[] {
    const held = bed.feeder;
    if (held === yarn) return [];
    const feed = { move: 'feed', yarn } as const;
    return held === null ? [feed] : [this.aside(held, step), feed];
  }

  aside(held: string, step: number): BedMove {
    const span = this.job.outline.yarnSpans.find((one) => one.yarn === held);
    return span && span.lastRow > rowAt(this.job, step)
      ? { move: 'park', yarn: held, end: span.end }
      : { move: 'cut', yarn: held };
  }

  private across({ carriage }: Bed, move: 'knit' | 'take-off'): readonly BedMove[] {
    return [{ move, to: opposite(carriage) }];
  }

  /** The needles for hanging the work again, where it will be hung. */
  private needlesAgain({ act, row, moves }: Step): readonly BedMove[] | null {
    const slip = this.slips.find((one) => one.is === 'rehang-shifted' && one.row === row);
    if (slip?.is !== 'rehang-shifted' || act.kind !== 'set-needles-again') return plannedMoves({ moves });
    const names: string[] = [];
    for (const move of moves)
      for (const name of move.move === 'work' ? move.needles : []) {
        const shifted = this.shifted(name, slip.by);
        if (shifted === null) return null;
        names.push(shifted);
      }
    return [
      { move: 'stand', side: act.carriage },
      { move: 'work', needles: names },
    ];
  }

  private rehang({ act, row, moves }: Step): readonly BedMove[] | null {
    const slip = this.slips.find((one) => one.is === 'rehang-shifted' && one.row === row);
    if (slip?.is !== 'rehang-shifted' || act.kind !== 'rehang') return plannedMoves({ moves });
    const left = this.shifted(act.first, slip.by);
    const right = this.shifted(act.last, slip.by);
    return left === null || right === null ? null : [{ move: 'rehang', left, right }];
  }

  private shifted(name: string, by: number): string | null {
    const needleCount = this.job.plan.brief.bed.needles;
    const place = (parseNeedle(needleCount, name) ?? -1) + by;
    return place < 0 || place >= needleCount ? null : formatNeedle(needleCount, place);
  }
}
