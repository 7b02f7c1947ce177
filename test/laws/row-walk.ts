/**
 * A bag worked out by walking through its rows one at a time: where each edge lies, which yarn knits, what is left behind. It
 * shares no sum with the program; rules and their sources are those of the craft (Munden's constants; tails and
 * reserves common practice). For briefs by counts, as the random ones are.
 */
interface WalkedBrief {
  readonly bed: {
    readonly needles: number;
    readonly pitchMm: number;
    readonly marginNeedles: number;
    readonly place: 'centre' | 'end';
    readonly without?: readonly string[];
  };
  readonly swatch: {
    readonly stitches: number;
    readonly rows: number;
    readonly widthCm: number;
    readonly heightCm: number;
    readonly state: State;
    readonly asideCm?: number;
  };
  readonly finishState: State;
  readonly bag: { readonly stitches: number; readonly rows: number; readonly boxedCm?: number };
  readonly crawl: 'left' | 'right';
  readonly homeSide: 'left' | 'right';
  readonly edgeStitches: number;
  readonly shapeEveryRows: number;
  readonly yarns: Readonly<Record<string, { readonly metresPer100g: number }>>;
  readonly stripes: readonly { readonly yarn: string; readonly rows: number }[];
  readonly hem?: { readonly rows: number; readonly yarn?: string };
  readonly waste: { readonly yarn: string; readonly rows: number };
  readonly cord: {
    readonly stitches: number;
    readonly yarn: string;
    readonly tieCm: number;
    readonly draws?: 1 | 2;
  };
}

type State = 'dry-relaxed' | 'wet-relaxed' | 'fully-relaxed';

const rested = {
  'dry-relaxed': { wales: 3.8, courses: 5, loops: 19 },
  'wet-relaxed': { wales: 4.1, courses: 5.3, loops: 21.6 },
  'fully-relaxed': { wales: 4.2, courses: 5.5, loops: 23.1 },
} as const;

/** A stitch in mm, and how far its column leans to the leading edge. */
interface Stitch {
  readonly wide: number;
  readonly high: number;
  readonly lean: number;
}

interface Walked {
  /** From the first loop of an edge to where the graft brings it back. */
  readonly across: number;
  readonly up: number;
  /** Where each eyelet lies on the way. */
  readonly eyelets: readonly (readonly [across: number, up: number])[];
}

/** Row by row up an edge: each climbs by its height along the leaning column, each move but the grafted row's steps aside. */
function walkEdge({ wide, high, lean }: Stitch, rows: number, every: number): Walked {
  let [across, up] = [0, 0];
  const eyelets: (readonly [number, number])[] = [];
  for (let row = 1; row <= rows; row++) {
    across += high * Math.sin(lean);
    up += high * Math.cos(lean);
    if (row % every !== 0 || row === rows) continue;
    across += wide;
    eyelets.push([across, up]);
  }
  return { across, up, eyelets };
}

function sizeOf(stitch: Stitch, stitches: number, rows: number, every: number) {
  const { across, up } = walkEdge(stitch, rows, every);
  const mouth = Math.hypot(across, up);
  /** Straight across the strip, from the cross product of a row with the way round. */
  const deep = (count: number): number => (count * stitch.wide * up) / mouth;
  return { mouth, width: mouth / 2, deep, across, up, depth: deep(stitches - 1) };
}

/** What a hem adds above the edge: one layer, and half the row that it folds on. */
const hemMm = ({ hem }: WalkedBrief, { high }: Stitch): number => (hem ? hem.rows * high + high / 2 : 0);

const inState = (stitch: Stitch, from: State, to: State): Stitch => ({
  ...stitch,
  wide: stitch.wide * (rested[from].wales / rested[to].wales),
  high: stitch.high * (rested[from].courses / rested[to].courses),
});

