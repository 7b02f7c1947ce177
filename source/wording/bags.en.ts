/** Bags and their logs; what is kept on the shelf under names, and what could be made of it; several bags as a party. */

import type { ShelfKind } from '../planning/shelf.ts';
import { forShell } from '../shared/plain-text.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './forms.en.ts';

export const logs = (_: Amounts) => ({
  renamed: (before: string, now: string) => `${before} is now called ${now}.`,
  notAName: (most: number) => `Type what the bag shall be called, in at most ${counted.character(most)}.`,
  /** `named`: as the maker named it, empty for the bag that is open. */
  askDiscard: (bag: string, named: string) =>
    `Throw away ${bag}? If so, type: ${['discard', named, 'yes'].filter((word) => word !== '').join(' ')}`,
  askDiscardOutside: (bag: string, named: string) =>
    `Throw away ${bag}? If so, type: slantwise discard ${forShell(named)} --yes`,
  discarded: (bag: string) =>
    `Thrown away: ${bag}. A copy is kept until the next bag is thrown away; restore brings it back.`,
  restored: (bag: string) => `Back again: ${bag}.`,
  nothingToRestore: 'No bag was thrown away.',
  nothingToCancel: 'There is no bag to go back to: quit keeps your answers.',
  openHint: 'To go on with another, type open and its number or name.',
  /** `known`: how many bags there are. */
  noSuchBag: (bag: string, known: number) =>
    known === 0
      ? 'There are no other bags yet: type new to plan one.'
      : `No bag here is ${bag}: type bags, and open one by its number, 1 to ${known}, or by its name.`,
  severalBags: (bag: string, names: readonly string[]) =>
    `${bag} could be ${names.join('; ')}: type bags, and open one by its number.`,
  openAlready: (name: string) => `${name} is the bag that is open here.`,
  cannotOpen: (path: string) => `The log ${path} is damaged: slantwise check and its file says where.`,
  needsBrief:
    'With its brief named too, as in slantwise BRIEF --log LOG, what was recorded after it can be used.',
  foreign: {
    'byte-order-mark': 'Mail or an editor put a byte order mark before the log: that does no harm.',
    'windows-line-ends':
      'Mail or an editor changed the line ends of the log to those of Windows: that does no harm.',
  },
  notAFolder: (path: string) =>
    `A file stands where the folder of ${path} should be. Move that file away, or choose another folder.`,
  goesOnIn: (path: string) => `You go on with its sound part, in ${path}.`,
  takenOver: (from: string, path: string) =>
    `Something else has written to ${from}, which is left as it is. All your work is in ${path} and goes on there. Next time: slantwise --log ${forShell(path)}`,
  soundPart: (path: string) => `The sound part is saved as ${path}.`,

  sound: (name: string) => `${name}: the log is sound.`,
  recorded: (events: number, sittings: number, duration: string) =>
    `${counted.event(events)} in ${counted.sitting(sittings)}, ${duration} recorded, rests included.`,
  bagFinished: 'The bag is finished.',
  stepsConfirmed: (step: number, stepCount: number) => `${step} of ${stepCount} steps confirmed.`,
  classIsEmpty: (folder: string) => `There are no logs in ${folder}: name the folder of your pupils' logs.`,
  classOf: (pupils: number, finished: number) =>
    `${counted.log(pupils)}, ${finished} finished; the furthest on come first.`,
  hardStep: (step: number, row: number, pupils: number) =>
    `Step ${step} (row ${row}) took ${pupils} of them much longer than usual.`,
  takenBack: (times: number) => `${counted.time(times)} taken back`,
  cannotBeRead: 'cannot be read',
  finished: 'finished',
  nextStep: (step: number, stepCount: number) => `step ${step} of ${stepCount} next`,
  noBags: ['No bags in the folder of logs yet.'],
  moreBags: (more: number) => `and ${more} more: slantwise bags lists them all.`,
  another: 'To make another like one of them, open it and type another.',
  likeAlone: 'Give --like or a brief, not both: the brief comes from the log.',
  otherBag: (path: string, name: string) =>
    `${path} already holds the log of ${name}, made from another brief: name another file, or leave the brief out to go on with it.`,
  lesson: {
    notUnderstood: (line: number, text: string) =>
      `Line ${line} is not understood: ${text}. For example: 33 say Watch the left edge. After the step comes say, note, mark or pause.`,
    stepNotReached: (line: number, step: number, most: number) =>
      `Line ${line} names step ${step}, but the log goes from step 1 to ${most}.`,
    nothingAdded: 'There is no line to add. For example: 33 say Watch the left edge.',
    added: (added: number, path: string) =>
      `${counted.line(added)} added; the lesson is in ${path}. Play it: slantwise replay ${path}`,
  },
  goOn: (step: number, path: string) => `To go on from step ${step}: slantwise --log ${path}`,
});

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
