import { forShell } from '../shared/for-shell.ts';
import type { Amounts } from './amounts.ts';

export const logs = (_: Amounts) => ({
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