export function walkBag(brief: WalkedBrief) {
  const { swatch, bag, edgeStitches, shapeEveryRows: every, finishState, crawl } = brief;
  const { stitches, rows } = bag;
  const lean = Math.atan2(swatch.asideCm ?? 0, swatch.heightCm) * (crawl === 'left' ? 1 : -1);
  const knit = {
    wide: (10 * swatch.widthCm) / swatch.stitches,
    high: (10 * swatch.heightCm) / swatch.rows,
    lean,
  };
  const stitch = finishState === swatch.state ? knit : inState(knit, swatch.state, finishState);
  const size = sizeOf(stitch, stitches, rows, every);
  const { eyelets: holes } = walkEdge(stitch, rows, every);
  const loopMm = Math.sqrt(rested[swatch.state].loops * knit.wide * knit.high);
  const repeat = brief.stripes.flatMap(({ yarn, rows: own }) => Array<string>(own).fill(yarn));
  const yarnOf = (row: number): string => repeat[(row - 1) % repeat.length] ?? '';
  const tails = tailsOf(brief, loopMm, size.width / 10);
  const eyelets = eyeletsOf(holes, [size.across, size.up], stitch, brief);
  const cord = cordOf(brief, eyelets.takeUpCm, size.mouth / 10, stitch, loopMm);
  const sized = (each: Stitch) => {
    const own = sizeOf(each, stitches, rows, every);
    return { width: own.width, depth: own.depth + hemMm(brief, each) };
  };
  const doubts = doubtsOf(brief, sized, stitch);
  const hem = hemOf(brief, size, stitch, loopMm);
  const fine = [...Array(rows).keys()].map((i) => 1e5 / (brief.yarns[yarnOf(i + 1)]?.metresPer100g ?? 0));
  const tex = fine.reduce((sum, own) => sum + own, 0) / rows;
  const knitSize = sized(knit);
  return {
    stitches,
    rows,
    knittedRows: rows - 1,
    shapings: holes.length,
    shapeEveryRows: every,
    edgeStitches,
    gauge: {
      stitchMm: stitch.wide,
      rowMm: stitch.high,
      stitchesPer10Cm: 100 / stitch.wide,
      rowsPer10Cm: 100 / stitch.high,
    },
    size: {
      widthCm: size.width / 10,
      depthCm: (size.depth + hemMm(brief, stitch)) / 10,
      ...doubts,
      depthBelowCordCm: size.deep(stitches - 1.5 - edgeStitches) / 10,
      mouthCm: size.mouth / 10,
      stripeAngleDeg: (Math.atan2(size.up, size.across) * 180) / Math.PI,
      wantedWidthCm: null,
      wantedDepthCm: null,
      wantedDepthBelowCordCm: null,
    },
    ...(finishState === swatch.state
      ? {}
      : {
          asKnitted: {
            stitchMm: knit.wide,
            rowMm: knit.high,
            widthCm: knitSize.width / 10,
            depthCm: knitSize.depth / 10,
          },
        }),
    stripes: stripesOf(rows, brief.stripes),
    neighbours: neighboursOf(brief, stitch, repeat.length),
    bed: { needlesUsed: stitches + holes.length, hangings: hangingsOf(brief) },
    yarn: yarnOfBag(brief, {
      yarnOf,
      loopMm,
      rowMm: stitch.high,
      cordMetres: cord.metres,
      hemMetres: hem?.metres ?? 0,
      ...tails,
    }),
    loopLengthMm: loopMm,
    loopLengthMeasured: false,
    modelLoopLengthMm: loopMm,
    tightness: Math.sqrt(tex) / loopMm,
    // Grams of a loop over the square metre that it covers.
    fabricGramsPerM2: ((loopMm / 1e6) * tex) / ((knit.wide * knit.high) / 1e6),
    aim: aimOf(tex, swatch.state),
    ravelCord: { lengthCm: (1.1 * stitches * loopMm) / 10 + 40 },
    graft: { ...tails.graft, cutCm: tails.cutCm },
    seam: tails.seam,
    // A centimetre of seam all round.
    lining: {
      pieces: 2,
      widthCm: size.width / 10 + 1 + 1,
      depthCm: size.deep(stitches - 1.5 - edgeStitches) / 10 + 1 + 1,
      seamCm: 1,
    },
    hem,
    ...boxedOf(bag.boxedCm, sized(stitch), size.deep(stitches - 1.5 - edgeStitches)),
    cord,
    eyelets: eyelets.told,
  };
}

