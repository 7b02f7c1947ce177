/** What is wrong with a file, a disk or a log, and what to do about it. */

import type { Amounts } from './amounts.ts';
import { counted } from './counted.en.ts';

export const files = (_: Amounts) => ({
  line: {
    notText: 'holds bytes that are not text',
    notJson: 'is not JSON',
    noChecksum: 'has lost its checksum',
    checksum: 'does not fit its checksum: it was changed, or a line before it is missing',
    wrongFields: 'does not have the fields it should',
    outOfPlace: 'says too early that the bag is finished',
  },
  notALog: 'This file is not a Slantwise log. Name a file that Slantwise wrote.',
  noHeader:
    'This log was cut off before anything was recorded in it. Start the bag from its brief, in a new log.',
  newerVersion: (version: number, known: number) =>
    `This log is written in format ${version} and this program reads up to ${known}: open it with a newer Slantwise.`,
  damagedLine: (line: number, reason: string) => `Line ${line} ${reason}.`,
  stepDiffers: (line: number, recorded: number, reached: number, soundPart: string) =>
    `Line ${line} says ${counted.step(recorded)} were done, but it comes to ${reached}. ${soundPart}`,
  commandRefused: (line: number, code: string, soundPart: string) =>
    `Line ${line} holds something that cannot be done there (${code}). ${soundPart}`,
  unknownEvent: (line: number, name: string) =>
    `Line ${line} records "${name}", which this program does not know: open the log with a newer Slantwise.`,
  brief: (code: string, program: string) =>
    `This program cannot plan the brief in this log (${code}): open it with Slantwise ${program}, which began it.`,
  planDiffers: (figure: string, planned: string, recorded: string, program: string) =>
    `This program plans the bag differently (${figure}: ${planned}, in the log ${recorded}): open it with Slantwise ${program}, which began it.`,
  nothingAfter: 'Nothing after it can be used.',
  lineOneSound: 'Line 1 is sound.',
  linesSound: (through: number) => `Lines 1 to ${through} are sound.`,
  laterLines: (step: number) => `Later lines say that ${counted.step(step)} were done.`,
  tornTail: (keptAs: string) =>
    `The last line of the log was cut off, by a crash perhaps. It is kept in ${keptAs}; all before it is sound.`,
  cutOff: (line: number) =>
    `Line ${line}, the last, was cut off and belongs to no confirmed step. All before it is sound: open the log to go on from there.`,
  noSuchEvent: (after: number, events: number) =>
    `There is no event ${after}: the log has ${counted.event(events)}.`,
  disk: {
    full: 'the disk is full',
    readOnly: 'the disk can only be read',
    noPermission: 'there is no permission',
    gone: 'the file or its folder is gone',
    inUse: 'another Slantwise has the log open',
    changed: 'the file was changed by something else',
    noAnswer: 'the disk does not answer',
    error: 'the disk reports an error',
  },
  missing: (path: string) => `${path} does not exist. Check the name.`,
  noFolder: (path: string) => `The folder of ${path} does not exist. Make it, or choose another.`,
  isFolder: (path: string) => `${path} is a folder. Name a file in it.`,
  exists: (path: string) => `${path} exists already and is left as it is. Choose another name.`,
  tooLarge: (path: string, mostBytes: number) =>
    `${path} is larger than ${mostBytes} KiB, too large to be a brief or a log. Check the name.`,
  notText: (path: string) => `${path} is not text in UTF-8. Save it again as UTF-8.`,
  inUseElsewhere: (path: string, pid: number, host: string) =>
    `${path} is open in another Slantwise (process ${pid} on ${host}): close that one, or just watch. If there is none, copy the log and go on in the copy: slantwise --log COPY`,
  inUse: (path: string, pid: number) =>
    `${path} is open in another Slantwise (process ${pid}): close that one, or just watch. If there is none, copy the log and go on in the copy: slantwise --log COPY`,
  notSaved: (trouble: string, waiting: string) =>
    `Not saved: ${trouble}. The work goes on in memory and ${waiting} to be written; saving is tried every few seconds.`,
  lineWaits: '1 line waits',
  linesWait: (lines: number) => `${lines} lines wait`,
  saveElsewhere: 'Type save and a file elsewhere, such as save ../bag.jsonl, or quit again without saving.',
  leftWithout: (missing: string) => `Closed without saving. ${missing}`,
  logNotOnDisk: (trouble: string) => `The log is not on disk: ${trouble}.`,
  lineNotOnDisk: (trouble: string) => `1 line of the log is not on disk: ${trouble}.`,
  linesNotOnDisk: (waiting: number, trouble: string) =>
    `${waiting} lines of the log are not on disk: ${trouble}.`,
  savedElsewhere: (path: string, forShell: string) =>
    `The whole log is in ${path}, and the work goes on there. Next time: slantwise --log ${forShell}`,
  slow: (ms: number) =>
    `The disk is slow: it took ${ms} ms to save a press. Each press waits for it, but not longer than a second.`,
  holds:
    'The disk may hold up this terminal until it answers. You can close the window; that loses nothing more.',
});

export type FilesWords = ReturnType<typeof files>;
