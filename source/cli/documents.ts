/** Prints what helps from outside: scripts for the Tab key of a shell, the manual page, and what a brief may hold. */
import { toJsonSchema } from '@valibot/to-json-schema';
import { today } from '../files/clock.ts';
import { briefSchema } from '../planning/brief-schema.ts';
import type { Asked } from './command.ts';
import { formatManual } from './manual.ts';
import { printDone } from './outcome.ts';
import { completionScript, type Shell } from './shell-completion.ts';

export const printCompletion = ({ commands, words }: Asked, shell: Shell): number =>
  printDone(completionScript(shell, commands, words));

export const printManual = ({ commands, words, program }: Asked): number =>
  printDone(formatManual(commands, words, { version: program, date: today() }));

/** The JSON Schema of a brief. Checks between fields, such as yarns that must exist, are not in it. */
export const printSchema = (): number =>
  printDone(
    JSON.stringify(
      { title: 'Slantwise brief', ...toJsonSchema(briefSchema, { errorMode: 'ignore' }) },
      null,
      2,
    ),
  );