/** In cm, from sizes in mm; a corner's thread is twice its seam and 15 cm. */
function boxedOf(
  boxedCm: number | undefined,
  { width, depth }: { readonly width: number; readonly depth: number },
  belowCord: number,
) {
  if (boxedCm === undefined) return { boxed: null };
  const halfMm = 5 * boxedCm;
  return {
    boxed: {
      baseWidthCm: (width - 2 * halfMm) / 10,
      baseDepthCm: boxedCm,
      sideCm: (depth - halfMm) / 10,
      sideBelowCordCm: (belowCord - halfMm) / 10,
      cornerSeamCm: boxedCm,
      fromTipCm: halfMm / 10,
      cornerTailCm: boxedCm + boxedCm + 15,
    },
  };
}

/** Loops laid along the mouth one by one, none twice from a row; knitted to and fro over as few needles at a time as the bed has. */
function hemOf(
  brief: WalkedBrief,
  size: { readonly mouth: number; readonly depth: number; readonly deep: (count: number) => number },
  stitch: Stitch,
  loopMm: number,
) {
  const { hem, bed, bag, stripes, edgeStitches } = brief;
  if (!hem) return null;
  let loops = 0;
  while (loops < bag.rows - 1 && (loops + 0.5) * stitch.wide <= size.mouth) loops++;
  loops = Math.min(bag.rows - 1, Math.max(2, loops));
  const usable = bed.needles - 2 * bed.marginNeedles;
  const parts: number[] = [];
  while (parts.length * usable < loops) parts.push(0);
  for (let loop = 1, cut = 0; loop <= loops; loop++) {
    while (loop * parts.length > (cut + 1) * loops) cut++;
    parts[cut] = (parts[cut] ?? 0) + 1;
  }
  const passes = hem.rows + 1 + hem.rows + 1;
  const above = size.depth - size.deep(bag.stitches - 1.5 - edgeStitches);
  return {
    yarn: hem.yarn ?? stripes[0]?.yarn,
    rows: hem.rows,
    stitches: loops,
    sections: parts,
    passes,
    heightCm: hemMm(brief, stitch) / 10,
    foldToCordCm: (above + hemMm(brief, stitch)) / 10,
    metres: (passes * loops * loopMm + parts.length * 300) / 1000,
  };
}

function aimOf(tex: number, state: State) {
  const loopMm = Math.sqrt(tex) / 1.2;
  const { wales, courses } = rested[state];
  return { tightness: 1.2, tenStitchesMm: (10 * loopMm) / wales, tenRowsMm: (10 * loopMm) / courses };
}

function stripesOf(rows: number, repeat: WalkedBrief['stripes']) {
  const stripes: object[] = [];
  let row = 0;
  while (row < rows) {
    const { yarn, rows: own } = repeat[stripes.length % repeat.length] ?? { yarn: '', rows: rows };
    stripes.push({ yarn, rows: own, number: stripes.length + 1, firstRow: row + 1, lastRow: row + own });
    row += own;
  }
  return stripes;
}

/**
 * Hung as few times as can be; of the rows at which it may then come off, the carriage home, the last one that ends a stripe and
 * follows a move, else the last one. The needles that a hanging covers stand about the middle, or from the trailing end.
 */
