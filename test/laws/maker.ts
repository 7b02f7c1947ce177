/** A maker at the loop bed, with her own hands: she follows the steps, slips where she is told to, and says truly what she sees. */
import type { Job } from '../../source/steps/job.ts';
import { stepAt } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { LoopBed, type Move, type Side } from './loop-bed.ts';

export type Slip = { readonly kind: Shaping; readonly move: number } | Others;
type Others =
  /** After (or at) the pass of this row. */
  | { readonly kind: 'rows more'; readonly row: number; readonly rows: number }
  | { readonly kind: 'rows fewer'; readonly row: number; readonly rows: number }
  | { readonly kind: 'dropped'; readonly row: number }
  | { readonly kind: 'stripe yarn'; readonly stripe: number; readonly used: string }
  | { readonly kind: 'yarns swapped'; readonly stripe: number; readonly used: string }
  | { readonly kind: 'rehang forgotten'; readonly row: number }
  | { readonly kind: 'rehang aside'; readonly row: number; readonly by: number };
type OtherOf<K> = Extract<Others, { readonly kind: K }>;

export const shapings = [
  'increase omitted',
  'decrease omitted',
  'increase doubled',
  'decrease doubled',
  'move omitted',
  'move doubled',
  'move mirrored',
  'needle left in work',
  'needle left out of work',
] as const;
export type Shaping = (typeof shapings)[number];

const other = (side: Side): Side => (side === 'left' ? 'right' : 'left');

/** The acts of hanging the work again. */
export const rehangs: ReadonlySet<string> = new Set([
  'thread-waste',
  'waste-rows',
  'weights-off',
  'take-off',
  'set-needles-again',
  'rehang',
  'hang-weights',
  'release-waste',
]);

export class Maker {
  readonly bed: LoopBed;
  readonly brief;
  /** The needle that hung on nothing when it was last looked at. */
  constructor(
    readonly job: Job,
    readonly slips: readonly Slip[] = [],
  ) {
    this.brief = job.plan.brief;
    this.bed = new LoopBed(this.brief.bed.needles, new Set([this.brief.waste.yarn, 'ravel cord']));
  }

  private slip<K extends Others['kind']>(
    kind: K,
    fits: (slip: OtherOf<K>) => boolean,
  ): OtherOf<K> | undefined {
    const all = this.slips as readonly { readonly kind: string }[];
    return all.filter((one): one is OtherOf<K> => one.kind === kind).find(fits);
  }

  /** False where the work is off the bed by a slip, and nothing goes on. */
  follow(step: Step): boolean {
    const { act } = step;
    const hung = this.slip('rehang forgotten', ({ row }) => row === step.row);
    const rehanging = rehangs.has(act.kind);
    if (hung && step.phase === 'stripes' && rehanging) return true;
    if (act.kind === 'increase' || act.kind === 'decrease') this.shape(act.kind, act.number);
    else if (act.kind === 'pass' || act.kind === 'closing-pass') return this.pass(step);
    else if (act.kind === 'thread') this.change(this.yarn(step, act.yarn), step);
    else if (act.kind === 'thread-waste') this.change(act.yarn, step);
    else if (act.kind === 'rehang') this.rehang(step);
    else if (act.kind === 'waste-rows') for (const _ of step.moves) this.row();
    else if (act.kind === 'take-off') this.bed.do([{ move: 'take-off', to: other(this.bed.carriage) }]);
    else if (act.kind === 'set-needles-again') this.needlesAgain(step);
    else this.bed.do(step.moves as readonly Move[]);
    return true;
  }

  private pass(step: Step): boolean {
    const fewer = this.slip('rows fewer', ({ row, rows }) => row >= step.row && row - rows < step.row);
    if (fewer) return true;
    if (this.slip('dropped', ({ row }) => row === step.row)) {
      if (this.bed.feeder !== null) this.bed.do([{ move: 'cut', yarn: this.bed.feeder }]);
      this.bed.do([{ move: 'take-off', to: other(this.bed.carriage) }]);
      return false;
    }
    this.row();
    const more = this.slip('rows more', ({ row }) => row === step.row);
    for (let i = 0; i < (more?.rows ?? 0); i++) this.row();
    return true;
  }

  private row(): void {
    this.bed.do([{ move: 'knit', to: other(this.bed.carriage) }]);
  }

