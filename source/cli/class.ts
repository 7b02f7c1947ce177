/** `slantwise class FOLDER`: how the pupils of a class stand, by the logs in a folder. */
import { basename } from 'node:path';
import { folderFault, listLogs, soundLogs } from '../files/log-list.ts';
import { type ClassProgress, classProgress, type Pupil } from '../journal/class.ts';
import { readRecording } from '../journal/recording.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { formatDuration } from '../wording/logs.ts';
import { table } from '../wording/page.ts';
import { sayPhase } from '../wording/steps.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, print, printJson } from './outcome.ts';

const pupilOf = (path: string): string => basename(path, '.jsonl');

export function printClass(folder: string, json: boolean, words: Words): number {
  const fault = folderFault(folder);
  if (fault) return complain(formatFileFault(fault, words));
  const logs = [...soundLogs(folder)].flatMap(({ path, bytes }) => {
    const recording = readRecording(bytes);
    return recording.ok ? [{ log: pupilOf(path), recording: recording.value }] : [];
  });
  const unreadable = listLogs(folder).filter(({ tally }) => !tally.ok);
  if (logs.length === 0 && unreadable.length === 0) return complain(words.logs.classIsEmpty(folder));
  const progress = classProgress(logs);
  if (json) printJson({ ...progress, unreadable: unreadable.map(({ path }) => path) }, 2);
  else {
    print(formatClass(progress, words));
    for (const { path } of unreadable) print(`${pupilOf(path)}  ${words.logs.cannotBeRead}`);
  }
  return exitCodes.done;
}

function formatClass({ pupils, hardSteps }: ClassProgress, words: Words): string {
  const { logs: say } = words;
  const finished = pupils.filter(({ phase }) => phase === null).length;
  const rows = pupils.map((pupil) => rowOf(pupil, words));
  const hard = hardSteps.map(({ step, row, pupils: many }) => say.hardStep(step, row, many));
  return [say.classOf(pupils.length, finished), ...table(rows), ...hard].join('\n');
}

function rowOf(
  { log, bag, stepsDone, stepCount, phase, workS, takenBack }: Pupil,
  words: Words,
): readonly string[] {
  const { logs: say } = words;
  return [
    log,
    bag,
    phase === null ? say.finished : say.nextStep(stepsDone + 1, stepCount),
    phase === null ? '' : sayPhase(phase, words),
    formatDuration(workS),
    takenBack === 0 ? '' : say.takenBack(takenBack),
  ];
}