function hangingsOf(brief: WalkedBrief) {
  const { bed, bag, crawl, shapeEveryRows: every } = brief;
  const { stitches, rows } = bag;
  const room = bed.needles - 2 * bed.marginNeedles - stitches;
  const stripeEnds = new Set(
    stripesOf(rows, brief.stripes).map((stripe) => (stripe as { lastRow: number }).lastRow),
  );
  /** Moves made while rows `from` to `through` are knitted, the one before row `from` too where the work was hung for it. */
  const movesIn = (from: number, through: number): number => {
    let moves = 0;
    for (let row = from; row <= through; row++) if (row > 1 && (row - 1) % every === 0) moves++;
    return moves;
  };
  const timesFrom = (from: number): number => {
    let [times, moves] = [1, 0];
    for (let row = from; row < rows; row++) {
      if (row === 1 || (row - 1) % every !== 0) continue;
      if (moves === room) [times, moves] = [times + 1, 0];
      moves++;
    }
    return times;
  };
  const name = (place: number): string => {
    const left = Math.floor(bed.needles / 2);
    return place < left ? `L${left - place}` : `R${place - left + 1}`;
  };
  const hangings: object[] = [];
  for (let from = 1, times = timesFrom(1); times > 0; times--) {
    let through = rows - 1;
    if (times > 1) {
      const may = (row: number): boolean => movesIn(from, row) <= room && timesFrom(row + 1) < times;
      const even = [...Array(rows - from).keys()].map((i) => from + i).filter((row) => row % 2 === 0);
      const last = even.findLast(may) ?? 0;
      through =
        even.findLast((row) => row <= last && stripeEnds.has(row) && movesIn(from, row) > 0 && may(row)) ??
        last;
    }
    const moves = movesIn(from, through);
    const covered = stitches + moves;
    const atEnd = crawl === 'left' ? bed.needles - bed.marginNeedles - covered : bed.marginNeedles;
    const leftmost = bed.place === 'centre' ? Math.floor((bed.needles - covered) / 2) : atEnd;
    const step = crawl === 'left' ? -1 : 1;
    const hung = crawl === 'left' ? leftmost + moves : leftmost;
    const first = hung + (from > 1 && (from - 1) % every === 0 ? step : 0);
    const final = hung + moves * step;
    hangings.push({
      fromRow: from,
      throughRow: through,
      firstLeft: name(first),
      firstRight: name(first + stitches - 1),
      lastLeft: name(final),
      lastRight: name(final + stitches - 1),
    });
    from = through + 1;
  }
  return hangings;
}

function neighboursOf(brief: WalkedBrief, stitch: Stitch, repeatRows: number) {
  const { stitches, rows } = brief.bag;
  const every = brief.shapeEveryRows;
  let step = repeatRows;
  while (step % every !== 0) step += repeatRows;
  const usable = brief.bed.needles - 2 * brief.bed.marginNeedles;
  return [rows - step, rows + step]
    .filter((other) => other >= 2 * every)
    .map((other) => {
      const size = sizeOf(stitch, stitches, other, every);
      const fitsBed = stitches < usable;
      const depthCm = (size.depth + hemMm(brief, stitch)) / 10;
      return { stitches, rows: other, widthCm: size.width / 10, depthCm, fitsBed };
    });
}

function tailsOf({ bed, bag, homeSide, crawl }: WalkedBrief, loopMm: number, widthCm: number) {
  const { stitches, rows } = bag;
  const ruleCm = (3 * stitches * bed.pitchMm) / 10;
  const modelCm = (1.1 * stitches * loopMm) / 10;
  const tailCm = Math.max(ruleCm, modelCm) + 15;
  const goesOnToSeam = homeSide !== crawl;
  const seam = { barsPerSide: rows / 2, lengthCm: widthCm, tailCm: 2 * widthCm + 15 };
  const graft = { entries: 2 * stitches - 1, ruleCm, modelCm, tailCm, goesOnToSeam };
  const cornersCm = bag.boxedCm === undefined ? 0 : 2 * (2 * bag.boxedCm + 15);
  return { graft, seam, cornersCm, cutCm: goesOnToSeam ? tailCm + seam.tailCm : tailCm };
}

