/** The words of the trade: the names by which each is found, and what it means. */
import { firmTightness, labelTightness } from '../planning/fabric.ts';
import type { Amounts } from './amounts.ts';

export const glossary = ({ decimal }: Amounts) => ({
  bed: {
    names: 'bed, needle bed',
    means:
      'The long row of needles that the knitting hangs on. The needles count outward from the middle: L1, L2 … to the left, R1, R2 … to the right.',
  },
  left: {
    names: 'left and right, left, right, side',
    means: 'Left and right are always yours, as you face the bed.',
  },
  needle: {
    names: 'needle, needle hook, latch',
    means:
      'A hook in the bed, with a latch that closes over the yarn. It holds one loop. There is no needle 0.',
  },
  'in-work': {
    names: 'in work, working, working needle, needle in work, working position, into work',
    means: 'A working needle takes part in the next pass. If it is empty, the pass lays a new loop on it.',
  },
  'out-of-work': {
    names: 'out of work, needle out of work, non-working position',
    means: 'A needle out of work is pushed back out of the way: the carriage passes it by.',
  },
  holding: {
    names: 'holding, holding position, hold, resting',
    means:
      'A needle in holding position keeps its stitch and does not knit. This bag needs none; some machines mark it with a letter.',
  },
  carriage: {
    names: 'carriage, knitting carriage',
    means:
      'The part that slides along the bed and makes the needles knit. Never move it with an empty feeder: every stitch would drop.',
  },
  pass: {
    names: 'pass, pass of the carriage',
    means: 'The carriage crosses the bed once. A pass that knits makes one row.',
  },
  row: {
    names: 'row, course',
    means: 'The stitches that one pass knits, from edge to edge.',
  },
  feeder: {
    names: 'feeder, thread, yarn feeder',
    means: 'Where the yarn enters the carriage. To thread a yarn is to put it in there.',
  },
  mast: {
    names: 'mast, tension mast, arm, take-up spring',
    means:
      'The stand that the yarn runs over. Each yarn has an arm of its own, the take-up spring, that keeps it taut.',
  },
  park: {
    names: 'parked yarn, parked, park, yarn clip, clip',
    means:
      'A yarn that is out of the feeder but not cut is parked. It waits in a clip on the side of the carriage, each yarn in a clip and a mast arm of its own, so that two yarns do not twist.',
  },
  margin: {
    names: 'margin, needle margin',
    means: 'Needles left free at both ends of the bed, so that the carriage can move clear of the work.',
  },
  loop: {
    names: 'loop, loop of yarn',
    means: 'The bend of yarn that hangs on a needle. The next pass draws a new loop through it: a stitch.',
  },
  open: {
    names: 'open loop',
    means:
      'A loop that hangs free, off the needles and with no row above it: it could run down. Waste rows keep open loops safe.',
  },
  stitch: {
    names: 'stitch, knit stitch',
    means:
      'A loop drawn through the one below it. The number of stitches, one for each needle, makes the depth of the bag.',
  },
  'cast-on': {
    names: 'cast-on, cast on, casting on',
    means: 'How knitting begins: the first loops, one on each needle.',
  },
  'bind-off': {
    names: 'bind off, cast off, binding off, casting off',
    means:
      'To close the last loops with a chain. The bag itself has no such edge: its last loops are grafted to its first. A hem has one.',
  },
  'e-wrap': {
    names: 'e-wrap, e-wrap cast-on',
    means:
      'A cast-on by hand: wind the yarn once round each needle, one after the other, like a row of small letters e.',
  },
  comb: {
    names: 'comb, cast-on comb',
    means: 'A bar with teeth, hung on the first loops so that it draws them all down evenly.',
  },
  'claw-weight': {
    names: 'claw weight, weight',
    means:
      'A small weight with hooks, hung at each edge to draw it down. It is moved up every 10 rows, and stays under the needles being worked.',
  },
  'waste-yarn': {
    names: 'waste yarn, waste, waste row',
    means: 'Yarn to throw away. A few rows of it hold the open loops, and are unpicked later.',
  },
  'ravel-cord': {
    names: 'ravel row, ravel cord, ravelling cord',
    means:
      'The row between the waste and the work: the last waste row, marked by a loop in a clip, or a row of smooth cord. Pulled out later, it lets the waste come away.',
  },
  'edge-stitches': {
    names: 'edge stitches, edge stitch',
    means: 'The stitches that move together at an edge: as many as the transfer tool has prongs, usually 2.',
  },
  'transfer-tool': {
    names: 'transfer tool, tool, prong, transfer',
    means: 'A handle with one prong or more. It lifts loops off their needles and sets them on others.',
  },
  increase: {
    names: 'increase, one out, one needle out, gain',
    means:
      'One needle out: the edge grows by a needle. The outermost loops move one needle out, and the needle they uncover stays in work and empty.',
  },
  decrease: {
    names: 'decrease, one in, one needle in, loss',
    means:
      'One needle in: the edge shrinks by a needle. The outermost loops move one needle in, one needle then holds two, and the emptied one goes out of work.',
  },
  'shaping-move': {
    names: 'shaping move, shaping, move',
    means:
      'An increase at the leading edge and a decrease at the trailing edge. The number of stitches stays the same, and the work crawls on by one needle.',
  },
  crawl: {
    names: 'crawl, crawling',
    means:
      'Shaping moves make the work wander along the bed, to the left or to the right. That is what slants the strip, and lets the stripes wind round the bag.',
  },
  'leading-edge': {
    names: 'leading edge, mouth',
    means: 'The edge that the work crawls towards. It gets the eyelets and becomes the mouth of the bag.',
  },
  'trailing-edge': {
    names: 'trailing edge, bottom',
    means: 'The edge that the work crawls away from. It is sewn together and becomes the bottom of the bag.',
  },
  'home-side': {
    names: 'home side, home',
    means:
      'The side on which the carriage waits between stripes. With home on the trailing side, the strands between stripes end up hidden in the bottom seam.',
  },
  rehang: {
    names: 'rehang, rehanging, hanging, scrap off, hang again',
    means:
      'When the bed runs out, the work is taken off on waste rows and hung again at the end where it began, with room to crawl on.',
  },
  drop: {
    names: 'dropped stitch, drop, ladder, run, latch tool',
    means:
      'A stitch that has slipped off its needle and runs down, leaving a ladder of bare strands. A latch tool, a latch needle on a handle, catches it up again.',
  },
  lifeline: {
    names: 'lifeline, safety line',
    means:
      'A strand run through a whole row of loops, so that ripping back stops there. Waste rows and the ravel row do the same for the first and the last loops.',
  },
  rip: {
    names: 'rip back, rip, unravel, frog, frogging',
    means:
      'To take rows out again, one at a time, catching every loop. The command rip guides you through it.',
  },
  'row-counter': {
    names: 'row counter, counter',
    means:
      'The dial at the bed that a passing carriage turns on by one. Set it to 0 after the ravel row. Ripping back, you turn it back by hand.',
  },
  'foot-switch': {
    names: 'foot switch, pedal, switch',
    means:
      'A switch for the foot that types a key, so that you confirm steps with both hands full. Type pedal confirm to assign one.',
  },
  swatch: {
    names: 'swatch, test piece, sample, tension swatch',
    means:
      'A test piece of plain knitting, with the yarn and the stitch size of the bag. Let it rest, then count stitches and rows and measure it: every size comes from that.',
  },
  'stitch-size': {
    names: 'stitch size, tension, tension dial, dial',
    means:
      'What the dial on the carriage shows: it sets the length of a loop. Knit the bag at the stitch size of its swatch.',
  },
  gauge: {
    names: 'gauge, stitch gauge, stitches per 10 cm',
    means: 'How many stitches and how many rows go to 10 cm of the rested swatch.',
  },
  plain: {
    names: 'plain knitting, plain, stockinette, stocking stitch, stocking stitches',
    means: 'Every working needle knits in every row, without a pattern.',
  },
  'knit-side': {
    names: 'knit side, purl side, right side, wrong side, right side out',
    means:
      'The knit side shows smooth columns: it is the right side, the outside of the bag. The purl side shows bumps. On the bed the purl side faces you.',
  },
  pitch: {
    names: 'pitch, needle pitch',
    means:
      'How far apart the needles are, from middle to middle, in mm. Measure from the first needle to the eleventh and divide by ten.',
  },
  relaxed: {
    names: 'relaxed state, relaxed, state, dry-relaxed, wet-relaxed, fully-relaxed',
    means:
      'How the swatch rested before it was measured. Dry-relaxed: as it came off. Wet-relaxed: soaked and dried flat. Fully relaxed: washed and tumbled.',
  },
  'loop-length': {
    names: 'loop length, yarn in a stitch',
    means:
      'How much yarn is in one stitch. Unravel one row of the swatch, measure its yarn and divide by its stitches.',
  },
  tightness: {
    names: 'tightness, tightness factor',
    means: `How close the knitting is: the square root of the yarn's tex, divided by the loop length in mm. Hand yarns at the gauge of their labels are ${decimal(labelTightness.least)} to ${decimal(labelTightness.most)}; a bag that keeps its shape wants ${decimal(firmTightness.least)} to ${decimal(firmTightness.most)}.`,
  },
  tex: {
    names: 'tex, tex number',
    means: 'How heavy a yarn is: what 1000 m of it weigh, in grams. A yarn with 200 m to 100 g has 500 tex.',
  },
  metres: {
    names: 'metres per 100 g, metres, yardage',
    means: "How long 100 g of the yarn are. The yarn's label says so; for 50 g, take it twice.",
  },
  class: {
    names:
      'yarn class, weight class, class, ply, 2 ply, 3 ply, 4 ply, 5 ply, 8 ply, 10 ply, 12 ply, fingering, sport, dk, double knitting, worsted, aran, chunky, bulky, lace, jumbo',
    means:
      'How thick a yarn is, from 0 (lace) to 7 (jumbo), by how many stitches it gives to 4 inches. Ply names go by country: 4 ply is mostly 1, 5 ply 2, 8 ply or DK 3, 10 ply 4, 12 ply 5 (rule of thumb).',
  },
  stripe: {
    names: 'stripe, colour stripe',
    means: 'A few rows of one yarn. An even number of rows lets both yarns wait on the home side.',
  },
  repeat: {
    names: 'repeat, stripe repeat',
    means:
      'The stripes in order, until the first comes again. A bag has whole repeats, so that the colours meet at the graft.',
  },
  scraps: {
    names: 'scraps, leftovers',
    means: 'Leftover yarns. Weigh each, and the plan puts them in an order in which no two alike meet.',
  },
  ease: {
    names: 'ease, room',
    means: 'Room between the bag and what goes into it: 10 % if you do not say otherwise (rule of thumb).',
  },
  girth: {
    names: 'girth, way round',
    means: 'The way round what goes into the bag. Lay a tape round it where it is thickest.',
  },
  reserve: {
    names: 'reserve, spare yarn',
    means: 'Yarn beyond what the sum says, so that it does not run out: 10 % (rule of thumb).',
  },
  brief: {
    names: 'brief, brief file',
    means: 'The file that says what you want: your bed, your swatch, the size, the yarns and the stripes.',
  },
  plan: {
    names: 'plan, plan page',
    means:
      'What the program makes of the brief: stitches, rows, needles, yarn and tails. Type plan to read it.',
  },
  log: {
    names: 'log, log file',
    means: 'The file in which every step you confirm is kept as you confirm it. It can be played again.',
  },
  'closing-row': {
    names: 'closing row, last row',
    means:
      'The last row that is knitted. The graft makes the second row of its stripe, so the stripe comes out as high as the others.',
  },
  hem: {
    names: 'hem, folded hem',
    means:
      'Plain rows knitted to the mouth edge and folded in, so that it does not roll. It is made after the closing row, while the strip still lies open; not every bag has one.',
  },
  'pick-up': {
    names: 'pick up, picking up',
    means:
      'To draw the outermost loops of an edge onto needles, purl side towards you, so that rows can be knitted to it.',
  },
  graft: {
    names: 'graft, grafting, grafting seam, kitchener, kitchener stitch',
    means:
      'To sew open loops to open loops along the path that a knitted row would take. The seam is then a row of knitting, and does not show.',
  },
  movement: {
    names: 'movement, needle movement',
    means:
      'What the blunt needle does on one edge of the graft: down through one loop and up through the next, drawn to the size of a stitch.',
  },
  edges: {
    names: 'edges A and B, edge A, edge B',
    means:
      'The two rows of open loops that are grafted. Edge A is where the tail hangs, edge B is the start. On both, the loops count from the tail: A1 is across from B1.',
  },
  'mattress-seam': {
    names: 'mattress seam, seam, mattress',
    means:
      'To sew edge to edge under the bars one stitch in: one from this side, one from the other, in turn. It closes the bottom of the bag.',
  },
  bar: {
    names: 'bar, seam bar',
    means:
      'The short strand between two stitches that lie side by side. Each row has one, one stitch in from the edge.',
  },
  'draw-up': {
    names: 'draw up',
    means: "To pull the seam's thread until the two edges meet, after every 6 to 8 bars, and no tighter.",
  },
  eyelet: {
    names: 'eyelet, hole',
    means:
      'The small hole where an increase has left a working needle empty. The cord runs through the eyelets below the mouth.',
  },
  cord: {
    names: 'cord, tubular cord, i-cord, drawstring',
    means:
      'A narrow tube, knitted on a few needles by slipping one way and knitting the other. It draws the bag shut.',
  },
  slip: {
    names: 'slip, slipping',
    means:
      'The carriage passes over the needles and knits nothing; the yarn is carried past them on the purl side.',
  },
  round: {
    names: 'round, rows round',
    means:
      'For the cord: two passes, slip one way and knit the other, which make it one row longer. For the bag: the rows once round the tube.',
  },
  tie: {
    names: 'tie, bow',
    means: 'The length of cord that hangs out at each end, to tie a bow with.',
  },
  tail: {
    names: 'tail, yarn end, weave in, sew in',
    means:
      'The end of yarn left hanging where a yarn begins or is cut. Some are cut long on purpose, to graft and to sew with.',
  },
});
