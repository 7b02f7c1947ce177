/**
 * A bed of loops, written for the tests and sharing nothing with the program's own: every loop knows its yarn, the row it was
 * knitted in and the loops it hangs on. It carries out moves as other programs read them, forward and taken back, and refuses
 * what hands cannot do. Two beds are the same work when all rows, loop for loop, and all needles are.
 */
export type Side = 'left' | 'right';
export interface Move {
  readonly move?: string;
  readonly undo?: string;
  readonly needles?: readonly string[];
  readonly needle?: string;
  readonly side?: Side;
  readonly back?: Side;
  readonly to?: Side | readonly string[];
  readonly from?: string | readonly string[];
  readonly yarn?: string;
  readonly end?: Side;
  readonly rows?: number;
  readonly left?: string;
  readonly right?: string;
  readonly lifts?: readonly number[];
  readonly rests?: readonly string[];
  readonly parkedAt?: Side | null;
  readonly joinedAt?: Side | 'feeder';
  readonly what?: string;
  readonly catches?: readonly Run[];
  readonly hangs?: readonly Run[];
  readonly of?: string;
}
export interface Run {
  readonly first: string;
  readonly last: string;
  readonly loops: number;
  readonly yarn: string | null;
}

interface Loop {
  readonly yarn: string;
  readonly row: number;
  /** Where it was knitted: with the row it is the loop's name. */
  readonly place: number;
  readonly below: readonly Loop[];
}
interface Needle {
  working: boolean;
  loops: readonly Loop[];
}

export class CannotBeDone extends Error {}
const refuse = (why: string): never => {
  throw new CannotBeDone(why);
};

const other = (side: Side): Side => (side === 'left' ? 'right' : 'left');
const nameOf = ({ row, place }: Loop, rows: LoopBed['rows']): string =>
  `${row}:${place - (rows[row]?.loops[0]?.place ?? 0)}`;

export class LoopBed {
  needles: Needle[];
  carriage: Side = 'left';
  feeder: string | null = null;
  parked = new Map<string, Side>();
  counter = 0;
  /** Rows knitted so far, the newest last: the yarn of each, the side it was knitted from, and its loops. */
  rows: { readonly yarn: string; readonly from: Side; readonly loops: readonly Loop[] }[] = [];
  off: (readonly Loop[])[] = [];
  /** Work that lies aside while another piece is on the bed: the bag, while the cord is made. */
  aside: { readonly rows: LoopBed['rows']; readonly off: LoopBed['off'] }[] = [];
  /** Sections of a hem that are chained off: they hang on the bag. */
  hems: { readonly rows: LoopBed['rows']; readonly off: LoopBed['off'] }[] = [];

  constructor(
    readonly size: number,
    readonly waste: ReadonlySet<string>,
  ) {
    this.needles = Array.from({ length: size }, () => ({ working: false, loops: [] }));
  }

  copy(): LoopBed {
    const bed = new LoopBed(this.size, this.waste);
    bed.needles = this.needles.map(({ working, loops }) => ({ working, loops }));
    bed.parked = new Map(this.parked);
    bed.rows = [...this.rows];
    bed.off = [...this.off];
    bed.aside = [...this.aside];
    bed.hems = [...this.hems];
    const { carriage, feeder, counter } = this;
    return Object.assign(bed, { carriage, feeder, counter });
  }

  place(name: string): number {
    const half = Math.floor(this.size / 2);
    const number = Number(name.slice(1));
    const place = name[0] === 'L' ? half - number : half + number - 1;
    return place >= 0 && place < this.size && number > 0 ? place : refuse(`no needle ${name}`);
  }

  name(place: number): string {
    const half = Math.floor(this.size / 2);
    return place < half ? `L${half - place}` : `R${place - half + 1}`;
  }

  at = (name: string): Needle => this.needles[this.place(name)] as Needle;

