import { toJsonSchema } from '@valibot/to-json-schema';
import { briefSchema } from '../planning/brief-schema.ts';
import { exitCodes } from './outcome.ts';

/** Prints the JSON Schema of a brief. Checks between fields, such as yarns that must exist, are not in it. */
export function printSchema(): number {
  const schema = { title: 'Slantwise brief', ...toJsonSchema(briefSchema, { errorMode: 'ignore' }) };
  process.stdout.write(`${JSON.stringify(schema, null, 2)}\n`);
  return exitCodes.done;
}