  private yarn({ stripe }: Step, due: string): string {
    const whole = this.slip('stripe yarn', (slip) => slip.stripe === stripe);
    if (whole) return whole.used;
    const swapped = this.slip('yarns swapped', (slip) => (stripe ?? 0) >= slip.stripe);
    const first = swapped && this.job.plan.stripes[swapped.stripe - 1]?.yarn;
    if (!swapped || !first) return due;
    return due === first ? swapped.used : due === swapped.used ? first : due;
  }

  private change(yarn: string, step: Step): void {
    const { bed } = this;
    if (bed.feeder === yarn) return;
    if (bed.feeder !== null) {
      const held = bed.feeder;
      const stripes = this.job.plan.stripes;
      const again = stripes.some((one) => one.yarn === held && one.lastRow > step.row);
      const end = this.brief.bed.park === 'home' ? this.brief.homeSide : this.endOf(held);
      bed.do([again ? { move: 'park', yarn: held, end } : { move: 'cut', yarn: held }]);
    }
    bed.do([{ move: 'feed', yarn }]);
  }

  /** Yarns wait at the two ends in turn, in the order of their first stripes. */
  private endOf(yarn: string): Side {
    const order = [...new Set(this.job.plan.stripes.map((stripe) => stripe.yarn))];
    return order.indexOf(yarn) % 2 === 0 ? this.brief.homeSide : other(this.brief.homeSide);
  }

  private needlesAgain({ moves, row }: Step): void {
    const by = this.slip('rehang aside', (slip) => slip.row === row)?.by ?? 0;
    const shift = (name: string): string => this.bed.name(this.bed.place(name) + by);
    for (const move of moves as readonly Move[])
      this.bed.do([move.needles ? { ...move, needles: move.needles.map(shift) } : move]);
  }

  private rehang({ act, row }: Step): void {
    if (act.kind !== 'rehang') return;
    const by = this.slip('rehang aside', (slip) => slip.row === row)?.by ?? 0;
    const shift = (name: string): string => this.bed.name(this.bed.place(name) + by);
    this.bed.do([{ move: 'rehang', left: shift(act.first), right: shift(act.last) }]);
  }

  private shape(part: 'increase' | 'decrease', number: number): void {
    const { crawl } = this.brief;
    const trailing = other(crawl);
    const kind = this.slips.find(
      (slip): slip is Extract<Slip, { kind: Shaping }> => 'move' in slip && slip.move === number,
    )?.kind;
    const inc = (): void => this.edge(crawl, 'out');
    const dec = (): void => this.edge(trailing, 'in');
    const usual = part === 'increase' ? inc : dec;
    if (kind === 'move omitted' || kind === `${part} omitted`) return;
    if (kind === 'move mirrored') {
      if (part === 'increase') this.edge(trailing, 'out');
      else this.edge(crawl, 'in');
      return;
    }
    if (kind === 'needle left in work' && part === 'decrease') return this.edge(trailing, 'in', false);
    usual();
    if (kind === `${part} doubled`) usual();
    if (kind === 'move doubled' && part === 'decrease') {
      inc();
      dec();
    }
    if (kind === 'needle left out of work' && part === 'increase') {
      const inward = crawl === 'left' ? 1 : -1;
      const { left, right } = this.bed.edges();
      const uncovered = (crawl === 'left' ? left : right) + this.brief.edgeStitches * inward;
      this.bed.do([{ move: 'rest', needles: [this.bed.name(uncovered)] }]);
    }
  }

  /** The outermost loops, one needle out or in. */
  private edge(side: Side, way: 'out' | 'in', rests = true): void {
    const { bed } = this;
    const edge = bed.edges()[side];
    const inward = side === 'left' ? 1 : -1;
    const by = way === 'out' ? -inward : inward;
    const from = Array.from({ length: this.brief.edgeStitches }, (_, i) => edge + i * inward);
    if (way === 'out') bed.do([{ move: 'work', needles: [bed.name(edge - inward)] }]);
    bed.do([
      { move: 'transfer', from: from.map((at) => bed.name(at)), to: from.map((at) => bed.name(at + by)) },
    ]);
    if (way === 'in' && rests) bed.do([{ move: 'rest', needles: [bed.name(edge)] }]);
  }