  edges(): { readonly left: number; readonly right: number; readonly stitches: number } {
    const held = this.needles.flatMap(({ loops }, place) => (loops.length > 0 ? [place] : []));
    return { left: held[0] ?? -1, right: held.at(-1) ?? -1, stitches: held.length };
  }

  do(moves: readonly Move[]): this {
    for (const move of moves) {
      if (move.undo === undefined) this.forward(move);
      else this.backward(move);
    }
    return this;
  }

  /** The piece that was made last, or all but the first, is put away, and the one before it is in hand again. */
  layAside(all = true): void {
    if (this.edges().stitches > 0) refuse('the bed holds loops');
    while (all && this.aside.length > 1) this.aside.pop();
    const before = this.aside.pop();
    if (before) Object.assign(this, before);
  }

  private forward(move: Move): void {
    const { needles = [], yarn = '' } = move;
    switch (move.move) {
      case 'work':
        for (const name of needles) this.at(name).working = true;
        return;
      case 'rest':
        this.rest(needles);
        return;
      case 'stand':
        this.carriage = move.side ?? 'left';
        return;
      case 'counter':
        this.counter = move.rows ?? 0;
        return;
      case 'feed':
        if (this.feeder !== null) refuse(`${this.feeder} is in the feeder`);
        this.feeder = yarn;
        this.parked.delete(yarn);
        return;
      case 'park':
        if (this.feeder !== yarn) refuse(`${yarn} is not in the feeder`);
        this.feeder = null;
        this.parked.set(yarn, move.end ?? 'left');
        return;
      case 'cut':
        if (this.feeder === yarn) this.feeder = null;
        else if (!this.parked.delete(yarn)) refuse(`${yarn} is not here to cut`);
        return;
      case 'cast-on':
        if (this.edges().stitches > 0) refuse('the bed holds loops');
        if (this.rows.length > 0) {
          this.aside.push({ rows: this.rows, off: this.off });
          Object.assign(this, { rows: [], off: [] });
        }
        this.knit(yarn, this.carriage, false);
        return;
      case 'knit':
        if (move.to === this.carriage) refuse(`the carriage is on the ${this.carriage}`);
        if (this.feeder === null) refuse('every stitch would drop');
        this.knit(this.feeder ?? '', this.carriage, true);
        this.carriage = other(this.carriage);
        return;
      case 'slip':
        if (move.to === this.carriage) refuse(`the carriage is on the ${this.carriage}`);
        this.carriage = other(this.carriage);
        this.counter++;
        return;
      case 'transfer':
        this.transfer(move.from as readonly string[], move.to as readonly string[]);
        return;
      case 'take-off':
        this.off = this.needles.flatMap(({ loops }) => (loops.length > 0 ? [loops] : []));
        if (this.off.length === 0) refuse('there is nothing to take off');
        for (const needle of this.needles) Object.assign(needle, { working: false, loops: [] });
        if (move.to === 'left' || move.to === 'right') {
          if (this.feeder !== null || move.to === this.carriage)
            refuse('the carriage cannot drop the work so');
          this.carriage = move.to;
          this.counter++;
        }
        return;
      case 'rehang':
        this.rehang(move.left ?? '', move.right ?? '');
        return;
      case 'pick-up':
        this.pickUp(move);
        return;
      case 'bind-off': {
        const chain = this.needles.map(({ loops }) => loops);
        if (this.edges().stitches === 0) refuse('there is nothing to chain off');
        if (this.feeder !== null) refuse('the yarn is not cut');
        for (const needle of this.needles) Object.assign(needle, { working: false, loops: [] });
        this.hems.push({ rows: this.rows, off: chain });
        Object.assign(this, this.aside.pop());
        return;
      }
      case 'release':
        if (move.what === 'waste') this.release();
    }
  }

  private rest(names: readonly string[]): void {
    for (const name of names) {
      const needle = this.at(name);
      if (needle.loops.length > 0) refuse(`${name} holds a loop`);
      needle.working = false;
    }
  }

