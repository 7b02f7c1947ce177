/** Several bags together: in which order, with which tools, how long, and which of them are done. */
import type { Amounts } from './amounts.ts';
import { counted } from './counted.en.ts';

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
  outKind: (out: string) => `${out} cannot hold several bags: name a file that ends in .html or .md`,
  sheetTally: 'Done',
});

export type PartyWords = ReturnType<typeof party>;
