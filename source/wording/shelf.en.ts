/** What is kept under names, what is left of it, and what could be made of it; and several bags as a party. */
import type { ShelfKind } from '../planning/shelf.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './forms.en.ts';

const things: Readonly<Record<ShelfKind, string>> = { bed: 'bed', swatch: 'swatch', yarn: 'yarn' };

export const shelf = ({ decimal, length, list, mass, yarnNeeded }: Amounts) => ({
  outside: 'what is kept under names, what is left of the yarns, and what could be made of them',
  empty: [
    'Nothing is kept yet. In a bag type keep bed workroom, keep swatch plum, or keep yarns; then these names do in a brief and in the first questions.',
  ],
  notThere: (kind: ShelfKind, name: string, known: readonly string[]) =>
    known.length === 0
      ? `No ${things[kind]} is kept under the name ${name}: slantwise shelf lists what is; write its figures instead, or keep one.`
      : `No ${things[kind]} is kept under the name ${name}. Kept: ${list(known)}.`,
  kept: (kind: ShelfKind, shown: string) => `Kept: ${things[kind]} ${shown}.`,
  forgotten: (kind: ShelfKind, name: string) => `Off the shelf: ${things[kind]} ${name}.`,
  guessIsNoSwatch:
    'The swatch of this bag is a guess, so there is nothing to keep: knit one and measure it first.',
  sayOfYarn:
    'Give a yarn of this bag, or one with its colour and length, as in: keep yarn plum #6b2d5c 190 m per 100 g 60 g',
  damaged: (path: string) =>
    `${path} cannot be read as a shelf, so it is left as it is. Move it away to begin another.`,
  titles: { bed: 'Beds', swatch: 'Swatches', yarn: 'Yarns' } satisfies Record<ShelfKind, string>,
  bed: (name: string, needles: number, pitchMm: number) =>
    `${name}: ${counted.needle(needles)} ${decimal(pitchMm)} mm apart`,
  swatch: (
    name: string,
    stitches: number,
    widthCm: number,
    rows: number,
    heightCm: number,
    dial: string | null,
  ) =>
    `${name}: ${counted.stitch(stitches)} over ${length(widthCm)}, ${counted.row(rows)} over ${length(heightCm)}${dial === null ? '' : `, stitch size ${dial}`}`,
  yarn: (name: string, colour: string, metresPer100g: number, grams: number | null) =>
    `${name} ${colour}, ${yarnNeeded(metresPer100g)} to 100 g, ${grams === null ? 'not weighed' : `${mass(grams)} left`}`,
  couldMake: (bed: string, swatch: string | null) =>
    `Could be made on ${bed}, in the shape of 14 by 18, by ${swatch === null ? 'a guessed swatch (rule of thumb)' : `the swatch ${swatch}`}:`,
  upTo: (yarns: readonly string[], scraps: boolean, widthCm: number, depthCm: number) =>
    `${list(yarns)}${scraps ? ', a bag of scraps' : ''}: up to ${length(widthCm)} wide and ${length(depthCm)} deep`,
  tooLittle: (yarns: readonly string[]) => `${list(yarns)}: too little for any`,
  sayMore: 'Keep a bed and two weighed yarns, and it says what could be made of them.',
  takes: (names: readonly string[]) => `${list(names)} from your shelf`,
});

/** Several bags together: in which order, with which tools, how long, and which of them are done. */
export const party = ({ list, mass, time }: Amounts) => ({
  title: (bags: number) => `ALL ${bags} BAGS`,
  order: 'order',
  orderIs: (names: readonly string[]) => `${list(names)}: first what takes most of the scarcest yarn`,
  without: 'not',
  withoutIs: (names: readonly string[]) => `the yarn does not reach for ${list(names)}`,
  left: 'left',
  leftIs: (left: readonly { readonly yarn: string; readonly grams: number }[]) =>
    `${list(left.map(({ yarn, grams }) => `${mass(grams)} of ${yarn}`))}, by the plans without their reserve`,
  prongs: (prongs: readonly number[]) => `transfer tools with ${list(prongs.map(String))} prongs`,
  time: 'time',
  timeIs: (seconds: number, ownBags: number) =>
    `about ${time(seconds)} of work in all, ${ownBags === 0 ? 'by rules of thumb' : 'at the pace of your finished bags'}`,
  done: (name: string) => `${name}: done`,
  begun: (name: string, step: number, of: number) => `${name}: step ${step} of ${of} next`,
  toDo: (name: string) => `${name}: to do`,
  tally: (done: number, begun: number, toDo: number) =>
    `A party of ${done + begun + toDo} bags: ${done} done, ${begun} begun, ${toDo} to do.`,
  none: [
    'No party is planned. party 4 plans four bags like this one, their colours turned round from bag to bag; slantwise party takes briefs.',
  ],
  next: 'party next goes on with the one that comes next.',
  allDone: 'All bags of the party are done.',
  kept: (bags: number) =>
    `The party of ${counted.bag(bags)} is kept: party tells how it stands, party next begins the next bag.`,
  notAParty: (most: number) => `A party has 2 to ${most} bags. For example: party 4`,
  damaged: (path: string) =>
    `${path} cannot be read as a party, so it is left as it is. Move it away to plan another.`,
  cannot: (why: string) => `No such party can be made: ${why}`,
  outside: 'keep several bags as a party, print their plan together, and tell which are done',
  turned: 'from bag to bag each stripe takes the yarn of the next',
  sheetTitle: (bags: number) => `A party of ${counted.bag(bags)}`,
  sheetTally: 'Done',
});
