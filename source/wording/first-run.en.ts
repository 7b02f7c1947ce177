/** The questions of a first run, what answers are shown as, and what is wrong with one. */

import type { Slant } from '../planning/choose-size.ts';
import type { Contents, UsualThing } from '../planning/usual.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './forms.en.ts';

const things: Readonly<Record<UsualThing, string>> = {
  cards: 'a deck of cards in its box',
  dice: 'a set of seven dice',
  jar: 'a jar of jam',
  socks: 'a pair of socks, rolled up',
  book: 'a small paperback',
};

export const firstRun = ({ choice, decimal, length, list, massNeeded }: Amounts) => ({
  questions: {
    name: {
      label: 'name',
      ask: 'What shall the bag be called?',
      asIn: ['Dice bag'],
    },
    size: {
      label: 'size',
      ask: 'How wide and deep should it be, sewn and lying flat? Or what goes in: how far round, how high?',
      asIn: {
        cm: '14 by 18 cm',
        in: '5.5 by 7 in',
        contents: ['26 round 12 high', 'a deck of cards', 'dice', 'a jar of jam', 'socks', 'a book'],
        counts: ['46 stitches 64 rows', '14 by 18 boxed 5'],
      },
    },
    bed: {
      label: 'bed',
      ask: 'Which needle bed do you have: how many needles, and how far apart?',
      asIn: ['120 needles 6 mm', 'fine 200', 'mid 120', 'bulky 90'],
      show: (needles: number, pitchMm: number) => `${counted.needle(needles)}, ${decimal(pitchMm)} mm apart`,
    },
    swatch: {
      label: 'swatch',
      ask: 'What does your swatch measure: how many stitches over its width, how many rows over its height?',
      asIn: {
        cm: '40 stitches 19.2 cm, 60 rows 21.6 cm',
        in: '40 stitches 7.5 in, 60 rows 8.5 in',
      },
      show: (swatch: string) => `a guess from your bed: ${swatch} (rule of thumb)`,
    },
    first: {
      label: 'first yarn',
      ask: 'What is the first yarn called? After its name, add what you know: colour, length of 100 g, grams you have.',
      asIn: {
        cm: 'plum #6b2d5c 190 m per 100 g 60 g',
        in: 'plum #6b2d5c 210 yd per 100 g 2 oz',
      },
    },
    second: {
      label: 'other yarns',
      ask: (name: string) =>
        `And the second yarn, for the stripes between? More of them follow a semicolon. The word none knits all in ${name}.`,
      asIn: {
        cm: 'mint #9fd8c2 190 m per 100 g 45 g',
        in: 'mint #9fd8c2 210 yd per 100 g 1.5 oz',
      },
      show: (name: string) => `none, all in ${name}`,
    },
    stripes: {
      label: 'stripes',
      ask: (yarns: readonly string[]) =>
        `How many rows high are the stripes, or how many cm wide? One even number, or one for each of ${list(yarns)}: 20 and 2 makes the second an accent. Or random, or gradient.`,
      asIn: ['4 and 2', '1.5 cm', 'random'],
    },
    slant: {
      label: 'slant',
      ask: (slants: readonly Slant[]) =>
        `How steep are the stripes to be? ${slants.map(({ shapeEveryRows, angleDeg }) => `Shaping every ${shapeEveryRows} rows: ${Math.round(angleDeg)}°.`).join(' ')} Give an angle, or the rows; the nearest is taken.`,
      show: (everyRows: number, angleDeg: number | null) =>
        `shaping every ${everyRows} rows${angleDeg === null ? '' : `, stripes at ${Math.round(angleDeg)}°`}`,
    },
    cord: {
      label: 'cord',
      ask: 'One cord with a bow, or two that pull from both sides?',
      asIn: ['one', 'two'],
      show: (cords: 1 | 2): string => (cords === 1 ? 'one, tied in a bow' : 'two, to pull from both sides'),
    },
    edges: {
      label: 'edges',
      ask: 'What becomes of the mouth edge? With 2 stitches moved at each edge, by a tool of 2 prongs, it rolls inwards; with 3 it rolls less into the eyelets. A hem, such as hem 4 with 4 plain rows a layer, is knitted to it and folded in: it does not roll, and takes more yarn and some half an hour.',
      asIn: ['hem 4', '3 and hem'],
      show: (stitches: 1 | 2 | 3, hemRows: number | null): string =>
        `${counted.stitch(stitches)} at each edge${hemRows === null ? (stitches === 3 ? ', so that the mouth rolls less' : '') : `, and a hem of ${hemRows} rows a layer, so that the mouth does not roll`}`,
    },
  },
  contents: ({ girthCm, heightCm, thicknessCm, usual }: Contents & { readonly usual?: UsualThing }) => {
    const measures = [
      `${length(girthCm)} round`,
      `${length(heightCm)} high`,
      ...(thicknessCm === undefined ? [] : [`${length(thicknessCm)} thick`]),
    ];
    return usual === undefined
      ? `for what is ${list(measures)}`
      : `for ${things[usual]}, ${list(measures)} (usual measures: yours may differ)`;
  },
  widthAndDepth: (width: string, depth: string) => `${width} wide and ${depth} deep`,
  swatchOver: (stitches: number, widthCm: number, rows: number, heightCm: number) =>
    `${counted.stitch(stitches)} over ${length(widthCm)}, ${counted.row(rows)} over ${length(heightCm)}`,
  metresGuessed: (metres: string) => `${metres} to 100 g (rule of thumb)`,
  metres: (size: string) => `${size} to 100 g`,
  notWeighed: 'not weighed',
  counts: (stitches: number, rows: number) => `${counted.stitch(stitches)} and ${counted.row(rows)}`,
  deepAsBed: (width: string) => `${width} wide, as deep as the bed allows`,
  boxed: (depth: string) => `, its bottom boxed ${depth} deep`,
  orders: { random: 'in a random order that joins', gradient: 'from dark to light and back' },
  each: (size: string) => `${size} each`,
  notAsked: 'not asked yet',
  opening:
    'A few questions, and the bag begins. Enter takes what is offered, ? explains, practice begins the practice bag instead.',
  goingOn: 'Your answers from last time are still here; change goes to one of them.',
  howToAnswer: [
    'Answer as in the example, or press Enter to take what is offered.',
    'A size may end with boxed 5, for a bottom 5 deep with its corners sewn across; 14 as deep as the bed takes all needles that one hanging has.',
    'back goes one question back; answers lists what you answered, and change size, or change 2, goes to one of them.',
    '? swatch explains a word; units in asks in inches; practice begins the practice bag.',
    'After the last question you see the plan. Enter begins; save my-bag.json begins too, and keeps the brief in that file.',
    'quit leaves. Your answers are kept: slantwise new goes on with them.',
  ],
  practice: 'This is the practice bag; the word new plans a bag of your own.',
  waits: (name: string, path: string) => `${name} is saved, and waits in ${path}`,
  answersKept: 'Your answers are kept: slantwise new goes on with them.',
  answersNotKept: (why: string) => `The answers cannot be kept for another day: ${why} Go on all the same.`,
  briefKept: (path: string) => `The brief is kept in ${path}`,
  briefNotKept: (why: string) => `The brief has no file of its own: ${why} The log holds it too.`,
  damagedLog: (path: string) =>
    `${path} cannot be read. If your bag is in it, type quit, and then slantwise check with its name.`,
  toKnit: (stitches: number, rows: number, shapings: number, needlesUsed: number, needles: number) =>
    `To knit: ${counted.stitch(stitches)}, ${counted.row(rows)} round and ${counted.shapingMove(shapings)}. They take ${needlesUsed} needles; the bed has ${needles}.`,
  haveReady: 'Have ready too: some waste yarn of another colour, and a smooth strand as ravel cord.',
  restIsUsual:
    'Cord, waste yarn, edges and crawl are the usual ones. Change them in the brief file; change cord two makes it two cords, to pull from both sides, change edges 3 a mouth that rolls less, and change edges hem one that does not roll.',
  wideAndDeep: (widthCm: number, depthCm: number) => `${length(widthCm)} wide and ${length(depthCm)} deep`,
  plan: (name: string, got: string, size: string) => `${name}: ${got}, sewn and lying flat, ${size}.`,
  planAndAsked: (name: string, got: string, asked: string) =>
    `${name}: ${got}, sewn and lying flat. Asked: ${asked}.`,
  yarnNeeds: (reservePercent: number, needs: string[]) =>
    `Yarn, with a reserve of ${reservePercent} %: ${list(needs)}.`,
  yarnEnough: (yarn: string, need: string, have: string) => `${yarn} ${need}, enough (you have ${have})`,
  yarnTooLittle: (yarn: string, need: string, have: string) =>
    `${yarn} ${need}, too little (you have ${have})`,
  swatchIsGuess: [
    'The swatch is a guess, so the bag may come out larger or smaller. Knit one first, then type change swatch.',
  ],
  doubts: {
    short: (yarn: string, grams: number) => `${yarn} is ${massNeeded(grams)} short`,
    tight: 'the fabric is so tight that the carriage may jam',
    guess: 'the swatch is a guess',
  },
  lookAgain: (doubts: string[]) => `Look once more: ${list(doubts)}. Enter again begins all the same.`,
  lengthIsGuess: (usualLength: string) =>
    `Where you gave no length, yarn is taken as ${usualLength} to 100 g, a rule of thumb: go by the label if you have it.`,
  whichIsWhich: (example: string) => `Say which number is which, as in: ${example}.`,
  yarnWithoutName: 'The yarn needs a name of its own, first in the line.',
  anyName: 'Any name does. It heads the plan and the sheet.',
  questionAsName: (name: string) =>
    `Is the bag called ${name}? Then answer with that in quotes. Questions that begin with why or how are answered once the bag is begun.`,
  oddYarnName: (name: string, example: string) =>
    `Is the yarn called ${name}? Then answer with that in quotes; balls and lengths as in ${example}.`,
  ballsExample: '2 balls of 50 g, 120 m each',
  sameYarn: (name: string) => `Both yarns are called ${name}: give one of them another name.`,
  moreStripes: (yarns: readonly string[]) =>
    `There are fewer yarns than numbers: give one for each of ${list(yarns)}.`,
  bedTooShort: (width: string) =>
    `The bed has too few needles for a bag ${width} wide in one hanging: give a smaller width, or the depth you want.`,
  noSuchAnswer: (word: string, names: string[]) =>
    `There is no answer ${word} to change: choose ${choice(names)}, or its number.`,
  nothingBefore: 'This is the first question.',
  notUnits: 'Type units cm, or units in.',
  notAChoice: (word: string) =>
    `${word} does nothing here: press Enter to begin, or type change and what to change.`,
  tooSmall: (limit: string) => `That is too little: at least ${limit}.`,
  tooLarge: (limit: string) => `That is too much: at most ${limit}.`,
  notWhole: 'Give a whole number, without a fraction.',
  notEven: 'Give an even number of rows, so that both yarns wait on the home side.',
  notAColour: 'A colour is # and six of the figures 0-9 and letters a-f, such as #6b2d5c.',
  tooShort: 'The name is empty.',
  tooLong: (most: number) => `The name is too long: at most ${counted.character(most)}.`,
  notAName: 'That cannot be a name: it contains invisible characters.',
  wrongType: 'That cannot be used here: give another.',
  notUnderstood: (word: string, example: string) =>
    `I do not know what ${word} means here: answer as in ${example}.`,
  give: {
    size: (example: string) => `Give two lengths, as in ${example}.`,
    bed: (example: string) => `Give the number of needles and how far apart they are, as in ${example}.`,
    swatch: (example: string) =>
      `Give stitches and rows, and the width and height they measure, as in ${example}.`,
    stripes: () => 'Give one number of rows or a width, or one for each yarn; or random, or gradient.',
    slant: () => 'Give an angle between 10 and 90, or 2, 4, 6 or 8 rows.',
    other: (example: string) => `Answer as in ${example}.`,
  },
  place: (at: number, of: number) => `question ${at} of ${of}`,
  or: (one: string, other: string) => `${one}, or ${other}`,
  keeps: (shown: string) => `keeps ${shown}`,
  takes: (shown: string) => `takes ${shown}`,
  reading: (at: number, of: number): string =>
    at === of ? `page ${at} of ${of}: Enter goes to the question` : `page ${at} of ${of}: Enter goes on`,
  also: '? explains; back, change, answers, practice, help, quit',
  atPlan: {
    place: 'the plan',
    ask: 'Is this the bag you want?',
    impossible: 'It cannot be made like this: change one of your answers.',
    change: 'change size',
    enter: 'keeps the brief and begins',
    allTheSame: 'keeps the brief and begins all the same',
    also: 'change size, or another answer; answers, practice, help, quit',
  },
  forExample: (asIn: string) => `For example: ${asIn}`,
  emptyLine: (enter: string) => `An empty line ${enter}.`,
  names: {
    bag: 'My bag',
    plum: 'plum',
    mint: 'mint',
  },
  ask: 'ask',
  asIn: 'e.g.',
  enter: 'Enter',
});
