/** A brief: what is wrong in it and how to mend it, and what each of its fields is. */
import type { Amounts } from './amounts.ts';

export const brief = ({ choice, list }: Amounts) => ({
  empty: 'The brief is empty: write down at least a name, bed, swatch, bag, yarns and stripes.',
  tooBig: (characterCount: number, most: number) =>
    `The file has ${characterCount} characters, and a brief at most ${most}: look whether it is the right file.`,
  notJson: (line: number, column: number, mendJson: string) =>
    `The brief cannot be read at line ${line}, column ${column}: ${mendJson}`,
  notWhole: (field: string, value: string) => `${field} is ${value}: give a whole number.`,
  notEven: (field: string, value: string) =>
    `${field} is ${value}: give an even number, so that the yarn ends on the home side.`,
  tooSmall: (field: string, value: string, amountOf: string) =>
    `${field} is ${value}: give at least ${amountOf}.`,
  tooLarge: (field: string, value: string, amountOf: string) =>
    `${field} is ${value}: give at most ${amountOf}.`,
  tooLong: (field: string, mostOf: string) => `${field} is too long: ${mostOf} at most.`,
  notOneOf: (field: string, value: string, choices: string) => `${field} is ${value}: choose ${choices}.`,
  notAColour: (field: string, value: string) =>
    `${field} is ${value}: write # and six digits of 0-9 and a-f, such as "#6b2d5c".`,
  notAName: (field: string, value: string) =>
    `${field} is ${value}: write a name on one line, with no spaces at its ends.`,
  noSize: (toWrite: string) => `bag is empty: give ${toWrite}.`,
  twoSizes: (keys: readonly string[], toWrite: string) =>
    `bag has ${list(keys)}, which do not go together: keep ${toWrite}.`,
  noYarns: (toWrite: string) => `yarns is empty: give ${toWrite}.`,
  reservedYarn: (quote: string) =>
    `No yarn can be called ${quote}, a name that is kept for other use: give it another name.`,
  wasteIsAYarn: (quote: string) =>
    `waste.yarn is ${quote}, a yarn of the bag: give the waste yarn a name of its own.`,
  stripesAndScraps: 'stripes and scraps are both given: keep stripes for a repeat, or scraps for leftovers.',
  scrapNotWeighed: (quote: string) =>
    `The yarn ${quote} has no grams: weigh each scrap, so that every stripe gets enough.`,
  twoUnits: (field: string, other: string) => `${field} and ${other} are both given: keep one of them.`,
  twoLoopLengths: 'swatch.loopLengthMm and swatch.rowYarnCm are both given: keep one of them.',
  unknownKeyBut: (field: string, near: string) => `A brief has no ${field}: did you mean ${near}?`,
  unknownKey: (field: string, known: readonly string[]) =>
    `A brief has no ${field}: take it out, or use ${choice(known)}.`,
  missing: (field: string, content: string) => `${field} is missing: add ${content}.`,
  missingThing: 'it',
  yarnWithoutName: 'A yarn has no name: write one before the colon.',
  emptyName: (field: string, content: string) => `${field} is empty: write ${content}.`,
  aName: 'a name',
  types: {
    number: 'a number',
    text: 'text in double quotes',
    group: 'a group in braces { }',
    list: 'a list in brackets [ ]',
  },
  theBrief: 'The brief',
  theText: (text: string) => `the text ${text}`,
  numberInQuotes: (where: string, kind: string) =>
    `${where} is ${kind}: take the quotes off, it must be a number.`,
  wrongType: (where: string, kind: string, value: string) => `${where} is ${kind}: it must be ${value}.`,
  didYouMean: (quote: string) => `did you mean ${quote}?`,
  chooseYarn: (yarns: readonly string[]) => `choose ${choice(yarns)}.`,
  notAYarn: (field: string, quote: string, hint: string) =>
    `${field} is ${quote}, which is none of the yarns: ${hint}`,
  another: 'another',
  stitchOutside: (mm: number) =>
    `The swatch makes a stitch ${mm} mm wide, outside 0.2 to 60 mm: check its width and its stitches.`,
  rowOutside: (mm: number) =>
    `The swatch makes a row ${mm} mm high, outside 0.2 to 60 mm: check its height and its rows.`,
  thisComma: 'this comma',
  thisColon: 'this colon',
  json: {
    'ends-early': () => 'the file ends too soon; close every { with } and every [ with ].',
    comment: () => 'take the comment out, JSON has none.',
    'wrong-quotes': (found: string) => `use straight double quotes instead of ${found}.`,
    'unclosed-text': () => 'close this text with a double quote on the same line.',
    'odd-escape': () => 'write \\\\ for a backslash and \\t for a tab inside a text.',
    'odd-number': () => 'write numbers in plain digits, with a point for decimals and no unit, such as 0.5.',
    'decimal-comma': () => 'write decimals with a point, such as 19.2.',
    'extra-comma': (found: string) => `take out the comma before ${found}.`,
    'comma-missing': (shown: string) => `put a comma before ${shown}.`,
    'colon-missing': () => 'put a colon between the key and its value.',
    'key-unquoted': (shown: string) => `put the key ${shown} in double quotes.`,
    'key-twice': (shown: string) => `the key ${shown} is here a second time; keep one, or rename it.`,
    'word-unquoted': (shown: string) => `put ${shown} in double quotes, or write a number.`,
    'value-missing': (shown: string) => `write a value before ${shown}.`,
    'wrong-bracket': (found: string) =>
      `this ${found} does not match; close { with } and [ with ], the last opened first.`,
    'after-the-end': (shown: string) =>
      `the brief is closed before this; take out ${shown} and what follows.`,
    'not-expected': (shown: string) => `take out ${shown}, or write what is missing before it.`,
  },
  fields: {
    name: 'what the bag is called',
    bed: 'needles and pitchMm of your bed',
    needles: 'how many needles the bed has',
    pitchMm: 'the distance from needle to needle in mm',
    swatch: 'its stitches, rows, widthCm and heightCm',
    stitches: 'how many stitches',
    rows: 'how many rows',
    widthCm: 'the width in cm',
    heightCm: 'the height in cm',
    bag: 'widthCm and depthCm, or contents, or stitches and rows',
    depthCm: 'the depth in cm',
    girthCm: 'the girth of what goes in, in cm',
    yarns: 'each yarn by name, with its colour and metresPer100g',
    colour: 'a colour such as "#6b2d5c"',
    metresPer100g: 'how many metres weigh 100 g',
    stripes: 'one repeat, each stripe with its yarn and rows',
    yarn: 'the name of one of the yarns',
  },
  values: {
    tooLarge: 'a number too large to hold',
    list: 'a list',
    group: 'a group',
  },
});