  private knit(yarn: string, from: Side, counts: boolean): void {
    const row = this.rows.length;
    const loops: Loop[] = [];
    for (const [place, needle] of this.needles.entries()) {
      if (!needle.working) {
        if (needle.loops.length > 0) refuse(`${this.name(place)} is out of work and holds a loop`);
        continue;
      }
      const loop = { yarn, row, place, below: needle.loops };
      needle.loops = [loop];
      loops.push(loop);
    }
    if (loops.length === 0) refuse('no needle is in work');
    this.rows.push({ yarn, from, loops });
    if (counts) this.counter++;
  }

  private transfer(from: readonly string[], to: readonly string[]): void {
    const lifted = from.map((name) => {
      const needle = this.at(name);
      if (needle.loops.length === 0) refuse(`${name} holds no loop to lift`);
      const { loops } = needle;
      needle.loops = [];
      return loops;
    });
    for (const [i, name] of to.entries()) {
      const needle = this.at(name);
      if (!needle.working) refuse(`${name} is out of work`);
      needle.loops = [...needle.loops, ...(lifted[i] ?? [])];
    }
  }

  /** The edge of the bag, which a hem is knitted to as a piece of its own; or the loops of the hem's first row, again. */
  private pickUp({ of, left = '', right = '' }: Move): void {
    if (of === 'edge') {
      if (this.edges().stitches > 0) refuse('the bed holds loops');
      this.aside.push({ rows: this.rows, off: this.off });
      Object.assign(this, { rows: [], off: [] });
    }
    for (let place = this.place(left); place <= this.place(right); place++) {
      const needle = this.needles[place] as Needle;
      if (!needle.working) refuse(`${this.name(place)} is out of work`);
      const first = this.rows[0]?.loops.find((loop) => loop.place === place);
      const edge = { yarn: 'edge', row: -1, place, below: [] };
      needle.loops = [...needle.loops, of === 'edge' ? edge : (first ?? refuse('no row was picked up'))];
    }
  }

  private dropPicked({ of, left = '', right = '' }: Move): void {
    for (let place = this.place(left); place <= this.place(right); place++) {
      const needle = this.needles[place] as Needle;
      const picked = needle.loops.at(-1);
      if (picked?.row !== (of === 'edge' ? -1 : 0)) refuse(`${this.name(place)} holds no loop picked up`);
      needle.loops = needle.loops.slice(0, -1);
    }
    if (of !== 'edge') return;
    if (this.rows.length > 0) refuse('the hem is still knitted on');
    Object.assign(this, this.aside.pop());
  }

  /** The last row of the bag hangs, the waste folded back. */
  private rehang(left: string, right: string): void {
    if (this.edges().stitches > 0) refuse('the bed holds loops');
    const hung = this.off.flatMap((loops) => this.ofBag(loops)).map((loop) => [loop]);
    const [first, last] = [this.place(left), this.place(right)];
    if (hung.length !== last - first + 1) refuse(`${hung.length} loops, ${last - first + 1} needles`);
    for (let place = first; place <= last; place++) {
      const needle = this.needles[place] as Needle;
      if (!needle.working) refuse(`${this.name(place)} is out of work`);
      needle.loops = hung[place - first] ?? [];
    }
    this.off = [];
  }

  private ofBag(loops: readonly Loop[]): readonly Loop[] {
    return loops.flatMap((loop) => (this.waste.has(loop.yarn) ? this.ofBag(loop.below) : [loop]));
  }

  /** Waste that holds nothing any more comes out. */
  private release(): void {
    while (this.waste.has(this.rows.at(-1)?.yarn ?? '')) this.rows.pop();
    this.off = this.off.map((loops) => this.ofBag(loops));
  }

