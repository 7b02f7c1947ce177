/** Why it is so: the rule of the craft, its formula, and where both come from. */

import { toyCordLimits } from '../planning/cord.ts';
import { firmTightness, labelTightness } from '../planning/fabric.ts';
import { loopConstants } from '../planning/gauge.ts';
import { endTailCm } from '../planning/tails.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './forms.en.ts';

export const reasons = ({ decimal, fabricMass, fixed, length, list, small }: Amounts) => ({
  swatch: {
    names: 'swatch, gauge, stitch width, row height, let it rest',
    guessed: 'a guess from the bed (rule of thumb): ',
    rule: 'On the needles the work is stretched. Only a piece that has rested tells how wide a stitch and how high a row will be.',
    formula: 'stitch width = width / stitches; row height = height / rows',
  },
  rehang: {
    names: 'rehang, hanging, hang again, needles, bed too short, margin',
    rule: 'The work needs a needle more with each move. Where the bed is too short for that, it is taken off and hung again where it began. The margin lets the carriage clear the work.',
    formula: 'needles = stitches + moves; times on the bed ≥ moves / (usable needles − stitches)',
    notHere: (sum: string, usable: number) => `${sum}, and ${usable} are within the margins: no rehang`,
    here: (sum: string, usable: number, hangings: number) =>
      `${sum}, and ${usable} are within the margins: hung ${hangings} times`,
  },
  'two-rows': {
    names: 'two rows, even rows, second row, every second row, every two rows, even number of rows',
    rule: 'After an even number of rows the carriage is home again: its needles are free for the tool, and each yarn waits on the side where it is needed next.',
    here: (everyRows: number) => `a shaping move after every ${counted.row(everyRows)}`,
  },
  'home-side': {
    names: 'home side, home, trailing side',
    rule: 'Between stripes the yarn is carried up along the side where the carriage waits. Home on the trailing side puts these strands into the bottom seam, which hides them.',
    leftToRight: 'the work crawls to the left, home is on the right',
    leftToLeft: 'the work crawls to the left and home is on the left: the strands lie along the mouth',
    rightToLeft: 'the work crawls to the right, home is on the left',
    rightToRight: 'the work crawls to the right and home is on the right: the strands lie along the mouth',
  },
  park: {
    names: 'parked yarn, park, own end',
    rule: 'Each waiting yarn has its own end of the bed, so that the two do not twist round each other.',
  },
  'out-of-work': {
    names: 'out of work, push out of work, one in, decrease',
    rule: 'The needle that a decrease has emptied goes out of work. Left working, the next pass would begin a stray stitch on it.',
  },
  'edge-stitches': {
    names: 'edge stitches, mouth rolls, rolling mouth, prongs, two edge stitches, transfer tool',
    rule: 'The tool moves as many stitches as it has prongs. They make a firm edge above the eyelets: the hole comes on the needle behind them. The edge of the mouth rolls inwards; three roll less into the eyelets than two, a pressed or steamed edge less still, and a hem not at all.',
    formula: 'eyelet = needle number (edge stitches + 1) from the new edge',
  },
  feeder: {
    names: 'feeder, empty feeder, nothing in the feeder',
    rule: 'A pass with an empty feeder drops every stitch: the old loops slip off and no new ones come.',
  },
  weights: {
    names: 'weights, claw weights, comb, move the weights',
    rule: 'Loops knit off well only where something draws them down. The work grows away from its weights, and fastest at the growing edge: so they are moved up every 10 to 20 rows.',
  },
  waste: {
    names: 'waste yarn, waste, waste rows, ravel cord',
    rule: 'Start and end are grafted to each other, so both must stay open. Waste rows hold the loops until then, and the ravel cord lets go of the whole start with one pull.',
    here: (rows: number, closingRows: number) =>
      `${counted.row(rows)} before the start, ${closingRows} after the closing row`,
  },
  'closing-row': {
    names: 'closing row, one row less, last row',
    rule: 'The graft is a row itself, the second of the last stripe. So that stripe is knitted one row short. Knitted in full, the join would show a stripe too high.',
    formula: 'rows knitted = rows round − 1',
  },
  stripes: {
    names: 'stripes, colours, colour of the last stripe',
    rule: 'Neighbours differ in colour, the last stripe and the first too: they meet at the graft, and alike they would read as one wide stripe.',
    here: (first: string, last: string) => `the first is ${first}, the last ${last}`,
  },
  steam: {
    names: 'steam, iron, press',
    rule: 'Steam scalds, and it flattens man-made fibre.',
  },
  children: {
    names: 'children, child, toys, EN 71, small children, cautions, danger',
    rule: 'A cord can catch round a neck. This bag is no toy; where it is sold or given to a child, local rules decide.',
    formula: `toys for the very young: no free cord over ${toyCordLimits.freeCordCm * 10} mm, no noose over ${toyCordLimits.loopCm * 10} mm round, stretched by 25 N`,
    here: (tieCm: number, lengthCm: number) =>
      `free end ${length(tieCm)}, tied loop ${length(lengthCm)} round`,
    source: 'EN 71-1:2005+A8:2009, 5.4 b and c; the edition in force decides',
  },
  pause: {
    names: 'a rest for the hands, rest my hands, rest your hands, hands, pause, half hour',
    rule: 'The same few moves for an hour tire hands and shoulders. A rest every half hour or so keeps them well.',
  },
  tail: {
    names: 'graft tail, tail, 3 times the width, three times the width, 3 times, three times, long tail',
    rule: "The graft's thread runs through a whole row of loops. Three times the width as it lies on the needles is the rule; the yarn of one row and 10 % is the model. The larger counts, and some to hold.",
    formula: `tail = the larger of 3 × stitches × pitch and 1.1 × stitches × loop length, + ${length(endTailCm)}`,
  },
  graft: {
    names: 'graft, entries, movements, number of movements',
    rule: 'A graft follows the path of a knitted row, so no seam shows. The needle enters each loop twice; only the first loop of edge B and the last of edge A are entered once.',
    formula: 'pairs of entries = 2 × stitches − 1',
  },
  seam: {
    names: 'seam, seam tail, mattress seam, bars, bottom, draw up',
    rule: 'Half of the rows face the other half, one bar to a row. The thread goes there and back between the edges: twice the seam, and some to hold. Drawn up every 6 to 8 bars it lies even.',
    formula: `bars = rows round / 2; tail = 2 × width + ${length(endTailCm)}`,
  },
  boxed: {
    names: 'boxed corners, boxed bottom, base, corners',
    rule: 'Each corner is laid flat, the bottom seam on the fold of the side, and sewn across. That takes half the depth of the base off the height all round, and the whole depth off the width.',
    formula: 'base = width − depth of the base; side = depth − half of that',
    here: (widthCm: number, depthCm: number, baseDepthCm: number, baseWidthCm: number, sideCm: number) =>
      `${length(widthCm)} − ${length(baseDepthCm)} = ${length(baseWidthCm)}; ${length(depthCm)} − ${length(baseDepthCm)} / 2 = ${length(sideCm)}`,
    flat: 'flat, with no corners sewn across: bag.boxedCm in the brief gives it a base',
  },
  hem: {
    names: 'hem, folded hem, picked up, hem rows',
    rule: 'Plain knitting rolls at its edge; two layers of it, fold to fold, hold each other flat. The mouth edge is picked up while the strip lies open, a loop for each stitch that fits along it. A loose row makes the fold, and the chain that closes the hem lies on the inside.',
    formula: 'loops = mouth / stitch width, at most one a row; height = (rows of a layer + ½) × row height',
    here: (mouthCm: number, stitch: string, stitches: number, rows: string, row: string, heightCm: number) =>
      `${length(mouthCm)} / ${stitch} = ${stitches}; ${rows} × ${row} = ${length(heightCm)}`,
    asManyAsRows: (stitches: number, rows: string, row: string, heightCm: number) =>
      `one loop from each of ${stitches} rows; ${rows} × ${row} = ${length(heightCm)}`,
    none: 'no hem: hem in the brief, such as "hem": {"rows": 4}, gives it one',
  },
  'two-cords': {
    names: 'two cords, two draws, second cord, both sides',
    rule: 'The second cord goes through the same holes, in where the first comes out, and begins and ends half-way round. One cord alone leaves the gap at its own ends open and pulls the bag aside; two close it from both sides.',
    here: (draws: 1 | 2, secondFrom: number | null) =>
      draws === 2
        ? `two, the second first in through eyelet ${secondFrom ?? ''}`
        : 'one cord; cord.draws 2 in the brief makes it two',
  },
  eyelets: {
    names: 'eyelets, holes, even number of holes, leave empty, in work and empty, one out, increase, gain',
    rule: 'Each increase leaves a working needle empty, and the next pass lays a loop on it: a hole for the cord. In and out through an even number of holes, both cord ends come out on the outside.',
    formula: 'eyelets = moves; the cord uses an even number of them',
    here: (made: string, used: number) => `${made}, and the cord uses ${used}`,
    onePassedBy: (made: string, used: number, passedBy: string[]) =>
      `${made}, the cord uses ${used} and passes by number ${list(passedBy)}, across from the graft`,
  },
  spacing: {
    names: 'wider gap, widest gap, spacing, gap',
    rule: 'From eyelet to eyelet it is one stitch across and the rows of one move up. At the graft no move was made, so the gap there is wider.',
    formula: 'spacing = √(stitch width² + (rows between moves × row height)²)',
    here: (spacingCm: number, graftGapCm: number) =>
      `${length(spacingCm)}, and ${length(graftGapCm)} at the graft`,
  },
  cord: {
    names: 'cord, cord length, rounds, ties',
    rule: 'The cord goes once round the mouth, in and out of the holes, and hangs out at both ends, to tie. Each round makes it longer by one row; measure it, and knit more if it is short.',
    formula: 'length = mouth + way in and out + 2 × tie; rounds = length / height of a round, rounded up',
    here: (mouthCm: number, takeUpCm: number, tieCm: number, lengthCm: number, rounds: number) =>
      `${length(mouthCm)} + ${length(takeUpCm)} + 2 × ${length(tieCm)} = ${length(lengthCm)}; ${counted.round(rounds)}`,
  },
  width: {
    names: 'width, wide, mouth, circumference, size',
    rule: 'Once round the tube, the edges crawl one way while the rows climb the other: the mouth is as long as the slant between. The bag lies flat, so it is half as wide.',
    formula:
      'mouth = √(a² + b² + 2·a·b·sin lean), a = moves × stitch width, b = rows round × row height; width = half of it',
    here: (across: string, up: string, lean: string, learned: string, mouthCm: number, widthCm: number) =>
      `√((${across})² + (${up})²${lean})${learned} = ${length(mouthCm)}; half is ${length(widthCm)}`,
  },
  depth: {
    names: 'depth, deep, height',
    rule: "The strip's area, spread along the mouth, gives the depth. The bottom seam is sewn one stitch in, which takes one stitch away.",
    formula:
      'depth = (stitches − 1) × stitch width × rows round × row height × cos lean / mouth, and the height of a hem',
    here: (each: string, stitches: number, hemCm: number, depthCm: number) =>
      `each stitch is ${each} of depth${hemCm === 0 ? '' : `, and the hem adds ${length(hemCm)}`}: ${stitches} × ${each}${hemCm === 0 ? '' : ` + ${length(hemCm)}`} = ${length(depthCm)}`,
  },
  inside: {
    names: 'depth below the cord, below the cord, inside',
    rule: 'The eyelets lie half a stitch below the edge stitches. What is above the cord does not count as room.',
    formula: 'depth below the cord = depth without a hem − (edge stitches + ½) × depth of a stitch',
  },
  angle: {
    names: 'angle, slant, degrees, bias',
    rule: 'The stripes climb with the rows while the edges crawl sideways. More moves for the same rows make them flatter.',
    formula: 'angle = arctan(b × cos lean / (a + b × sin lean)), from the bottom edge',
    withLean: (up: string, cos: string, across: string, sin: string, degrees: number) =>
      `arctan(${up} × ${cos} / (${across} + ${up} × ${sin})) = ${degrees} degrees`,
    here: (up: string, across: string, degrees: number) => `arctan(${up} / (${across})) = ${degrees} degrees`,
  },
  rows: {
    names: 'whole repeats, repeat, rows, not as wide as asked, smaller, larger',
    rule: 'The last row meets the first at the graft. The colours meet there only after whole repeats of the stripes, so the width goes up in steps.',
    formula: 'rows round = a whole number of repeats, and of rows between moves',
  },
  moves: {
    names: 'shaping moves, moves, number of moves, crawl, shaping',
    rule: 'One stitch out at one edge and one in at the other keep the count the same and slant the strip. After the last row no move is due: it is grafted.',
    formula: 'moves = rows round / rows between moves − 1',
  },
  ease: {
    names: 'ease, room, girth, contents',
    rule: 'The bag must go round what is put in, and close above it: from the flat bottom over half its thickness, up, and over half again. So the width is half the girth, and some more.',
    formula: 'width = girth / 2 × (1 + ease); depth below the cord = height × (1 + ease) + thickness',
    here: (girthCm: number, easePercent: number, wantedWidthCm: number) =>
      `${length(girthCm)} / 2 and ${decimal(easePercent)} %: at least ${length(wantedWidthCm)} wide`,
    notAsked: 'no girth was asked for',
  },
  yarn: {
    names: 'yarn, how much yarn, grams, metres, weight of the yarn, tex',
    rule: `Each yarn: its stitches times the loop length, its strand up past other stripes, ${length(endTailCm)} at each end, and the graft, the seam and the cord where it makes them.`,
    formula: 'grams = metres × tex / 1000; tex = 100 000 / (metres to 100 g)',
    source: 'the definition of tex; tails are common practice',
  },
  reserve: {
    names: 'reserve, 10 %, 15 %, ten percent, more yarn',
    rule: 'Running out of yarn in the last row would spoil the bag. So 10 % is added, or 15 % where the loop was not measured.',
    formula: 'grams with reserve = 1.1 × grams with a measured loop, 1.15 × grams without',
  },
  'loop-length': {
    names: 'loop length, yarn in a stitch, loop, ks, constants, relaxed',
    rule: 'In plain knitting the size of a stitch follows from the yarn in it, by how it has rested. A measured loop counts more than the model: unravel one swatch row and divide by its stitches.',
    formula: `loop = √(ks × stitch width × row height); ks ${fixed(loopConstants['dry-relaxed'].ks, 1)} dry-relaxed, ${fixed(loopConstants['wet-relaxed'].ks, 1)} wet-relaxed, ${fixed(loopConstants['fully-relaxed'].ks, 1)} fully-relaxed`,
    here: (model: string, loopLengthMm: number) => `${model}; measured, and used: ${small(loopLengthMm)}`,
    source:
      'Munden 1959, Journal of the Textile Institute 50, T448, for wool; fully-relaxed by Knapton and others 1968 (from memory)',
  },
  tightness: {
    names: 'tightness, tightness factor, limp, jam',
    rule: 'Thick yarn in short loops is tight, thin yarn in long loops is loose. Too loose and the fabric is limp; too tight and the loops jam, and the carriage with them.',
    formula: `tightness = √tex / loop length in mm; hand yarns ${labelTightness.least} to ${labelTightness.most}, a bag that keeps its shape ${firmTightness.least} to ${firmTightness.most}`,
    source:
      'bands: rule of thumb, from usual labels; jamming: Texcoms Textile Technical Handbook 2023, p. 147',
  },
  fabric: {
    names: 'fabric weight, square metre, weight of the fabric, heavy, fabric',
    rule: 'All loops of a square metre, times the yarn in each, times what the yarn weighs.',
    formula: 'grams to the square metre = loops to the square metre × loop length in m × tex / 1000',
    source: 'Texcoms Textile Technical Handbook 2023, p. 147',
  },
  class: {
    names: 'yarn class, class, weight class, light, medium, bulky',
    rule: "A yarn's class is read from how many whole stitches it gives to 10 cm, which the table also calls 4 inches. The ranges leave gaps and overlap, so a yarn can lie between two.",
    formula: 'stitches to 10 cm = 100 mm / stitch width, to the nearest whole stitch',
    source: 'Craft Yarn Council, Standard Yarn Weight System',
  },
  said: {
    whatIs: 'Ask what any of these means, such as: what is a swatch?',
    noWord: (asked: string) => `${asked} is not among the words here. Type words to see them all.`,
    noWordBut: (asked: string, near: string) => `${asked} is not among the words here. Did you mean ${near}?`,
    whyOf: 'Ask why of any of these, such as: why 3 times the width?',
    onlyAWord: (topics: string) => `Why it is so is not said here. Ask why of: ${topics}`,
    noReason: (topics: string) => `That is not among the reasons here. Ask why of: ${topics}`,
    thisBag: (numbers: string) => `This bag: ${numbers}.`,
    source: (source: string) => `Source: ${source}.`,
  },
  sources: {
    commonPractice: 'common practice, no source',
    ruleOfThumb: 'rule of thumb',
    planeGeometry: 'plane geometry',
    gramsToSquareMetre: (gsm: number) => `${fabricMass(gsm)} g to the square metre`,
    ouncesToSquareYard: (gsm: number) => `${fabricMass(gsm)} oz to the square yard`,
  },
});
