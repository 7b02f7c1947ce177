/** Words for what is on the bench and for what the hands do there. */
import type { Words } from '../../wording/words.ts';
import type { Word } from '../word.ts';

export const benchWords: readonly Word[] = [
  {
    id: 'bed',
    names: (words: Words) => words.say`bed, needle bed`,
    means: (words: Words) =>
      words.say`The long row of needles that the knitting hangs on. The needles count outward from the middle: L1, L2 … to the left, R1, R2 … to the right.`,
  },
  {
    id: 'left',
    names: (words: Words) => words.say`left and right, left, right, side`,
    means: (words: Words) => words.say`Left and right are always yours, as you face the bed.`,
  },
  {
    id: 'needle',
    names: (words: Words) => words.say`needle, needle hook, latch`,
    means: (words: Words) =>
      words.say`A hook in the bed, with a latch that closes over the yarn. It holds one loop. There is no needle 0.`,
  },
  {
    id: 'working',
    names: (words: Words) => words.say`working, working needle, needle in work`,
    means: (words: Words) =>
      words.say`A working needle takes part in the next pass. If it is empty, the pass lays a new loop on it.`,
  },
  {
    id: 'resting',
    names: (words: Words) => words.say`resting, resting needle`,
    means: (words: Words) =>
      words.say`A resting needle is pushed back out of the way: the carriage passes it by.`,
  },
  {
    id: 'carriage',
    names: (words: Words) => words.say`carriage, knitting carriage`,
    means: (words: Words) =>
      words.say`The part that slides along the bed and makes the needles knit. Never move it with nothing in the feeder: every stitch would drop.`,
  },
  {
    id: 'pass',
    names: (words: Words) => words.say`pass, pass of the carriage`,
    means: (words: Words) => words.say`The carriage crosses the bed once. A pass that knits makes one row.`,
  },
  {
    id: 'row',
    names: (words: Words) => words.say`row, course`,
    means: (words: Words) => words.say`The stitches that one pass knits, from edge to edge.`,
  },
  {
    id: 'feeder',
    names: (words: Words) => words.say`feeder, thread, yarn feeder`,
    means: (words: Words) =>
      words.say`Where the yarn enters the carriage. To thread a yarn is to put it in there.`,
  },
  {
    id: 'mast',
    names: (words: Words) => words.say`mast, tension mast, arm`,
    means: (words: Words) =>
      words.say`The stand that the yarn runs over, with one springy arm for each yarn to keep it taut.`,
  },
  {
    id: 'park',
    names: (words: Words) => words.say`parked yarn, parked, park`,
    means: (words: Words) =>
      words.say`A yarn that is neither in the feeder nor cut is parked. It waits at its own end of the bed, so that two yarns do not twist round each other.`,
  },
  {
    id: 'margin',
    names: (words: Words) => words.say`margin, needle margin`,
    means: (words: Words) =>
      words.say`Needles left free at both ends of the bed, so that the carriage can move clear of the work.`,
  },
  {
    id: 'loop',
    names: (words: Words) => words.say`loop, loop of yarn`,
    means: (words: Words) =>
      words.say`The bend of yarn that hangs on a needle. The next pass draws a new loop through it: a stitch.`,
  },
  {
    id: 'open',
    names: (words: Words) => words.say`open loop`,
    means: (words: Words) =>
      words.say`A loop that no needle and no later row holds: it could run down. Waste rows keep open loops safe.`,
  },
  {
    id: 'stitch',
    names: (words: Words) => words.say`stitch, knit stitch`,
    means: (words: Words) =>
      words.say`A loop drawn through the one below it. The number of stitches, one for each needle, makes the depth of the bag.`,
  },
  {
    id: 'cast-on',
    names: (words: Words) => words.say`cast-on, cast on, casting on`,
    means: (words: Words) => words.say`How knitting begins: the first loops, one on each needle.`,
  },
  {
    id: 'e-wrap',
    names: (words: Words) => words.say`e-wrap, e-wrap cast-on`,
    means: (words: Words) =>
      words.say`A cast-on by hand: wind the yarn once round each needle, one after the other, like a row of small letters e.`,
  },
  {
    id: 'comb',
    names: (words: Words) => words.say`comb, cast-on comb`,
    means: (words: Words) =>
      words.say`A bar with teeth, hung on the first loops so that it draws them all down evenly.`,
  },
  {
    id: 'claw-weight',
    names: (words: Words) => words.say`claw weight, weight`,
    means: (words: Words) =>
      words.say`A small weight with hooks, hung at each edge to draw it down. It is moved up every 10 to 20 rows, and stays under the needles being worked.`,
  },
  {
    id: 'waste-yarn',
    names: (words: Words) => words.say`waste yarn, waste, waste row`,
    means: (words: Words) =>
      words.say`Yarn to throw away. A few rows of it hold the open loops, and are unpicked later.`,
  },
  {
    id: 'ravel-cord',
    names: (words: Words) => words.say`ravel cord, ravel row, ravelling cord`,
    means: (words: Words) =>
      words.say`A strand knitted for one row between the waste and the work. Pulled out later, it lets the waste come away.`,
  },
  {
    id: 'edge-stitches',
    names: (words: Words) => words.say`edge stitches, edge stitch`,
    means: (words: Words) =>
      words.say`The stitches that move together at an edge: as many as the transfer tool has prongs, usually 2.`,
  },
  {
    id: 'transfer-tool',
    names: (words: Words) => words.say`transfer tool, tool, prong, transfer`,
    means: (words: Words) =>
      words.say`A handle with one prong or more. It lifts loops off their needles and sets them on others.`,
  },
  {
    id: 'increase',
    names: (words: Words) => words.say`increase, one out, one needle out, gain`,
    means: (words: Words) =>
      words.say`One out: the edge grows by a needle. The outermost loops move one needle out, and the needle they uncover stays in work and empty.`,
  },
  {
    id: 'decrease',
    names: (words: Words) => words.say`decrease, one in, one needle in, loss`,
    means: (words: Words) =>
      words.say`One in: the edge shrinks by a needle. The outermost loops move one needle in, one needle then holds two, and the emptied one goes out of work.`,
  },
  {
    id: 'shaping-move',
    names: (words: Words) => words.say`shaping move, shaping, move`,
    means: (words: Words) =>
      words.say`An increase at the leading edge and a decrease at the trailing edge. The number of stitches stays the same, and the work crawls on by one needle.`,
  },
  {
    id: 'crawl',
    names: (words: Words) => words.say`crawl, crawling`,
    means: (words: Words) =>
      words.say`Shaping moves make the work wander along the bed, to the left or to the right. That is what slants the strip, and lets the stripes wind round the bag.`,
  },
  {
    id: 'leading-edge',
    names: (words: Words) => words.say`leading edge, mouth`,
    means: (words: Words) =>
      words.say`The edge that the work crawls towards. It gets the eyelets and becomes the mouth of the bag.`,
  },
  {
    id: 'trailing-edge',
    names: (words: Words) => words.say`trailing edge, bottom`,
    means: (words: Words) =>
      words.say`The edge that the work crawls away from. It is sewn together and becomes the bottom of the bag.`,
  },
  {
    id: 'home-side',
    names: (words: Words) => words.say`home side, home`,
    means: (words: Words) =>
      words.say`The side on which the carriage waits between stripes. With home on the trailing side, the strands between stripes end up hidden in the bottom seam.`,
  },
  {
    id: 'rehang',
    names: (words: Words) => words.say`rehang, hanging, scrap off, hang again`,
    means: (words: Words) =>
      words.say`When the bed runs out, the work is taken off on waste rows and hung again at the end where it began, with room to crawl on.`,
  },
  {
    id: 'drop',
    names: (words: Words) => words.say`dropped stitch, drop, ladder, latch tool`,
    means: (words: Words) =>
      words.say`A stitch that has slipped off its needle and runs down, leaving a ladder of bare strands. A latch tool, a hook with a handle, catches it up again.`,
  },
  {
    id: 'rip',
    names: (words: Words) => words.say`rip back, rip, unravel`,
    means: (words: Words) =>
      words.say`To take rows out again, one at a time, catching every loop. The command rip guides you through it.`,
  },
  {
    id: 'row-counter',
    names: (words: Words) => words.say`row counter, counter`,
    means: (words: Words) =>
      words.say`The dial at the bed that a passing carriage turns on by one. Ripping back, you turn it back by hand.`,
  },
  {
    id: 'foot-switch',
    names: (words: Words) => words.say`foot switch, pedal, switch`,
    means: (words: Words) =>
      words.say`A switch for the foot that types a key, so that you confirm steps with both hands full. Type pedal confirm to assign one.`,
  },
];
