/** Prints what helps from outside: scripts for the Tab key of a shell, and the manual page. */

import { toJsonSchema } from '@valibot/to-json-schema';
import { briefSchema } from '../planning/brief-schema.ts';
import { formatManual } from './manual.ts';
import { exitCodes } from './outcome.ts';
import { completionScript, type Shell } from './shell-completion.ts';

export const printCompletion = (shell: Shell): number => print(completionScript(shell));

export const printManual = (version: string): number =>
  print(formatManual({ version, date: new Date().toISOString().slice(0, 10) }));

function print(text: string): number {
  process.stdout.write(`${text}\n`);
  return exitCodes.done;
}

/** Prints the JSON Schema of a brief. Checks between fields, such as yarns that must exist, are not in it. */
export function printSchema(): number {
  const schema = { title: 'Slantwise brief', ...toJsonSchema(briefSchema, { errorMode: 'ignore' }) };
  process.stdout.write(`${JSON.stringify(schema, null, 2)}\n`);
  return exitCodes.done;
}
