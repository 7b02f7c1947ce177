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