/** Yarn by yarn, row by row: loops, the strand that climbs while others knit, an end at each side. */
function yarnOfBag(
  brief: WalkedBrief,
  work: {
    readonly yarnOf: (row: number) => string;
    readonly loopMm: number;
    readonly rowMm: number;
    readonly cordMetres: number;
    readonly hemMetres: number;
    readonly graft: { readonly tailCm: number };
    readonly seam: { readonly tailCm: number };
    readonly cornersCm: number;
  },
) {
  const { stitches, rows } = brief.bag;
  const needs = Object.entries(brief.yarns).map(([yarn, { metresPer100g }]) => {
    let mm = 0;
    let lastRow = 0;
    for (let row = 1; row <= rows; row++) {
      if (work.yarnOf(row) !== yarn) continue;
      if (lastRow === 0) mm += 150;
      else mm += (row - lastRow - 1) * work.rowMm;
      if (row < rows) mm += stitches * work.loopMm;
      lastRow = row;
    }
    if (lastRow === rows) mm += 10 * (work.graft.tailCm + work.seam.tailCm + work.cornersCm);
    else if (lastRow > 0) mm += 150;
    if (brief.hem && (brief.hem.yarn ?? brief.stripes[0]?.yarn) === yarn) mm += 1000 * work.hemMetres;
    if (brief.cord.yarn === yarn) mm += (brief.cord.draws ?? 1) * (1000 * work.cordMetres + 300);
    const grams = (mm / 1000 / metresPer100g) * 100;
    const unweighed = { haveGrams: null, enough: null, shortGrams: null };
    return { yarn, metres: mm / 1000, grams, withReserveGrams: 1.15 * grams, ...unweighed };
  });
  return needs;
}

/** An even number of holes; every second one where winding through all would make the cord's way a tenth longer. */
function eyeletsOf(
  holes: Walked['eyelets'],
  [across, up]: readonly [number, number],
  { wide }: Stitch,
  { cord, shapeEveryRows: every }: WalkedBrief,
) {
  const made = holes.length;
  const thickMm = (1.2 * wide * cord.stitches) / 3;
  const at = (hole: number): readonly [number, number] => {
    const [x, y] = holes[(hole - 1) % made] ?? [0, 0];
    return hole > made ? [x + across, y + up] : [x, y];
  };
  const between = (one: number, other: number): number =>
    Math.hypot(at(other)[0] - at(one)[0], at(other)[1] - at(one)[1]);
  // With a single hole the next one is that of the next interval: a stitch on and `every` rows up.
  const perRow = [(across - made * wide) / (every * (made + 1)), up / (every * (made + 1))] as const;
  const spacing = Math.hypot(wide + every * perRow[0], every * perRow[1]);
  const atGraft = Math.hypot(wide + 2 * every * perRow[0], 2 * every * perRow[1]);
  const isThick = Math.hypot(spacing, thickMm) > 1.1 * spacing;
  const count = 2 * Math.floor((made + 1) / 4);
  const used: number[] = [];
  if (isThick && count >= 8) {
    for (let part = 0; part < count; part++) {
      let hole = 0;
      while ((hole + 1) * count <= (part + 0.5) * (made + 1)) hole++;
      used.push(hole);
    }
  } else {
    for (let hole = 1; hole <= made; hole++) if (made % 2 === 0 || 2 * hole !== made + 1) used.push(hole);
  }
  const gaps = used.slice(1).map((hole, i) => between(used[i] ?? 0, hole) / 10);
  const round = used.length > 0 ? between(used.at(-1) ?? 0, (used[0] ?? 0) + made) / 10 : 0;
  const winds = (spanned: readonly number[]): number =>
    spanned.reduce((sum, gap) => sum + Math.hypot(gap, thickMm / 10) - gap, 0);
  // A second cord begins at a hole that is second, fourth … from the graft, as near to half the holes' way as there is one.
  const offHalf = (i: number): number => Math.abs((used[i - 1] ?? 0) + (used[i] ?? 0) - made - 1);
  let second: number | undefined;
  for (let i = 1; cord.draws === 2 && i < used.length; i += 2)
    if (second === undefined || offHalf(i) < offHalf(second)) second = i;
  const ofSecond = [...gaps.filter((_, i) => i + 1 !== second), round];
  const steps = used.map((hole, i) => (used[i + 1] ?? (used[0] ?? 0) + made + 1) - hole);
  return {
    takeUpCm: Math.max(winds(gaps), second === undefined ? 0 : winds(ofSecond)),
    told: {
      made,
      used,
      skipped: [...Array(made).keys()].map((i) => i + 1).filter((hole) => !used.includes(hole)),
      widestGapIntervals: Math.max(0, ...steps),
      spacingCm: spacing / 10,
      graftGapCm: atGraft / 10,
      widestGapCm: Math.max(round, ...gaps),
      acrossCm: round,
      gapsCm: gaps,
      secondFrom: second === undefined ? null : (used[second] ?? null),
    },
  };
}

