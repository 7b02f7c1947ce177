/** What is wrong in a brief, and how to mend it. */
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
  json: {
    endsEarly: 'the file ends too soon; close every { with } and every [ with ].',
    comment: 'take the comment out, JSON has none.',
    wrongQuotes: (found: string) => `use straight double quotes instead of ${found}.`,
    unclosedText: 'close this text with a double quote on the same line.',
    oddEscape: 'write \\\\ for a backslash and \\t for a tab inside a text.',
    oddNumber: 'write numbers in plain digits, with a point for decimals and no unit, such as 0.5.',
    decimalComma: 'write decimals with a point, such as 19.2.',
    extraComma: (found: string) => `take out the comma before ${found}.`,
    commaMissing: (shown: string) => `put a comma before ${shown}.`,
    colonMissing: 'put a colon between the key and its value.',
    keyUnquoted: (shown: string) => `put the key ${shown} in double quotes.`,
    keyTwice: (shown: string) => `the key ${shown} is here a second time; keep one, or rename it.`,
    wordUnquoted: (shown: string) => `put ${shown} in double quotes, or write a number.`,
    valueMissing: (shown: string) => `write a value before ${shown}.`,
    wrongBracket: (found: string) =>
      `this ${found} does not match; close { with } and [ with ], the last opened first.`,
    afterTheEnd: (shown: string) => `the brief is closed before this; take out ${shown} and what follows.`,
    notExpected: (shown: string) => `take out ${shown}, or write what is missing before it.`,
    thisComma: 'this comma',
    thisColon: 'this colon',
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

export type BriefWords = ReturnType<typeof brief>;