/** What each field of a brief is, for whoever writes one: a line each, with what counts where the field is left out. */
export const fields = (_: Amounts) => ({
  brief:
    'A bag as you want it. Save the file as my-bag.json; slantwise plan my-bag.json then prints its plan.',
  name: 'What the bag is called. It heads the plan and the sheet.',
  bed: 'Your needle bed.',
  'bed.needles': 'How many needles the bed has.',
  'bed.pitchMm':
    'How far apart the needles are, from middle to middle: fine 3.6, standard 4.5, mid 6.5, bulky 9.',
  'bed.marginNeedles':
    'Needles that stay free at each end, so that the carriage can move clear of the work. Usually 2.',
  'bed.place': 'Where the work hangs: about the middle of the bed (centre, the usual) or from its end (end).',
  'bed.park':
    'Where a yarn waits: on the side of the carriage (home, the usual), or the two yarns at one end each (ends).',
  'bed.without':
    'What your bed lacks: a cast-on comb, a carriage that can slip, a row counter. Usually nothing.',
  'bed.without[]': 'One thing that it lacks.',
  swatch: 'Your test piece in plain knitting, measured at rest. Every size is worked out from it.',
  'swatch.stitches': 'Stitches counted over its width.',
  'swatch.rows': 'Rows counted over its height.',
  'swatch.widthCm': 'How wide these stitches are, in cm.',
  'swatch.heightCm': 'How high these rows are, in cm.',
  'swatch.widthIn': 'How wide these stitches are, in inches, in place of widthCm.',
  'swatch.heightIn': 'How high these rows are, in inches, in place of heightCm.',
  'swatch.state':
    'How it rested: as it came off (dry-relaxed), soaked and dried flat (wet-relaxed, the usual), or washed and tumbled (fully-relaxed).',
  'swatch.loopLengthMm':
    'Yarn in one stitch: unravel a row, measure it, divide by its stitches. Usually worked out from the gauge.',
  'swatch.rowYarnCm': 'Yarn in one whole row of the swatch, in place of loopLengthMm.',
  'swatch.asideCm':
    'How far the top edge stands to the right of the bottom edge, knit side facing; to the left it is below 0. Usually 0.',
  'swatch.stitchSize': 'What the dial of the carriage showed, such as "6".',
  'swatch.guess': 'Whether nobody has measured it and the bed is taken for a guess. Usually not.',
  finishState:
    'The state in which the bag will be used, and in which its size is wanted. Usually that of the swatch.',
  bag: 'How big it shall be, in one of three ways: widthCm and depthCm, or contents, or stitches and rows.',
  'bag.widthCm': 'Its width, sewn and lying flat.',
  'bag.depthCm': 'Its depth, sewn and lying flat.',
  'bag.boxedCm': 'How deep its bottom is when the corners are sewn across. Usually 0, a flat bag.',
  'bag.contents': 'What goes in. The bag is the smallest that holds it.',
  'bag.contents.girthCm': 'The way round it, where it is thickest.',
  'bag.contents.heightCm': 'How high it is.',
  'bag.contents.thicknessCm': 'How thick it is from front to back. Usually as of a round thing.',
  'bag.contents.easePercent': 'Room to spare all round, in per cent. Usually 10.',
  'bag.stitches': 'Stitches on the needles.',
  'bag.rows': 'Rows round the bag, the grafted one included.',
  crawl: 'The side to which the work moves along the bed. Usually left.',
  homeSide:
    'The side on which the carriage waits between stripes. Usually the one that the work moves away from.',
  edgeStitches: 'How many stitches move at each edge: the prongs of your transfer tool. Usually 2.',
  shapeEveryRows: 'Rows from one shaping move to the next. Usually 2; more make the stripes flatter.',
  hem: 'A hem knitted to the mouth and folded in, so that it does not roll. Left out, there is none.',
  'hem.rows': 'Plain rows of each of its two layers: an even number, such as 4.',
  'hem.yarn': 'The name of its yarn. Usually that of the first stripe.',
  yarns: 'Your yarns, each under a name of your own.',
  'yarns.NAME': 'One yarn.',
  'yarns.NAME.colour': 'Its colour on the screen and on paper, such as "#6b2d5c".',
  'yarns.NAME.metresPer100g': 'How many metres 100 g of it are. The label says so; for 50 g take it twice.',
  'yarns.NAME.grams':
    'How much of it you have, by the scales. Left out, the plan cannot say whether it is enough.',
  'yarns.NAME.pricePer100g': 'What 100 g of it cost.',
  'yarns.NAME.run': 'Of yarn that stripes by itself: its colours in turn, from where you begin it.',
  'yarns.NAME.run[]': 'One of its colours.',
  'yarns.NAME.run[].colour': 'That colour, such as "#2f5fa8".',
  'yarns.NAME.run[].metres': 'How many metres of it follow before the next.',
  stripes: 'One repeat of stripes, in knitting order.',
  'stripes[]': 'One stripe.',
  'stripes[].yarn': 'The name of its yarn.',
  'stripes[].rows': 'How many rows high it is: an even number.',
  scraps: 'In place of stripes: the yarns are leftovers, and the plan puts them in order.',
  'scraps.rows': 'How many rows high each stripe is. Usually 2.',
  waste: 'The waste yarn.',
  'waste.yarn': 'What you call it. Usually waste.',
  'waste.rows': 'Rows of it at the start. Usually 8.',
  'waste.ravel':
    'What frees the start at the end: the last waste row, found by a loop of it (loop, the usual), or a smooth cord (cord).',
  cord: 'The cord that draws the bag shut.',
  'cord.stitches': 'How many stitches it has. Usually 3.',
  'cord.yarn': 'The name of its yarn. Usually that of the first stripe.',
  'cord.tieCm': 'How long each end hangs out, to tie. Usually 25.',
  'cord.draws': 'Cords: 1, or 2 that pull from both sides. Usually 1.',
  'cord.roundsPer10Cm': 'Rounds that you counted in 10 cm of such a cord. Usually taken from the row height.',
  cost: 'What a bag costs you; left out, the plan names no cost.',
  'cost.perHour': 'What an hour of your work is worth.',
  'cost.currency': 'How you write the money, such as "EUR".',
  learned: 'What finished bags of this swatch told. The program writes it; you need not.',
  'learned.bags': 'Bags that count.',
  'learned.setAside': 'Bags that do not count, since they were far off.',
  'learned.widthFactor': 'Width that came out over width as planned.',
  'learned.depthFactor': 'Depth that came out over depth as planned.',
  'learned.spread': 'How much bags differ from one another, as a share.',
});