  private backward(move: Move): void {
    const { needles = [], yarn = '' } = move;
    switch (move.undo) {
      case 'work':
        this.rest(needles);
        return;
      case 'rest':
        for (const name of needles) this.at(name).working = true;
        return;
      case 'stand':
      case 'slip':
        this.carriage = move.back ?? 'left';
        return;
      case 'counter':
        this.counter = move.rows ?? 0;
        return;
      case 'feed':
        if (this.feeder !== yarn) refuse(`${yarn} is not in the feeder`);
        this.feeder = null;
        if (move.parkedAt) this.parked.set(yarn, move.parkedAt);
        return;
      case 'park':
        if (this.feeder !== null || !this.parked.delete(yarn))
          refuse(`${yarn} cannot go back into the feeder`);
        this.feeder = yarn;
        return;
      case 'cut':
        if (move.joinedAt !== 'feeder') this.parked.set(yarn, move.joinedAt ?? 'left');
        else if (this.feeder !== null) refuse('the feeder is full');
        else this.feeder = yarn;
        return;
      case 'cast-on':
        this.rows.pop();
        for (const needle of this.needles) needle.loops = [];
        if (this.rows.length === 0) this.layAside(false);
        return;
      case 'knit':
        this.pullOut(move);
        return;
      case 'transfer':
        this.setBack(move);
        return;
      case 'take-off':
        this.hang(move.hangs ?? []);
        if (move.back !== undefined) this.carriage = move.back;
        return;
      case 'rehang':
        this.off = this.needles.flatMap(({ loops }) => (loops.length > 0 ? [loops] : []));
        if (this.off.length === 0) refuse('there is nothing to take off');
        for (const needle of this.needles) needle.loops = [];
        return;
      case 'pick-up':
        this.dropPicked(move);
        return;
      case 'bind-off': {
        const hem = this.hems.pop() ?? refuse('there is no chain');
        this.aside.push({ rows: this.rows, off: this.off });
        this.rows = hem.rows;
        this.off = [];
        this.hang(move.hangs ?? [], hem.off.flat());
        return;
      }
      case 'stray':
        this.dropStray(move.needle ?? '');
    }
  }

  /** The newest row comes out; what each needle catches must be what hung there. */
  private pullOut({ yarn, back, catches = [] }: Move): void {
    const row = this.rows.at(-1);
    if (!row || row.yarn !== yarn) return refuse(`the newest row is ${row?.yarn}, not ${yarn}`);
    if (this.feeder !== yarn) refuse(`${yarn} is not in the feeder`);
    if (this.carriage === back) refuse(`the carriage is on the ${back}`);
    const newest = new Set(row.loops);
    const held = this.needles.flatMap(({ loops }) => loops);
    if (held.some((loop) => !newest.has(loop))) refuse('a loop of an older row hangs on a needle');
    if (held.length !== row.loops.length) refuse('a loop of the row is not on the bed');
    const below = new Map(
      this.needles.map(({ loops }, place) => [place, loops.flatMap((loop) => loop.below)]),
    );
    for (const needle of this.needles) needle.loops = [];
    this.catchAll(catches, below);
    if ([...below.values()].some((loops) => loops.length > 0)) refuse('a loop was not caught');
    this.rows.pop();
    this.carriage = back ?? this.carriage;
  }

  private catchAll(runs: readonly Run[], below: Map<number, readonly Loop[]>): void {
    for (const { first, last, loops, yarn } of runs)
      for (let place = this.place(first); place <= this.place(last); place++) {
        const caught = below.get(place) ?? [];
        const told = `${this.name(place)}: ${loops} of ${yarn}`;
        if (caught.length !== loops) refuse(`${told} to catch, there are ${caught.length}`);
        if (yarn !== null && caught.some((loop) => loop.yarn !== yarn))
          refuse(`${told}, it is ${caught[0]?.yarn}`);
        Object.assign(this.needles[place] as Needle, { working: true, loops: caught });
        below.delete(place);
      }
  }