/** A tube of two passes a round with a strand across its back, or flat where the bed cannot slip, and sewn. */
function cordOf(
  { cord, bed }: WalkedBrief,
  takeUpCm: number,
  mouthCm: number,
  stitch: Stitch,
  loopMm: number,
) {
  const lengthCm = mouthCm + takeUpCm + 2 * cord.tieCm;
  const isFlat = bed.without?.includes('slip') ?? false;
  let rounds = 0;
  // A flat one goes to and fro: the carriage ends where it began.
  while (rounds * stitch.high < 10 * lengthCm - 1e-7 || (isFlat && rounds % 2 === 1)) rounds++;
  const { stitches, yarn, draws = 1 } = cord;
  const roundMm = stitches * loopMm + (isFlat ? 0 : (stitches - 1) * stitch.wide);
  const flatSeamCm = isFlat ? 2 * lengthCm + 15 : null;
  const metres = (rounds * roundMm + 10 * (flatSeamCm ?? 0)) / 1000;
  const passes = isFlat ? rounds : 2 * rounds;
  return { draws, stitches, yarn, lengthCm, takeUpCm, rounds, passes, flatSeamCm, metres };
}

/** Two standard uncertainties, each source moved a little to both sides and the size walked again. */
function doubtsOf(
  { swatch }: WalkedBrief,
  size: (stitch: Stitch) => { readonly width: number; readonly depth: number },
  stitch: Stitch,
) {
  const [bothEnds, half] = [Math.sqrt(2 / 3), 0.5 / Math.sqrt(3)];
  const relative = (mm: number, count: number): number => Math.hypot(bothEnds / mm, half / count, 0.02);
  const seen = swatch.asideCm !== undefined && swatch.asideCm !== 0;
  const sources: readonly (readonly [(by: number) => Stitch, number])[] = [
    [(by) => ({ ...stitch, wide: stitch.wide * (1 + by) }), relative(10 * swatch.widthCm, swatch.stitches)],
    [(by) => ({ ...stitch, high: stitch.high * (1 + by) }), relative(10 * swatch.heightCm, swatch.rows)],
    [(by) => ({ ...stitch, wide: stitch.wide * (1 + by), high: stitch.high * (1 + by) }), 0.01],
    [(by) => ({ ...stitch, lean: stitch.lean + by }), (((seen ? 0.5 : 2) / Math.sqrt(3)) * Math.PI) / 180],
  ];
  const little = 1e-5;
  const doubt = (side: 'width' | 'depth'): number => {
    const parts = sources.map(
      ([moved, uncertainty]) =>
        ((size(moved(little))[side] - size(moved(-little))[side]) / (2 * little)) * uncertainty,
    );
    return (2 * Math.hypot(...parts)) / 10;
  };
  return { widthUncertaintyCm: doubt('width'), depthUncertaintyCm: doubt('depth') };
}
