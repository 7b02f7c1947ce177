import { forShell } from '../shared/for-shell.ts';
import type { Amounts } from './amounts.ts';

export const logs = (_: Amounts) => ({
  openUsage: 'open NUMBER, or open and a name',
  openSummary: 'go on with another bag, by its number in bags or by its name; this one is saved, and waits',
  openGist: 'go on with another bag',
  practiceSummary: 'go to the practice bag; this one is saved, and waits',
  practiceGist: 'go to the practice bag',
  nothingToCancel: 'There is no bag to go back to: quit leaves, and keeps your answers.',
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
    'byte-order-mark': 'A byte order mark was put before the log on its way, by mail or an editor: no harm.',
    'windows-line-ends':
      'The line ends of the log were made those of Windows, by mail or an editor: no harm.',
  },
  notAFolder: (path: string) =>
    `A file stands where the folder of ${path} should be. Move that file away, or choose another folder.`,
  goesOnIn: (path: string) => `You go on with its sound part, in ${path}.`,
  takenOver: (from: string, path: string) =>
    `Something else has written to ${from}, which is left as it is. All your work is in ${path} and goes on there. Next time: slantwise --log ${forShell(path)}`,
  soundPart: (path: string) => `The sound part is saved as ${path}.`,
});

export type LogsWords = ReturnType<typeof logs>;