  private setBack({ from = [], to = [], lifts = [], rests = [] }: Move): void {
    const lifted = (from as readonly string[]).map((name, i) => {
      const needle = this.at(name);
      const count = lifts[i] ?? 0;
      if (needle.loops.length < count) refuse(`${name} holds fewer than ${count}`);
      const keep = needle.loops.length - count;
      const { loops } = needle;
      needle.loops = loops.slice(0, keep);
      return loops.slice(keep);
    });
    for (const [i, name] of (to as readonly string[]).entries()) {
      const needle = this.at(name);
      Object.assign(needle, { working: true, loops: [...needle.loops, ...(lifted[i] ?? [])] });
    }
    this.rest(rests);
  }

  /** Loops that were off hang again: those of the waste as they were, or the bag's own where the waste is out. */
  private hang(runs: readonly Run[], hung?: readonly Loop[]): void {
    if (this.edges().stitches > 0) refuse('the bed holds loops');
    const isWaste = runs.some(({ yarn }) => yarn !== null && this.waste.has(yarn));
    const loose = hung ?? this.off.flatMap((loops) => (isWaste ? loops : this.ofBag(loops)));
    let next = 0;
    for (const { first, last, loops } of runs)
      for (let place = this.place(first); place <= this.place(last); place++) {
        const hung = loose.slice(next, next + loops);
        next += loops;
        Object.assign(this.needles[place] as Needle, { working: true, loops: hung });
      }
    if (next !== loose.length) refuse(`${loose.length} loops are off, ${next} are hung`);
    if (!hung) this.off = [];
  }

  private dropStray(name: string): void {
    const needle = this.at(name);
    const column: Loop[] = [];
    for (let loop = needle.loops[0]; loop; loop = loop.below[0]) {
      column.push(loop);
      if (loop.below.length > 1) refuse(`${name} holds a stitch of the bag`);
      if (loop.below.some((one) => one.place !== loop?.place)) refuse(`${name} holds a stitch of the bag`);
    }
    const bottom = column.at(-1);
    if (!bottom || bottom.row === 0 || needle.loops.length !== 1) refuse(`nothing loose hangs on ${name}`);
    const gone = new Set(column);
    this.rows = this.rows.map((row) => ({ ...row, loops: row.loops.filter((loop) => !gone.has(loop)) }));
    Object.assign(needle, { working: false, loops: [] });
  }

  /** All rows and needles in a few words: equal texts are equal work. In a row loops are counted from its left. */
  work(): string {
    const aside = [...this.aside, ...this.hems].map(({ rows }) => rows.length);
    return [
      ...aside,
      ...this.fabric(),
      this.needlesNow((loop) => nameOf(loop, this.rows)),
      this.settings(),
    ].join('\n');
  }

  /** The same, where waste on which nothing hangs may have been taken out: loops in the lap are held on a strand. */
  held(): string {
    const bed = this.copy();
    const holds = this.needles.some(({ loops }) => loops.some(({ yarn }) => this.waste.has(yarn)));
    if (!holds) while (this.waste.has(bed.rows.at(-1)?.yarn ?? '')) bed.rows.pop();
    return bed.work();
  }

  fabric(): readonly string[] {
    const told = (loop: Loop): string => nameOf(loop, this.rows);
    return this.rows.map(({ yarn, from, loops }) =>
      [yarn, from, ...loops.map((loop) => `${told(loop)}<${loop.below.map(told).toSorted().join('+')}`)].join(
        ' ',
      ),
    );
  }

  /** What the next pass meets: needles in work, how many loops and of which yarn on each, carriage, yarns. */
  state(): string {
    return [this.needlesNow(({ yarn }) => yarn), this.settings()].join('\n');
  }

  private needlesNow(tell: (loop: Loop) => string): string {
    return this.needles
      .flatMap(({ working, loops }, place) =>
        working ? [`${place}:${loops.map(tell).toSorted().join('+')}`] : [],
      )
      .join(' ');
  }

  private settings(): string {
    const parked = [...this.parked].map(([yarn, end]) => `${yarn}@${end}`).toSorted();
    return [this.carriage, this.feeder, ...parked].join(' ');
  }
}
