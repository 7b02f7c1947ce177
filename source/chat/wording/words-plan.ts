/** Words for the fabric, the size and the yarn: those that a brief asks for and the plan page tells. */

import { firmTightness, labelTightness } from '../../planning/fabric.ts';
import type { Words } from '../../wording/words.ts';
import type { Word } from '../word.ts';

export const planWords: readonly Word[] = [
  {
    id: 'swatch',
    names: (words: Words) => words.say`swatch, test piece, sample`,
    means: (words: Words) =>
      words.say`A test piece of plain knitting, with the yarn and the setting of the bag. Let it rest, then count stitches and rows and measure it: every size comes from that.`,
  },
  {
    id: 'gauge',
    names: (words: Words) => words.say`gauge, stitch gauge`,
    means: (words: Words) => words.say`How many stitches and how many rows go to 10 cm of the rested swatch.`,
  },
  {
    id: 'plain',
    names: (words: Words) => words.say`plain knitting, plain`,
    means: (words: Words) => words.say`Every working needle knits in every row, without a pattern.`,
  },
  {
    id: 'pitch',
    names: (words: Words) => words.say`pitch, needle pitch`,
    means: (words: Words) =>
      words.say`How far apart the needles are, from middle to middle, in mm. Measure from the first needle to the eleventh and divide by ten.`,
  },
  {
    id: 'relaxed',
    names: (words: Words) =>
      words.say`relaxed state, relaxed, state, dry-relaxed, wet-relaxed, fully-relaxed`,
    means: (words: Words) =>
      words.say`How the swatch rested before it was measured. Dry-relaxed: as it came off. Wet-relaxed: soaked and dried flat. Fully relaxed: washed and tumbled.`,
  },
  {
    id: 'loop-length',
    names: (words: Words) => words.say`loop length, yarn in a stitch`,
    means: (words: Words) =>
      words.say`How much yarn is in one stitch. Unravel one row of the swatch, measure its yarn and divide by its stitches.`,
  },
  {
    id: 'tightness',
    names: (words: Words) => words.say`tightness, tightness factor`,
    means: (words: Words) =>
      words.say`How close the knitting is: the square root of the yarn's tex, divided by the loop length in mm. Hand yarns at the gauge of their labels are ${labelTightness.least} to ${labelTightness.most}; a bag that keeps its shape wants ${firmTightness.least} to ${firmTightness.most}.`,
  },
  {
    id: 'tex',
    names: (words: Words) => words.say`tex, tex number`,
    means: (words: Words) =>
      words.say`How heavy a yarn is: what 1000 m of it weigh, in grams. A yarn with 200 m to 100 g has 500 tex.`,
  },
  {
    id: 'metres',
    names: (words: Words) => words.say`metres per 100 g, metres, yardage`,
    means: (words: Words) =>
      words.say`How long 100 g of the yarn are. The yarn's label says so; for 50 g, take it twice.`,
  },
  {
    id: 'class',
    names: (words: Words) => words.say`yarn class, weight class, class, lace, jumbo, bulky`,
    means: (words: Words) =>
      words.say`How thick a yarn is, from 0 (lace) to 7 (jumbo), by how many stitches it gives to 4 inches (Craft Yarn Council).`,
  },
  {
    id: 'stripe',
    names: (words: Words) => words.say`stripe, colour stripe`,
    means: (words: Words) =>
      words.say`A few rows of one yarn. An even number of rows lets both yarns wait on the home side.`,
  },
  {
    id: 'repeat',
    names: (words: Words) => words.say`repeat, stripe repeat`,
    means: (words: Words) =>
      words.say`The stripes in order, until the first comes again. A bag has whole repeats, so that the colours meet at the graft.`,
  },
  {
    id: 'scraps',
    names: (words: Words) => words.say`scraps, leftovers`,
    means: (words: Words) =>
      words.say`Leftover yarns. Weigh each, and the plan puts them in an order in which no two alike meet.`,
  },
  {
    id: 'ease',
    names: (words: Words) => words.say`ease, room`,
    means: (words: Words) =>
      words.say`Room between the bag and what goes into it: 10 % if you do not say otherwise (rule of thumb).`,
  },
  {
    id: 'girth',
    names: (words: Words) => words.say`girth, way round`,
    means: (words: Words) =>
      words.say`The way round what goes into the bag. Lay a tape round it where it is thickest.`,
  },
  {
    id: 'reserve',
    names: (words: Words) => words.say`reserve, spare yarn`,
    means: (words: Words) =>
      words.say`Yarn beyond what the sum says, so that it does not run out: 10 % (rule of thumb).`,
  },
  {
    id: 'brief',
    names: (words: Words) => words.say`brief, brief file`,
    means: (words: Words) =>
      words.say`The file that says what you want: your bed, your swatch, the size, the yarns and the stripes.`,
  },
  {
    id: 'plan',
    names: (words: Words) => words.say`plan, plan page`,
    means: (words: Words) =>
      words.say`What the program makes of the brief: stitches, rows, needles, yarn and tails. Type plan to read it.`,
  },
  {
    id: 'log',
    names: (words: Words) => words.say`log, log file`,
    means: (words: Words) =>
      words.say`The file in which every step you confirm is kept as you confirm it. It can be played again.`,
  },
];