  /** The bag's rows of one colour that hang below the needles. */
  rowsOfColour(): number {
    const rows = this.bed.rows.filter(({ yarn }) => this.brief.yarns.has(yarn));
    const newest = rows.at(-1)?.yarn;
    const before = rows.findLastIndex(({ yarn }) => yarn !== newest);
    return rows.length - 1 - before;
  }

  /** Waste below the needles, back to the bag's rows or to the cast-on. */
  wasteRows(): number {
    const { rows, waste } = this.bed;
    const newest = rows.findLastIndex(({ yarn }) => !waste.has(yarn));
    return rows.length - 1 - Math.max(0, newest);
  }

  stripes(): number {
    const rows = this.bed.rows.filter(({ yarn }) => this.brief.yarns.has(yarn));
    return rows.filter(({ yarn }, i) => yarn !== rows[i - 1]?.yarn).length;
  }

  /** The outermost loop at the trailing edge hangs there alone, and its column begins on nothing. */
  isLoose(): boolean {
    const { bed, brief } = this;
    const { loops } = bed.needles[bed.edges()[other(brief.crawl)]] ?? { loops: [] };
    if (loops.length !== 1) return false;
    let loop = loops[0];
    while (loop?.below.length === 1) loop = loop.below[0];
    return loop?.below.length === 0 && loop.row > 0 && !bed.waste.has(loop.yarn);
  }

  /** In some row of the bag an outermost loop hangs on nothing, beyond all that hang on something. */
  hasStrayColumn(): boolean {
    const { rows, waste } = this.bed;
    return rows.some(({ yarn, loops }, row) => {
      if (row === 0 || waste.has(yarn) || waste.has(rows[row - 1]?.yarn ?? '')) return false;
      const held = loops.flatMap((loop) => (loop.below.length > 0 ? [loop.place] : []));
      return loops.some(({ place }) => place < Math.min(...held) || place > Math.max(...held));
    });
  }

  /** What she sees, as she would type it: by what it is called. */
  sees(): Readonly<Record<string, string>> {
    return Object.fromEntries(Object.keys(this.eyes).map((fact) => [fact, this.see(fact)]));
  }

  /** One thing of it; `unsure` of what she cannot tell. */
  see(fact: string): string {
    return this.eyes[fact]?.() ?? 'unsure';
  }

  private readonly eyes: Readonly<Record<string, () => string>> = {
    left: () => this.edgeSeen('left'),
    right: () => this.edgeSeen('right'),
    carriage: () => `carriage ${this.bed.carriage}`,
    lastColour: () => (this.bed.edges().left < 0 ? '' : (this.bed.rows.at(-1)?.yarn ?? '')),
    feeder: () => `feeder ${this.bed.feeder ?? 'empty'}`,
    stitches: () => `${this.bed.edges().stitches} stitches`,
    wasteRows: () => `${this.wasteRows()} waste rows`,
    stripesCounted: () => `${this.stripes()} stripes`,
    rowCounter: () => `counter ${this.bed.counter}`,
    rowsOfColour: () => `${this.rowsOfColour()} in this stripe`,
    loose: () => (this.isLoose() ? 'loose' : 'firm'),
    stray: () => (this.hasStrayColumn() ? 'loose' : 'firm'),
    'which-edge': () => this.firstEdge(),
    'before-move': () => 'before the move',
    rehung: () => (this.slips.some(({ kind }) => kind === 'rehang forgotten') ? 'not rehung' : 'rehung'),
  };

  /** Of the slip that she tells of first. */
  private firstEdge(): string {
    const kind = this.slips[0]?.kind ?? '';
    if (/^increase|out of work/.test(kind)) return 'leading';
    return /^decrease|in work/.test(kind) ? 'trailing' : 'unsure';
  }

  private edgeSeen(side: Side): string {
    const place = this.bed.edges()[side];
    return place < 0 ? 'empty' : `${side} ${this.bed.name(place)}`;
  }
}

/** The beds of the plan, index = steps confirmed, through `last`. */
export function plannedBeds(job: Job, last: number): readonly LoopBed[] {
  const maker = new Maker(job);
  const beds = [maker.bed.copy()];
  for (let number = 1; number <= last; number++) {
    maker.follow(stepAt(job, number));
    beds.push(maker.bed.copy());
  }
  return beds;
}
